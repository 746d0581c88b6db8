package ampdays.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A plain table for the terminal: a column of labels and one column per option, broken into blocks that fit. A cell is broken
 * into lines where it needs to be, at its spaces but not within what was {@link #whole kept whole}. Test: {@code TableTest}.
 */
final class Table {
    private static final int WIDTH = 100;
    private static final int MOST_COLUMN = 13;
    private static final String GAP = "  ";
    private static final char UNBROKEN = '\u00A0';

    private final List<String> heads;
    private final List<String> labels = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();

    Table(List<String> heads) {
        this.heads = heads;
    }

    /** Words that stand on one line of a cell, which makes its column as wide as they need. */
    static String whole(String words) {
        return words.replace(' ', UNBROKEN);
    }

    void row(String label, List<String> cells) {
        labels.add(label);
        rows.add(cells);
    }

    void print(PrintWriter out) {
        int labelWidth = labels.stream().mapToInt(String::length).max().orElse(0);
        List<Integer> widths =
                IntStream.range(0, heads.size()).mapToObj(this::width).toList();
        int from = 0;
        while (from < heads.size()) {
            int to = from;
            int room = WIDTH - labelWidth;
            do {
                room -= GAP.length() + widths.get(to);
                to++;
            } while (to < heads.size() && room >= GAP.length() + widths.get(to));
            List<Integer> block = widths.subList(from, to);
            printRow(out, labelWidth, "", block, heads.subList(from, to), true);
            for (int row = 0; row < rows.size(); row++) {
                printRow(out, labelWidth, labels.get(row), block, rows.get(row).subList(from, to), false);
            }
            out.println();
            from = to;
        }
    }

    private int width(int column) {
        return Stream.concat(Stream.of(heads.get(column)), rows.stream().map(row -> row.get(column)))
                .flatMap(cell -> wrap(cell).stream())
                .filter(line -> line.indexOf(UNBROKEN) >= 0)
                .mapToInt(String::length)
                .reduce(MOST_COLUMN, Math::max);
    }

    /** One row; cells of several lines stand at the top, or at the bottom. */
    private static void printRow(
            PrintWriter out, int labelWidth, String label, List<Integer> widths, List<String> cells, boolean atBottom) {
        List<List<String>> wrapped = cells.stream().map(Table::wrap).toList();
        int lines = wrapped.stream().mapToInt(List::size).max().orElse(1);
        for (int line = 0; line < lines; line++) {
            StringBuilder text =
                    new StringBuilder(String.format(Locale.ROOT, "%-" + labelWidth + "s", line == 0 ? label : ""));
            for (int column = 0; column < wrapped.size(); column++) {
                List<String> cell = wrapped.get(column);
                int at = atBottom ? line - (lines - cell.size()) : line;
                String part = at >= 0 && at < cell.size() ? cell.get(at) : "";
                text.append(GAP).append(String.format(Locale.ROOT, "%" + widths.get(column) + "s", part));
            }
            out.println(text.toString().replace(UNBROKEN, ' ').stripTrailing());
        }
    }

    private static List<String> wrap(String cell) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : cell.split(" ", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > MOST_COLUMN) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
