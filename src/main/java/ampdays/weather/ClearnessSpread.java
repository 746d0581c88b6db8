package ampdays.weather;

/**
 * How the clearness of single days spreads around the clearness of their month.
 *
 * <p>The density of daily clearness K is taken as {@code exp(γ K)} between 0.05 and a greatest value, with γ such that the
 * mean is the month's. Source: P. Bendt, M. Collares-Pereira and A. Rabl, 1981, The frequency distribution of daily
 * insolation values, Solar Energy 27, 1; greatest value {@code 0.6313 + 0.267 K̄ − 11.9 (K̄ − 0.75)^8} after K. G. T.
 * Hollands and R. G. Huget, 1983, Solar Energy 30, 195 (constants from memory). Leaves out that deserts spread less. Test:
 * {@code ClearnessSpreadTest}.
 */
final class ClearnessSpread {
    private static final double LEAST = 0.05;
    private static final double STEEPEST = 500;

    private final double most;
    private final double gamma;

    private ClearnessSpread(double most, double gamma) {
        this.most = most;
        this.gamma = gamma;
    }

    /**
     * The spread of one month.
     *
     * @param mean share of the light outside the atmosphere that reaches the ground, as the month's mean
     */
    static ClearnessSpread around(double mean) {
        double most = 0.6313 + 0.267 * mean - 11.9 * StrictMath.pow(mean - 0.75, 8);
        if (!(mean > LEAST + 0.01 && mean < most - 0.01)) {
            throw new IllegalArgumentException(
                    "A month's light is " + mean + " of that outside the atmosphere; possible is 0.06 to about 0.82.");
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
        return new ClearnessSpread(most, (low + high) / 2);
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
     * The clearness that a share of all days stay below.
     *
     * @param share 0 to 1
     */
    double quantile(double share) {
        double width = most - LEAST;
        if (Math.abs(gamma * width) < 1e-6) {
            return LEAST + share * width;
        }
        return gamma > 0
                ? most + StrictMath.log(share + (1 - share) * StrictMath.exp(-gamma * width)) / gamma
                : LEAST + StrictMath.log(1 - share + share * StrictMath.exp(gamma * width)) / gamma;
    }
}
