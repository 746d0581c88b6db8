package ampdays.chart;

import java.util.Arrays;
import java.util.regex.Pattern;

/** The charts of a sweep by the names of their files; a further sweep in the same folder takes them away by these names. */
public enum SweepChart {
    LINES("lines"),
    DAYS_TO_EMPTY("days-to-empty"),
    BREAK_EVEN("break-even"),
    FRONT("front");

    private final String fileName;

    SweepChart(String fileName) {
        this.fileName = fileName;
    }

    /** Without the end that says what kind of picture it is. */
    public String fileName() {
        return fileName;
    }

    /**
     * Of one of several.
     *
     * @param number from 1
     */
    String fileName(int number) {
        return fileName + "-" + number;
    }

    /** Whether a file, by its whole name, is a chart of a sweep. */
    public static boolean isFile(String name) {
        return Arrays.stream(values())
                .anyMatch(chart -> name.matches(Pattern.quote(chart.fileName) + "(-\\d+)?\\.(svg|png)"));
    }
}
