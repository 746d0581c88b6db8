package ampdays.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A plain table for the terminal: a column of labels and one column per option, broken into blocks that fit. */
final class Table {
    private static final int WIDTH = 100;
    private static final int MOST_COLUMN = 13;
    private static final String GAP = "  ";

    private final List<String> heads;
    private final List<String> labels = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();

    Table(List<String> heads) {
        this.heads = heads;
    }

    void row(String label, List<String> cells) {
        labels.add(label);
        rows.add(cells);
    }

    void print(PrintWriter out) {
        int labelWidth = labels.stream().mapToInt(String::length).max().orElse(0);
        int perBlock = Math.max(1, (WIDTH - labelWidth) / (MOST_COLUMN + GAP.length()));
        for (int from = 0; from < heads.size(); from += perBlock) {
            int to = Math.min(heads.size(), from + perBlock);
            printRow(out, labelWidth, "", heads.subList(from, to), true);
            for (int row = 0; row < rows.size(); row++) {
                printRow(out, labelWidth, labels.get(row), rows.get(row).subList(from, to), false);
            }
            out.println();
        }
    }

    /** One row; cells of several lines stand at the top, or at the bottom. */
    private static void printRow(PrintWriter out, int labelWidth, String label, List<String> cells, boolean atBottom) {
        List<List<String>> wrapped = cells.stream().map(Table::wrap).toList();
        int lines = wrapped.stream().mapToInt(List::size).max().orElse(1);
        for (int line = 0; line < lines; line++) {
            StringBuilder text =
                    new StringBuilder(String.format(Locale.ROOT, "%-" + labelWidth + "s", line == 0 ? label : ""));
            for (List<String> cell : wrapped) {
                int at = atBottom ? line - (lines - cell.size()) : line;
                String part = at >= 0 && at < cell.size() ? cell.get(at) : "";
                text.append(GAP).append(String.format(Locale.ROOT, "%" + MOST_COLUMN + "s", part));
            }
            out.println(text.toString().stripTrailing());
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
