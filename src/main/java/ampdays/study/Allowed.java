package ampdays.study;

import ampdays.results.SweepTable;
import ampdays.scenario.Parts.Limits;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The designs of a sweep that keep to the scenario's budget, payload and roof. Test: {@code FrontTest}.
 *
 * @param possible all designs that can be run
 * @param rows those within all limits
 */
public record Allowed(SweepTable table, List<Integer> possible, List<Integer> rows, List<Bound> bounds) {
    public Allowed {
        possible = List.copyOf(possible);
        rows = List.copyOf(rows);
        bounds = List.copyOf(bounds);
    }

    /**
     * One limit.
     *
     * @param format of an amount, with its unit
     */
    public record Bound(String path, String format, double most, IntToDoubleFunction amount) {
        boolean isBroken(int row) {
            return amount.applyAsDouble(row) > most;
        }

        /** How far beyond a design is, in parts of the limit. */
        double excess(int row) {
            return amount.applyAsDouble(row) / most - 1;
        }

        String show(double shown) {
            return String.format(Locale.ROOT, format, shown);
        }
    }

    public static Allowed of(SweepTable table, Limits limits) {
        List<Bound> bounds = List.of(
                new Bound(
                        "prices.budget",
                        "%,.0f " + table.currency(),
                        limits.budget(),
                        row -> table.prices().get(row)),
                new Bound(
                        "masses.payload",
                        "%,.0f kg",
                        limits.payloadKg(),
                        row -> table.massesKg().get(row)),
                new Bound(
                        "cabin.roof",
                        "%.1f m² of panels",
                        limits.roofM2(),
                        row -> table.panelsM2().get(row)));
        List<Integer> possible = IntStream.range(0, table.rows())
                .filter(table::isPossible)
                .boxed()
                .toList();
        return new Allowed(
                table,
                possible,
                possible.stream()
                        .filter(row -> bounds.stream().noneMatch(bound -> bound.isBroken(row)))
                        .toList(),
                bounds);
    }

    /** How many designs each limit leaves out, such as {@code 20 are beyond 9,000 USD (prices.budget)}; empty where none does. */
    public String leftOut() {
        StringJoiner words = new StringJoiner(", ");
        for (Bound bound : bounds) {
            long beyond = possible.stream().filter(bound::isBroken).count();
            if (beyond > 0) {
                String verb = words.length() > 0 ? " beyond " : beyond == 1 ? " is beyond " : " are beyond ";
                words.add(beyond + verb + bound.show(bound.most()) + " (" + bound.path() + ")");
            }
        }
        return words.toString();
    }

    /**
     * Of designs that are all beyond a limit the one whose worst excess is least, in parts of the limit, with what it lacks;
     * empty where a design is within, or none can be run.
     */
    public Optional<String> nearest() {
        if (!rows.isEmpty()) {
            return Optional.empty();
        }
        return possible.stream()
                .min(Comparator.comparingDouble(this::worstExcess).thenComparingInt(row -> row))
                .map(row -> DesignWords.of(table, row) + ", with "
                        + bounds.stream()
                                .filter(bound -> bound.isBroken(row))
                                .map(bound -> bound.show(bound.amount().applyAsDouble(row)) + ", "
                                        + Verdict.twoDigits(100 * bound.excess(row)) + " % beyond " + bound.path())
                                .collect(Collectors.joining(", and ")));
    }

    private double worstExcess(int row) {
        return bounds.stream()
                .filter(bound -> bound.isBroken(row))
                .mapToDouble(bound -> bound.excess(row))
                .max()
                .orElse(0);
    }
}
