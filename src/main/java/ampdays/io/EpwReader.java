package ampdays.io;

import ampdays.weather.WeatherSeries;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads EPW: eight heading lines, then rows stamped at the end of their interval in local standard time. Field positions and
 * missing codes after the Auxiliary Programs manual of the building-energy program that the format was made for, 2.9
 * (weather file field descriptions).
 */
final class EpwReader {
    private static final int FIELDS_NEEDED = 22;
    private static final int HOUR = 3;

    /** A field that is read: its position, the value from which on it counts as missing. */
    private record Field(WeatherColumn column, int cell, double missingFrom) {}

    private static final List<Field> FIELDS = List.of(
            new Field(WeatherColumn.AIR, 6, 99.9),
            new Field(WeatherColumn.DEW_POINT, 7, 99.9),
            new Field(WeatherColumn.HUMIDITY, 8, 999),
            new Field(WeatherColumn.PRESSURE, 9, 999_999),
            new Field(WeatherColumn.GHI, 13, 9999),
            new Field(WeatherColumn.DNI, 14, 9999),
            new Field(WeatherColumn.DHI, 15, 9999),
            new Field(WeatherColumn.WIND, 21, 999),
            new Field(WeatherColumn.RAIN, 33, 999));

    private final CsvText text;
    private int rowsPerHour;
    private int rowInHour;
    private LocalDateTime hourBefore = LocalDateTime.MIN;

    private EpwReader(CsvText text) {
        this.text = text;
    }

    static WeatherSeries read(CsvText text) throws InputException {
        return new EpwReader(text).read();
    }

    private WeatherSeries read() throws InputException {
        List<String> location = text.cells(1);
        if (location.size() < 10) {
            throw text.problem(
                    1,
                    0,
                    "the LOCATION line has " + location.size() + " fields; needed are 10, the last four being latitude,"
                            + " longitude, hours from UTC and elevation.");
        }
        double latitudeDeg = HeadingNumbers.within(text, 1, 6, location.get(6), "latitude", -90, 90);
        double longitudeDeg = HeadingNumbers.within(text, 1, 7, location.get(7), "longitude", -180, 180);
        double offsetHours = HeadingNumbers.within(text, 1, 8, location.get(8), "offset from UTC", -12, 14);
        double elevationM = HeadingNumbers.within(text, 1, 9, location.get(9), "elevation", -500, 9000);
        int periods = dataPeriodsLine();
        WeatherRows rows = new WeatherRows(text, text.size() - periods);
        List<CSVRecord> records = text.records(periods + 1, text.size(), false);
        for (int i = 0; i < records.size(); i++) {
            readRow(rows, periods + 1 + i, records.get(i));
        }
        return WeatherAssembly.series(
                text,
                rows,
                new WeatherAssembly.Place(latitudeDeg, longitudeDeg, elevationM, offsetHours, 3600 / rowsPerHour, 1));
    }

    /** Finds the last heading line and reads from it how many rows make an hour. */
    private int dataPeriodsLine() throws InputException {
        for (int line = 1; line <= text.size() && line <= 20; line++) {
            if (!text.line(line).toUpperCase(Locale.ROOT).startsWith("DATA PERIODS")) {
                continue;
            }
            List<String> cells = text.cells(line);
            String periods = cells.size() > 1 ? cells.get(1) : "";
            String perHour = cells.size() > 2 ? cells.get(2) : "";
            if (!periods.equals("1")) {
                throw text.problem(
                        line,
                        text.column(line, 1),
                        "the file has \"" + periods + "\" data periods; only files with 1 are read.");
            }
            rowsPerHour = perHour.matches("[1-9][0-9]?") ? Integer.parseInt(perHour) : 0;
            if (rowsPerHour == 0 || 60 % rowsPerHour != 0) {
                throw text.problem(
                        line,
                        text.column(line, 2),
                        "rows per hour is \"" + perHour + "\"; possible is a divisor of 60, mostly 1.");
            }
            return line;
        }
        throw text.problem(
                0, 0, "an EPW file has a line DATA PERIODS before its rows; there is none in the first 20 lines.");
    }

    private void readRow(WeatherRows rows, int line, CSVRecord cells) {
        if (cells.size() < FIELDS_NEEDED) {
            text.add(
                    line,
                    0,
                    "fields in this row: " + cells.size() + "; needed are at least " + FIELDS_NEEDED
                            + " (up to the wind speed).");
            return;
        }
        LocalDateTime end = end(line, cells);
        if (end == null) {
            return;
        }
        rows.begin(line, true, end);
        for (Field field : FIELDS) {
            if (field.cell >= cells.size()) {
                continue;
            }
            double value = text.number(line, field.cell, cells.get(field.cell), field.column.label);
            if (value < field.missingFrom) {
                rows.set(field.column, field.cell, value);
            }
        }
    }

    /** End of the row's interval; null after noting a problem. The minute field is not used: conventions differ. */
    private LocalDateTime end(int line, CSVRecord cells) {
        int[] date = new int[HOUR + 1];
        for (int i = 0; i < date.length; i++) {
            try {
                date[i] = Integer.parseInt(cells.get(i));
            } catch (NumberFormatException e) {
                text.add(
                        line,
                        text.column(line, i),
                        "\"" + cells.get(i) + "\" is not a whole number; the row begins with year, month, day, hour.");
                return null;
            }
        }
        try {
            if (date[HOUR] < 1 || date[HOUR] > 24) {
                throw new DateTimeException("no such hour");
            }
            LocalDateTime hour = WeatherRows.time(date[0], date[1], date[2], 3600 * (date[HOUR] - 1));
            rowInHour = hour.equals(hourBefore) ? rowInHour + 1 : 1;
            hourBefore = hour;
            return hour.plusMinutes(60L * rowInHour / rowsPerHour);
        } catch (DateTimeException e) {
            text.add(
                    line,
                    1,
                    "there is no hour " + date[HOUR] + " of " + date[0] + "-" + date[1] + "-" + date[2]
                            + "; expected is a day of the calendar and an hour from 1 to 24.");
            return null;
        }
    }
}
