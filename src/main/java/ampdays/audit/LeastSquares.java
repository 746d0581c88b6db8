package ampdays.audit;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * Weighted linear least squares y = X·b with what the observations leave open.
 *
 * <p>Each row is divided by its standard uncertainty and each column by its length; then the singular values tell the
 * solution, its covariance and the combinations that nothing was observed of (C. L. Lawson and R. J. Hanson, Solving
 * Least Squares Problems, 1974, chapters 18 and 19, from memory). Left out: errors in X, and correlation between rows.
 * Reference: LeastSquaresTest (certified values of a standards body).
 */
final class LeastSquares {
    /** Singular values below this part of the largest count as zero. */
    private static final double RANK_TOLERANCE = 1e-11;

    /** A coefficient with more than this share in an unobserved combination is not known. */
    private static final double SHARE_TOLERANCE = 1e-9;

    private final double[] values;
    private final double[] uncertainties;
    private final double[] residuals;
    private final double[] leverages;
    private final boolean[] known;
    private final int rank;

    /**
     * Solves.
     *
     * @param x one row for each observation, one column for each coefficient
     * @param y the observations
     * @param u standard uncertainty of each observation, above zero
     */
    LeastSquares(double[][] x, double[] y, double[] u) {
        int rows = x.length;
        int columns = x[0].length;
        RealMatrix scaled = new Array2DRowRealMatrix(x, true);
        double[] lengths = new double[columns];
        for (int j = 0; j < columns; j++) {
            for (int i = 0; i < rows; i++) {
                scaled.multiplyEntry(i, j, 1 / u[i]);
            }
            double length = scaled.getColumnVector(j).getNorm();
            lengths[j] = length > 0 ? length : 1;
            for (int i = 0; i < rows; i++) {
                scaled.multiplyEntry(i, j, 1 / lengths[j]);
            }
        }
        SingularValueDecomposition svd = new SingularValueDecomposition(scaled);
        double[] singular = svd.getSingularValues();
        rank = (int) Arrays.stream(singular)
                .filter(s -> s > RANK_TOLERANCE * singular[0])
                .count();

        values = new double[columns];
        uncertainties = new double[columns];
        known = new boolean[columns];
        double[] observed = new double[rows];
        Arrays.setAll(observed, i -> y[i] / u[i]);
        double[] along = svd.getUT().operate(observed);
        for (int j = 0; j < columns; j++) {
            double seen = 0;
            double variance = 0;
            for (int r = 0; r < rank; r++) {
                double v = svd.getV().getEntry(j, r);
                values[j] += v * along[r] / singular[r] / lengths[j];
                variance += v * v / (singular[r] * singular[r]);
                seen += v * v;
            }
            uncertainties[j] = Math.sqrt(variance) / lengths[j];
            known[j] = 1 - seen < SHARE_TOLERANCE;
        }

        residuals = new double[rows];
        leverages = new double[rows];
        for (int i = 0; i < rows; i++) {
            residuals[i] = y[i];
            for (int j = 0; j < columns; j++) {
                residuals[i] -= x[i][j] * values[j];
            }
            for (int r = 0; r < rank; r++) {
                double part = svd.getU().getEntry(i, r);
                leverages[i] += part * part;
            }
        }
    }

    /** A coefficient; only meaningful where it is {@link #known}. */
    double value(int j) {
        return values[j];
    }

    /** Standard uncertainty of a coefficient if those of the observations are right. */
    double uncertainty(int j) {
        return uncertainties[j];
    }

    /** Whether the observations determine a coefficient. */
    boolean known(int j) {
        return known[j];
    }

    /** Observation less what the coefficients say. */
    double residual(int i) {
        return residuals[i];
    }

    /** Weight of an observation in its own fitted value, 0 to 1; at 1 nothing else checks it. */
    double leverage(int i) {
        return leverages[i];
    }

    int rank() {
        return rank;
    }

    /** Observations beyond those that the coefficients need. */
    int degreesOfFreedom() {
        return residuals.length - rank;
    }
}
