package ampdays.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** A plain table for the terminal: a column of labels and one column per option, broken into blocks that fit. */
final class Table {
    private static final int WIDTH = 100;
    private static final int MOST_COLUMN = 18;

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
        int perBlock = Math.max(1, (WIDTH - labelWidth) / (MOST_COLUMN + 2));
        for (int from = 0; from < heads.size(); from += perBlock) {
            printBlock(out, labelWidth, from, Math.min(heads.size(), from + perBlock));
        }
    }

    private void printBlock(PrintWriter out, int labelWidth, int from, int to) {
        int[] widths = new int[to];
        List<List<String>> wrapped = new ArrayList<>();
        int headLines = 1;
        for (int column = from; column < to; column++) {
            List<String> lines = wrap(heads.get(column));
            wrapped.add(lines);
            headLines = Math.max(headLines, lines.size());
            widths[column] = lines.stream().mapToInt(String::length).max().orElse(0);
            for (List<String> row : rows) {
                widths[column] = Math.max(widths[column], row.get(column).length());
            }
        }
        for (int line = 0; line < headLines; line++) {
            StringBuilder text = new StringBuilder(" ".repeat(labelWidth));
            for (int column = from; column < to; column++) {
                List<String> lines = wrapped.get(column - from);
                int at = line - (headLines - lines.size());
                text.append("  ").append(right(at < 0 ? "" : lines.get(at), widths[column]));
            }
            out.println(text.toString().stripTrailing());
        }
        for (int row = 0; row < rows.size(); row++) {
            StringBuilder text = new StringBuilder(left(labels.get(row), labelWidth));
            for (int column = from; column < to; column++) {
                text.append("  ").append(right(rows.get(row).get(column), widths[column]));
            }
            out.println(text.toString().stripTrailing());
        }
        out.println();
    }

    private static List<String> wrap(String head) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : head.split(" ", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > MOST_COLUMN) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static String left(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }
}
