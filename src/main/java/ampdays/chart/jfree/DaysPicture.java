package ampdays.chart.jfree;

import ampdays.chart.DaysBars;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws {@link DaysBars}. */
record DaysPicture(DaysBars chart) implements Picture {
    private static final double TOP = 70;
    private static final double PITCH = 40;
    private static final double THICK = 20;
    private static final double ARROW = 22;

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        return (int) (TOP + PITCH * chart.bars().size() + 56);
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, chart.title(), chart.subtitle());
        List<DaysBars.Bar> bars = chart.bars();
        double left = 16
                + pen.roomFor(
                        bars.stream().map(DaysBars.Bar::label).toList(),
                        pen.style().heading(),
                        60,
                        320)
                + 12;
        double right = ARROW
                + pen.roomFor(
                        bars.stream().map(DaysBars.Bar::words).toList(),
                        pen.style().label(),
                        60,
                        320)
                + 28;
        Rectangle2D area = new Rectangle2D.Double(left, TOP, width() - left - right, PITCH * bars.size());
        Axes axes = new Axes(pen.style());
        Panel panel = new Panel(area, axes.numbers(0, chart.days(), 7, false), axes.numbers(0, bars.size(), 1, false))
                .uprightGrid();
        panel.draw(pen.graphics());
        pen.write(chart.xLabel(), left, area.getMaxY() + 40, pen.style().label(), Style.WORDS);
        for (int i = 0; i < bars.size(); i++) {
            bar(pen, panel, i);
        }
        pen.line(left, TOP, left, area.getMaxY(), Style.ZERO, Style.thin());
    }

    private void bar(Pen pen, Panel panel, int index) {
        DaysBars.Bar bar = chart.bars().get(index);
        double middle = TOP + PITCH * (index + 0.5);
        double left = panel.area().getMinX();
        double end = panel.x(bar.days());
        String name = pen.fit(bar.label(), pen.style().heading(), left - 26);
        pen.write(name, 16, middle + 4.5, pen.style().heading(), Style.INK);

        Graphics2D g = pen.graphics();
        g.setColor(Style.line(index));
        double tip = switch (bar.end()) {
            case EMPTY -> {
                g.fill(new Rectangle2D.Double(left, middle - THICK / 2, end - left, THICK));
                yield end;
            }
            case HOLDS -> {
                g.fill(arrow(left, end, middle));
                yield end + ARROW;
            }
            case NOT_EMPTY -> {
                g.fill(breakingUp(left, end, middle));
                yield end;
            }
        };
        double wide = pen.room(bar.words(), pen.style().label());
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(tip + 6, middle - 9, wide + 6, 18));
        pen.write(bar.words(), tip + 10, middle + 4.5, pen.style().label(), Style.INK);
    }

    /** Runs over the end of the trip: nobody saw its end. */
    private static Path2D arrow(double left, double end, double middle) {
        Path2D arrow = new Path2D.Double();
        arrow.moveTo(left, middle - THICK / 2);
        arrow.lineTo(end, middle - THICK / 2);
        arrow.lineTo(end, middle - THICK / 2 - 6);
        arrow.lineTo(end + ARROW, middle);
        arrow.lineTo(end, middle + THICK / 2 + 6);
        arrow.lineTo(end, middle + THICK / 2);
        arrow.lineTo(left, middle + THICK / 2);
        arrow.closePath();
        return arrow;
    }

    /** Solid at first, then slices that get thinner: not empty yet, but it will be. */
    private static Path2D breakingUp(double left, double end, double middle) {
        Path2D pieces = new Path2D.Double();
        double slices = Math.min(70, (end - left) / 2);
        pieces.append(new Rectangle2D.Double(left, middle - THICK / 2, end - left - slices, THICK), false);
        int count = 7;
        double pitch = slices / count;
        for (int i = 0; i < count; i++) {
            double thick = pitch * (0.8 - 0.1 * i);
            pieces.append(
                    new Rectangle2D.Double(end - slices + (i + 1) * pitch - thick, middle - THICK / 2, thick, THICK),
                    false);
        }
        return pieces;
    }
}
