package ampdays.weather;

import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How the departures of a day from normal hang together and on those of the day before.
 *
 * <p>Departures are normal variates of mean 0 and spread 1. Those of a day follow from the last by {@code x = A y + B g}
 * with fresh independent variates g, where {@code A = M1 inv(M0)} and {@code B B' = M0 - A M1'}; so M0 is their correlation
 * on one day and M1 that with the day before (row: today, column: yesterday). Source: N. C. Matalas, 1967, Mathematical
 * assessment of synthetic hydrology, Water Resources Research 3, 937. Leaves out seasons: the correlations hold all year.
 * Test: {@code DayMemoryTest}.
 */
final class DayMemory {
    static final int HIGH = 0;
    static final int LOW = 1;
    static final int CLEARNESS = 2;
    static final int DEW_POINT = 3;

    private final double[][] sameDay;
    private final double[][] dayBefore;
    private final RealMatrix kept;
    private final RealMatrix fresh;
    private final RealMatrix first;

    /**
     * From correlations.
     *
     * @param sameDay M0
     * @param dayBefore M1
     */
    DayMemory(double[][] sameDay, double[][] dayBefore) {
        RealMatrix m0 = MatrixUtils.createRealMatrix(sameDay);
        RealMatrix m1 = MatrixUtils.createRealMatrix(dayBefore);
        this.sameDay = m0.getData();
        this.dayBefore = m1.getData();
        kept = m1.multiply(new LUDecomposition(m0).getSolver().getInverse());
        RealMatrix left = m0.subtract(kept.multiply(m1.transpose()));
        RealMatrix symmetric = left.add(left.transpose()).scalarMultiply(0.5);
        fresh = new CholeskyDecomposition(symmetric).getL();
        first = new CholeskyDecomposition(m0).getL();
    }

    /**
     * Highs, lows, clearness and dew point. Highs, lows and clearness: C. W. Richardson and D. A. Wright, 1984, WGEN: a model
     * for generating daily weather variables, USDA ARS-8, the correlations for the United States (from memory), but for the
     * memory of clearness, which is the 0.29 of V. A. Graham, K. G. T. Hollands and T. E. Unny, 1988, A time series model for
     * Kt with application to global synthetic weather generation, Solar Energy 40, 83 (from memory). Dew point: means over
     * three open typical years, a desert, a high desert and a humid coast.
     */
    static DayMemory usual() {
        return new DayMemory(
                new double[][] {
                    {1, 0.633, 0.186, 0.13}, {0.633, 1, -0.193, 0.45}, {0.186, -0.193, 1, -0.43}, {0.13, 0.45, -0.43, 1}
                },
                new double[][] {
                    {0.621, 0.445, 0.087, 0.05},
                    {0.563, 0.674, -0.100, 0.30},
                    {0.015, -0.091, 0.29, -0.15},
                    {0.15, 0.36, -0.33, 0.65}
                });
    }

    /** Correlation of two quantities on one day. */
    double onOneDay(int quantity, int other) {
        return sameDay[quantity][other];
    }

    /** Correlation of a quantity with another of the day before. */
    double withTheDayBefore(int today, int yesterday) {
        return dayBefore[today][yesterday];
    }

    /** The matrix A. */
    double[][] kept() {
        return kept.getData();
    }

    /** The matrix B. */
    double[][] fresh() {
        return fresh.getData();
    }

    /** Departures of a first day. */
    double[] first(Gaussians gaussians) {
        return first.operate(draw(gaussians));
    }

    /** Departures of the day after. */
    double[] next(double[] yesterday, Gaussians gaussians) {
        double[] today = kept.operate(yesterday);
        double[] news = fresh.operate(draw(gaussians));
        for (int i = 0; i < today.length; i++) {
            today[i] += news[i];
        }
        return today;
    }

    private double[] draw(Gaussians gaussians) {
        double[] drawn = new double[sameDay.length];
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = gaussians.next();
        }
        return drawn;
    }
}
