package ampdays.sim;

import ampdays.weather.WeatherSeries;
import java.util.Locale;
import java.util.Optional;

/**
 * Checks whether the light of a weather file fits the sun of its place: a wrong time zone, clock change or meaning of the
 * stamps shows as light that comes too early or too late. Test: {@code SunFitTest}.
 */
public final class SunFit {
    private static final int QUARTER_SECONDS = 900;
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
        double asItIs = misfit(series, 0);
        double least = asItIs;
        int best = 0;
        for (int quarters = -MOST_QUARTERS; quarters <= MOST_QUARTERS; quarters++) {
            double misfit = misfit(series, quarters * QUARTER_SECONDS);
            if (misfit < least) {
                least = misfit;
                best = quarters;
            }
        }
        return least < CLEAR_MARGIN * asItIs ? best : 0;
    }

    /** Share of the light's variance that the sun's height, times one factor, does not explain. */
    static double misfit(WeatherSeries series, int shiftSeconds) {
        IntervalSun sun = IntervalSun.of(series.info(), series.size(), shiftSeconds);
        double lightLight = 0;
        double lightSun = 0;
        double sunSun = 0;
        for (int row = 0; row < series.size(); row++) {
            double light = series.ghiWm2(row);
            double height = sun.height(row);
            if (!Double.isNaN(light)) {
                lightLight += light * light;
                lightSun += light * height;
                sunSun += height * height;
            }
        }
        return lightLight > 0 && sunSun > 0 ? 1 - lightSun * lightSun / (lightLight * sunSun) : 1;
    }
}
