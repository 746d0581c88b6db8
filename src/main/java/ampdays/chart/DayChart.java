package ampdays.chart;

import ampdays.results.Account;
import ampdays.results.DayProfile;
import ampdays.results.Series;
import ampdays.study.Comparison;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * An ordinary day and the worst day of one option by the hour, side by side at the same scale.
 *
 * @param low whether its panels are low and its title is left to the caption, to leave room on a sheet for words
 * @param sources names of what feeds the bus, from the zero line up
 * @param uses names of what takes from it, from the zero line down; what was not served comes last
 * @param highestSourceW highest stack of sources of both days, W
 * @param highestUseW highest stack of uses, W
 * @param coolestC lowest temperature of both days, °C
 * @param warmestC highest, °C
 * @param bothDegrees whether its temperatures are marked in degrees Fahrenheit beside those in degrees Celsius
 */
public record DayChart(
        String title,
        String subtitle,
        String socLabel,
        String powerLabel,
        String temperatureLabel,
        boolean low,
        double reservePercent,
        double highestSourceW,
        double highestUseW,
        double coolestC,
        double warmestC,
        List<String> sources,
        List<String> uses,
        List<Day> days,
        boolean bothDegrees)
        implements ChartModel {
    /** The use that was asked for and not delivered. */
    public static final String UNSERVED = Account.UNSERVED.label();

    /** Uses beyond this number are added up. */
    private static final int MOST_USES = 5;

    private static final String OTHER_USES = "other uses";
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);

    public DayChart {
        sources = List.copyOf(sources);
        uses = List.copyOf(uses);
        days = List.copyOf(days);
    }

    /**
     * One day.
     *
     * @param sourceW mean power per hour, W, in the order of the names of the chart
     * @param useW the same for uses, as positive numbers
     * @param socPercent state of charge at the end of each of equal parts of the day, %
     * @param outsideC mean outside air per hour
     * @param cabinC mean cabin air per hour
     * @param asleep share of each hour in which people sleep, 0 to 1
     */
    public record Day(
            String heading,
            List<List<Double>> sourceW,
            List<List<Double>> useW,
            List<Double> socPercent,
            List<Double> outsideC,
            List<Double> cabinC,
            List<Double> asleep) {}

    public static DayChart of(Comparison comparison, Comparison.Option option) {
        List<DayProfile> profiles = List.of(option.ordinaryDay(), option.worstDay());
        List<String> sources = names(profiles.stream().map(DayProfile::sourceW).toList());
        List<String> uses = leadingUses(profiles.stream().map(DayProfile::useW).toList());
        List<Day> days =
                profiles.stream().map(profile -> day(profile, sources, uses)).toList();
        double[] temperatures = profiles.stream()
                .flatMap(profile -> Stream.of(profile.outsideC(), profile.cabinC()))
                .flatMapToDouble(series -> DoubleStream.of(series.toArray()))
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        return new DayChart(
                option.result().option() + ": " + profiles.get(0).name() + " and "
                        + profiles.get(1).name(),
                comparison.title(),
                "state of charge, %",
                "power, W: sources up, uses down",
                "temperature, °C",
                false,
                100 * comparison.reserveShare(),
                highestStackW(days, Day::sourceW),
                highestStackW(days, Day::useW),
                temperatures.length == 0 ? 0 : temperatures[0],
                temperatures.length == 0 ? 0 : temperatures[temperatures.length - 1],
                sources,
                uses,
                days,
                false);
    }

    /** The same with low panels, for a sheet with a caption. */
    public DayChart asLow() {
        return new DayChart(
                title,
                subtitle,
                socLabel,
                powerLabel,
                temperatureLabel,
                true,
                reservePercent,
                highestSourceW,
                highestUseW,
                coolestC,
                warmestC,
                sources,
                uses,
                days,
                bothDegrees);
    }

    private static Day day(DayProfile profile, List<String> sources, List<String> uses) {
        String name = profile.name();
        return new Day(
                name.substring(0, 1).toUpperCase(Locale.ROOT)
                        + name.substring(1) + ", "
                        + profile.date().format(DATE),
                sources.stream().map(source -> hours(profile.sourceW(), source)).toList(),
                uses.stream()
                        .map(use ->
                                use.equals(OTHER_USES) ? otherUses(profile.useW(), uses) : hours(profile.useW(), use))
                        .toList(),
                Words.percent(profile.socAtQuarter()),
                Words.list(profile.outsideC()),
                Words.list(profile.cabinC()),
                Words.list(profile.asleep()));
    }

    /** Names with any energy, in the order in which the days tell them. */
    private static List<String> names(List<Map<String, Series>> days) {
        Set<String> names = new LinkedHashSet<>();
        days.forEach(day -> names.addAll(day.keySet()));
        return names.stream().filter(name -> totalW(days, name) > 0).toList();
    }

    private static List<String> leadingUses(List<Map<String, Series>> days) {
        List<String> served = new ArrayList<>(names(days));
        boolean unserved = served.remove(UNSERVED);
        if (served.size() > MOST_USES) {
            List<String> leading = served.stream()
                    .sorted(Comparator.comparingDouble((String name) -> -totalW(days, name)))
                    .limit(MOST_USES - 1)
                    .toList();
            served.retainAll(leading);
            served.add(OTHER_USES);
        }
        if (unserved) {
            served.add(UNSERVED);
        }
        return served;
    }

    private static double totalW(List<Map<String, Series>> days, String name) {
        return days.stream()
                .flatMap(day -> hours(day, name).stream())
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    /** An hour that a change of the clock left out has no power. */
    private static List<Double> hours(Map<String, Series> day, String name) {
        Series series = day.get(name);
        return series == null
                ? List.of()
                : Words.list(series).stream()
                        .map(w -> Double.isNaN(w) ? 0.0 : w)
                        .toList();
    }

    private static List<Double> otherUses(Map<String, Series> day, List<String> named) {
        List<List<Double>> others = day.keySet().stream()
                .filter(use -> !named.contains(use) && !use.equals(UNSERVED))
                .map(use -> hours(day, use))
                .toList();
        int hours = others.stream().mapToInt(List::size).max().orElse(0);
        return IntStream.range(0, hours).mapToObj(hour -> sumAt(others, hour)).toList();
    }

    private static double highestStackW(List<Day> days, Function<Day, List<List<Double>>> stacks) {
        return days.stream()
                .flatMapToDouble(day ->
                        IntStream.range(0, day.asleep().size()).mapToDouble(hour -> sumAt(stacks.apply(day), hour)))
                .max()
                .orElse(0);
    }

    private static double sumAt(List<List<Double>> rows, int hour) {
        return rows.stream()
                .filter(row -> hour < row.size())
                .mapToDouble(row -> row.get(hour))
                .sum();
    }
}
