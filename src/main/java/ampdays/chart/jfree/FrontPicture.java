package ampdays.chart.jfree;

import ampdays.chart.FrontChart;
import ampdays.chart.FrontChart.Point;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Draws a {@link FrontChart}: nights over price, and below it mass over price; a dot for each design. */
record FrontPicture(FrontChart chart) implements Picture {
    private static final double LEFT = 64;
    private static final double RIGHT = 40;
    private static final double TOP = 124;
    private static final double TALL = 230;
    private static final double GAP = 56;
    private static final double BIG = 6;
    private static final double SMALL = 2.5;

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        return (int) (TOP + 2 * TALL + GAP + 54);
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, chart.title(), chart.subtitle());
        key(pen);
        panel(pen, TOP, "comfortable nights", Point::nights).draw(pen.graphics());
        dots(pen, TOP, Point::nights);
        panel(pen, TOP + TALL + GAP, "mass of the parts, kg", Point::massKg).draw(pen.graphics());
        dots(pen, TOP + TALL + GAP, Point::massKg);
        pen.write(
                "price of the parts, " + chart.currency(),
                LEFT,
                height() - 14,
                pen.style().label(),
                Style.WORDS);
    }

    private Panel panel(Pen pen, double top, String label, ToDoubleFunction<Point> metric) {
        pen.write(label, 16, top - 14, pen.style().label(), Style.WORDS);
        Axes axes = new Axes(pen.style());
        double[] prices = all().mapToDouble(Point::price).sorted().toArray();
        double[] values = all().mapToDouble(metric).sorted().toArray();
        return new Panel(
                new Rectangle2D.Double(LEFT, top, width() - LEFT - RIGHT, TALL),
                axes.numbers(prices[0], prices[prices.length - 1], 8, true),
                axes.numbers(Math.min(0, values[0]), values[values.length - 1], 5, true));
    }

    private Stream<Point> all() {
        return Stream.concat(chart.others().stream(), chart.front().stream());
    }

    /** What holds comes last, so that nothing lies over it. */
    private void dots(Pen pen, double top, ToDoubleFunction<Point> metric) {
        Panel panel = panel(pen, top, "", metric);
        for (Point point : chart.others()) {
            dot(pen, panel.x(point.price()), panel.y(metric.applyAsDouble(point)), SMALL, Style.GREY, Style.GREY);
        }
        for (Point point : chart.front().stream()
                .sorted(Comparator.comparing(Point::holds))
                .toList()) {
            dot(
                    pen,
                    panel.x(point.price()),
                    panel.y(metric.applyAsDouble(point)),
                    BIG,
                    point.holds() ? Style.BLUE : Color.WHITE,
                    Style.INK);
        }
    }

    private static void dot(Pen pen, double x, double y, double radius, Color fill, Color rim) {
        Graphics2D g = pen.graphics();
        Ellipse2D circle = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
        g.setColor(fill);
        g.fill(circle);
        g.setColor(rim);
        g.setStroke(Style.thin());
        g.draw(circle);
    }

    private void key(Pen pen) {
        Font font = pen.style().label();
        double y = 72;
        double x = LEFT;
        for (String words : List.of("holds", "does not hold", "beaten by another in price, mass, nights and days")) {
            boolean small = words.startsWith("beaten");
            dot(
                    pen,
                    x,
                    y,
                    small ? SMALL : BIG,
                    small ? Style.GREY : words.equals("holds") ? Style.BLUE : Color.WHITE,
                    small ? Style.GREY : Style.INK);
            pen.write(words, x + 14, y + 4.5, font, Style.WORDS);
            x += 40 + pen.room(words, font);
        }
    }
}
