package ampdays.weather;

/**
 * Clouds within a day: the clearness of each hour, around the usual one for the day's clearness and the sun's height.
 *
 * <p>With the day's clearness K and the sine s of the sun's height the hours are {@code k = m + d y}, where
 * {@code m = λ + ε exp(−κ/s)}, {@code λ = −0.19 + 1.12 K + 0.24 exp(−8 K)}, {@code ε = 0.32 − 1.6 (K − 0.5)²},
 * {@code κ = 0.19 + 2.27 K² − 2.51 K³}, {@code d = 0.14 exp(−20 (K − 0.35)²) exp((3 (K − 0.45)² + 16 K⁵)(1 − s))}, and y is
 * normal and correlates by {@code 0.38 + 0.06 cos(7.4 K − 2.5)} with the hour before. Source: R. Aguiar and M.
 * Collares-Pereira, 1992, TAG: a time-dependent, autoregressive, Gaussian model for generating synthetic hourly radiation,
 * Solar Energy 49, 167 (constants from memory). Hours stay above 0.02 and below a tenth more than the clear sky of Haurwitz
 * (1945) gives, since clouds reflect (guess). Leaves out clouds within the hour. Test: {@code HourlyClearnessTest}.
 */
final class HourlyClearness {
    private static final double LEAST = 0.02;
    /** Haurwitz' 1098 W/m² and a tenth, over the solar constant. */
    private static final double MOST = 1.1 * 1098 / 1366.1;

    private static final double HAURWITZ = 0.059;

    private HourlyClearness() {}

    /**
     * Mean clearness of an hour on a day of the given clearness (trend m of the model).
     *
     * @param day clearness of the day, 0 to 0.85
     * @param sunHeight sine of the sun's height, above 0
     */
    static double trend(double day, double sunHeight) {
        double level = -0.19 + 1.12 * day + 0.24 * StrictMath.exp(-8 * day);
        double rise = 0.32 - 1.6 * (day - 0.5) * (day - 0.5);
        double bend = 0.19 + 2.27 * day * day - 2.51 * day * day * day;
        return level + rise * StrictMath.exp(-bend / sunHeight);
    }

    /** Standard deviation of an hour's clearness about the trend; same arguments. */
    static double spread(double day, double sunHeight) {
        double low = 3 * (day - 0.45) * (day - 0.45) + 16 * day * day * day * day * day;
        return 0.14 * StrictMath.exp(-20 * (day - 0.35) * (day - 0.35) + low * (1 - sunHeight));
    }

    /** Correlation of an hour with the one before on a day of the given clearness. */
    static double memory(double day) {
        return 0.38 + 0.06 * StrictMath.cos(7.4 * day - 2.5);
    }

    /**
     * Draws the global light of a day's hours, whose sum is the day's.
     *
     * @param day clearness of the day
     * @param sunHeight mean of {@code max(cos z, 0)} in each hour of the year
     * @param extraterrestrialWm2 normal irradiance outside the atmosphere in each hour of the year
     * @param from first hour of the day
     * @param ghiWm2 global light in each hour of the year; those of the day are written
     */
    static void draw(
            double day,
            double[] sunHeight,
            double[] extraterrestrialWm2,
            int from,
            Gaussians gaussians,
            double[] ghiWm2) {
        double memory = memory(day);
        double y = gaussians.next();
        double outsideWh = 0;
        double drawnWh = 0;
        for (int hour = from; hour < from + 24; hour++) {
            double height = sunHeight[hour];
            ghiWm2[hour] = 0;
            if (height > 0) {
                y = gaussians.after(y, memory);
                double clear = MOST * StrictMath.exp(-HAURWITZ / height);
                double drawn = trend(day, height) + spread(day, height) * y;
                double limited = drawn < LEAST ? LEAST : drawn;
                double outside = height * extraterrestrialWm2[hour];
                ghiWm2[hour] = (limited < clear ? limited : clear) * outside;
                outsideWh += outside;
                drawnWh += ghiWm2[hour];
            }
        }
        for (int hour = from; hour < from + 24 && drawnWh > 0; hour++) {
            ghiWm2[hour] *= day * outsideWh / drawnWh;
        }
    }
}
