package ampdays.io;

import ampdays.results.Fate;
import ampdays.results.SweepRows;
import ampdays.results.SweepTable;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads the table of a sweep again, as far as charts and summaries need it; row by row, so that it may be long. */
public final class SweepReader {
    private static final int OPTION = 1;
    private static final String TREND = "trend (% per day)";
    private static final String LOWEST = "lowest state of charge (%)";
    private static final String NIGHTS = "comfortable nights";

    private SweepReader() {}

    /**
     * Reads a table that a sweep wrote.
     *
     * @throws InputException when it is not such a table
     */
    public static SweepTable read(Path file) throws IOException, InputException {
        try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8);
                CSVParser rows = CSVFormat.DEFAULT.builder().setHeader().get().parse(text)) {
            List<String> headings = rows.getHeaderNames();
            int firstMetric = headings.indexOf(SweepFiles.FIRST_METRIC);
            Optional<String> price = headings.stream()
                    .filter(heading -> heading.startsWith(SweepFiles.PRICE))
                    .findFirst();
            if (firstMetric <= OPTION
                    || price.isEmpty()
                    || !headings.containsAll(
                            List.of("holds", TREND, LOWEST, NIGHTS, SweepFiles.MASS, SweepFiles.PANELS))) {
                throw new InputException(List.of(new InputProblem(
                        file.toString(), 1, 0, "This is no table of a sweep. Give a file sweep.csv.")));
            }
            return read(rows, headings.subList(OPTION, firstMetric), price.get());
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static SweepTable read(CSVParser table, List<String> varied, String price) {
        SweepRows rows = new SweepRows(varied, price.replaceFirst(".*\\((.*)\\)$", "$1"));
        for (CSVRecord row : table) {
            rows.add(new SweepRows.Row(
                    row.toList().subList(OPTION, OPTION + varied.size()),
                    fate(row),
                    number(row.get(SweepFiles.FIRST_METRIC)),
                    number(row.get(LOWEST)),
                    number(row.get(NIGHTS)),
                    number(row.get(price)),
                    number(row.get(SweepFiles.MASS)),
                    number(row.get(SweepFiles.PANELS))));
        }
        return rows.table();
    }

    private static Fate fate(CSVRecord row) {
        return row.get("holds").isEmpty()
                ? Fate.IMPOSSIBLE
                : Fate.of(
                        row.get("holds").equals("yes"),
                        number(row.get(SweepFiles.FIRST_METRIC)),
                        number(row.get(TREND)));
    }

    private static double number(String cell) {
        return cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
    }
}
