package ampdays.study;

import ampdays.results.SweepTable;
import ampdays.scenario.Parts.Limits;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The designs of a sweep that keep to budget, payload and roof, each to its own. Test: {@code FrontTest}.
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
     * @param format of a number of the unit
     * @param most that a design, by row, may have
     * @param amount that it has
     */
    public record Bound(String path, String format, String unit, IntToDoubleFunction most, IntToDoubleFunction amount) {
        boolean isBroken(int row) {
            return amount.applyAsDouble(row) > most.applyAsDouble(row);
        }

        /** How far beyond a design is, in parts of its limit. */
        double excess(int row) {
            return amount.applyAsDouble(row) / most.applyAsDouble(row) - 1;
        }

        private String number(double shown) {
            return String.format(Locale.ROOT, format, shown);
        }

        private String show(double shown) {
            return number(shown) + " " + unit;
        }

        /** The limit of some designs, or its range where an option or a knob changes it. */
        private String limits(List<Integer> designs) {
            DoubleSummaryStatistics limits =
                    designs.stream().mapToDouble(most::applyAsDouble).summaryStatistics();
            String least = number(limits.getMin());
            String greatest = number(limits.getMax());
            return (least.equals(greatest) ? "" : "their own limit of " + least + " to ") + greatest + " " + unit;
        }

        /** By how much a design is beyond, such as {@code 8,400 USD, 5.0 % beyond its 8,000 USD (prices.budget)}. */
        private String lack(int row) {
            double limit = most.applyAsDouble(row);
            return show(amount.applyAsDouble(row))
                    + (limit == 0 ? "" : ", " + Verdict.twoDigits(100 * excess(row)) + " %")
                    + " beyond its " + show(limit) + " (" + path + ")";
        }
    }

    /**
     * The designs of a table.
     *
     * @param limits of a design, by row
     */
    public static Allowed of(SweepTable table, IntFunction<Limits> limits) {
        List<Integer> possible = IntStream.range(0, table.rows())
                .filter(table::isPossible)
                .boxed()
                .toList();
        Map<Integer, Limits> own = new HashMap<>();
        possible.forEach(row -> own.put(row, limits.apply(row)));
        List<Bound> bounds = List.of(
                new Bound(
                        "prices.budget",
                        "%,.0f",
                        table.currency(),
                        row -> own.get(row).budget(),
                        row -> table.prices().get(row)),
                new Bound(
                        "masses.payload",
                        "%,.0f",
                        "kg",
                        row -> own.get(row).payloadKg(),
                        row -> table.massesKg().get(row)),
                new Bound(
                        "cabin.roof",
                        "%.1f",
                        "m² of panels",
                        row -> own.get(row).roofM2(),
                        row -> table.panelsM2().get(row)));
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
            List<Integer> beyond = possible.stream().filter(bound::isBroken).toList();
            if (!beyond.isEmpty()) {
                String verb = words.length() > 0 ? " beyond " : beyond.size() == 1 ? " is beyond " : " are beyond ";
                words.add(beyond.size() + verb + bound.limits(beyond) + " (" + bound.path() + ")");
            }
        }
        return words.toString();
    }

    /**
     * Of designs that are all beyond a limit the one whose worst excess is least, in parts of the limit, with what it lacks, the
     * limit that rules first; empty where a design is within, or none can be run.
     */
    public Optional<String> nearest() {
        if (!rows.isEmpty()) {
            return Optional.empty();
        }
        return possible.stream()
                .min(Comparator.comparingDouble(this::worstExcess).thenComparingInt(row -> row))
                .map(row -> DesignWords.of(table, row) + ", with " + lacks(row));
    }

    private String lacks(int row) {
        List<String> lacks = bounds.stream()
                .filter(bound -> bound.isBroken(row))
                .sorted(Comparator.comparingDouble(bound -> -bound.excess(row)))
                .map(bound -> bound.lack(row))
                .toList();
        return lacks.size() == 1
                ? lacks.get(0)
                : lacks.get(0) + ", which rules, and " + String.join(", and ", lacks.subList(1, lacks.size()));
    }

    private double worstExcess(int row) {
        return bounds.stream()
                .filter(bound -> bound.isBroken(row))
                .mapToDouble(bound -> bound.excess(row))
                .max()
                .orElse(0);
    }
}
