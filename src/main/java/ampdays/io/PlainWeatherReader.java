package ampdays.io;

import ampdays.weather.WeatherSeries;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;

/** Reads our plain CSV, as {@code docs/WEATHER.md} describes it. */
final class PlainWeatherReader {
    static final Map<String, WeatherColumn> NAMES = names();

    /** A year for rows without one when they write 29 February. */
    private static final int LEAP_YEAR = 2024;

    private static final List<String> LEAP_DAY = List.of("02-29", "2-29");
    private static final Pattern TIME =
            Pattern.compile("(?:(\\d{4})-)?(\\d{1,2})-(\\d{1,2})[ T](\\d{1,2}):([0-5]\\d)(?::([0-5]\\d))?");
    private static final Pattern INTERVAL = Pattern.compile("(\\d{1,5}) *(s|min|h)");
    private static final Map<String, Double> STAMPS = Map.of("start", 0.0, "middle", 0.5, "end", 1.0);

    private final CsvText text;
    private final PlainHeading heading;
    private int yearOfNone = WeatherSeries.NOMINAL_YEAR;

    private PlainWeatherReader(CsvText text) {
        this.text = text;
        this.heading = PlainHeading.of(text);
    }

    private static Map<String, WeatherColumn> names() {
        Map<String, WeatherColumn> names = new LinkedHashMap<>();
        names.put("ghi W/m2", WeatherColumn.GHI);
        names.put("dni W/m2", WeatherColumn.DNI);
        names.put("dhi W/m2", WeatherColumn.DHI);
        names.put("air C", WeatherColumn.AIR);
        names.put("dew point C", WeatherColumn.DEW_POINT);
        names.put("relative humidity %", WeatherColumn.HUMIDITY);
        names.put("wind m/s", WeatherColumn.WIND);
        names.put("pressure Pa", WeatherColumn.PRESSURE);
        names.put("rain mm", WeatherColumn.RAIN);
        return Collections.unmodifiableMap(names);
    }

    /** Whether the file begins with a heading line or with a column of times. */
    static boolean recognises(CsvText text) {
        String first = text.line(1).toLowerCase(Locale.ROOT);
        return first.startsWith("#") || first.startsWith("time");
    }

    static WeatherSeries read(CsvText text) throws InputException {
        return new PlainWeatherReader(text).read();
    }

    private WeatherSeries read() throws InputException {
        int line = heading.lines() + 1;
        if (text.line(line).startsWith("month,")) {
            throw text.problem(
                    line,
                    1,
                    "these are monthly normals, not weather hour by hour. Make a year from them: ampdays weather make "
                            + text.file() + " --seed 1.");
        }
        WeatherAssembly.Place place = new WeatherAssembly.Place(
                heading.latitudeDeg(),
                heading.longitudeDeg(),
                heading.elevationM(),
                heading.utcOffsetHours(),
                intervalSeconds(),
                stampShare());
        List<WeatherColumn> columns = columns(line);
        text.throwIfWrong();
        WeatherRows rows = new WeatherRows(text, text.size());
        for (int row = line + 1; row <= text.size(); row++) {
            if (LEAP_DAY.stream().anyMatch(text.line(row)::startsWith)) {
                yearOfNone = LEAP_YEAR;
            }
        }
        if (line < text.size()) {
            List<CSVRecord> records = text.records(line + 1, text.size(), true);
            for (int i = 0; i < records.size(); i++) {
                readRow(rows, line + 1 + i, records.get(i), columns);
            }
        }
        return WeatherAssembly.series(text, rows, place);
    }

    private int intervalSeconds() {
        PlainHeading.Entry entry = heading.entry("interval", "such as 60 min");
        if (entry == null) {
            return 0;
        }
        Matcher interval = INTERVAL.matcher(entry.value());
        if (interval.matches()) {
            int unit = Map.of("s", 1, "min", 60, "h", 3600).get(interval.group(2));
            long seconds = Long.parseLong(interval.group(1)) * unit;
            if (seconds >= 10 && seconds <= 3 * 3600 && 86_400 % seconds == 0) {
                return (int) seconds;
            }
        }
        text.add(
                entry.line(),
                entry.column(),
                "interval is \"" + entry.value()
                        + "\"; expected is 10 s to 3 h, a whole part of a day, such as 60 min.");
        return 0;
    }

