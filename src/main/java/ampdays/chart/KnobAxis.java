package ampdays.chart;

import ampdays.chart.LinesChart.Marks;
import ampdays.chart.LinesChart.Place;
import ampdays.chart.LinesChart.XAxis;
import ampdays.results.SweepTable.Column;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Where the values of a knob lie along a chart: numbers and dates by what they are, words side by side in their own order.
 *
 * @param at by place in the list of values
 */
record KnobAxis(XAxis axis, List<Double> at) {
    /** Of dates without a year; it has no 29 February, as in scenarios. */
    private static final int YEAR_UNSAID = 2025;

    /** Room beside the outer dates, whose marks are drawn in full. */
    private static final double RIM = 0.02;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_OF_YEAR = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    static KnobAxis of(Column knob) {
        if (knob.isNumeric()) {
            List<Double> at = IntStream.range(0, knob.values().size())
                    .mapToObj(knob::number)
                    .toList();
            return new KnobAxis(axis(knob, Marks.NUMBERS, at, List.of(), 0), at);
        }
        return isDates(knob) ? dates(knob) : words(knob);
    }

    private static KnobAxis words(Column knob) {
        List<Double> at = new ArrayList<>();
        List<Place> named = new ArrayList<>();
        for (String word : knob.values()) {
            at.add((double) named.size());
            named.add(new Place(named.size(), word));
        }
        return new KnobAxis(new XAxis(KnobTitle.axis(knob), Marks.WORDS, -0.5, named.size() - 0.5, named), at);
    }

    private static KnobAxis dates(Column knob) {
        List<Double> at = new ArrayList<>();
        List<Place> named = new ArrayList<>();
        for (String text : knob.values()) {
            LocalDate date = date(text);
            at.add((double) date.toEpochDay());
            named.add(new Place(date.toEpochDay(), (isDay(text) ? DAY : DAY_OF_YEAR).format(date)));
        }
        return new KnobAxis(axis(knob, Marks.DATES, at, named, RIM), at);
    }

    private static XAxis axis(Column knob, Marks marks, List<Double> at, List<Place> named, double rim) {
        double from = at.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double to = at.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double beyond = rim * (to - from);
        return new XAxis(KnobTitle.axis(knob), marks, from - beyond, to + beyond, named);
    }

    /** Whether every value is a date, all with a year or all without. */
    private static boolean isDates(Column knob) {
        try {
            knob.values().forEach(KnobAxis::date);
        } catch (DateTimeException noDate) {
            return false;
        }
        return knob.values().stream().map(KnobAxis::isDay).distinct().count() == 1;
    }

    private static boolean isDay(String text) {
        return text.matches("\\d{2}-\\d{2}");
    }

    private static LocalDate date(String text) {
        return isDay(text) ? MonthDay.parse("--" + text).atYear(YEAR_UNSAID) : LocalDate.parse(text);
    }
}
