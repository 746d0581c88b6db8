package ampdays.study;

import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import ampdays.scenario.Knob;
import ampdays.scenario.Parts.Limits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The designs of a sweep that no other design beats: none is at least as good in price, mass, comfortable nights and days
 * that the bank lasts, and better in one of them (Pareto's order). Designs beyond a limit are left out before. Test:
 * {@code FrontTest}.
 *
 * @param rows of the table, the cheapest first
 * @param beyond how many possible designs a limit left out
 */
public record Front(SweepTable table, List<Integer> rows, int beyond) {
    private static final Pattern WITH_UNIT = Pattern.compile("(.*) \\((.*)\\)");

    public Front {
        rows = List.copyOf(rows);
    }

    public static Front of(SweepTable table, Limits limits) {
        List<Integer> possible = IntStream.range(0, table.rows())
                .filter(table::isPossible)
                .boxed()
                .toList();
        List<Integer> within =
                possible.stream().filter(row -> isWithin(table, row, limits)).toList();
        // in this order no design can beat one that stands before it, so each need only be held against those kept
        Comparator<Integer> order = Comparator.comparingDouble(
                        (Integer row) -> table.prices().get(row))
                .thenComparingDouble(table.massesKg()::get)
                .thenComparingDouble(row -> -table.comfortableNights().get(row))
                .thenComparingDouble(row -> -lasting(table, row))
                .thenComparingInt(row -> row);
        List<Integer> kept = new ArrayList<>();
        within.stream().sorted(order).forEach(row -> {
            if (kept.stream().noneMatch(other -> isAsGood(table, other, row))) {
                kept.add(row);
            }
        });
        return new Front(table, kept, possible.size() - within.size());
    }

    private static boolean isWithin(SweepTable table, int row, Limits limits) {
        return !(table.prices().get(row) > limits.budget())
                && !(table.massesKg().get(row) > limits.payloadKg())
                && !(table.panelsM2().get(row) > limits.roofM2());
    }

    /** Whether a design is nowhere worse than another; of two that are alike the first stays. */
    private static boolean isAsGood(SweepTable table, int a, int b) {
        return table.prices().get(a) <= table.prices().get(b)
                && table.massesKg().get(a) <= table.massesKg().get(b)
                && table.comfortableNights().get(a) >= table.comfortableNights().get(b)
                && lasting(table, a) >= lasting(table, b);
    }

    /** Days to empty; a design that holds is beyond one that is not empty yet but falls. */
    private static double lasting(SweepTable table, int row) {
        double days = table.daysToEmpty().get(row);
        return table.holds().get(row) ? Double.POSITIVE_INFINITY : Double.isNaN(days) ? Double.MAX_VALUE : days;
    }

    /** A design of the front by the values of its knobs, such as {@code as it is, battery.capacity 400 Ah}. */
    public String words(int row) {
        StringJoiner words = new StringJoiner(", ");
        for (Column column : table.columns()) {
            String value = column.values().get(column.places().get(row));
            Matcher withUnit = WITH_UNIT.matcher(column.heading());
            words.add(
                    withUnit.matches()
                            ? withUnit.group(1) + " " + value + " " + withUnit.group(2)
                            : column.heading().equals(Knob.OPTION) ? value : column.heading() + " " + value);
        }
        return words.toString();
    }

    /** What becomes of its bank. */
    public String lasts(int row) {
        double days = table.daysToEmpty().get(row);
        return table.holds().get(row)
                ? "holds"
                : Double.isNaN(days) ? "falls" : String.format(Locale.ROOT, "%.1f days", days);
    }
}
