package ampdays.io;

import ampdays.sun.AirMass;
import ampdays.weather.Psychrometrics;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Makes a series of the rows that a reader found: puts them in order of time, mends small gaps, says what it did. */
final class WeatherAssembly {
    private static final int YEAR_SECONDS = 365 * 86_400;
    private static final int LONGEST_GAP_SECONDS = 6 * 3600;
    private static final double ASSUMED_WIND_MS = 2;

    private final CsvText text;
    private final WeatherRows rows;
    private final Place place;
    private final List<String> notes = new ArrayList<>();

    /**
     * What the heading of a file says.
     *
     * @param stepSeconds length of an interval
     * @param stampShare where in its interval a stamp stands: 0 start, 0.5 middle, 1 end
     */
    record Place(
            double latitudeDeg,
            double longitudeDeg,
            double elevationM,
            double utcOffsetHours,
            int stepSeconds,
            double stampShare) {}

    private WeatherAssembly(CsvText text, WeatherRows rows, Place place) {
        this.text = text;
        this.rows = rows;
        this.place = place;
    }

    static WeatherSeries series(CsvText text, WeatherRows rows, Place place) throws InputException {
        text.throwIfWrong();
        if (rows.size() == 0) {
            throw text.problem(0, 0, "the file has a heading but no rows.");
        }
        return new WeatherAssembly(text, rows, place).build();
    }

    private WeatherSeries build() throws InputException {
        LocalDateTime[] starts = new LocalDateTime[rows.size()];
        long beforeStamp = Math.round(place.stampShare() * place.stepSeconds());
        for (int row = 0; row < starts.length; row++) {
            starts[row] = rows.stamp(row).time().minusSeconds(beforeStamp);
        }
        boolean typical = !isConsecutive(starts);
        int[] kept = typical ? typicalOrder(starts) : allRows(starts.length);
        LocalDateTime first = typical ? WeatherRows.nominal(starts[kept[0]]) : starts[kept[0]];
        long offsetSeconds = Math.round(place.utcOffsetHours() * 3600);

        double[] airC = mended(WeatherColumn.AIR, pick(WeatherColumn.AIR, kept), kept, LONGEST_GAP_SECONDS);
        double[] dewPointC = mended(WeatherColumn.DEW_POINT, dewPoints(kept, airC), kept, LONGEST_GAP_SECONDS);
        double[] windMs = mended(WeatherColumn.WIND, wind(kept), kept, YEAR_SECONDS);
        double[] pressurePa = mended(WeatherColumn.PRESSURE, pressure(kept), kept, YEAR_SECONDS);
        double[] ghiWm2 = light(WeatherColumn.GHI, kept);
        double[] dniWm2 = light(WeatherColumn.DNI, kept);
        double[] dhiWm2 = light(WeatherColumn.DHI, kept);
        checkLight(ghiWm2, dniWm2, dhiWm2, kept);
        double[] rainMm = rain(kept);
        text.throwIfWrong();

        SeriesInfo info = new SeriesInfo(
                text.file(),
                place.latitudeDeg(),
                place.longitudeDeg(),
                place.elevationM(),
                place.utcOffsetHours(),
                first.toEpochSecond(ZoneOffset.UTC) - offsetSeconds,
                place.stepSeconds(),
                typical,
                place.stampShare(),
                notes);
        WeatherSeries series = WeatherSeries.of(info, ghiWm2, dniWm2, dhiWm2, airC, dewPointC, windMs, pressurePa);
        return rainMm.length == 0 ? series : series.withRain(rainMm);
    }

    private static int[] allRows(int size) {
        int[] all = new int[size];
        Arrays.setAll(all, i -> i);
        return all;
    }

    /** Whether the rows have years and follow each other in real time. */
    private boolean isConsecutive(LocalDateTime[] starts) {
        for (int row = 0; row < starts.length; row++) {
            if (!rows.stamp(row).withYear()) {
                return false;
            }
            if (row > 0 && Duration.between(starts[row - 1], starts[row]).toSeconds() != place.stepSeconds()) {
                return false;
            }
        }
        return true;
    }

    /** The rows that follow each other when years do not count and 29 February is left out. */
    private int[] typicalOrder(LocalDateTime[] starts) throws InputException {
        int[] kept = new int[starts.length];
        int size = 0;
        for (int row = 0; row < starts.length; row++) {
            if (isLeapDay(starts[row])) {
                continue;
            }
            if (size > 0) {
                int before = kept[size - 1];
                long step =
                        Math.floorMod(nominalSecond(starts[row]) - nominalSecond(starts[before]), (long) YEAR_SECONDS);
                if (step != place.stepSeconds()) {
                    throw outOfOrder(before, row);
                }
            }
            kept[size++] = row;
        }
        if (size == 0) {
            throw text.problem(
                    rows.stamp(0).line(),
                    0,
                    "all rows are for a 29 February of no known year; write the year, or give other days too.");
        }
        if ((long) size * place.stepSeconds() > YEAR_SECONDS) {
            throw text.problem(
                    rows.stamp(kept[YEAR_SECONDS / place.stepSeconds()]).line(),
                    0,
                    "from this row on the file is longer than a year, but its years are missing or do not follow each"
                            + " other; give rows of consecutive years, or of one year.");
        }
        if (size < starts.length) {
            notes.add("29 February was left out, because the file counts as a year of no date");
        }
        return Arrays.copyOf(kept, size);
    }

    private static boolean isLeapDay(LocalDateTime time) {
        return time.getMonthValue() == 2 && time.getDayOfMonth() == 29;
    }

    private static long nominalSecond(LocalDateTime time) {
        return WeatherRows.nominal(time).toEpochSecond(ZoneOffset.UTC);
    }