    private double stampShare() {
        PlainHeading.Entry entry = heading.entry("stamp", "start, middle or end of the interval");
        if (entry == null) {
            return 0;
        }
        Double share = STAMPS.get(entry.value().toLowerCase(Locale.ROOT));
        if (share == null) {
            text.add(
                    entry.line(),
                    entry.column(),
                    "stamp is \"" + entry.value() + "\"; expected is start, middle or end.");
            return 0;
        }
        return share;
    }

    /** The meaning of each cell of a row after the first; null for one that was not understood. */
    private List<WeatherColumn> columns(int line) throws InputException {
        List<String> names = text.cells(line);
        if (names.isEmpty() || !names.get(0).equals("time")) {
            throw text.problem(
                    line, 1, "after the heading must come the names of the columns, beginning with \"time\".");
        }
        List<WeatherColumn> columns = new ArrayList<>();
        for (int cell = 1; cell < names.size(); cell++) {
            WeatherColumn column = NAMES.get(names.get(cell));
            if (column == null) {
                text.add(
                        line,
                        text.column(line, cell),
                        "\"" + names.get(cell) + "\" is not a column; the columns are "
                                + String.join(", ", NAMES.keySet()) + ".");
            } else if (columns.contains(column)) {
                text.add(line, text.column(line, cell), "\"" + names.get(cell) + "\" is there twice.");
            }
            columns.add(column);
        }
        need(line, "ghi W/m2", columns.contains(WeatherColumn.GHI));
        need(line, "air C", columns.contains(WeatherColumn.AIR));
        need(
                line,
                "dew point C or relative humidity %",
                columns.contains(WeatherColumn.DEW_POINT) || columns.contains(WeatherColumn.HUMIDITY));
        return columns;
    }

    private void need(int line, String name, boolean there) {
        if (!there) {
            text.add(line, 0, "there is no column " + name + "; it is needed.");
        }
    }

    private void readRow(WeatherRows rows, int line, CSVRecord cells, List<WeatherColumn> columns) {
        if (cells.size() != columns.size() + 1) {
            text.add(
                    line,
                    0,
                    "cells in this row: " + cells.size() + "; names above: " + (columns.size() + 1) + "."
                            + (cells.size() > columns.size() + 1
                                    ? " A comma separates cells and may not stand in a number."
                                    : ""));
            return;
        }
        Matcher time = TIME.matcher(cells.get(0));
        try {
            if (!time.matches()) {
                throw new DateTimeException("not written as a date and a time");
            }
            boolean withYear = time.group(1) != null;
            int second = time.group(6) == null ? 0 : Integer.parseInt(time.group(6));
            rows.begin(
                    line,
                    withYear,
                    WeatherRows.time(
                            withYear ? Integer.parseInt(time.group(1)) : yearOfNone,
                            Integer.parseInt(time.group(2)),
                            Integer.parseInt(time.group(3)),
                            3600 * Integer.parseInt(time.group(4)) + 60 * Integer.parseInt(time.group(5)) + second));
        } catch (DateTimeException e) {
            text.add(
                    line,
                    1,
                    "\"" + cells.get(0)
                            + "\" is no time; expected is 2026-07-08 13:00, or 07-08 13:00 for any year, up to 24:00.");
            return;
        }
        for (int i = 0; i < columns.size(); i++) {
            String written = cells.get(i + 1);
            if (!written.isEmpty()) {
                WeatherColumn column = columns.get(i);
                double value = text.number(line, i + 1, written, column.label);
                if (!Double.isNaN(value)) {
                    rows.set(column, i + 1, value);
                }
            }
        }
    }
}
