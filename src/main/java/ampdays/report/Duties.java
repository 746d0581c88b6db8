package ampdays.report;

import ampdays.report.Block.Point;
import ampdays.results.Account;
import ampdays.results.RunResult;
import ampdays.scenario.Values;
import ampdays.study.Comparison.Option;
import ampdays.trip.Trip;
import ampdays.units.Dimension;
import ampdays.units.Wording;
import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;

/** What the client must do for the recommended option to come out so: the timetable in words. */
final class Duties {
    private static final double LEAST_WORTH_WH = 50;

    private final Material material;
    private final Option option;
    private final Values values;
    private final Trip trip;
    private final List<ClockDay> days;
    private final Say say;

    private Duties(Material material, Say say) {
        this.material = material;
        this.option = material.best();
        this.values = material.values(option);
        this.trip = material.variant(option).trip();
        this.days = ClockDay.of(trip);
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
        cover(points);
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
        double hours = days.stream().mapToLong(day -> driven(day).getSum()).sum() / 60.0;
        if (hours == 0) {
            return;
        }
        RunResult run = option.result();
        double wh = run.energy().wh(Account.FACTORY_ALTERNATOR) + run.energy().wh(Account.SECOND_ALTERNATOR);
        String worth = wh / hours > LEAST_WORTH_WH && run.engineChargingHours() == 0
                ? Say.number(" Each hour brings about %.1f kWh.", wh / hours / 1000)
                : "";
        points.add(new Point("Drive as planned.", Wording.capital(driven()) + "." + worth));
    }

    private void park(List<Point> points) {
        if (!values.has("solar")) {
            return;
        }
        List<String> places = new ArrayList<>();
        for (ClockDay day : days) {
            String where = Parking.of(day);
            if (!where.isEmpty()) {
                places.add(where + (days.size() > 1 ? " (" + day.name() + ")" : ""));
            }
        }
        if (!places.isEmpty()) {
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
    }

    private void cover(List<Point> points) {
        if (!values.word("cabin.covers").equals("none")) {
            points.add(new Point(
                    "Cover the windows.",
                    "Put the " + values.word("cabin.covers") + " covers on " + covered(values.word("cabin.covers-used"))
                            + "."));
        }
    }

    private static String covered(String used) {
        return switch (used) {
            case "always" -> "always";
            case "asleep and away" -> "whenever the van stands and nobody in it is awake";
            default -> "whenever the van stands";
        };
    }

    private void hookUp(List<Point> points) {
        List<ClockDay> hooked = days.stream().filter(ClockDay::hasHookUp).toList();
        if (hooked.isEmpty()) {
            return;
        }
        int count = hooked.stream().mapToInt(ClockDay::count).sum();
        points.add(new Point(
                "Hook up.",
                "The plan counts on a hook-up on " + count + " of " + trip.days() + " days"
                        + (days.size() > 1
                                ? ": on "
                                        + Wording.listed(hooked.stream()
                                                .map(ClockDay::name)
                                                .toList())
                                : "")
                        + "."));
    }

    /** Such as "1 h 30 min on field days and 45 min on rest days". */
    private String driven() {
        List<String> texts = new ArrayList<>();
        for (ClockDay day : days) {
            IntSummaryStatistics minutes = driven(day);
            if (minutes.getMax() > 0) {
                String least = minutes.getMin() == minutes.getMax() ? "" : length(minutes.getMin()) + " to ";
                texts.add(least + length(minutes.getMax()) + (days.size() > 1 ? " on " + day.name() : " a day"));
            }
        }
        return Wording.listed(texts);
    }

    private static IntSummaryStatistics driven(ClockDay day) {
        return day.minutes(line -> line.vehicle().moves());
    }

    private static String length(int minutes) {
        int hours = minutes / 60;
        int rest = minutes % 60;
        return hours == 0 ? rest + " min" : hours + " h" + (rest == 0 ? "" : " " + rest + " min");
    }
}
