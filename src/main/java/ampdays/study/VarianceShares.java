package ampdays.study;

import ampdays.results.Bounded;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * Shares of a variance by input, from a model at points A, at independent points B, and at A with one input taken from B.
 *
 * <p>A. Saltelli, P. Annoni, I. Azzini, F. Campolongo, M. Ratto and S. Tarantola (2010), Variance based sensitivity analysis of
 * model output. Design and estimator for the total sensitivity index, Computer Physics Communications 181, 259 to 270, table
 * 2: the first-order share by equation (b), there and by M. J. W. Jansen (1999) the total share by equation (f) (numbers of
 * equations from memory). The mean is taken off before, which changes no share and steadies the first. Bounds are the 2.5 and
 * 97.5 % places of shares from points drawn anew with replacement (B. Efron, 1979). Test: {@code VarianceSharesTest}.
 */
final class VarianceShares {
    /** Rows of the model's values before those with an input taken from B. */
    static final int ROWS_BEFORE = 2;

    private static final int REDRAWN = 500;

    private final double[][] values;
    private final int samples;

    private VarianceShares(double[][] values) {
        this.values = values;
        this.samples = values.length;
    }

    /** What an input has by itself, and in all. */
    record Share(Bounded first, Bounded total) {}

    /**
     * The shares of each input.
     *
     * @param values for each sample the model at A, at B, then at A with the first input from B, with the second, and so on
     */
    static List<Share> of(double[][] values, long seed) {
        return new VarianceShares(values).shares(seed);
    }

    private List<Share> shares(long seed) {
        int inputs = values[0].length - ROWS_BEFORE;
        int[] all = new int[samples];
        Arrays.setAll(all, i -> i);
        double[][] plain = estimate(inputs, all);
        double[][][] redrawn = new double[2][inputs][REDRAWN];
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int draw = 0; draw < REDRAWN; draw++) {
            double[][] again = estimate(inputs, random.ints(samples, 0, samples).toArray());
            for (int input = 0; input < inputs; input++) {
                redrawn[0][input][draw] = again[0][input];
                redrawn[1][input][draw] = again[1][input];
            }
        }
        List<Share> shares = new ArrayList<>();
        for (int input = 0; input < inputs; input++) {
            shares.add(new Share(
                    bounded(plain[0][input], redrawn[0][input]), bounded(plain[1][input], redrawn[1][input])));
        }
        return shares;
    }

    private static Bounded bounded(double value, double... redrawn) {
        Arrays.sort(redrawn);
        double low = redrawn[(int) (0.025 * redrawn.length)];
        double high = redrawn[(int) (0.975 * redrawn.length)];
        return new Bounded(value, Math.min(value, low), Math.max(value, high));
    }

    /** First-order shares, then total ones; all zero where nothing varies. */
    private double[][] estimate(int inputs, int... chosen) {
        double mean = 0;
        for (int i : chosen) {
            mean += (values[i][0] + values[i][1]) / (2 * chosen.length);
        }
        double variance = 0;
        for (int i : chosen) {
            double a = values[i][0] - mean;
            double b = values[i][1] - mean;
            variance += (a * a + b * b) / (2 * chosen.length);
        }
        double[][] shares = new double[2][inputs];
        for (int input = 0; input < inputs && variance > 0; input++) {
            double first = 0;
            double total = 0;
            for (int i : chosen) {
                double moved = values[i][ROWS_BEFORE + input] - values[i][0];
                first += (values[i][1] - mean) * moved;
                total += moved * moved / 2;
            }
            shares[0][input] = first / (chosen.length * variance);
            shares[1][input] = total / (chosen.length * variance);
        }
        return shares;
    }
}
