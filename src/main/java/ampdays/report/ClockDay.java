package ampdays.report;

import ampdays.trip.DayKind;
import ampdays.trip.Stretch;
import ampdays.trip.Trip;
import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * A kind of day from midnight to midnight, as it occurs in a trip.
 *
 * @param before for each day of this kind, the line of the day before that holds until the first line of this one
 */
record ClockDay(DayKind kind, List<Stretch> before) {
    private static final int MINUTES = 1440;

    /** Part of the day in which one line holds. */
    record Span(int from, int to, Stretch line) {}

    /** The kinds of day that occur. */
    static List<ClockDay> of(Trip trip) {
        return IntStream.range(0, trip.kinds().size())
                .filter(trip.kindOfDay()::contains)
                .mapToObj(kind -> new ClockDay(trip.kinds().get(kind), before(trip, kind)))
                .toList();
    }

    /** Before the trip the last line of the first day's own kind holds. */
    private static List<Stretch> before(Trip trip, int kind) {
        return IntStream.range(0, trip.days())
                .filter(day -> trip.kindOfDay().get(day) == kind)
                .mapToObj(day -> trip.kinds().get(trip.kindOfDay().get(Math.max(0, day - 1))))
                .map(DayKind::stretches)
                .map(lines -> lines.get(lines.size() - 1))
                .toList();
    }

    String name() {
        return kind.name();
    }

    /** How many there are in the trip. */
    int count() {
        return before.size();
    }

    /** The minute at which its first line begins. */
    int first() {
        return kind.stretches().get(0).fromMinuteOfDay();
    }

    boolean hasHookUp() {
        return kind.stretches().stream().anyMatch(Stretch::hookUp);
    }

    /** Its own lines. */
    List<Span> spans() {
        List<Stretch> lines = kind.stretches();
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            int to = i + 1 < lines.size() ? lines.get(i + 1).fromMinuteOfDay() : MINUTES;
            spans.add(new Span(lines.get(i).fromMinuteOfDay(), to, lines.get(i)));
        }
        return spans;
    }

    /** For how many minutes a line holds that is so, on each day of this kind. */
    IntSummaryStatistics minutes(Predicate<Stretch> wanted) {
        int own = spans().stream()
                .filter(span -> wanted.test(span.line()))
                .mapToInt(span -> span.to() - span.from())
                .sum();
        return before.stream()
                .mapToInt(line -> own + (wanted.test(line) ? first() : 0))
                .summaryStatistics();
    }
}
