package ampdays.sim;

import ampdays.sun.SunPath;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * Checks whether the light of a weather file fits the sun of its place: a wrong time zone, clock change or meaning of the
 * stamps shows as light that comes too early or too late. Test: {@code SunFitTest}.
 *
 * <p>Two signs are looked at. Where a file has all three kinds of light, the beam on the level, {@code DNI cos z}, must make up
 * what global light has beyond diffuse light: clouds do not matter there, and a quarter of an hour shows. Where it has not, or
 * no shift would mend what does not close, global light is compared with the sun's height, which shows half an hour under a
 * clear sky and an hour under any. Give the series as its file has it: light made by {@link SkyCompletion} closes by its making.
 */
public final class SunFit {
    private static final int QUARTER_SECONDS = 900;
    /** Shortest step of the sun, for intervals that quarter hours do not divide. */
    private static final int SHORT_STEP_SECONDS = 300;

    private static final int MOST_QUARTERS = 12;
    /** To what share global light's misfit must shrink before a warning is given; afternoon clouds feign less. */
    private static final double GLOBAL_MARGIN = 0.85;
    /** The same for light that does not close; a right file closes best as it is. */
    private static final double CLOSURE_MARGIN = 0.5;
    /** A smaller misfit is rounding; stamps a quarter of an hour off leave twice as much. */
    private static final double LEAST_MISFIT = 0.001;

    private final WeatherSeries series;
    private final int sunStepSeconds;
    private final double[] heightSums;

    private SunFit(WeatherSeries series) {
        this.series = series;
        this.sunStepSeconds = series.info().stepSeconds() % QUARTER_SECONDS == 0 ? QUARTER_SECONDS : SHORT_STEP_SECONDS;
        this.heightSums = heightSums(series.info(), series.size(), sunStepSeconds);
    }

    /**
     * Compares the light with the sun's height under shifts of the stamps from −3 h to +3 h by quarter hours.
     *
     * @return a sentence with the shift that would fit, or nothing when the file fits as it is
     */
    public static Optional<String> warning(WeatherSeries series) {
        SunFit fit = new SunFit(series);
        if (fit.closureMisfit(0) <= LEAST_MISFIT) {
            return Optional.empty();
        }
        int byClosure = bestShiftQuarters(fit::closureMisfit, CLOSURE_MARGIN);
        int best = byClosure != 0 ? byClosure : bestShiftQuarters(fit::globalMisfit, GLOBAL_MARGIN);
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

    private static int bestShiftQuarters(IntToDoubleFunction misfitOfShift, double margin) {
        double asItIs = misfitOfShift.applyAsDouble(0);
        double least = asItIs;
        int best = 0;
        for (int quarters = -MOST_QUARTERS; quarters <= MOST_QUARTERS; quarters++) {
            double misfit = misfitOfShift.applyAsDouble(quarters);
            if (misfit < least) {
                least = misfit;
                best = quarters;
            }
        }
        return asItIs > LEAST_MISFIT && least < margin * asItIs ? best : 0;
    }

    /** Running sums of {@code max(cos z, 0)} in steps that divide a quarter hour, from 3 h before the series to 3 h after. */
    private static double[] heightSums(SeriesInfo info, int intervals, int stepSeconds) {
        int marginSteps = MOST_QUARTERS * QUARTER_SECONDS / stepSeconds;
        int steps = Math.toIntExact((long) intervals * info.stepSeconds() / stepSeconds) + 2 * marginSteps + 1;
        SunPath path = SunPath.of(
                info.latitudeDeg(),
                info.longitudeDeg(),
                info.elevationM(),
                info.startEpochSecond() - MOST_QUARTERS * QUARTER_SECONDS,
                stepSeconds,
                steps);
        double[] sums = new double[steps + 1];
        for (int i = 0; i < steps; i++) {
            double up = path.cosZenith(i);
            sums[i + 1] = sums[i] + (up > 0 ? up : 0);
        }
        return sums;
    }

    /** Share of the light beyond diffuse that the beam on the level does not explain, squared; 1 when nothing is known. */
    private double closureMisfit(int shiftQuarters) {
        double rest = 0;
        double light = 0;
        for (int row = 0; row < series.size(); row++) {
            double beyondDiffuse = series.ghiWm2(row) - series.dhiWm2(row);
            double misfit = beyondDiffuse - series.dniWm2(row) * height(row, shiftQuarters);
            if (!Double.isNaN(misfit)) {
                rest += misfit * misfit;
                light += beyondDiffuse * beyondDiffuse;
            }
        }
        return light > 0 ? rest / light : 1;
    }

    /** Share of global light, squared, that the sun's height times one factor does not explain. */
    private double globalMisfit(int shiftQuarters) {
        double lightLight = 0;
        double lightSun = 0;
        double sunSun = 0;
        for (int row = 0; row < series.size(); row++) {
            double light = series.ghiWm2(row);
            if (!Double.isNaN(light)) {
                double height = height(row, shiftQuarters);
                lightLight += light * light;
                lightSun += light * height;
                sunSun += height * height;
            }
        }
        return lightLight > 0 && sunSun > 0 ? 1 - lightSun * lightSun / (lightLight * sunSun) : 1;
    }

    /** Mean height of the sun in an interval whose stamps are shifted. */
    private double height(int row, int shiftQuarters) {
        int interval = series.info().stepSeconds();
        long begin = (long) (MOST_QUARTERS + shiftQuarters) * QUARTER_SECONDS + (long) row * interval;
        int from = (int) (begin / sunStepSeconds);
        int to = (int) ((begin + interval) / sunStepSeconds);
        int last = to > from ? to : from + 1;
        return (heightSums[last] - heightSums[from]) / (last - from);
    }
}
