package ampdays.io;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The cells of a line of a log, one line after another; a cell is cut out of the line only when its text is asked for. */
final class LogCells {
    private final char separator;
    private String line = "";
    private int[] from = new int[16];
    private int[] to = new int[16];
    private boolean[] quoted = new boolean[16];
    private int size;

    LogCells(char separator) {
        this.separator = separator;
    }

    /** The texts of a line's cells. */
    static List<String> of(String line, char separator) {
        LogCells cells = new LogCells(separator);
        cells.take(line);
        return IntStream.range(0, cells.size).mapToObj(cells::text).toList();
    }

    /** Takes the next line in place of the one before. */
    void take(String next) {
        line = next;
        size = 0;
        int at = 0;
        while (at <= line.length()) {
            at = cell(at);
        }
    }

    int size() {
        return size;
    }

    boolean isEmpty(int cell) {
        return from[cell] == to[cell];
    }

    String text(int cell) {
        String text = line.substring(from[cell], to[cell]);
        return quoted[cell] ? text.replace("\"\"", "\"") : text;
    }

    /** A number, as {@link LogNumber} reads it. */
    double number(int cell, boolean commaIsDecimal, String unit) {
        return LogNumber.read(line, from[cell], to[cell], commaIsDecimal, unit);
    }

    /** Notes the cell that begins at a place; returns where the next begins. */
    private int cell(int begin) {
        int at = begin;
        while (at < line.length() && line.charAt(at) == ' ') {
            at++;
        }
        if (at < line.length() && line.charAt(at) == '"') {
            int close = line.indexOf('"', at + 1);
            while (close >= 0 && close + 1 < line.length() && line.charAt(close + 1) == '"') {
                close = line.indexOf('"', close + 2);
            }
            int end = close < 0 ? line.length() : close;
            note(at + 1, end, true);
            int next = line.indexOf(separator, Math.min(line.length(), end + 1));
            return next < 0 ? line.length() + 1 : next + 1;
        }
        int next = line.indexOf(separator, at);
        int end = next < 0 ? line.length() : next;
        note(at, end, false);
        return end + 1;
    }

    private void note(int begin, int end, boolean inQuotes) {
        if (size == from.length) {
            from = Arrays.copyOf(from, 2 * size);
            to = Arrays.copyOf(to, 2 * size);
            quoted = Arrays.copyOf(quoted, 2 * size);
        }
        int first = begin;
        int last = end;
        while (first < last && Character.isWhitespace(line.charAt(first))) {
            first++;
        }
        while (first < last && Character.isWhitespace(line.charAt(last - 1))) {
            last--;
        }
        from[size] = first;
        to[size] = last;
        quoted[size] = inQuotes;
        size++;
    }
}
