package ampdays.chart.jfree;

import ampdays.chart.EndLabels;
import ampdays.chart.OperatingPoints;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Draws {@link OperatingPoints}: curves over rotor speed, and at each speed a mark as wide as the time is long. */
record OperatingPicture(OperatingPoints chart) implements Picture {
    private static final double LEFT = 56;
    private static final double TOP = 140;
    private static final double HIGH = 270;
    private static final double BELOW = 134;
    private static final double WIDEST = 70;
    private static final double NARROWEST = 4;
    private static final int COLD_LOOK = 1;
    private static final int HOT_LOOK = 4;
    private static final int CAP_LOOK = 7;
    private static final Style.Fill TIME = new Style.Fill(Style.GREEN, Style.Hatch.NONE);

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        int units = chart.units().size();
        return (int) (TOP + units * HIGH + (units - 1) * BELOW + 56);
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, chart.title(), chart.subtitle());
        List<String> names = chart.units().stream()
                .flatMap(unit -> List.of(unit.coldLabel(), unit.hotLabel(), unit.capLabel()).stream())
                .toList();
        double room = EndOfLine.room(pen, names, List.of());
        for (int i = 0; i < chart.units().size(); i++) {
            double top = TOP + i * (HIGH + BELOW);
            unit(pen, chart.units().get(i), new Rectangle2D.Double(LEFT, top, width() - LEFT - room, HIGH), room);
        }
    }

    private static void unit(Pen pen, OperatingPoints.Unit unit, Rectangle2D area, double room) {
        Axes axes = new Axes(pen.style());
        double topRpm = unit.rpm().get(unit.rpm().size() - 1);
        Panel panel = new Panel(area, axes.numbers(0, topRpm, 8, false), axes.numbers(0, unit.highestA(), 5, true));
        panel.line(unit.rpm(), unit.coldA(), COLD_LOOK);
        panel.line(unit.rpm(), unit.hotA(), HOT_LOOK);
        if (!unit.capLabel().isEmpty()) {
            panel.line(unit.rpm(), unit.capA(), CAP_LOOK);
        }
        panel.draw(pen.graphics());
        pen.write(unit.heading(), 16, area.getMinY() - 58, pen.style().heading(), Style.INK);
        pen.write(unit.yLabel(), 16, area.getMinY() - 41, pen.style().label(), Style.WORDS);
        pen.write(unit.xLabel(), LEFT, area.getMaxY() + 40, pen.style().label(), Style.WORDS);
        speeds(pen, panel, unit);
        ends(pen, panel, unit, room);
    }

    private static void speeds(Pen pen, Panel panel, OperatingPoints.Unit unit) {
        Rectangle2D area = panel.area();
        List<String> notes =
                unit.speeds().stream().map(OperatingPoints.Speed::note).toList();
        double wide = pen.roomFor(notes, pen.style().small(), 60, 200);
        List<Double> middles = EndLabels.spread(
                unit.speeds().stream().map(speed -> panel.x(speed.rpm())).toList(),
                wide + 6,
                area.getMinX() + wide / 2,
                area.getMaxX() - wide / 2);
        double widest = widest(panel, unit.speeds());
        for (int i = 0; i < unit.speeds().size(); i++) {
            OperatingPoints.Speed speed = unit.speeds().get(i);
            double x = panel.x(speed.rpm());
            pen.line(middles.get(i), area.getMinY() - 6, x, area.getMinY() + 4, Style.GREY, Style.thin());
            pen.line(x, area.getMinY() + 4, x, area.getMaxY(), Style.GRID, Style.thin());
            pen.fill(marks(panel, unit, speed, widest), TIME);
            double left = middles.get(i) - wide / 2;
            pen.write(speed.words(), left, area.getMinY() - 23, pen.style().heading(), Style.INK);
            pen.write(speed.note(), left, area.getMinY() - 10, pen.style().small(), Style.WORDS);
        }
    }

    /** Marks of neighbouring speeds do not touch. */
    private static double widest(Panel panel, List<OperatingPoints.Speed> speeds) {
        double widest = WIDEST;
        for (int i = 1; i < speeds.size(); i++) {
            double apart =
                    panel.x(speeds.get(i).rpm()) - panel.x(speeds.get(i - 1).rpm());
            widest = Math.min(widest, 0.8 * apart);
        }
        return widest;
    }

    private static List<Rectangle2D> marks(
            Panel panel, OperatingPoints.Unit unit, OperatingPoints.Speed speed, double widest) {
        List<Rectangle2D> marks = new ArrayList<>();
        for (int bin = 0; bin < speed.binHours().size(); bin++) {
            double hours = speed.binHours().get(bin);
            if (hours > 0) {
                double wide = Math.max(NARROWEST, widest * hours / unit.longestHours());
                double top = panel.y((bin + 1) * unit.binA());
                double bottom = panel.y(bin * unit.binA());
                marks.add(new Rectangle2D.Double(panel.x(speed.rpm()) - wide / 2, top, wide, bottom - top));
            }
        }
        return marks;
    }

    private static void ends(Pen pen, Panel panel, OperatingPoints.Unit unit, double room) {
        List<EndOfLine> ends = new ArrayList<>();
        ends.add(end(panel, unit.coldLabel(), COLD_LOOK, unit.coldA()));
        ends.add(end(panel, unit.hotLabel(), HOT_LOOK, unit.hotA()));
        if (!unit.capLabel().isEmpty()) {
            ends.add(end(panel, unit.capLabel(), CAP_LOOK, unit.capA()));
        }
        EndOfLine.draw(pen, panel.area(), room, ends);
    }

    private static EndOfLine end(Panel panel, String name, int look, List<Double> currentA) {
        double endA = currentA.get(currentA.size() - 1);
        return new EndOfLine(name, "", look, panel.area().getMaxX(), panel.y(endA));
    }
}
