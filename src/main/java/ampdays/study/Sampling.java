package ampdays.study;

import ampdays.results.Bounded;
import java.util.Arrays;

/** How sure a sample makes of a share and of a place in a distribution. Test: {@code SamplingTest}. */
final class Sampling {
    /** Of the normal distribution, for bounds that hold in 95 of 100 samples. */
    static final double Z95 = 1.959963984540054;

    private Sampling() {}

    /**
     * A share with its score interval; it holds also for shares of 0 and 1. Points of a sequence with low discrepancy are
     * more even than the independent ones that it is meant for, so the bounds are rather too wide.
     *
     * <p>E. B. Wilson (1927), Probable inference, the law of succession, and statistical inference, Journal of the American
     * Statistical Association 22, 209 to 212.
     *
     * @param hits 0 to count
     * @param count 1 or more
     */
    static Bounded share(int hits, int count) {
        double share = (double) hits / count;
        double z2 = Z95 * Z95 / count;
        double middle = (share + z2 / 2) / (1 + z2);
        double reach = Z95 * Math.sqrt(share * (1 - share) / count + z2 / (4 * count)) / (1 + z2);
        return new Bounded(
                share, hits == 0 ? 0 : Math.max(0, middle - reach), hits == count ? 1 : Math.min(1, middle + reach));
    }

    /**
     * The value that a share of a sample does not exceed, with bounds that assume nothing of the distribution: the values
     * whose ranks lie {@code z √(n p (1 − p))} away from {@code n p}; rather too wide, as in {@link #share}.
     *
     * <p>W. J. Conover (1999), Practical nonparametric statistics, third edition, section 3.2 (from memory).
     *
     * @param values may be infinite
     */
    static Bounded place(double p, double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double at = p * sorted.length;
        double reach = Z95 * Math.sqrt(at * (1 - p));
        return new Bounded(ranked(sorted, at), ranked(sorted, at - reach), ranked(sorted, at + reach));
    }

    /** The value of a rank, counted from 1; the next higher rank of a broken one. */
    private static double ranked(double[] sorted, double rank) {
        int whole = (int) Math.ceil(rank - 1e-9);
        return sorted[Math.max(0, Math.min(sorted.length - 1, whole - 1))];
    }
}
