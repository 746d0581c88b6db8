package ampdays.study;

import ampdays.results.Chances;
import ampdays.results.SweepTable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * The designs of a sweep that no other design beats: none is at least as good in price, mass and two measures of what it is good
 * for, and better in one of them (Pareto's order). The measures are the comfortable nights and the days that the bank lasts on
 * the scenario's one trip; or, over many trips, the shares of them that are never empty and that have every night comfortable.
 * Test: {@code FrontTest}.
 *
 * @param tried the designs that were held against each other, by row
 * @param rows of the table that no other beats, the cheapest first
 * @param chances of the designs tried, by row; empty where only the one trip counts
 */
public record Front(SweepTable table, List<Integer> tried, List<Integer> rows, Map<Integer, Chances.Option> chances) {
    public Front {
        tried = List.copyOf(tried);
        rows = List.copyOf(rows);
        chances = Map.copyOf(chances);
    }

    /** By the one trip of the table. */
    public static Front ofOneTrip(SweepTable table, List<Integer> within) {
        return new Front(table, within, unbeaten(table, within, oneTrip(table)), Map.of());
    }

    /**
     * By many trips.
     *
     * @param options the chances of the designs tried, in their order
     */
    public static Front ofManyTrips(SweepTable table, List<Integer> tried, List<Chances.Option> options) {
        Map<Integer, Chances.Option> chances = new HashMap<>();
        for (int i = 0; i < tried.size(); i++) {
            chances.put(tried.get(i), options.get(i));
        }
        List<ToDoubleFunction<Integer>> measures = List.of(
                row -> chances.get(row).neverEmpty().value(),
                row -> chances.get(row).comfortable().value());
        return new Front(table, tried, unbeaten(table, tried, measures), chances);
    }

    /**
     * Designs that are worth many trips: those that none beats on the one trip, then those that only these beat, and so on, as long
     * as they are not too many. What the one trip cannot tell apart, such as two banks that both hold, comes after each other.
     *
     * @param most of them; passed only by the first of these fronts, which is always whole
     */
    public static List<Integer> worthTrying(SweepTable table, List<Integer> within, int most) {
        List<Integer> worth = new ArrayList<>();
        List<Integer> rest = within;
        while (!rest.isEmpty()) {
            List<Integer> next = unbeaten(table, rest, oneTrip(table));
            if (!worth.isEmpty() && worth.size() + next.size() > most) {
                break;
            }
            worth.addAll(next);
            HashSet<Integer> taken = new HashSet<>(next);
            rest = rest.stream().filter(row -> !taken.contains(row)).toList();
        }
        return worth.stream().sorted().toList();
    }

    private static List<ToDoubleFunction<Integer>> oneTrip(SweepTable table) {
        return List.of(table.comfortableNights()::get, row -> lasting(table, row));
    }

    private static List<Integer> unbeaten(
            SweepTable table, List<Integer> rows, List<ToDoubleFunction<Integer>> measures) {
        // in this order no design can beat one that stands before it, so each need only be held against those kept
        Comparator<Integer> order = Comparator.comparingDouble(
                        (Integer row) -> table.prices().get(row))
                .thenComparingDouble(table.massesKg()::get);
        for (ToDoubleFunction<Integer> measure : measures) {
            order = order.thenComparingDouble(row -> -measure.applyAsDouble(row));
        }
        List<Integer> kept = new ArrayList<>();
        rows.stream().sorted(order.thenComparingInt(row -> row)).forEach(row -> {
            if (kept.stream().noneMatch(other -> isAsGood(table, other, row, measures))) {
                kept.add(row);
            }
        });
        return kept;
    }

    /** Whether a design is nowhere worse than another; of two that are alike the first stays. */
    private static boolean isAsGood(SweepTable table, int a, int b, List<ToDoubleFunction<Integer>> measures) {
        return table.prices().get(a) <= table.prices().get(b)
                && table.massesKg().get(a) <= table.massesKg().get(b)
                && measures.stream().allMatch(measure -> measure.applyAsDouble(a) >= measure.applyAsDouble(b));
    }

    /** Days to empty; a design that holds is beyond one of which only the trip's days are known. */
    private static double lasting(SweepTable table, int row) {
        double days = table.daysToEmpty().get(row);
        return table.holds(row) ? Double.POSITIVE_INFINITY : Double.isNaN(days) ? Double.MAX_VALUE : days;
    }

    public boolean isByChance() {
        return !chances.isEmpty();
    }

    /** How many trips each design was tried on besides the one of the table. */
    public int trips() {
        return chances.values().stream()
                .mapToInt(option -> option.trips().size())
                .findFirst()
                .orElse(0);
    }

    /** How many designs that no other beats on the one trip are beaten by others on many trips. */
    public long beatenByChance() {
        return unbeaten(table, tried, oneTrip(table)).stream()
                .filter(row -> !rows.contains(row))
                .count();
    }

    /** The chances of the front's designs, in their order; none where only the one trip counts. */
    public List<Chances.Option> ownChances() {
        return isByChance() ? rows.stream().map(chances::get).toList() : List.of();
    }

    /** Designs that were tried and are beaten. */
    public List<Integer> beaten() {
        return tried.stream().filter(row -> !rows.contains(row)).toList();
    }
}
