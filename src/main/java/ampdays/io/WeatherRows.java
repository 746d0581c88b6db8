package ampdays.io;

import ampdays.weather.WeatherSeries;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The rows of a weather file as they were read: where they stand, when they hold, what they say. */
final class WeatherRows {
    private final CsvText text;
    private final List<Stamp> stamps = new ArrayList<>();
    private final Map<WeatherColumn, double[]> values = new EnumMap<>(WeatherColumn.class);

    /**
     * No rows yet.
     *
     * @param most the number of rows that may follow
     */
    WeatherRows(CsvText text, int most) {
        this.text = text;
        for (WeatherColumn column : WeatherColumn.values()) {
            values.put(column, new double[most]);
        }
    }

    /** When a row holds, by local standard time: its line, whether the year was given, the stamp. */
    record Stamp(int line, boolean withYear, LocalDateTime time) {}

    int size() {
        return stamps.size();
    }

    Stamp stamp(int row) {
        return stamps.get(row);
    }

    /** One column, without spare room. */
    double[] column(WeatherColumn column) {
        return Arrays.copyOf(values.get(column), size());
    }

    /** Begins a row; its values are missing until set. */
    void begin(int line, boolean withYear, LocalDateTime time) {
        int row = stamps.size();
        stamps.add(new Stamp(line, withYear, time));
        for (double[] column : values.values()) {
            column[row] = Double.NaN;
        }
    }

    /** Sets a value of the row begun last, or notes why it cannot be. */
    void set(WeatherColumn column, int cell, double value) {
        int line = stamps.get(stamps.size() - 1).line();
        if (value < column.least || value > column.most) {
            text.add(
                    line,
                    text.column(line, cell),
                    column.label + " is " + plain(value) + " " + column.unit + "; possible is " + plain(column.least)
                            + " to " + plain(column.most) + " " + column.unit + ". Check the column and its unit.");
            return;
        }
        values.get(column)[stamps.size() - 1] = value;
    }

    /** A number as a person writes it. */
    static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    /**
     * A day and a time since its midnight, up to 24:00.
     *
     * @throws DateTimeException when there is no such day or time
     */
    static LocalDateTime time(int year, int month, int day, int secondOfDay) {
        if (secondOfDay < 0 || secondOfDay > 86_400) {
            throw new DateTimeException("no such time of day");
        }
        return LocalDate.of(year, month, day).atStartOfDay().plusSeconds(secondOfDay);
    }

    /** Moves a stamp into the nominal year; 29 February keeps its place by becoming the 28th. */
    static LocalDateTime nominal(LocalDateTime time) {
        return WeatherSeries.inNominalYear(time);
    }
}
