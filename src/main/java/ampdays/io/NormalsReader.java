package ampdays.io;

import ampdays.weather.MonthlyNormals;
import ampdays.weather.MonthlyNormals.DaySpread;
import ampdays.weather.MonthlyNormals.Month;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads monthly normals: heading lines as in our plain weather files, then a row for each month. */
public final class NormalsReader {
    static final List<String> MEANS = List.of("month", "ghi kWh/m2", "max C", "min C", "wind m/s", "dew point C");
    static final List<String> SPREADS =
            List.of("clearness spread", "max spread K", "min spread K", "dew point spread K");

    private static final List<String> ALL =
            Stream.concat(MEANS.stream(), SPREADS.stream()).toList();

    private NormalsReader() {}

    /**
     * Reads a file of normals, as {@code docs/WEATHER.md} describes it.
     *
     * @throws IOException when the file cannot be read
     * @throws InputException when it can, but is not usable
     */
    public static MonthlyNormals read(Path path) throws IOException, InputException {
        CsvText text = CsvText.read(path);
        PlainHeading heading = PlainHeading.of(text);
        int names = heading.lines() + 1;
        if (!text.line(1).startsWith("#") || text.line(names).startsWith("time")) {
            throw text.problem(
                    1,
                    1,
                    "the file begins with \"" + text.beginning()
                            + "\", but these are not monthly normals. If it is a weather"
                            + " file, \"ampdays weather fit " + text.file()
                            + "\" gives its normals; see docs/WEATHER.md.");
        }
        double latitudeDeg = heading.latitudeDeg();
        double longitudeDeg = heading.longitudeDeg();
        double elevationM = heading.elevationM();
        double utcOffsetHours = heading.utcOffsetHours();
        PlainHeading.Entry title = heading.entry("title", "a name for tables");
        List<String> columns = text.cells(names);
        if (!columns.equals(MEANS) && !columns.equals(ALL)) {
            text.add(
                    names,
                    1,
                    "the columns must be " + String.join(",", MEANS) + ", and may go on with "
                            + String.join(",", SPREADS) + ".");
        }
        text.throwIfWrong();
        List<Month> months = new ArrayList<>();
        for (int line = names + 1; line <= text.size(); line++) {
            months.add(month(text, line, months.size() + 1, columns));
        }
        if (months.size() != 12) {
            throw text.problem(
                    text.size(),
                    0,
                    "the months end here after " + months.size() + " of 12; one row is needed for each.");
        }
        return new MonthlyNormals(title.value(), latitudeDeg, longitudeDeg, elevationM, utcOffsetHours, months);
    }

    private static Month month(CsvText text, int line, int month, List<String> columns) throws InputException {
        List<String> cells = text.cells(line);
        if (month > 12) {
            throw text.problem(line, 0, "after the twelve months nothing may follow.");
        }
        if (cells.size() != columns.size() || !cells.get(0).equals(Integer.toString(month))) {
            throw text.problem(
                    line, 1, "expected are the " + columns.size() + " cells of month " + month + ", its number first.");
        }
        double[] values = new double[ALL.size()];
        for (int cell = 1; cell < columns.size(); cell++) {
            values[cell] = text.number(line, cell, cells.get(cell), columns.get(cell));
        }
        text.throwIfWrong();
        try {
            Optional<DaySpread> spread = columns.size() == MEANS.size()
                    ? Optional.empty()
                    : Optional.of(new DaySpread(values[6], values[7], values[8], values[9]));
            return new Month(values[1], values[2], values[3], values[4], values[5], spread);
        } catch (IllegalArgumentException e) {
            throw text.problem(line, 0, e.getMessage());
        }
    }
}
