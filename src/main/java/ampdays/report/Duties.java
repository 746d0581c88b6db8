package ampdays.report;

import ampdays.report.Block.Point;
import ampdays.results.Account;
import ampdays.results.RunResult;
import ampdays.scenario.Values;
import ampdays.study.Comparison.Option;
import ampdays.trip.DayKind;
import ampdays.trip.Stretch;
import ampdays.trip.Trip;
import ampdays.units.Dimension;
import ampdays.units.Wording;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** What the client must do for the recommended option to come out so: the timetable in words. */
final class Duties {
    private static final int MINUTES = 1440;
    private static final double LEAST_WORTH_WH = 50;
    private static final int MORNING = 5 * 60;
    private static final int EVENING = 19 * 60;
    private static final double MOST_PART_SHADE = 0.9;
    private static final double MOST_SHADE = 0.3;

    private final Material material;
    private final Option option;
    private final Values values;
    private final Trip trip;
    private final Say say;

    private Duties(Material material, Say say) {
        this.material = material;
        this.option = material.best();
        this.values = material.values(option);
        this.trip = material.variant(option).trip();
        this.say = say;
    }

    static List<Point> of(Material material, Say say) {
        return new Duties(material, say).points();
    }

    private List<Point> points() {
        List<Point> points = new ArrayList<>();
        drive(points);
        park(points);
        cool(points);
        hookUp(points);
        points.add(new Point("Never idle asleep.", "The engine stays off while anybody sleeps in or beside the van."));
        points.add(new Point(
                "Watch one number.",
                "At " + Say.percent(material.comparison().reserveShare()) + " charge "
                        + (values.has("cooling")
                                ? "switch the cooling off first; fan, refrigerator and alarms then last longest."
                                : "switch off what can wait; refrigerator and alarms then last longest.")));
        return points;
    }

    private void drive(List<Point> points) {
        double hours = trip.kindOfDay().stream()
                .mapToDouble(
                        kind -> minutes(trip.kinds().get(kind), s -> s.vehicle().moves()) / 60.0)
                .sum();
        if (hours == 0) {
            return;
        }
        RunResult run = option.result();
        double wh = run.energy().wh(Account.FACTORY_ALTERNATOR) + run.energy().wh(Account.SECOND_ALTERNATOR);
        String worth = wh / hours > LEAST_WORTH_WH && run.engineChargingHours() == 0
                ? Say.number(" Each hour brings about %.1f kWh.", wh / hours / 1000)
                : "";
        points.add(new Point(
                "Drive as planned.",
                Wording.capital(byKind(kind -> minutes(kind, s -> s.vehicle().moves()))) + "." + worth));
    }

    private void park(List<Point> points) {
        boolean sunCounts = values.has("solar");
        Set<String> places = new LinkedHashSet<>();
        for (DayKind kind : trip.kinds()) {
            List<String> where = new ArrayList<>();
            stretches(kind, s -> isDay(s) && light(s) > MOST_PART_SHADE, "in full sun", where);
            stretches(
                    kind,
                    s -> isDay(s) && light(s) > MOST_SHADE && light(s) <= MOST_PART_SHADE,
                    "in part shade",
                    where);
            stretches(kind, s -> isDay(s) && light(s) <= MOST_SHADE, "in shade", where);
            if (!where.isEmpty()) {
                places.add(String.join(", ", where) + (trip.kinds().size() > 1 ? " (" + kind.name() + ")" : ""));
            }
        }
        if (sunCounts && !places.isEmpty()) {
            points.add(new Point("Park like this.", Wording.capital(String.join("; ", places)) + "."));
        }
    }

