package ampdays.study;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
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
 * Commons Math has it. Standard errors: the inverse of JᵀJ, from memory; with slopes over one percent to one side they
 * are 1 % off on a certified data set. Test: {@code FitTest}.
 */
final class Fit {
    /** Half of a 95 % interval in standard errors of a normal distribution. */
    static final double NORMAL_95 = 1.96;

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
        private final double[] start;
        private final double[] residuals;
        private final RealMatrix slopes;
        private final int[] seen;
        private final RealMatrix inverse;

        Result(double[] values, double[] start, double[] residuals, RealMatrix slopes) {
            this.values = values;
            this.start = start;
            this.residuals = residuals;
            this.slopes = slopes;
            this.seen = seen(slopes);
            this.inverse = inverse(slopes, seen);
        }

        double value(int i) {
            return values[i];
        }

        double[] values() {
            return values.clone();
        }

        /** Standard error, if every observation is off by its own uncertainty and no other way; infinite if not told. */
        double standard(int i) {
            int place = Arrays.binarySearch(seen, i);
            return place < 0 || inverse == null
                    ? Double.POSITIVE_INFINITY
                    : Math.sqrt(inverse.getEntry(place, place)) * Math.abs(start[i]);
        }

        /**
         * Standard error by what the observations really are off by: those of one group may hang together, and some groups
         * may be off by more than others. {@code (JᵀJ)⁻¹ (Σ sgᵀsg) (JᵀJ)⁻¹ G/(G − 1)} with {@code sg} the sum of residual times
         * slope over a group, G groups. Source: H. White, 1980, A heteroskedasticity-consistent covariance matrix
         * estimator, Econometrica 48; K.-Y. Liang and S. L. Zeger, 1986, Biometrika 73, for groups; from memory.
         *
         * @param group of each observation; those of one group stand together
         */
        double standard(int i, int... group) {
            int place = Arrays.binarySearch(seen, i);
            if (place < 0 || inverse == null) {
                return Double.POSITIVE_INFINITY;
            }
            double square = 0;
            double sum = 0;
            int groups = 0;
            for (int row = 0; row < residuals.length; row++) {
                double pull = 0;
                for (int k = 0; k < seen.length; k++) {
                    pull += inverse.getEntry(place, k) * slopes.getEntry(row, seen[k]);
                }
                sum += pull * residuals[row];
                if (row + 1 == residuals.length || group[row + 1] != group[row]) {
                    square += sum * sum;
                    groups += sum == 0 ? 0 : 1;
                    sum = 0;
                }
            }
            return groups < 2
                    ? Double.POSITIVE_INFINITY
                    : Math.sqrt(square * groups / (groups - 1)) * Math.abs(start[i]);
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
        double[] target = over(observed, u);
        Best best = new Best();
        MultivariateJacobianFunction weighed = point -> {
            double[] values = bounded(point.toArray(), start, low, high);
            double[] base = over(model.at(values), u);
            RealMatrix slopes = slopes(model, values, base, u, start, high);
            best.offer(values, less(target, base), slopes);
            return new Pair<>(new ArrayRealVector(base, false), slopes);
        };
        try {
            new LevenbergMarquardtOptimizer()
                    .withInitialStepBoundFactor(0.5)
                    .optimize(new LeastSquaresBuilder()
                            .model(weighed)
                            .target(target)
                            .start(ones)
                            .maxEvaluations(MOST_RUNS)
                            .maxIterations(MOST_RUNS)
                            .checker((step, before, now) ->
                                    Math.abs(before.getCost() - now.getCost()) < 1e-7 * (1e-9 + before.getCost()))
                            .build());
        } catch (TooManyEvaluationsException | TooManyIterationsException e) {
            // a search that only trembles about its end has found what there is
            return best.result(start);
        }
        return best.result(start);
    }

    /** The point of least squares that was met. */
    private static final class Best {
        private double[] values = {};
        private double[] residuals = {};
        private RealMatrix slopes;
        private double least = Double.POSITIVE_INFINITY;

        void offer(double[] tried, double[] left, RealMatrix its) {
            double squares = Arrays.stream(left).map(r -> r * r).sum();
            if (squares < least) {
                least = squares;
                values = tried;
                residuals = left;
                slopes = its;
            }
        }

        Result result(double... start) {
            return new Result(values, start, residuals, slopes);
        }
    }

    private static double[] less(double[] a, double... b) {
        double[] less = new double[a.length];
        Arrays.setAll(less, i -> a[i] - b[i]);
        return less;
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

    private static int[] seen(RealMatrix slopes) {
        return IntStream.range(0, slopes.getColumnDimension())
                .filter(j -> slopes.getColumnVector(j).getNorm() > UNSEEN)
                .toArray();
    }

    /** The inverse of JᵀJ over what is seen; null if that cannot be told apart. */
    private static RealMatrix inverse(RealMatrix jacobian, int... seen) {
        if (seen.length == 0) {
            return null;
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
                for (int k = 0; k < seen.length; k++) {
                    inverse.multiplyEntry(j, k, 1 / (lengths[j] * lengths[k]));
                }
            }
            return inverse;
        } catch (SingularMatrixException e) {
            return null;
        }
    }
}
