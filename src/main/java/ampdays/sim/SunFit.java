package ampdays.sim;

import ampdays.sun.SunPath;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.util.Locale;
import java.util.Optional;

/**
 * Checks whether the light of a weather file fits the sun of its place: a wrong time zone, clock change or meaning of the
 * stamps shows as light that comes too early or too late. Test: {@code SunFitTest}.
 */
public final class SunFit {
    private static final int QUARTER_SECONDS = 900;
    private static final int SUN_STEP_SECONDS = 300;
    private static final int MOST_QUARTERS = 12;
    /** By how much the misfit must shrink before a warning is given; clouds that come every afternoon feign less. */
    private static final double CLEAR_MARGIN = 0.85;

    private SunFit() {}

    /**
     * Compares the global light with the sun's height under shifts of the stamps from −3 h to +3 h by quarter hours.
     *
     * @return a sentence with the shift that would fit, or nothing when the file fits as it is
     */
    public static Optional<String> warning(WeatherSeries series) {
        int best = bestShiftQuarters(series);
        if (best == 0) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "the light of %s comes %s than the sun of %.2f, %.2f: it would fit with stamps %d min %s. Check the offset"
                        + " from UTC, summer time, and whether stamps mean start or end.",
                series.source(),
                best > 0 ? "earlier" : "later",
                series.info().latitudeDeg(),
                series.info().longitudeDeg(),
                Math.abs(best) * QUARTER_SECONDS / 60,
                best > 0 ? "later" : "earlier"));
    }

    private static int bestShiftQuarters(WeatherSeries series) {
        double[] heightSums = heightSums(series.info(), series.size());
        double asItIs = misfit(series, heightSums, 0);
        double least = asItIs;
        int best = 0;
        for (int quarters = -MOST_QUARTERS; quarters <= MOST_QUARTERS; quarters++) {
            double misfit = misfit(series, heightSums, quarters);
            if (misfit < least) {
                least = misfit;
                best = quarters;
            }
        }
        return least < CLEAR_MARGIN * asItIs ? best : 0;
    }

    /** Running sums of {@code max(cos z, 0)} in steps that divide a quarter hour, from 3 h before the series to 3 h after. */
    private static double[] heightSums(SeriesInfo info, int intervals) {
        int marginSteps = MOST_QUARTERS * QUARTER_SECONDS / SUN_STEP_SECONDS;
        int steps = Math.toIntExact((long) intervals * info.stepSeconds() / SUN_STEP_SECONDS) + 2 * marginSteps + 1;
        SunPath path = SunPath.of(
                info.latitudeDeg(),
                info.longitudeDeg(),
                info.elevationM(),
                info.startEpochSecond() - MOST_QUARTERS * QUARTER_SECONDS,
                SUN_STEP_SECONDS,
                steps);
        double[] sums = new double[steps + 1];
        for (int i = 0; i < steps; i++) {
            double up = path.cosZenith(i);
            sums[i + 1] = sums[i] + (up > 0 ? up : 0);
        }
        return sums;
    }

    /** Share of the light's variance that the sun's height, times one factor, does not explain. */
    private static double misfit(WeatherSeries series, double[] heightSums, int shiftQuarters) {
        long firstSecond = (long) (MOST_QUARTERS + shiftQuarters) * QUARTER_SECONDS;
        int interval = series.info().stepSeconds();
        double lightLight = 0;
        double lightSun = 0;
        double sunSun = 0;
        for (int row = 0; row < series.size(); row++) {
            double light = series.ghiWm2(row);
            if (Double.isNaN(light)) {
                continue;
            }
            long begin = firstSecond + (long) row * interval;
            int from = (int) (begin / SUN_STEP_SECONDS);
            int to = (int) ((begin + interval) / SUN_STEP_SECONDS);
            int last = to > from ? to : from + 1;
            double height = (heightSums[last] - heightSums[from]) / (last - from);
            lightLight += light * light;
            lightSun += light * height;
            sunSun += height * height;
        }
        return lightLight > 0 && sunSun > 0 ? 1 - lightSun * lightSun / (lightLight * sunSun) : 1;
    }
}
