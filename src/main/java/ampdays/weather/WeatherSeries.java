package ampdays.weather;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Weather at one place in equal intervals, as a file gives it. Irradiances are means over the interval and are not a number
 * where unknown; all else holds at one instant of the interval ({@link SeriesInfo#instantShare}). Immutable: columns are
 * copied where they enter and never handed out.
 */
public final class WeatherSeries {
    /** The year, without a 29 February, in which a typical year is laid. */
    public static final int NOMINAL_YEAR = 2023;

    static final int DAY_SECONDS = 86_400;
    private static final int YEAR_SECONDS = 365 * DAY_SECONDS;
    private static final long NOMINAL_START = LocalDate.of(NOMINAL_YEAR, 1, 1).toEpochDay() * DAY_SECONDS;
    private static final DateTimeFormatter MONTH_DAY = DateTimeFormatter.ofPattern("MM-dd", Locale.ROOT);

    private final SeriesInfo info;
    private final double[] ghiWm2;
    private final double[] dniWm2;
    private final double[] dhiWm2;
    private final double[] airC;
    private final double[] dewPointC;
    private final double[] windMs;
    private final double[] pressurePa;
    /** Empty when unknown. */
    private final double[] rainMm;

    private WeatherSeries(
            SeriesInfo info,
            double[] ghiWm2,
            double[] dniWm2,
            double[] dhiWm2,
            double[] airC,
            double[] dewPointC,
            double[] windMs,
            double[] pressurePa,
            double[] rainMm) {
        int size = ghiWm2.length;
        for (double[] column : List.of(dniWm2, dhiWm2, airC, dewPointC, windMs, pressurePa)) {
            if (column.length != size) {
                throw new IllegalArgumentException(
                        "The columns of a weather series differ in length: " + size + " and " + column.length + ".");
            }
        }
        if (rainMm.length != 0 && rainMm.length != size) {
            throw new IllegalArgumentException("A weather series has rain in every interval, or none at all.");
        }
        if (size == 0) {
            throw new IllegalArgumentException("A weather series has at least one interval.");
        }
        if (info.typicalYear() && (long) size * info.stepSeconds() > YEAR_SECONDS) {
            throw new IllegalArgumentException("A typical year has at most 365 days.");
        }
        this.info = info;
        this.ghiWm2 = ghiWm2;
        this.dniWm2 = dniWm2;
        this.dhiWm2 = dhiWm2;
        this.airC = airC;
        this.dewPointC = dewPointC;
        this.windMs = windMs;
        this.pressurePa = pressurePa;
        this.rainMm = rainMm;
    }

    /**
     * A series from its columns.
     *
     * @param ghiWm2 global horizontal irradiance
     * @param dniWm2 beam irradiance facing the sun
     * @param dhiWm2 diffuse horizontal irradiance
     * @param airC air temperature
     * @param dewPointC dew point
     * @param windMs wind speed at 10 m height
     * @param pressurePa air pressure
     */
    public static WeatherSeries of(
            SeriesInfo info,
            double[] ghiWm2,
            double[] dniWm2,
            double[] dhiWm2,
            double[] airC,
            double[] dewPointC,
            double[] windMs,
            double[] pressurePa) {
        return new WeatherSeries(
                info,
                ghiWm2.clone(),
                dniWm2.clone(),
                dhiWm2.clone(),
                airC.clone(),
                dewPointC.clone(),
                windMs.clone(),
                pressurePa.clone(),
                new double[0]);
    }

    /** The same series with other irradiances and notes that say why. */
    public WeatherSeries withIrradiance(double[] ghi, double[] dni, double[] dhi, List<String> moreNotes) {
        return new WeatherSeries(
                info.withNotes(moreNotes),
                ghi.clone(),
                dni.clone(),
                dhi.clone(),
                airC,
                dewPointC,
                windMs,
                pressurePa,
                rainMm);
    }

    /** The same series with other air temperatures and dew points. */
    public WeatherSeries withAir(double[] air, double[] dewPoint) {
        return new WeatherSeries(
                info, ghiWm2, dniWm2, dhiWm2, air.clone(), dewPoint.clone(), windMs, pressurePa, rainMm);
    }

    /** The same series with the rain of each interval, mm. */
    public WeatherSeries withRain(double[] mm) {
        return new WeatherSeries(info, ghiWm2, dniWm2, dhiWm2, airC, dewPointC, windMs, pressurePa, mm.clone());
    }

    /**
     * Some rows of a typical year; behind its last row follows its first.
     *
     * @param fromRow first row
     * @param rows how many, at most all
     */
    public WeatherSeries part(int fromRow, int rows) {
        boolean overTheEnd = fromRow + rows > size();
        if (!info.typicalYear() || rows > size() || (overTheEnd && (long) size() * info.stepSeconds() < YEAR_SECONDS)) {
            throw new IllegalArgumentException(source() + " has no " + rows + " rows from row " + fromRow + ".");
        }
        return new WeatherSeries(
                info.startingAt(info.startEpochSecond() + (long) fromRow * info.stepSeconds()),
                part(ghiWm2, fromRow, rows),
                part(dniWm2, fromRow, rows),
                part(dhiWm2, fromRow, rows),
                part(airC, fromRow, rows),
                part(dewPointC, fromRow, rows),
                part(windMs, fromRow, rows),
                part(pressurePa, fromRow, rows),
                rainMm.length == 0 ? rainMm : part(rainMm, fromRow, rows));
    }

    private static double[] part(double[] column, int from, int rows) {
        double[] part = new double[rows];
        Arrays.setAll(part, i -> column[(from + i) % column.length]);
        return part;
    }

    public SeriesInfo info() {
        return info;
    }

    public String source() {
        return info.source();
    }

    public List<String> notes() {
        return info.notes();
    }

    /** Number of intervals. */
    public int size() {
        return ghiWm2.length;
    }

    public double ghiWm2(int row) {
        return ghiWm2[row];
    }

    public double dniWm2(int row) {
        return dniWm2[row];
    }

    public double dhiWm2(int row) {
        return dhiWm2[row];
    }

    public double airC(int row) {
        return airC[row];
    }

    public double dewPointC(int row) {
        return dewPointC[row];
    }

    public double windMs(int row) {
        return windMs[row];
    }

    public double pressurePa(int row) {
        return pressurePa[row];
    }

    /** Whether the series has rain, be it none that fell. */
    public boolean knowsRain() {
        return rainMm.length > 0;
    }

    /**
     * Rain in the intervals that begin within a time, mm; NaN where the series knows no rain.
     *
     * @param fromEpochSecond beginning of the time
     * @param toEpochSecond its end
     */
    public double rainMm(long fromEpochSecond, long toEpochSecond) {
        if (!knowsRain()) {
            return Double.NaN;
        }
        double sumMm = 0;
        for (long time = fromEpochSecond; time < toEpochSecond; time += info.stepSeconds()) {
            int row = rowAt(time);
            sumMm += row < 0 ? 0 : rainMm[row];
        }
        return sumMm;
    }

    /** Beginning of an interval in local standard time; the year of a typical year is {@link #NOMINAL_YEAR}. */
    public LocalDateTime localStart(int row) {
        long second = info.startEpochSecond() + (long) row * info.stepSeconds() + info.utcOffsetSeconds();
        long laid = info.typicalYear()
                ? NOMINAL_START + Math.floorMod(second - NOMINAL_START, (long) YEAR_SECONDS)
                : second;
        return LocalDateTime.ofEpochSecond(laid, 0, ZoneOffset.UTC);
    }

    /** The interval that contains an instant, or −1 when the series does not cover it. A typical year repeats. */
    int rowAt(long epochSecond) {
        long sinceStart = epochSecond - info.startEpochSecond();
        if (info.typicalYear()) {
            LocalDateTime local = LocalDateTime.ofEpochSecond(epochSecond + info.utcOffsetSeconds(), 0, ZoneOffset.UTC);
            sinceStart = Math.floorMod(
                    inNominalYear(local).toEpochSecond(ZoneOffset.UTC)
                            - info.utcOffsetSeconds()
                            - info.startEpochSecond(),
                    (long) YEAR_SECONDS);
        }
        long row = Math.floorDiv(sinceStart, info.stepSeconds());
        return row >= 0 && row < size() ? (int) row : -1;
    }

    /** The same month, day and time in the nominal year; 29 February repeats 28 February. */
    public static LocalDateTime inNominalYear(LocalDateTime local) {
        LocalDate date = local.toLocalDate().withYear(NOMINAL_YEAR);
        return date.atTime(local.toLocalTime());
    }

    /** The days that the series covers, for messages. */
    public String coverage() {
        LocalDate first = localStart(0).toLocalDate();
        LocalDate last = localStart(size() - 1).toLocalDate();
        if (!info.typicalYear()) {
            return first + " to " + last;
        }
        return MONTH_DAY.format(first) + " to " + MONTH_DAY.format(last) + " of any year";
    }
}
