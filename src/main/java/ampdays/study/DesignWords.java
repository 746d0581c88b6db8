package ampdays.study;

import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import ampdays.scenario.Knob;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A design of a sweep in words. Test: {@code FrontTest}. */
public final class DesignWords {
    private static final Pattern WITH_UNIT = Pattern.compile("(.*) \\((.*)\\)");

    private DesignWords() {}

    /** A design by the values of its knobs, such as {@code as it is, battery.capacity 400 Ah}. */
    public static String of(SweepTable table, int row) {
        StringJoiner words = new StringJoiner(", ");
        for (Column column : table.columns()) {
            String value = column.values().get(column.places().get(row));
            Matcher withUnit = WITH_UNIT.matcher(column.heading());
            words.add(
                    withUnit.matches()
                            ? withUnit.group(1) + " " + value + " " + withUnit.group(2)
                            : column.heading().equals(Knob.OPTION) ? value : column.heading() + " " + value);
        }
        return words.length() == 0 ? "the one design" : words.toString();
    }

    /** What becomes of its bank. */
    public static String lasts(SweepTable table, int row) {
        double days = table.daysToEmpty().get(row);
        return table.holds().get(row)
                ? "holds"
                : Double.isNaN(days) ? "falls" : String.format(Locale.ROOT, "%.1f days", days);
    }
}
