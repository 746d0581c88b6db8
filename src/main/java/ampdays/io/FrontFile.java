package ampdays.io;

import ampdays.results.Bounded;
import ampdays.results.Chances;
import ampdays.results.WholeFile;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;

/** The rows of a sweep that no other beats, with their chances. What stands in it is told in docs/OUTPUT.md. */
public final class FrontFile {
    /** Beside the table that it is taken from. */
    public static final String NAME = "front.csv";

    private static final List<String> SHARES = List.of("never empty", "all nights comfortable");
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT;

    private FrontFile() {}

    /**
     * Copies rows of a finished table into a table of their own.
     *
     * @param rows counted from zero, in the order wanted
     * @param chances of the rows, in the same order; none for a front by one trip
     */
    public static void write(Path folder, List<Integer> rows, List<Chances.Option> chances) throws IOException {
        Set<Integer> wanted = new HashSet<>(rows);
        Map<Integer, String> lines = new HashMap<>();
        String heading;
        try (BufferedReader table = Files.newBufferedReader(folder.resolve(SweepFiles.TABLE), StandardCharsets.UTF_8)) {
            heading = table.readLine();
            int row = 0;
            for (String line = table.readLine(); line != null; line = table.readLine()) {
                if (wanted.contains(row)) {
                    lines.put(row, line);
                }
                row++;
            }
        }
        WholeFile.writeText(folder.resolve(NAME), text -> {
            text.write(heading
                    + (chances.isEmpty() ? "" : ',' + FORMAT.format(headings().toArray()))
                    + '\n');
            for (int i = 0; i < rows.size(); i++) {
                String more = chances.isEmpty()
                        ? ""
                        : ',' + FORMAT.format(cells(chances.get(i)).toArray());
                text.write(lines.get(rows.get(i)) + more + '\n');
            }
        });
    }

    private static List<String> headings() {
        List<String> headings = new ArrayList<>(List.of("trips"));
        for (String share : SHARES) {
            headings.add(share + " (% of trips)");
            headings.add(share + ", low (% of trips)");
            headings.add(share + ", high (% of trips)");
        }
        return headings;
    }

    private static List<String> cells(Chances.Option chances) {
        List<String> cells =
                new ArrayList<>(List.of(Integer.toString(chances.trips().size())));
        for (Bounded share : List.of(chances.neverEmpty(), chances.comfortable())) {
            cells.addAll(List.of(
                    Numbers.percent(share.value()), Numbers.percent(share.low()), Numbers.percent(share.high())));
        }
        return cells;
    }
}
