package ampdays.chart.jfree;

import ampdays.chart.DriveChart;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Draws a {@link DriveChart}: a column per drive with temperatures, currents and limits above each other. */
record DrivePicture(DriveChart chart) implements Picture {
    private static final double LEFT = 56;
    private static final double GAP = 30;
    private static final double WARM_TOP = 92;
    private static final double WARM_HEIGHT = 190;
    private static final double CURRENT_TOP = WARM_TOP + WARM_HEIGHT + 44;
    private static final double CURRENT_HEIGHT = 150;
    private static final double LIMIT_TOP = CURRENT_TOP + CURRENT_HEIGHT + 66;
    private static final double PITCH = 22;
    private static final double THICK = 12;
    private static final double MARK_ROOM = 48;
    private static final Style.Fill RULES = new Style.Fill(Style.GREY, Style.Hatch.NONE);

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        return (int) (LIMIT_TOP + PITCH * chart.limits().size() + 14);
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, chart.title(), chart.subtitle());
        List<String> names = new ArrayList<>(chart.temperatures());
        names.addAll(chart.currents());
        double room = Math.max(EndOfLine.room(pen, names, List.of()), limitRoom(pen));
        double wide = width() - LEFT - room - GAP * (chart.columns().size() - 1);
        double hours = chart.columns().stream()
                .mapToDouble(column -> column.toHour() - column.fromHour())
                .sum();
        double left = LEFT;
        for (DriveChart.Column column : chart.columns()) {
            double share = (column.toHour() - column.fromHour()) / hours;
            column(pen, column, left, wide * share);
            left += wide * share + GAP;
        }
        pen.write(chart.temperatureLabel(), 16, WARM_TOP - 14, pen.style().label(), Style.WORDS);
        pen.write(chart.currentLabel(), 16, CURRENT_TOP - 14, pen.style().label(), Style.WORDS);
        pen.write(chart.limitLabel(), 16, LIMIT_TOP - 14, pen.style().label(), Style.WORDS);
        names(pen, room);
    }

    private double limitRoom(Pen pen) {
        List<String> words = chart.limits().stream()
                .map(rule -> rule.name() + ", " + rule.words())
                .toList();
        return pen.roomFor(words, pen.style().label(), 60, 300) + 24;
    }

    private void column(Pen pen, DriveChart.Column column, double left, double wide) {
        lines(pen, temperatures(pen, column, left, wide), column.hour(), column.temperatureC(), 1);
        lines(pen, currents(pen, column, left, wide), column.hour(), column.currentA(), 2);
        limits(pen, column, left, wide);
    }

    private Panel temperatures(Pen pen, DriveChart.Column column, double left, double wide) {
        Axes axes = new Axes(pen.style());
        return panel(
                        new Rectangle2D.Double(left, WARM_TOP, wide, WARM_HEIGHT),
                        clock(axes, column, wide),
                        axes.degrees(chart.coolestC(), chart.warmestC(), 6, chart.bothDegrees()))
                .withoutWordsBelow();
    }

    private Panel currents(Pen pen, DriveChart.Column column, double left, double wide) {
        Axes axes = new Axes(pen.style());
        return panel(
                new Rectangle2D.Double(left, CURRENT_TOP, wide, CURRENT_HEIGHT),
                clock(axes, column, wide),
                axes.numbers(0, chart.highestA(), 5, true));
    }

    private static MarkedAxis clock(Axes axes, DriveChart.Column column, double wide) {
        return axes.clock(column.fromHour(), column.toHour(), wide, MARK_ROOM);
    }

    private static Panel panel(Rectangle2D area, MarkedAxis x, MarkedAxis y) {
        Panel panel = new Panel(area, x, y);
        return area.getMinX() > LEFT ? panel.withoutWordsLeft() : panel;
    }

    /** @param lookStep so that the current of an alternator looks like its winding */
    private static void lines(Pen pen, Panel panel, List<Double> hour, List<List<Double>> values, int lookStep) {
        for (int i = 0; i < values.size(); i++) {
            panel.line(hour, values.get(i), i * lookStep);
        }
        panel.draw(pen.graphics());
        for (int i = 0; i < values.size(); i++) {
            double stagger = (i + 0.5) / values.size();
            Marks.along(pen.graphics(), panel, hour, values.get(i), i * lookStep, 2, stagger);
        }
    }

    private void limits(Pen pen, DriveChart.Column column, double left, double wide) {
        double perHour = wide / (column.toHour() - column.fromHour());
        for (int i = 0; i < column.ruled().size(); i++) {
            double middle = LIMIT_TOP + PITCH * (i + 0.5);
            pen.line(left, middle, left + wide, middle, Style.GRID, Style.thin());
            List<Rectangle2D> bars = new ArrayList<>();
            for (DriveChart.Span ruled : column.ruled().get(i)) {
                bars.add(new Rectangle2D.Double(
                        left + (ruled.fromHour() - column.fromHour()) * perHour,
                        middle - THICK / 2,
                        (ruled.toHour() - ruled.fromHour()) * perHour,
                        THICK));
            }
            pen.fill(bars, RULES);
        }
    }

    /** Names of lines and limits, right of the last column. */
    private void names(Pen pen, double room) {
        DriveChart.Column last = chart.columns().get(chart.columns().size() - 1);
        double right = width() - room;
        Panel warm = temperatures(pen, last, right - 1, 1);
        Panel current = currents(pen, last, right - 1, 1);
        EndOfLine.draw(pen, warm.area(), room, ends(warm, chart.temperatures(), last.temperatureC(), 1));
        EndOfLine.draw(pen, current.area(), room, ends(current, chart.currents(), last.currentA(), 2));
        for (int i = 0; i < chart.limits().size(); i++) {
            DriveChart.Rule rule = chart.limits().get(i);
            pen.write(
                    pen.fit(rule.name() + ", " + rule.words(), pen.style().label(), room - 14),
                    right + 12,
                    LIMIT_TOP + PITCH * (i + 0.5) + 4.5,
                    pen.style().label(),
                    Style.INK);
        }
    }

    private static List<EndOfLine> ends(Panel panel, List<String> names, List<List<Double>> values, int lookStep) {
        List<EndOfLine> ends = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            double end = values.get(i).get(values.get(i).size() - 1);
            ends.add(new EndOfLine(names.get(i), "", i * lookStep, panel.area().getMaxX(), panel.y(end)));
        }
        return ends;
    }
}
