package ampdays.sim;

import ampdays.sun.DiffuseSplit;
import ampdays.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.List;

/**
 * Fills in beam, diffuse or global light that a weather series lacks, so that every interval has all three: the missing one
 * from the other two where both are known, else by the split of Erbs, Klein and Duffie (1982) at the mean height of the sun
 * in the interval. A note says in how many intervals. Test: {@code SkyCompletionTest}.
 */
public final class SkyCompletion {
    private SkyCompletion() {}

    /**
     * The same series with no light missing; the series itself when nothing was.
     *
     * @throws IllegalArgumentException when an interval has neither global light nor both others
     */
    public static WeatherSeries complete(WeatherSeries series) {
        return lacksLight(series) ? fill(series, IntervalSun.of(series.info(), series.size())) : series;
    }

    /** The same where the sun over the series is known already. */
    static WeatherSeries complete(WeatherSeries series, IntervalSun sun) {
        return lacksLight(series) ? fill(series, sun) : series;
    }

    private static boolean lacksLight(WeatherSeries series) {
        boolean missing = false;
        for (int row = 0; row < series.size(); row++) {
            missing |= Double.isNaN(series.ghiWm2(row) + series.dniWm2(row) + series.dhiWm2(row));
        }
        return missing;
    }

    private static WeatherSeries fill(WeatherSeries series, IntervalSun sun) {
        int size = series.size();
        double[] ghiWm2 = new double[size];
        double[] dniWm2 = new double[size];
        double[] dhiWm2 = new double[size];
        int bySum = 0;
        int byErbs = 0;
        for (int row = 0; row < size; row++) {
            double ghi = series.ghiWm2(row);
            double dni = series.dniWm2(row);
            double dhi = series.dhiWm2(row);
            double height = sun.height(row);
            if (Double.isNaN(ghi)) {
                ghi = dni * height + dhi;
                bySum++;
            } else if (Double.isNaN(dhi) && !Double.isNaN(dni)) {
                dhi = within(ghi - dni * height, 0, ghi);
                bySum++;
            } else if (Double.isNaN(dhi)) {
                dhi = DiffuseSplit.erbsDhiWm2(ghi, height, sun.extraterrestrialWm2(row));
                byErbs++;
            }
            if (Double.isNaN(dni)) {
                bySum += Double.isNaN(series.dhiWm2(row)) ? 0 : 1;
                dni = height > 0 ? within((ghi - dhi) / height, 0, sun.extraterrestrialWm2(row)) : 0;
            }
            if (Double.isNaN(ghi)) {
                throw new IllegalArgumentException("The weather of " + series.source() + " has no global light at "
                        + series.localStart(row) + ", nor both beam and diffuse light to make it from.");
            }
            ghiWm2[row] = ghi;
            dniWm2[row] = dni;
            dhiWm2[row] = dhi;
        }
        List<String> notes = new ArrayList<>();
        if (bySum > 0) {
            notes.add("missing global, beam or diffuse light was made from the other two in " + bySum + " of " + size
                    + " intervals");
        }
        if (byErbs > 0) {
            notes.add("diffuse and beam light were derived from global light (Erbs, Klein and Duffie 1982) in " + byErbs
                    + " of " + size + " intervals");
        }
        return series.withIrradiance(ghiWm2, dniWm2, dhiWm2, notes);
    }

    private static double within(double value, double least, double most) {
        return value < least ? least : value > most ? most : value;
    }
}
