package ampdays.io;

import ampdays.weather.MonthlyNormals;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads monthly normals: heading lines as in our plain weather files, then a row for each month. */
public final class NormalsReader {
    private static final List<String> COLUMNS =
            List.of("month", "ghi kWh/m2", "max C", "min C", "wind m/s", "dew point C");

    private NormalsReader() {}

    /**
     * Reads a file of normals, as {@code docs/WEATHER.md} describes it.
     *
     * @throws IOException when the file cannot be read
     * @throws InputException when it can, but is not usable
     */
    public static MonthlyNormals read(Path path) throws IOException, InputException {
        WeatherText text = WeatherText.of(String.valueOf(path.getFileName()), Files.readAllBytes(path));
        PlainHeading heading = PlainHeading.of(text);
        double latitudeDeg = heading.latitudeDeg();
        double longitudeDeg = heading.longitudeDeg();
        double elevationM = heading.elevationM();
        double utcOffsetHours = heading.utcOffsetHours();
        PlainHeading.Entry title = heading.entry("title", "a name for tables");
        int names = heading.lines() + 1;
        if (!text.cells(names).equals(COLUMNS)) {
            text.add(names, 1, "the columns must be " + String.join(",", COLUMNS) + ".");
        }
        text.throwIfWrong();
        List<MonthlyNormals.Month> months = new ArrayList<>();
        for (int line = names + 1; line <= text.size(); line++) {
            months.add(month(text, line, months.size() + 1));
        }
        if (months.size() != 12) {
            throw text.problem(text.size(), 0, "after this line are " + months.size() + " months; needed are 12.");
        }
        return new MonthlyNormals(title.value(), latitudeDeg, longitudeDeg, elevationM, utcOffsetHours, months);
    }

    private static MonthlyNormals.Month month(WeatherText text, int line, int month) throws InputException {
        List<String> cells = text.cells(line);
        if (cells.size() != COLUMNS.size() || !cells.get(0).equals(Integer.toString(month))) {
            throw text.problem(line, 1, "expected are the " + COLUMNS.size() + " cells of month " + month + ".");
        }
        double[] values = new double[COLUMNS.size()];
        for (int cell = 1; cell < values.length; cell++) {
            values[cell] = text.number(line, cell, cells.get(cell), COLUMNS.get(cell));
        }
        text.throwIfWrong();
        try {
            return new MonthlyNormals.Month(values[1], values[2], values[3], values[4], values[5]);
        } catch (IllegalArgumentException e) {
            throw text.problem(line, 0, e.getMessage());
        }
    }
}
