package ampdays.study;

import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** What the rows of a sweep tell that differ in one knob alone. */
final class SweepLines {
    private final SweepTable table;
    private final Column column;
    /** A row for each value of the column, in its order. */
    private final Collection<int[]> lines;

    SweepLines(SweepTable table, Column column) {
        this.table = table;
        this.column = column;
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
                rest = other == column
                        ? rest
                        : rest * other.values().size() + other.places().get(row);
            }
            byRest.computeIfAbsent(rest, r -> new int[column.values().size()])[
                    column.places().get(row)] = row;
        }
        return byRest.values();
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
        return table.holds().get(one).equals(table.holds().get(other))
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
}
