package ampdays.study;

import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What the rows of a sweep tell that differ in one knob alone: values that make no difference, places where the outcome turns,
 * and places where more is worse. Test: {@code SweepSummaryTest}.
 */
public final class AlongOneKnob {
    /** Days to empty that are no further apart count as equal. */
    private static final double EQUAL_DAYS = 0.1;

    private static final double HOLDS = Double.MAX_VALUE;
    private static final double FALLS = Double.MAX_VALUE / 2;

    private final SweepTable table;
    private final Column column;
    private final Function<Column, String> name;
    /** A row for each value of the column, in its order. */
    private final Collection<int[]> lines;

    /**
     * Of one of a table's columns.
     *
     * @param name what the other columns are called
     */
    public AlongOneKnob(SweepTable table, Column column, Function<Column, String> name) {
        this.table = table;
        this.column = column;
        this.name = name;
        this.lines = lines();
    }

    /** None where not every combination was run. */
    private Collection<int[]> lines() {
        long combinations = 1;
        for (Column one : table.columns()) {
            combinations *= one.values().size();
            if (combinations > table.rows()) {
                return List.of();
            }
        }
        Map<Long, int[]> byRest = new LinkedHashMap<>();
        for (int row = 0; row < table.rows(); row++) {
            long rest = 0;
            for (Column other : table.columns()) {
                rest = isThis(other)
                        ? rest
                        : rest * other.values().size() + other.places().get(row);
            }
            byRest.computeIfAbsent(rest, r -> new int[column.values().size()])[
                    column.places().get(row)] = row;
        }
        return byRest.values();
    }

    private boolean isThis(Column other) {
        return other.heading().equals(column.heading());
    }

    /** A sentence for each value whose rows are those of an earlier one. */
    List<String> equalValues() {
        List<String> sentences = new ArrayList<>();
        for (int place = 1; place < column.values().size() && !lines.isEmpty(); place++) {
            int later = place;
            IntStream.range(0, place)
                    .filter(earlier -> lines.stream().allMatch(rows -> isEqual(rows[earlier], rows[later])))
                    .mapToObj(
                            earlier -> quoted(later) + " has the same results as " + quoted(earlier) + ", row for row.")
                    .findFirst()
                    .ifPresent(sentences::add);
        }
        return sentences;
    }

    private String quoted(int place) {
        return '"' + column.values().get(place) + '"';
    }

    private boolean isEqual(int one, int other) {
        return table.fates().get(one) == table.fates().get(other)
                && List.of(
                                table.daysToEmpty(),
                                table.lowestPercent(),
                                table.comfortableNights(),
                                table.prices(),
                                table.massesKg(),
                                table.panelsM2())
                        .stream()
                        .allMatch(metric -> metric.get(one).equals(metric.get(other)));
    }

    /** Where from one row to another, with a larger value, the outcome goes against its way along the rest of the line. */
    private record Turn(int from, int to, boolean worse, double size) {}

    /** Words when along the numbers of the column the outcome gets both better and worse. */
    Optional<String> turn() {
        List<Turn> turns =
                lines.stream().map(this::turn).flatMap(Optional::stream).toList();
        return largest(turns)
                .map(most -> "more is not always " + (most.worse() ? "better" : "worse")
                        + places(most, " So in %,d of %,d places.", turns.size()));
    }

    /** The same; and where no line turns, words when along some lines the outcome gets worse. Empty where more is only better. */
    public Optional<String> againstMore() {
        List<Turn> worse =
                lines.stream().map(this::worse).flatMap(Optional::stream).toList();
        long better =
                lines.stream().filter(rows -> better(rising(rows)).isPresent()).count();
        return turn().or(() -> largest(worse)
                .map(most -> "more is "
                        + (better == 0 ? "worse" : "worse in some places and better in others")
                        + places(
                                most,
                                better == 0
                                        ? " So in %,d of %,d places."
                                        : " Worse in %,d of %,d places, better in " + better + ".",
                                worse.size())));
    }

    private static Optional<Turn> largest(List<Turn> turns) {
        return turns.stream().max(Comparator.comparingDouble(Turn::size));
    }

    private int[] rising(int... rows) {
        return IntStream.of(rows)
                .filter(table::isPossible)
                .boxed()
                .sorted(Comparator.comparingDouble(
                        row -> column.number(column.places().get(row))))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private Optional<Turn> better(int... rising) {
        return largest(false, this::score, rising);
    }

    private Optional<Turn> worse(int... rows) {
        return largest(true, row -> -score(row), rising(rows));
    }

    private Optional<Turn> turn(int... rows) {
        Optional<Turn> better = better(rising(rows));
        Optional<Turn> worse = worse(rows);
        return better.isEmpty() || worse.isEmpty()
                ? Optional.empty()
                : better.get().size() < worse.get().size() ? better : worse;
    }

    /** The largest rise of a score along rows, if it is more than nothing. */
    private static Optional<Turn> largest(boolean worse, IntToDoubleFunction score, int... rows) {
        Optional<Turn> largest = Optional.empty();
        int lowest = 0;
        for (int i = 1; i < rows.length; i++) {
            double rise = score.applyAsDouble(rows[i]) - score.applyAsDouble(rows[lowest]);
            if (rise > largest.map(Turn::size).orElse(EQUAL_DAYS)) {
                largest = Optional.of(new Turn(rows[lowest], rows[i], worse, rise));
            }
            lowest = rise < 0 ? i : lowest;
        }
        return largest;
    }

    /** What a trip is too short to tell is no worse than what holds. */
    private double score(int row) {
        return switch (table.fates().get(row)) {
            case EMPTY, IMPOSSIBLE -> table.daysToEmpty().get(row);
            case FALLS -> FALLS;
            case UNKNOWN, HOLDS -> HOLDS;
        };
    }

    /**
     * A turn, and how many such there are.
     *
     * @param counted of places with a turn, and of all
     */
    private String places(Turn turn, String counted, int count) {
        String others = table.columns().stream()
                .filter(other -> !isThis(other))
                .map(other ->
                        name.apply(other) + " " + other.amount(other.places().get(turn.from())))
                .collect(Collectors.joining(", "));
        return ": at " + column.amount(column.places().get(turn.from())) + " it " + outcome(turn.from()) + ", at "
                + column.amount(column.places().get(turn.to())) + " it " + outcome(turn.to())
                + (others.isEmpty() ? "" : "; with " + others) + "."
                + (lines.size() == 1 ? "" : String.format(Locale.ROOT, counted, count, lines.size()));
    }

    private String outcome(int row) {
        return switch (table.fates().get(row)) {
            case EMPTY ->
                String.format(
                        Locale.ROOT,
                        "is empty after %.1f days",
                        table.daysToEmpty().get(row));
            case FALLS -> "is not empty but falls";
            case UNKNOWN -> "is not empty within the trip";
            case HOLDS -> "holds";
            case IMPOSSIBLE -> "is impossible";
        };
    }
}
