package ampdays.chart.jfree;

import ampdays.chart.CabinChart;
import ampdays.chart.CabinChart.Sleep;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;

/** Draws a {@link CabinChart}: temperatures above, hours out of the band below. */
record CabinPicture(CabinChart chart) implements Picture {
    private static final double LEFT = 56;
    private static final double TOP = 92;
    private static final double HIGH = 270;
    private static final double BARS_TOP = 404;
    private static final double BARS_HIGH = 70;
    private static final double LEAST_NUMBERED_H = 0.05;
    private static final int MOST_NUMBERED = 16;

    private static final Color BAND = new Color(0xD5EDE3);
    private static final Style.Fill WARM = new Style.Fill(Style.VERMILION, Style.Hatch.NONE);
    private static final Style.Fill COLD = new Style.Fill(Style.BLUE, Style.Hatch.RISING);

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        return 510;
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, chart.title(), chart.subtitle());
        double room = EndOfLine.room(pen, List.of(CabinChart.OUTSIDE, CabinChart.CABIN), List.of());
        double wide = width() - LEFT - room;
        temperatures(pen, new Rectangle2D.Double(LEFT, TOP, wide, HIGH), room);
        outOfBand(pen, new Rectangle2D.Double(LEFT, BARS_TOP, wide, BARS_HIGH), room);
    }

    private void temperatures(Pen pen, Rectangle2D area, double room) {
        Axes axes = new Axes(pen.style());
        Panel panel = new Panel(
                        area,
                        axes.tripDays(chart.days()),
                        axes.degrees(chart.coolestC(), chart.warmestC(), 6, chart.bothDegrees()))
                .withoutWordsBelow();
        chart.nights().forEach(night -> panel.shade(pen.graphics(), night.fromDay(), night.toDay(), Style.NIGHT));
        for (Sleep sleep : chart.sleeps()) {
            band(pen, panel, sleep);
        }
        panel.line(chart.day(), chart.outsideC(), DayPicture.OUTSIDE_LOOK);
        panel.line(chart.day(), chart.cabinC(), DayPicture.CABIN_LOOK);
        panel.draw(pen.graphics());
        pen.write(chart.temperatureLabel(), 16, TOP - 14, pen.style().label(), Style.WORDS);
        legend(pen, area.getMaxX());
        EndOfLine.draw(
                pen,
                area,
                room,
                List.of(
                        end(panel, CabinChart.OUTSIDE, DayPicture.OUTSIDE_LOOK, chart.outsideC()),
                        end(panel, CabinChart.CABIN, DayPicture.CABIN_LOOK, chart.cabinC())));
    }

    private void band(Pen pen, Panel panel, Sleep sleep) {
        double left = panel.x(sleep.fromDay());
        double right = panel.x(sleep.toDay());
        double top = panel.y(chart.comfortHighC());
        double bottom = panel.y(chart.comfortLowC());
        pen.graphics().setColor(BAND);
        pen.graphics().fill(new Rectangle2D.Double(left, top, right - left, bottom - top));
        pen.line(left, top, right, top, Style.GREEN, Style.thin());
        pen.line(left, bottom, right, bottom, Style.GREEN, Style.thin());
    }

    /** What the shades are, right-aligned above the panel. */
    private void legend(Pen pen, double right) {
        double x = right;
        for (String words : List.of("no sun", chart.comfortLabel())) {
            x -= pen.room(words, pen.style().small());
            pen.write(words, x, TOP - 14, pen.style().small(), Style.WORDS);
            x -= 20;
            Rectangle2D sample = new Rectangle2D.Double(x, TOP - 24, 15, 12);
            pen.graphics().setColor(words.equals(chart.comfortLabel()) ? BAND : Style.NIGHT);
            pen.graphics().fill(sample);
            pen.graphics().setColor(words.equals(chart.comfortLabel()) ? Style.GREEN : Style.GREY);
            pen.graphics().setStroke(Style.thin());
            pen.graphics().draw(sample);
            x -= 16;
        }
    }

    private EndOfLine end(Panel panel, String name, int look, List<Double> values) {
        return new EndOfLine(name, "", look, panel.area().getMaxX(), panel.y(values.get(values.size() - 1)));
    }

    private void outOfBand(Pen pen, Rectangle2D area, double room) {
        Axes axes = new Axes(pen.style());
        double longestH =
                chart.sleeps().stream().mapToDouble(Sleep::hours).max().orElse(1);
        Panel panel = new Panel(area, axes.tripDays(chart.days()), axes.numbers(0, longestH, 3, true));
        panel.draw(pen.graphics());
        for (Sleep sleep : chart.sleeps()) {
            bars(pen, panel, sleep);
        }
        pen.line(area.getMinX(), panel.y(0), area.getMaxX(), panel.y(0), Style.ZERO, Style.thin());
        pen.write(
                chart.outOfBandLabel() + ": " + chart.outOfBandTotal(),
                16,
                BARS_TOP - 16,
                pen.style().label(),
                Style.WORDS);
        Key key = new Key(pen, area.getMaxX(), room);
        key.surface(CabinChart.TOO_WARM, BARS_TOP + 20, WARM);
        key.surface(CabinChart.TOO_COLD, BARS_TOP + 42, COLD);
    }

    private void bars(Pen pen, Panel panel, Sleep sleep) {
        Stacks.Place place = new Stacks.Place(sleep.fromDay(), sleep.toDay());
        double sumH = sleep.tooWarmHours() + sleep.tooColdHours();
        if (sleep.tooWarmHours() > 0) {
            pen.fill(List.of(Stacks.bar(panel, place, 0, sleep.tooWarmHours())), WARM);
        }
        if (sleep.tooColdHours() > 0) {
            pen.fill(List.of(Stacks.bar(panel, place, sleep.tooWarmHours(), sumH)), COLD);
        }
        if (sumH >= LEAST_NUMBERED_H && chart.sleeps().size() <= MOST_NUMBERED) {
            String words = String.format(Locale.ROOT, "%.1f", sumH);
            double x = (panel.x(sleep.fromDay()) + panel.x(sleep.toDay())) / 2;
            double half = pen.room(words, pen.style().small()) / 2;
            pen.write(words, x - half, panel.y(sumH) - 3, pen.style().small(), Style.INK);
        }
    }
}
