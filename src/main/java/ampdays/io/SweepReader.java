package ampdays.io;

import ampdays.results.Fate;
import ampdays.results.SweepTable;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    private final List<ColumnBuilder> columns = new ArrayList<>();
    private final List<Double> daysToEmpty = new ArrayList<>();
    private final List<Fate> fates = new ArrayList<>();
    private final List<Double> lowest = new ArrayList<>();
    private final List<Double> nights = new ArrayList<>();
    private final List<Double> prices = new ArrayList<>();
    private final List<Double> masses = new ArrayList<>();
    private final List<Double> panels = new ArrayList<>();

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
            return new SweepReader().read(rows, headings.subList(0, firstMetric), price.get());
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private SweepTable read(CSVParser rows, List<String> headings, String price) {
        for (int i = OPTION; i < headings.size(); i++) {
            columns.add(new ColumnBuilder(headings.get(i)));
        }
        for (CSVRecord row : rows) {
            for (int i = 0; i < columns.size(); i++) {
                columns.get(i).add(row.get(i + OPTION));
            }
            daysToEmpty.add(number(row.get(SweepFiles.FIRST_METRIC)));
            fates.add(fate(row));
            lowest.add(number(row.get(LOWEST)));
            nights.add(number(row.get(NIGHTS)));
            prices.add(number(row.get(price)));
            masses.add(number(row.get(SweepFiles.MASS)));
            panels.add(number(row.get(SweepFiles.PANELS)));
        }
        return new SweepTable(
                columns.stream()
                        .map(ColumnBuilder::build)
                        .filter(column -> column.values().size() > 1)
                        .toList(),
                daysToEmpty,
                fates,
                lowest,
                nights,
                prices,
                masses,
                panels,
                price.replaceFirst(".*\\((.*)\\)$", "$1"));
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

    /** Collects the values of a knob, each once. */
    private static final class ColumnBuilder {
        private final String heading;
        private final Map<String, Integer> placeOf = new LinkedHashMap<>();
        private final List<Integer> places = new ArrayList<>();

        ColumnBuilder(String heading) {
            this.heading = heading;
        }

        void add(String value) {
            Integer known = placeOf.putIfAbsent(value, placeOf.size());
            places.add(known == null ? placeOf.size() - 1 : known);
        }

        SweepTable.Column build() {
            return new SweepTable.Column(heading, List.copyOf(placeOf.keySet()), places);
        }
    }
}
