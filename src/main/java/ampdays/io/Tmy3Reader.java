package ampdays.io;

import ampdays.weather.WeatherSeries;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads TMY3 as comma-separated values: a line for the place, a line of column names, hourly rows stamped at their end in
 * local standard time; −9900 is missing. Columns are found by name, whichever way it is written: "Dry-bulb (C)" and
 * "DryBulb" are the same. Source: S. Wilcox and W. Marion, 2008, Users manual for TMY3 data sets, NREL/TP-581-43156.
 */
final class Tmy3Reader {
    private static final double MISSING_BELOW = -9000;
    private static final int FIRST_ROW = 3;
    private static final Pattern DATE = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4})");
    private static final Pattern TIME = Pattern.compile("(\\d{1,2}):([0-5]\\d)");

    private static final Map<WeatherColumn, String> NAMES = new EnumMap<>(Map.of(
            WeatherColumn.GHI, "ghi",
            WeatherColumn.DNI, "dni",
            WeatherColumn.DHI, "dhi",
            WeatherColumn.AIR, "drybulb",
            WeatherColumn.DEW_POINT, "dewpoint",
            WeatherColumn.HUMIDITY, "rhum",
            WeatherColumn.PRESSURE, "pressure",
            WeatherColumn.WIND, "wspd",
            WeatherColumn.RAIN, "lprecipdepth"));

    private final CsvText text;
    private final List<String> names;

    private Tmy3Reader(CsvText text) throws InputException {
        this.text = text;
        this.names = text.cells(2).stream().map(Tmy3Reader::plainName).toList();
    }

    /** Whether the second line names the columns of a TMY3 file. */
    static boolean recognises(CsvText text) {
        String second = text.line(2).toLowerCase(Locale.ROOT);
        return second.startsWith("date") && second.contains("time");
    }

    static WeatherSeries read(CsvText text) throws InputException {
        return new Tmy3Reader(text).read();
    }

    /** A column's name without its unit, capitals and signs. */
    private static String plainName(String name) {
        return name.replaceAll("\\(.*", "").toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    }

    private WeatherSeries read() throws InputException {
        List<String> place = text.cells(1);
        if (place.size() < 7) {
            throw text.problem(
                    1,
                    0,
                    "the first line has " + place.size()
                            + " fields; needed are 7: station, name, state, hours from UTC,"
                            + " latitude, longitude, elevation.");
        }
        double offsetHours = HeadingNumbers.within(text, 1, 3, place.get(3), "offset from UTC", -12, 14);
        double latitudeDeg = HeadingNumbers.within(text, 1, 4, place.get(4), "latitude", -90, 90);
        double longitudeDeg = HeadingNumbers.within(text, 1, 5, place.get(5), "longitude", -180, 180);
        double elevationM = HeadingNumbers.within(text, 1, 6, place.get(6), "elevation", -500, 9000);
        Map<WeatherColumn, Integer> cells = columns();
        WeatherRows rows = new WeatherRows(text, text.size());
        List<CSVRecord> records = text.records(FIRST_ROW, text.size(), true);
        for (int i = 0; i < records.size(); i++) {
            readRow(rows, FIRST_ROW + i, records.get(i), cells);
        }
        return WeatherAssembly.series(
                text, rows, new WeatherAssembly.Place(latitudeDeg, longitudeDeg, elevationM, offsetHours, 3600, 1));
    }

    private Map<WeatherColumn, Integer> columns() throws InputException {
        Map<WeatherColumn, Integer> cells = new EnumMap<>(WeatherColumn.class);
        NAMES.forEach((column, name) -> {
            int cell = names.indexOf(name);
            if (cell >= 0) {
                cells.put(column, cell);
            }
        });
        need(cells.containsKey(WeatherColumn.GHI), "GHI");
        need(cells.containsKey(WeatherColumn.AIR), "Dry-bulb");
        need(
                cells.containsKey(WeatherColumn.DEW_POINT) || cells.containsKey(WeatherColumn.HUMIDITY),
                "Dew-point or RHum");
        text.throwIfWrong();
        return cells;
    }

    private void need(boolean there, String name) {
        if (!there) {
            text.add(2, 0, "no column is named " + name + ", which is needed.");
        }
    }

    private void readRow(WeatherRows rows, int line, CSVRecord cells, Map<WeatherColumn, Integer> columns) {
        if (cells.size() < names.size()) {
            text.add(line, 0, "fields in this row: " + cells.size() + "; names in line 2: " + names.size() + ".");
            return;
        }
        Matcher date = DATE.matcher(cells.get(0));
        Matcher time = TIME.matcher(cells.get(1));
        LocalDateTime end;
        try {
            if (!date.matches() || !time.matches()) {
                throw new DateTimeException("not written as a date and a time");
            }
            end = WeatherRows.time(
                    Integer.parseInt(date.group(3)),
                    Integer.parseInt(date.group(1)),
                    Integer.parseInt(date.group(2)),
                    3600 * Integer.parseInt(time.group(1)) + 60 * Integer.parseInt(time.group(2)));
        } catch (DateTimeException e) {
            text.add(
                    line,
                    1,
                    "\"" + cells.get(0) + " " + cells.get(1)
                            + "\" is no date and time; expected is MM/DD/YYYY and HH:MM, 01:00 to 24:00.");
            return;
        }
        rows.begin(line, true, end);
        columns.forEach((column, cell) -> {
            double value = text.number(line, cell, cells.get(cell), column.label);
            if (value > MISSING_BELOW) {
                rows.set(column, cell, column == WeatherColumn.PRESSURE ? 100 * value : value);
            }
        });
    }
}
