package ampdays.weather;

import java.util.Locale;

/**
 * How the clearness of single days spreads around the clearness of their month.
 *
 * <p>The density of daily clearness K is taken as {@code exp(γ K)} between 0.05 and a greatest value, with γ such that the
 * mean is the month's. Source: P. Bendt, M. Collares-Pereira and A. Rabl, 1981, The frequency distribution of daily
 * insolation values, Solar Energy 27, 1; greatest value {@code 0.6313 + 0.267 K̄ − 11.9 (K̄ − 0.75)^8} after K. G. T.
 * Hollands and R. G. Huget, 1983, Solar Energy 30, 195 (constants from memory). Where a place is known to spread less than
 * that, as most deserts and coasts of the tropics do, all days move towards the mean in proportion (ours). Test:
 * {@code ClearnessSpreadTest}.
 */
final class ClearnessSpread {
    private static final double LEAST = 0.05;
    private static final double STEEPEST = 500;

    private final double most;
    private final double gamma;
    private final double mean;
    /** Distance from the mean over that of the paper. */
    private final double narrowed;

    private ClearnessSpread(double most, double gamma, double mean, double narrowed) {
        this.most = most;
        this.gamma = gamma;
        this.mean = mean;
        this.narrowed = narrowed;
    }

    /**
     * The spread of one month.
     *
     * @param mean share of the light outside the atmosphere that reaches the ground, as the month's mean
     */
    static ClearnessSpread around(double mean) {
        double most = 0.6313 + 0.267 * mean - 11.9 * StrictMath.pow(mean - 0.75, 8);
        if (!(mean > LEAST + 0.01 && mean < most - 0.01)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "A month's light is %.2f of that outside the atmosphere; possible is 0.06 to about 0.81.",
                    mean));
        }
        double low = -STEEPEST;
        double high = STEEPEST;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            if (mean(middle, most) < mean) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new ClearnessSpread(most, (low + high) / 2, mean, 1);
    }

    private static double mean(double gamma, double most) {
        double width = most - LEAST;
        double steep = gamma * width;
        if (Math.abs(steep) < 1e-6) {
            return LEAST + width / 2;
        }
        return most - 1 / gamma + width / StrictMath.expm1(steep);
    }

    /**
     * The same mean with less spread.
     *
     * @param standardDeviation of daily clearness; one above {@link #standardDeviation} changes nothing
     */
    ClearnessSpread narrowedTo(double standardDeviation) {
        double share = standardDeviation / standardDeviation();
        return new ClearnessSpread(most, gamma, mean, share < narrowed ? share : narrowed);
    }

    /** Standard deviation of daily clearness. */
    double standardDeviation() {
        double width = most - LEAST;
        double steep = gamma * width;
        if (Math.abs(steep) < 1e-3) {
            return narrowed * width / StrictMath.sqrt(12);
        }
        double tail = width / (2 * StrictMath.sinh(steep / 2));
        return narrowed * StrictMath.sqrt(1 / (gamma * gamma) - tail * tail);
    }

    /** The exponent γ of the density. */
    double gamma() {
        return gamma;
    }

    /**
     * The clearness that a share of all days stay below.
     *
     * @param share 0 to 1
     */
    double quantile(double share) {
        return mean + narrowed * (quantileOfThePaper(share) - mean);
    }

    private double quantileOfThePaper(double share) {
        double width = most - LEAST;
        if (Math.abs(gamma * width) < 1e-6) {
            return LEAST + share * width;
        }
        return gamma > 0
                ? most + StrictMath.log(share + (1 - share) * StrictMath.exp(-gamma * width)) / gamma
                : LEAST + StrictMath.log(1 - share + share * StrictMath.exp(gamma * width)) / gamma;
    }
}
