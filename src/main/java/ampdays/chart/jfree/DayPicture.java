package ampdays.chart.jfree;

import ampdays.chart.DayChart;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Draws a {@link DayChart}: per day a column with state of charge, power and temperature above each other. */
record DayPicture(DayChart chart) implements Picture {
    private static final double LEFT = 56;
    private static final double GAP = 66;
    private static final double BETWEEN = 32;
    private static final double BOTTOM = 36;
    private static final Color ASLEEP = new Color(0xE9EDF3);

    /** Looks of the lines of state of charge, outside air and cabin air. */
    private static final int SOC_LOOK = 0;

    static final int OUTSIDE_LOOK = 4;
    static final int CABIN_LOOK = 1;

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        return (int) (warmTop() + warmHeight() + BOTTOM);
    }

    /** Below the title, where there is one. */
    private double socTop() {
        return chart.low() ? 56 : 110;
    }

    private double socHeight() {
        return chart.low() ? 60 : 110;
    }

    private double powerTop() {
        return socTop() + socHeight() + BETWEEN;
    }

    private double powerHeight() {
        return chart.low() ? 160 : 250;
    }

    private double warmTop() {
        return powerTop() + powerHeight() + BETWEEN;
    }

    private double warmHeight() {
        return chart.low() ? 60 : 90;
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, chart.low() ? "" : chart.title(), chart.low() ? "" : chart.subtitle());
        double key = keyRoom(pen);
        int columns = chart.days().size();
        double wide = (width() - LEFT - key - GAP * (columns - 1)) / columns;
        for (int i = 0; i < columns; i++) {
            column(pen, chart.days().get(i), LEFT + i * (wide + GAP), wide);
        }
        pen.write(chart.socLabel(), 16, socTop() - 11, pen.style().label(), Style.WORDS);
        pen.write(chart.powerLabel(), 16, powerTop() - 11, pen.style().label(), Style.WORDS);
        pen.write(chart.temperatureLabel(), 16, warmTop() - 11, pen.style().label(), Style.WORDS);
        key(pen, width() - key, key);
    }

    private void column(Pen pen, DayChart.Day day, double left, double wide) {
        Axes axes = new Axes(pen.style());
        pen.write(
                pen.fit(day.heading(), pen.style().heading(), wide + 20),
                left,
                socTop() - 32,
                pen.style().heading(),
                Style.INK);

        Panel soc =
                new Panel(strip(left, socTop(), wide, socHeight()), axes.hours(), axes.percent()).withoutWordsBelow();
        shadeSleep(pen, soc, day);
        soc.line(places(day.socPercent().size(), true), day.socPercent(), SOC_LOOK);
        soc.draw(pen.graphics());
        double reserve = soc.y(chart.reservePercent());
        pen.line(left, reserve, left + wide, reserve, Style.INK, Style.thinDashed());

        Panel power = new Panel(strip(left, powerTop(), wide, powerHeight()), axes.hours(), powerAxis(axes))
                .withoutWordsBelow();
        shadeSleep(pen, power, day);
        power.draw(pen.graphics());
        List<Stacks.Place> hours = IntStream.range(0, 24)
                .mapToObj(hour -> new Stacks.Place(hour, hour + 1))
                .toList();
        Stacks.draw(pen, power, hours, day.sourceW(), chart.sources(), 1);
        Stacks.draw(pen, power, hours, day.useW(), chart.uses(), -1);
        pen.line(left, power.y(0), left + wide, power.y(0), Style.INK, Style.thin());

        Panel warmth = new Panel(
                strip(left, warmTop(), wide, warmHeight()),
                axes.hours(),
                axes.degrees(chart.coolestC(), chart.warmestC(), 3, chart.bothDegrees()));
        shadeSleep(pen, warmth, day);
        warmth.line(places(day.outsideC().size(), false), day.outsideC(), OUTSIDE_LOOK);
        warmth.line(places(day.cabinC().size(), false), day.cabinC(), CABIN_LOOK);
        warmth.draw(pen.graphics());
    }

    private static Rectangle2D strip(double left, double top, double wide, double high) {
        return new Rectangle2D.Double(left, top, wide, high);
    }

    private MarkedAxis powerAxis(Axes axes) {
        return axes.upAndDown(chart.highestUseW(), chart.highestSourceW());
    }

    /** Whole stretches at once; an hour slept in part is slept at its end in the evening, at its start after it. */
    private static void shadeSleep(Pen pen, Panel panel, DayChart.Day day) {
        double from = 0;
        double to = 0;
        for (int hour = 0; hour < day.asleep().size(); hour++) {
            double share = day.asleep().get(hour);
            double start = hour < 12 ? hour : hour + 1 - share;
            if (share > 0 && start > to) {
                panel.shade(pen.graphics(), from, to, ASLEEP);
                from = start;
            }
            to = share > 0 ? start + share : to;
        }
        panel.shade(pen.graphics(), from, to, ASLEEP);
    }

    /** Clock times of equal parts of the day, at their ends or in their middle. */
    private static List<Double> places(int parts, boolean atEnd) {
        return IntStream.range(0, parts)
                .mapToObj(i -> 24.0 * (i + (atEnd ? 1 : 0.5)) / parts)
                .toList();
    }

    private double keyRoom(Pen pen) {
        List<String> names = new ArrayList<>(chart.sources());
        names.addAll(chart.uses());
        names.add(reserveWords());
        return Key.room(pen, names);
    }

    private String reserveWords() {
        return "reserve " + Math.round(chart.reservePercent()) + " %";
    }

    /** What the surfaces and lines stand for, in the order in which they stand. */
    private void key(Pen pen, double right, double room) {
        Key key = new Key(pen, right, room);
        key.thinLine(reserveWords(), socTop() + socHeight() * (1 - chart.reservePercent() / 103));
        key.surface("asleep", socTop() + 8, new Style.Fill(ASLEEP, Style.Hatch.NONE));
        MarkedAxis axis = powerAxis(new Axes(pen.style()));
        double zero = powerTop()
                + powerHeight() * axis.getUpperBound() / axis.getRange().getLength();
        key.stacks(strip(0, powerTop(), 0, powerHeight()), zero, chart.sources(), chart.uses());
        key.line("outside", warmTop() + 30, OUTSIDE_LOOK);
        key.line("cabin", warmTop() + 50, CABIN_LOOK);
    }
}
