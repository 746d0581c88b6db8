package ampdays.chart;

import ampdays.results.Account;
import ampdays.results.Account.Kind;
import ampdays.results.DayTotals;
import ampdays.results.RunResult;
import ampdays.study.Comparison;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Energy of each day of one option: sources up, uses down. On a long trip a bar is the mean of several days.
 *
 * @param days length of the trip; the axis runs from 0
 * @param sources names from the zero line up; sun that nothing could take comes last
 * @param uses names from the zero line down; what was not served comes last
 * @param highestSourceKwh highest stack of sources, kWh a day
 * @param highestUseKwh highest stack of uses, kWh a day
 */
public record EnergyDays(
        String title,
        String subtitle,
        String yLabel,
        double days,
        List<String> sources,
        List<String> uses,
        double highestSourceKwh,
        double highestUseKwh,
        List<Bar> bars)
        implements ChartModel {
    /** Sun that the panels could have given. */
    public static final String CURTAILED = Account.CURTAILED.label();

    private static final String LOSSES = "losses";
    private static final int MOST_BARS = 62;
    private static final List<Integer> DAYS_PER_BAR = List.of(1, 7, 28, 91, 364);
    private static final double LEAST_SHOWN_WH = 0.5;

    public EnergyDays {
        sources = List.copyOf(sources);
        uses = List.copyOf(uses);
        bars = List.copyOf(bars);
    }

    /**
     * One day, or the mean of several.
     *
     * @param fromDay days from the start of the trip
     * @param sourceKwh kWh a day in the order of the names of the chart
     * @param useKwh the same for uses, as positive numbers
     */
    public record Bar(double fromDay, double toDay, List<Double> sourceKwh, List<Double> useKwh) {}

    /** One stack's name and what it is of a day, Wh. */
    private record Part(String name, Function<DayTotals, Double> wh) {}

    public static EnergyDays of(Comparison comparison, Comparison.Option option) {
        RunResult result = option.result();
        List<Part> sources = shown(result, accounts(Kind.SOURCE), part(Account.CURTAILED));
        List<Part> uses = shown(
                result, accounts(Kind.USE), new Part(LOSSES, day -> day.energy().lossesWh()), part(Account.UNSERVED));
        int perBar = daysPerBar(result.days().size());
        List<Bar> bars = new ArrayList<>();
        for (int day = 0; day < result.days().size(); day += perBar) {
            int end = Math.min(result.days().size(), day + perBar);
            List<DayTotals> days = result.days().subList(day, end);
            bars.add(new Bar(day, end, kwhADay(days, sources), kwhADay(days, uses)));
        }
        return new EnergyDays(
                result.option() + ": energy of each day",
                comparison.title(),
                "kWh a day" + (perBar > 1 ? ", mean of " + perBar + " days" : "") + ": sources up, uses down",
                result.tripDays(),
                names(sources),
                names(uses),
                highest(bars, Bar::sourceKwh),
                highest(bars, Bar::useKwh),
                bars);
    }

    private static Part part(Account account) {
        return new Part(account.label(), day -> day.energy().wh(account));
    }

    private static Stream<Part> accounts(Kind kind) {
        return Arrays.stream(Account.values())
                .filter(account -> account.kind() == kind)
                .map(EnergyDays::part);
    }

    /** Those with any energy on the trip. */
    private static List<Part> shown(RunResult result, Stream<Part> first, Part... then) {
        return Stream.concat(first, Stream.of(then))
                .filter(part ->
                        result.days().stream().mapToDouble(part.wh::apply).sum() > LEAST_SHOWN_WH)
                .toList();
    }

    private static int daysPerBar(int days) {
        return DAYS_PER_BAR.stream()
                .filter(perBar -> days <= perBar * MOST_BARS)
                .findFirst()
                .orElseThrow();
    }

    private static List<Double> kwhADay(List<DayTotals> days, List<Part> parts) {
        return parts.stream()
                .map(part -> days.stream().collect(Collectors.averagingDouble(part.wh::apply)) / 1000)
                .toList();
    }

    private static List<String> names(List<Part> parts) {
        return parts.stream().map(Part::name).toList();
    }

    private static double highest(List<Bar> bars, Function<Bar, List<Double>> stack) {
        return bars.stream()
                .mapToDouble(bar -> stack.apply(bar).stream()
                        .mapToDouble(Double::doubleValue)
                        .sum())
                .max()
                .orElse(0);
    }
}
