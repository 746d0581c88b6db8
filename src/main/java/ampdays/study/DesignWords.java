package ampdays.study;

import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import ampdays.scenario.Knob;
import java.util.Locale;
import java.util.StringJoiner;

/** A design of a sweep in words. Test: {@code FrontTest}. */
public final class DesignWords {
    private DesignWords() {}

    /** A design by the values of its knobs, such as {@code as it is, battery.capacity 400 Ah}. */
    public static String of(SweepTable table, int row) {
        StringJoiner words = new StringJoiner(", ");
        for (Column column : table.columns()) {
            String amount = column.amount(column.places().get(row));
            words.add(column.path().equals(Knob.OPTION) ? amount : column.path() + " " + amount);
        }
        return words.length() == 0 ? "the one design" : words.toString();
    }

    /** What becomes of its bank. */
    public static String lasts(SweepTable table, int row) {
        return switch (table.fates().get(row)) {
            case EMPTY ->
                String.format(Locale.ROOT, "%.1f days", table.daysToEmpty().get(row));
            case FALLS -> "falls";
            case UNKNOWN -> "not empty";
            case HOLDS -> "holds";
            case IMPOSSIBLE -> "impossible";
        };
    }
}
