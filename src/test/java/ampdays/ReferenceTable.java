package ampdays;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A reference table of the test resources: '#' heading lines, a line of column names, rows. */
public final class ReferenceTable {
    private ReferenceTable() {}

    /** One row; columns are asked for by name. */
    public static final class Row {
        private final String line;
        private final Map<String, Integer> columns;
        private final String[] cells;

        private Row(String line, Map<String, Integer> columns) {
            this.line = line;
            this.columns = columns;
            this.cells = line.split(",", -1);
        }

        public String text(String column) {
            Integer index = columns.get(column);
            if (index == null) {
                throw new IllegalArgumentException("No column " + column + " among " + columns.keySet());
            }
            return cells[index];
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        @Override
        public String toString() {
            return line;
        }
    }

    public static List<Row> rows(String name) {
        var stream = ReferenceTable.class.getResourceAsStream("/reference/" + name + ".csv");
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            List<String> lines =
                    reader.lines().filter(line -> !line.startsWith("#")).toList();
            String[] names = lines.get(0).split(",", -1);
            Map<String, Integer> columns = IntStream.range(0, names.length)
                    .boxed()
                    .collect(Collectors.toMap((Function<Integer, String>) i -> names[i], Function.identity()));
            return lines.stream().skip(1).map(line -> new Row(line, columns)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
