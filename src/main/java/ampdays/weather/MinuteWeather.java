package ampdays.weather;

import java.time.LocalDateTime;
import java.time.ZoneOffset;

/**
 * Weather laid over the steps of a trip. Temperature, humidity ratio and wind run straight from one row's instant to the
 * next and hold for the middle of a step; irradiances are means over the step.
 *
 * <p>The light of an interval follows the sun's height within it and keeps the interval's energy: GHI and DHI share that
 * shape, and beam is {@code (GHI − DHI)/cos z}, at most what arrives outside the atmosphere; what exceeds that counts as
 * diffuse. Light that the sun's height cannot explain (more than arrives outside the atmosphere; all of it when the sun is
 * down) is spread evenly as diffuse. So {@code GHI = DNI cos z + DHI} in every step. Of an interval cut by an end of the trip
 * the part inside has the interval's mean. The method is ours (no source); test: {@code MinuteWeatherTest}.
 */
public final class MinuteWeather {
    private final double[] ghiWm2;
    private final double[] dniWm2;
    private final double[] dhiWm2;
    private final double[] airC;
    private final double[] humidityRatio;
    private final double[] windMs;

    private MinuteWeather(int steps) {
        ghiWm2 = new double[steps];
        dniWm2 = new double[steps];
        dhiWm2 = new double[steps];
        airC = new double[steps];
        humidityRatio = new double[steps];
        windMs = new double[steps];
    }

    /**
     * Lays a series over a trip.
     *
     * @param series with GHI and DHI known in every interval
     * @param cosZenith cosine of the sun's zenith angle at the middle of each step
     * @param extraterrestrialWm2 normal irradiance outside the atmosphere in each step
     * @param startEpochSecond beginning of the first step
     * @param stepSeconds length of a step
     * @param steps number of steps
     * @throws IllegalArgumentException when the series does not cover the trip
     */
    public static MinuteWeather of(
            WeatherSeries series,
            double[] cosZenith,
            double[] extraterrestrialWm2,
            long startEpochSecond,
            int stepSeconds,
            int steps) {
        MinuteWeather minutes = new MinuteWeather(steps);
        long first = firstInterval(series, startEpochSecond);
        int[] rows = rows(series, first, startEpochSecond, startEpochSecond + (long) steps * stepSeconds);
        minutes.fillInstants(series, rows, startEpochSecond - first, stepSeconds);
        minutes.fillLight(series, rows, cosZenith, extraterrestrialWm2, startEpochSecond - first, stepSeconds);
        return minutes;
    }

    /**
     * Refuses a series that does not cover a trip.
     *
     * @param startEpochSecond beginning of the trip
     * @param endEpochSecond end of the trip
     * @throws IllegalArgumentException with the dates that the series covers
     */
    public static void requireCovers(WeatherSeries series, long startEpochSecond, long endEpochSecond) {
        rows(series, firstInterval(series, startEpochSecond), startEpochSecond, endEpochSecond);
    }

    private static long firstInterval(WeatherSeries series, long startEpochSecond) {
        return startEpochSecond
                - Math.floorMod(
                        startEpochSecond - series.info().startEpochSecond(),
                        series.info().stepSeconds());
    }

    /** Rows of the intervals that touch the trip, with one neighbour (or the end itself once more) on either side. */
    private static int[] rows(WeatherSeries series, long first, long start, long end) {
        int interval = series.info().stepSeconds();
        int touched = Math.toIntExact(Math.floorDiv(end - first + interval - 1, (long) interval));
        int[] rows = new int[touched + 2];
        for (int k = 0; k < rows.length; k++) {
            rows[k] = series.rowAt(first + (long) (k - 1) * interval);
            if (rows[k] < 0 && k > 0 && k <= touched) {
                throw new IllegalArgumentException("The weather of " + series.source() + " covers "
                        + series.coverage() + "; the trip from " + localDay(series, start) + " to "
                        + localDay(series, end - 1) + " is not within that.");
            }
        }
        rows[0] = rows[0] < 0 ? rows[1] : rows[0];
        rows[touched + 1] = rows[touched + 1] < 0 ? rows[touched] : rows[touched + 1];
        return rows;
    }

    private static String localDay(WeatherSeries series, long epochSecond) {
        return LocalDateTime.ofEpochSecond(epochSecond + series.info().utcOffsetSeconds(), 0, ZoneOffset.UTC)
                .toLocalDate()
                .toString();
    }

    private void fillInstants(WeatherSeries series, int[] rows, long secondsIntoFirst, int stepSeconds) {
        double interval = series.info().stepSeconds();
        double[] ratio = new double[rows.length];
        for (int k = 0; k < rows.length; k++) {
            ratio[k] = Psychrometrics.humidityRatio(series.dewPointC(rows[k]), series.pressurePa(rows[k]));
        }
        double offset = 1 - series.info().instantShare() + secondsIntoFirst / interval;
        for (int i = 0; i < airC.length; i++) {
            double at = offset + (i + 0.5) * stepSeconds / interval;
            int k = (int) at;
            double share = at - k;
            int from = rows[k];
            int to = rows[k + 1];
            airC[i] = series.airC(from) + share * (series.airC(to) - series.airC(from));
            windMs[i] = series.windMs(from) + share * (series.windMs(to) - series.windMs(from));
            humidityRatio[i] = ratio[k] + share * (ratio[k + 1] - ratio[k]);
        }
    }