    private void cool(List<Point> points) {
        if (!values.has("cooling")) {
            return;
        }
        List<String> set = new ArrayList<>();
        for (String who : List.of("asleep", "awake")) {
            double celsius = values.number("cabin.set." + who);
            if (!Double.isNaN(celsius)) {
                set.add(say.units().written(values.word("cabin.set." + who), Dimension.TEMPERATURE, celsius) + " "
                        + who);
            }
        }
        if (!set.isEmpty()) {
            points.add(new Point("Keep the thermostat.", Wording.listed(set) + "; colder empties the bank sooner."));
        }
        String to = values.word("cooling.pre-cool.to");
        if (!to.isEmpty() && !to.equals("off")) {
            points.add(new Point(
                    "Pre-cool.",
                    "Let the cabin cool down to "
                            + say.units().written(to, Dimension.TEMPERATURE, values.number("cooling.pre-cool.to"))
                            + " with "
                            + values.word("cooling.pre-cool.when") + "."));
        }
        if (!values.word("cabin.covers").equals("none")) {
            points.add(new Point(
                    "Cover the windows.",
                    "Put the " + values.word("cabin.covers") + " covers on "
                            + (values.word("cabin.covers-used").equals("always") ? "always" : "whenever the van stands")
                            + "."));
        }
    }

    private void hookUp(List<Point> points) {
        long nights = trip.kindOfDay().stream()
                .filter(kind -> hasHookUp(trip.kinds().get(kind)))
                .count();
        if (nights == 0) {
            return;
        }
        List<String> kinds = IntStream.range(0, trip.kinds().size())
                .filter(trip.kindOfDay()::contains)
                .mapToObj(trip.kinds()::get)
                .filter(Duties::hasHookUp)
                .map(DayKind::name)
                .toList();
        points.add(new Point(
                "Hook up.",
                "The plan counts on a hook-up in " + nights + " of " + trip.days() + " nights"
                        + (trip.kinds().size() > 1 ? ": on " + Wording.listed(kinds) : "") + "."));
    }

    /** Whether it ends with a hook-up: its last line holds through the night. */
    private static boolean hasHookUp(DayKind kind) {
        return kind.stretches().get(kind.stretches().size() - 1).hookUp();
    }

    private interface MinutesOf {
        int of(DayKind kind);
    }

    /** Such as "1 h 30 min on field days, 1 h 30 min on rest days". */
    private String byKind(MinutesOf minutes) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < trip.kinds().size(); i++) {
            DayKind kind = trip.kinds().get(i);
            if (trip.kindOfDay().contains(i) && minutes.of(kind) > 0) {
                texts.add(length(minutes.of(kind)) + (trip.kinds().size() > 1 ? " on " + kind.name() : " a day"));
            }
        }
        return Wording.listed(texts);
    }

    private static String length(int minutes) {
        int hours = minutes / 60;
        int rest = minutes % 60;
        return hours == 0 ? rest + " min" : hours + " h" + (rest == 0 ? "" : " " + rest + " min");
    }

    private static double light(Stretch s) {
        return s.shade().beamShare();
    }

    /** Whether the van stands, and from a time with sun on. */
    private static boolean isDay(Stretch s) {
        return !s.vehicle().moves() && s.fromMinuteOfDay() >= MORNING && s.fromMinuteOfDay() < EVENING;
    }

    /** Clock stretches of a kind of day that are so. */
    private static void stretches(DayKind kind, Predicate<Stretch> wanted, String where, List<String> found) {
        List<String> times = new ArrayList<>();
        int from = -1;
        for (int i = 0; i < kind.stretches().size(); i++) {
            boolean here = wanted.test(kind.stretches().get(i));
            boolean goesOn = i + 1 < kind.stretches().size()
                    && wanted.test(kind.stretches().get(i + 1));
            if (here && from < 0) {
                from = kind.stretches().get(i).fromMinuteOfDay();
            }
            if (here && !goesOn) {
                times.add(clock(from) + " to " + clock(end(kind, i)));
                from = -1;
            }
        }
        if (!times.isEmpty()) {
            found.add(where + " " + Wording.listed(times));
        }
    }

    private static int minutes(DayKind kind, Predicate<Stretch> wanted) {
        int sum = 0;
        for (int i = 0; i < kind.stretches().size(); i++) {
            Stretch stretch = kind.stretches().get(i);
            if (wanted.test(stretch)) {
                int to = end(kind, i);
                sum += to - stretch.fromMinuteOfDay() + (to <= stretch.fromMinuteOfDay() ? MINUTES : 0);
            }
        }
        return sum;
    }

    /** The last line of a day holds until the first. */
    private static int end(DayKind kind, int i) {
        List<Stretch> stretches = kind.stretches();
        return stretches.get((i + 1) % stretches.size()).fromMinuteOfDay();
    }

    private static String clock(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
    }
}
