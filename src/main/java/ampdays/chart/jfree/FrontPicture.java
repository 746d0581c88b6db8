package ampdays.chart.jfree;

import ampdays.chart.FrontChart;
import ampdays.chart.FrontChart.Measured;
import ampdays.chart.FrontChart.Point;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Draws a {@link FrontChart}: each measure over price, one below the other; a numbered dot for each design of the front. */
record FrontPicture(FrontChart chart) implements Picture {
    private static final double LEFT = 64;
    private static final double RIGHT = 40;
    private static final double TOP = 124;
    private static final double TALL = 230;
    private static final double GAP = 56;
    private static final double BIG = 8.5;
    private static final double SMALL = 2.5;
    private static final double CAP = 4;

    /** A dot that is this close to a later one has its number hidden, and goes without. */
    private static final double COVERED = 14;

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        return (int) (top(chart.measures().size() - 1) + TALL + 54);
    }

    private static double top(int measure) {
        return TOP + measure * (TALL + GAP);
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, chart.title(), chart.subtitle());
        key(pen);
        for (int measure = 0; measure < chart.measures().size(); measure++) {
            pen.write(
                    chart.measures().get(measure),
                    16,
                    top(measure) - 14,
                    pen.style().label(),
                    Style.WORDS);
            Panel panel = panel(pen, measure);
            panel.draw(pen.graphics());
            dots(pen, panel, measure);
        }
        pen.write(
                "price of the parts, " + chart.currency(),
                LEFT,
                height() - 14,
                pen.style().label(),
                Style.WORDS);
    }

    private Panel panel(Pen pen, int measure) {
        Axes axes = new Axes(pen.style());
        double[] prices = all().mapToDouble(Point::price).sorted().toArray();
        double[] values = all().map(point -> point.measured().get(measure))
                .flatMapToDouble(value -> DoubleStream.of(value.low(), value.high()))
                .sorted()
                .toArray();
        return new Panel(
                new Rectangle2D.Double(LEFT, top(measure), width() - LEFT - RIGHT, TALL),
                axes.numbers(prices[0], prices[prices.length - 1], 8, true),
                axes.numbers(Math.min(0, values[0]), values[values.length - 1], 5, true));
    }

    private Stream<Point> all() {
        return Stream.concat(chart.others().stream(), chart.front().stream());
    }

    private void dots(Pen pen, Panel panel, int measure) {
        for (Point point : chart.others()) {
            double y = panel.y(point.measured().get(measure).value());
            dot(pen, panel.x(point.price()), y, SMALL, Style.GREY, Style.GREY);
        }
        chart.front()
                .forEach(
                        point -> bar(pen, panel, point.price(), point.measured().get(measure)));
        List<Point2D> centres = chart.front().stream()
                .<Point2D>map(point -> new Point2D.Double(
                        panel.x(point.price()),
                        panel.y(point.measured().get(measure).value())))
                .toList();
        for (int i = 0; i < centres.size(); i++) {
            boolean holds = chart.front().get(i).holds();
            Point2D at = centres.get(i);
            dot(pen, at.getX(), at.getY(), BIG, fill(holds), Style.INK);
            if (centres.stream().skip(i + 1L).noneMatch(later -> later.distance(at) < COVERED)) {
                number(pen, at, i + 1, holds ? Color.WHITE : Style.INK);
            }
        }
    }

    private static void number(Pen pen, Point2D at, int number, Color color) {
        Font font = pen.style().label();
        String digits = Integer.toString(number);
        double wide = font.getStringBounds(digits, pen.graphics().getFontRenderContext())
                .getWidth();
        pen.write(digits, at.getX() - wide / 2, at.getY() + 4.2, font, color);
    }

    /** Between its bounds lies what is estimated. */
    private static void bar(Pen pen, Panel panel, double price, Measured value) {
        if (value.high() > value.low()) {
            double x = panel.x(price);
            for (double end : new double[] {value.low(), value.high()}) {
                pen.line(x - CAP, panel.y(end), x + CAP, panel.y(end), Style.WORDS, Style.thin());
            }
            pen.line(x, panel.y(value.low()), x, panel.y(value.high()), Style.WORDS, Style.thin());
        }
    }

    private static Color fill(boolean holds) {
        return holds ? Style.BLUE : Color.WHITE;
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
        double y = 72;
        double x = LEFT;
        dot(pen, x, y, BIG, fill(true), Style.INK);
        x = word(pen, "holds on the scenario's own trip", x, y);
        dot(pen, x, y, BIG, fill(false), Style.INK);
        x = word(pen, "does not", x, y);
        dot(pen, x, y, SMALL, Style.GREY, Style.GREY);
        word(pen, "beaten by another", x, y);
    }

    private static double word(Pen pen, String words, double x, double y) {
        Font font = pen.style().label();
        pen.write(words, x + 14, y + 4.5, font, Style.WORDS);
        return x + 40 + pen.room(words, font);
    }
}