    private void fillLight(
            WeatherSeries series,
            int[] rows,
            double[] cosZenith,
            double[] extraterrestrialWm2,
            long secondsIntoFirst,
            int stepSeconds) {
        int interval = series.info().stepSeconds();
        for (int k = 1; k < rows.length - 1; k++) {
            long begin = (k - 1L) * interval - secondsIntoFirst;
            spread(
                    series.ghiWm2(rows[k]),
                    series.dhiWm2(rows[k]),
                    begin,
                    begin + interval,
                    cosZenith,
                    extraterrestrialWm2,
                    stepSeconds);
        }
        for (int i = 0; i < ghiWm2.length; i++) {
            double beamWm2 = ghiWm2[i] - dhiWm2[i];
            if (cosZenith[i] > 0 && beamWm2 > 0) {
                double dni = beamWm2 / cosZenith[i];
                dniWm2[i] = dni < extraterrestrialWm2[i] ? dni : extraterrestrialWm2[i];
                dhiWm2[i] = ghiWm2[i] - dniWm2[i] * cosZenith[i];
            } else {
                dhiWm2[i] = ghiWm2[i];
            }
        }
    }

    /** Adds the light of one interval (its begin and end in seconds from the trip's start) to the steps it touches. */
    private void spread(
            double ghi,
            double dhi,
            long begin,
            long end,
            double[] cosZenith,
            double[] extraterrestrialWm2,
            int stepSeconds) {
        int from = (int) (begin > 0 ? begin / stepSeconds : 0);
        long afterLast = (end + stepSeconds - 1) / stepSeconds;
        int to = (int) (afterLast < ghiWm2.length ? afterLast : ghiWm2.length);
        double inside = 0;
        double height = 0;
        double outsideJ = 0;
        for (int i = from; i < to; i++) {
            double seconds = overlap(i, stepSeconds, begin, end);
            double up = cosZenith[i] > 0 ? cosZenith[i] * seconds : 0;
            inside += seconds;
            height += up;
            outsideJ += up * extraterrestrialWm2[i];
        }
        double energyJ = ghi * inside;
        double shapedJ = energyJ < outsideJ ? energyJ : outsideJ;
        double diffuseShare = ghi > 0 ? (dhi < ghi ? dhi / ghi : 1) : 0;
        double evenWm2 = inside > 0 ? (energyJ - shapedJ) / inside : 0;
        double perHeight = height > 0 ? shapedJ / height : 0;
        for (int i = from; i < to; i++) {
            double share = overlap(i, stepSeconds, begin, end) / stepSeconds;
            double shapedWm2 = cosZenith[i] > 0 ? perHeight * cosZenith[i] * share : 0;
            ghiWm2[i] += shapedWm2 + evenWm2 * share;
            dhiWm2[i] += shapedWm2 * diffuseShare + evenWm2 * share;
        }
    }

    private static double overlap(int step, int stepSeconds, long begin, long end) {
        long stepBegin = (long) step * stepSeconds;
        long stepEnd = stepBegin + stepSeconds;
        return (stepEnd < end ? stepEnd : end) - (stepBegin > begin ? stepBegin : begin);
    }

    public int steps() {
        return airC.length;
    }

    /** Global horizontal irradiance. */
    public double ghiWm2(int step) {
        return ghiWm2[step];
    }

    /** Beam irradiance on a plane facing the sun. */
    public double dniWm2(int step) {
        return dniWm2[step];
    }

    /** Diffuse horizontal irradiance. */
    public double dhiWm2(int step) {
        return dhiWm2[step];
    }

    public double airC(int step) {
        return airC[step];
    }

    /** Warmest air of the steps from {@code from} up to {@code to}, without the latter, °C. */
    public double warmestC(int from, int to) {
        double warmest = airC[from];
        for (int i = from; i < to; i++) {
            warmest = airC[i] > warmest ? airC[i] : warmest;
        }
        return warmest;
    }

    /** Coolest air of the steps from {@code from} up to {@code to}, without the latter, °C. */
    public double coolestC(int from, int to) {
        double coolest = airC[from];
        for (int i = from; i < to; i++) {
            coolest = airC[i] < coolest ? airC[i] : coolest;
        }
        return coolest;
    }

    /** Mass of water per mass of dry air, kg/kg. */
    public double humidityRatio(int step) {
        return humidityRatio[step];
    }

    /** Wind speed at 10 m height. */
    public double windMs(int step) {
        return windMs[step];
    }
}