    private InputException outOfOrder(int before, int row) {
        WeatherRows.Stamp last = rows.stamp(before);
        WeatherRows.Stamp here = rows.stamp(row);
        DateTimeFormatter form = DateTimeFormatter.ofPattern(
                (here.withYear() ? "yyyy-" : "") + "MM-dd HH:mm" + (place.stepSeconds() % 60 == 0 ? "" : ":ss"),
                Locale.ROOT);
        return text.problem(
                here.line(),
                0,
                "this row is for " + form.format(here.time()) + ", but after " + form.format(last.time()) + " (line "
                        + last.line() + ") must come " + form.format(last.time().plusSeconds(place.stepSeconds()))
                        + "; rows must follow each other every " + minutes(place.stepSeconds())
                        + " without gaps or repeats.");
    }

    private static String minutes(int seconds) {
        return seconds % 60 == 0 ? seconds / 60 + " min" : seconds + " s";
    }

    private double[] pick(WeatherColumn column, int[] kept) {
        double[] all = rows.column(column);
        double[] picked = new double[kept.length];
        Arrays.setAll(picked, i -> all[kept[i]]);
        return picked;
    }

    private double[] light(WeatherColumn column, int[] kept) {
        double[] wm2 = pick(column, kept);
        for (int i = 0; i < wm2.length; i++) {
            wm2[i] = wm2[i] < 0 ? 0 : wm2[i];
        }
        return wm2;
    }

    private void checkLight(double[] ghiWm2, double[] dniWm2, double[] dhiWm2, int[] kept) {
        int missing = 0;
        int firstRow = 0;
        for (int i = 0; i < kept.length; i++) {
            if (Double.isNaN(ghiWm2[i]) && Double.isNaN(dniWm2[i] + dhiWm2[i])) {
                firstRow = missing == 0 ? kept[i] : firstRow;
                missing++;
            }
        }
        if (missing > 0) {
            text.add(
                    rows.stamp(firstRow).line(),
                    0,
                    "global irradiance is missing here" + andMore(missing - 1)
                            + ", and beam and diffuse irradiance are not both there to make it from.");
        }
    }

    private static String andMore(int rows) {
        return rows == 0 ? "" : rows == 1 ? " and in 1 more row" : " and in " + rows + " more rows";
    }

    /** Dew points as given, or made from relative humidity where they are missing. */
    private double[] dewPoints(int[] kept, double[] airC) {
        double[] dewPointC = pick(WeatherColumn.DEW_POINT, kept);
        double[] humidity = pick(WeatherColumn.HUMIDITY, kept);
        int made = 0;
        for (int i = 0; i < dewPointC.length; i++) {
            if (Double.isNaN(dewPointC[i]) && !Double.isNaN(humidity[i])) {
                double percent = humidity[i] < 1 ? 1 : humidity[i] > 100 ? 100 : humidity[i];
                dewPointC[i] = Psychrometrics.dewPointC(airC[i], percent / 100);
                made++;
            }
        }
        if (made > 0) {
            notes.add("the dew point was made from relative humidity in " + made + " of " + kept.length + " rows");
        }
        return dewPointC;
    }

    private double[] wind(int[] kept) {
        double[] windMs = pick(WeatherColumn.WIND, kept);
        if (Arrays.stream(windMs).allMatch(Double::isNaN)) {
            Arrays.fill(windMs, ASSUMED_WIND_MS);
            notes.add("no wind in the file: 2 m/s is assumed (guess)");
        }
        return windMs;
    }

    private double[] pressure(int[] kept) {
        double[] pressurePa = pick(WeatherColumn.PRESSURE, kept);
        if (Arrays.stream(pressurePa).allMatch(Double::isNaN)) {
            Arrays.fill(pressurePa, AirMass.standardPressurePa(place.elevationM()));
            notes.add("no air pressure in the file: that of the standard atmosphere is used");
        }
        return pressurePa;
    }

    /** Rain, dry where a row does not say it; empty when fewer than half of the rows say it. */
    private double[] rain(int[] kept) {
        double[] rainMm = pick(WeatherColumn.RAIN, kept);
        int missing = 0;
        for (int i = 0; i < rainMm.length; i++) {
            if (Double.isNaN(rainMm[i])) {
                rainMm[i] = 0;
                missing++;
            }
        }
        if (2 * missing > rainMm.length) {
            return new double[0];
        }
        if (missing > 0) {
            notes.add("rain was missing in " + missing + " of " + kept.length + " rows, which count as dry");
        }
        return rainMm;
    }

    /** Draws a straight line over each gap, or holds the neighbour at an end; a gap too long is a problem. */
    private double[] mended(WeatherColumn column, double[] values, int[] kept, int longestSeconds) {
        int mended = 0;
        for (int i = 0; i < values.length; ) {
            if (!Double.isNaN(values[i])) {
                i++;
                continue;
            }
            int end = i;
            while (end < values.length && Double.isNaN(values[end])) {
                end++;
            }
            if (end - i == values.length || (long) (end - i) * place.stepSeconds() > longestSeconds) {
                text.add(
                        rows.stamp(kept[i]).line(),
                        0,
                        column.label + " is missing here" + andMore(end - i - 1)
                                + "; a gap may last 6 h, over which a straight line is drawn.");
                return values;
            }
            double before = i > 0 ? values[i - 1] : values[end];
            double after = end < values.length ? values[end] : before;
            for (int k = i; k < end; k++) {
                values[k] = before + (after - before) * (k - i + 1) / (end - i + 1);
            }
            mended += end - i;
            i = end;
        }
        if (mended > 0) {
            notes.add(
                    column.label + " was missing in " + mended + " of " + values.length + " rows and was interpolated");
        }
        return values;
    }
}
