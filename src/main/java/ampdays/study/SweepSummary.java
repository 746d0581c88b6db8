package ampdays.study;

import ampdays.results.Fate;
import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/** A sweep in a few sentences: how many designs hold, how long the others last, and how that goes with each knob. */
public final class SweepSummary {
    private static final int MOST_VALUES = 12;
    private static final int LEAST_FOR_TENTHS = 10;

    private static final String TOO_SHORT = "on a trip too short to tell more";

    private SweepSummary() {}

    /** Lines without line ends. */
    public static List<String> of(SweepTable table) {
        List<String> lines = new ArrayList<>();
        int[] all = IntStream.range(0, table.rows()).toArray();
        lines.add(
                table.rows() == 1
                        ? "The one design " + (table.holds(0) ? "" : "is ") + outcome(table, all) + "."
                        : "Of " + number("%,d", table.rows()) + " designs " + outcome(table, all) + ".");
        long impossible =
                IntStream.of(all).filter(row -> !table.isPossible(row)).count();
        if (table.rows() == 1 && impossible == 1) {
            lines.add("The last column of the table says why.");
        } else if (impossible > 0) {
            lines.add(number("%,d", impossible)
                    + (impossible == 1 ? " is" : " are")
                    + " impossible: the last column of the table says why.");
        }
        for (Column column : table.columns()) {
            lines.add("");
            lines.add("By " + column.heading() + ":");
            List<Integer> shown = shown(column.values().size());
            for (int place : shown) {
                int[] rows = IntStream.of(all)
                        .filter(row -> column.places().get(row) == place)
                        .toArray();
                lines.add("  " + column.values().get(place) + ": " + outcome(table, rows));
            }
            if (shown.size() < column.values().size()) {
                lines.add("  (" + shown.size() + " of "
                        + number("%,d", column.values().size()) + " values are shown)");
            }
            AlongOneKnob along = new AlongOneKnob(table, column, Column::path);
            (column.isNumeric()
                            ? along.turn().map(words -> "M" + words.substring(1)).stream()
                            : along.equalValues().stream())
                    .map(sentence -> "  " + sentence)
                    .forEach(lines::add);
        }
        return lines;
    }

    /** All values, or some that are evenly spread, with the first and the last. */
    private static List<Integer> shown(int count) {
        return IntStream.range(0, Math.min(count, MOST_VALUES))
                .map(i -> count <= MOST_VALUES ? i : (int) Math.round(i * (count - 1.0) / (MOST_VALUES - 1)))
                .boxed()
                .toList();
    }

    private static String outcome(SweepTable table, int... rows) {
        if (rows.length == 1) {
            return outcomeOfOne(table, rows[0]);
        }
        long holding = count(table, Fate.HOLDS, rows);
        double[] days = IntStream.of(rows)
                .mapToDouble(row -> table.daysToEmpty().get(row))
                .filter(Double::isFinite)
                .toArray();
        String text = number("%,d", holding) + (holding == 1 ? " holds" : " hold");
        text += notEmpty(count(table, Fate.FALLS, rows), "but falling");
        text += notEmpty(count(table, Fate.UNKNOWN, rows), TOO_SHORT);
        if (days.length == 0) {
            return text;
        }
        Percentile percentile = new Percentile();
        percentile.setData(days);
        text += "; " + number("%,d", days.length)
                + (days.length == 1 ? " is empty, after " : " are empty, in the middle after ")
                + Verdict.twoDigits(percentile.evaluate(50)) + " days";
        return days.length < LEAST_FOR_TENTHS
                ? text
                : text + " (one in ten before " + Verdict.twoDigits(percentile.evaluate(10)) + ", one in ten after "
                        + Verdict.twoDigits(percentile.evaluate(90)) + ")";
    }

    private static long count(SweepTable table, Fate fate, int... rows) {
        return IntStream.of(rows).filter(row -> table.fates().get(row) == fate).count();
    }

    private static String notEmpty(long count, String how) {
        return count == 0 ? "" : "; " + number("%,d", count) + (count == 1 ? " is" : " are") + " not empty, " + how;
    }

    private static String outcomeOfOne(SweepTable table, int row) {
        return switch (table.fates().get(row)) {
            case EMPTY -> "empty after " + Verdict.twoDigits(table.daysToEmpty().get(row)) + " days";
            case FALLS -> "not empty, but falls";
            case UNKNOWN -> "not empty, " + TOO_SHORT;
            case HOLDS -> "holds";
            case IMPOSSIBLE -> "impossible";
        };
    }

    private static String number(String format, long value) {
        return String.format(Locale.ROOT, format, value);
    }
}
