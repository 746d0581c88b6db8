package ampdays.study;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.util.Pair;

/**
 * Non-linear least squares of a model that is run, with differences in place of derivatives. Values are searched as
 * multiples of where they begin, within bounds. Method: K. Levenberg, 1944, A method for the solution of certain
 * non-linear problems in least squares, Quarterly of Applied Mathematics 2; D. Marquardt, 1963, SIAM Journal 11, as
 * Commons Math has it. Standard errors: the inverse of JᵀJ, from memory. Test: {@code FitTest}.
 */
final class Fit {
    private static final double STEP = 0.01;
    private static final int MOST_RUNS = 60;
    /** What moves no observation by more than this part of its uncertainty when doubled is not seen. */
    private static final double UNSEEN = 1e-6;

    private static final double SINGULAR = 1e-9;

    private Fit() {}

    /** What a set of values lets expect at every observation. */
    @FunctionalInterface
    interface Model {
        double[] at(double[] values);
    }

    /** Values found. */
    static final class Result {
        private final double[] values;
        private final double[] standard;
        private final double[] residuals;

        Result(double[] values, double[] standard, double[] residuals) {
            this.values = values;
            this.standard = standard;
            this.residuals = residuals;
        }

        double value(int i) {
            return values[i];
        }

        double[] values() {
            return values.clone();
        }

        /** Standard error, if every observation is off by its own uncertainty and no other way; infinite if not told. */
        double standard(int i) {
            return standard[i];
        }

        /** Observation less model, over its uncertainty. */
        double residual(int i) {
            return residuals[i];
        }
    }

    /**
     * Finds values.
     *
     * @param u standard uncertainty of each observation
     * @param low lower bound of each value
     * @param high upper bound
     */
    static Result of(Model model, double[] observed, double[] u, double[] start, double[] low, double[] high) {
        double[] ones = new double[start.length];
        Arrays.fill(ones, 1);
        MultivariateJacobianFunction weighed = point -> {
            double[] values = bounded(point.toArray(), start, low, high);
            double[] base = over(model.at(values), u);
            return new Pair<>(new ArrayRealVector(base, false), slopes(model, values, base, u, start, high));
        };
        LeastSquaresOptimizer.Optimum found;
        try {
            found = new LevenbergMarquardtOptimizer()
                    .withInitialStepBoundFactor(0.5)
                    .optimize(new LeastSquaresBuilder()
                            .model(weighed)
                            .target(over(observed, u))
                            .start(ones)
                            .maxEvaluations(MOST_RUNS)
                            .maxIterations(MOST_RUNS)
                            .checker((step, before, now) ->
                                    Math.abs(before.getCost() - now.getCost()) < 1e-7 * (1e-9 + before.getCost()))
                            .build());
        } catch (TooManyEvaluationsException | TooManyIterationsException e) {
            throw new IllegalStateException("the fit does not come to an end", e);
        }
        double[] values = bounded(found.getPoint().toArray(), start, low, high);
        return new Result(
                values,
                standard(found.getJacobian(), start),
                found.getResiduals().toArray());
    }

    private static double[] bounded(double[] multiples, double[] start, double[] low, double[] high) {
        double[] values = new double[multiples.length];
        Arrays.setAll(values, i -> Math.min(high[i], Math.max(low[i], multiples[i] * start[i])));
        return values;
    }

    private static double[] over(double[] values, double[] u) {
        double[] weighed = new double[values.length];
        Arrays.setAll(weighed, i -> values[i] / u[i]);
        return weighed;
    }

    /** Differences for a step of one percent, downwards where the value stands at its upper bound. */
    private static RealMatrix slopes(
            Model model, double[] values, double[] base, double[] u, double[] start, double[] high) {
        RealMatrix slopes = new Array2DRowRealMatrix(base.length, values.length);
        for (int j = 0; j < values.length; j++) {
            double step = STEP * values[j];
            double[] moved = values.clone();
            double by = moved[j] + step <= high[j] ? step : -step;
            moved[j] += by;
            double[] then = over(model.at(moved), u);
            for (int i = 0; i < base.length; i++) {
                slopes.setEntry(i, j, (then[i] - base[i]) / by * start[j]);
            }
        }
        return slopes;
    }

    private static double[] standard(RealMatrix jacobian, double[] start) {
        double[] standard = new double[start.length];
        Arrays.fill(standard, Double.POSITIVE_INFINITY);
        int[] seen = IntStream.range(0, start.length)
                .filter(j -> jacobian.getColumnVector(j).getNorm() > UNSEEN)
                .toArray();
        if (seen.length == 0) {
            return standard;
        }
        int[] rows = IntStream.range(0, jacobian.getRowDimension()).toArray();
        RealMatrix slopes = jacobian.getSubMatrix(rows, seen);
        double[] lengths = new double[seen.length];
        for (int j = 0; j < seen.length; j++) {
            lengths[j] = slopes.getColumnVector(j).getNorm();
            slopes.setColumnVector(j, slopes.getColumnVector(j).mapDivide(lengths[j]));
        }
        try {
            RealMatrix inverse = new LUDecomposition(slopes.transpose().multiply(slopes), SINGULAR)
                    .getSolver()
                    .getInverse();
            for (int j = 0; j < seen.length; j++) {
                standard[seen[j]] = Math.sqrt(inverse.getEntry(j, j)) / lengths[j] * start[seen[j]];
            }
        } catch (SingularMatrixException e) {
            return standard;
        }
        return standard;
    }
}
