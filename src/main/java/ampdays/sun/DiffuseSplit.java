package ampdays.sun;

/** Splits global into diffuse and beam irradiance where a file gives only the sum. */
public final class DiffuseSplit {
    private static final double LEAST_COS_ZENITH = 0.065;
    private static final double COS_87_DEG = Math.cos(Math.toRadians(87));

    private DiffuseSplit() {}

    /**
     * Share of the extraterrestrial light on the horizontal that reaches the ground.
     *
     * <p>{@code kt = GHI/(I0 max(cos z, 0.065))}, within 0 to 1: the floor keeps the last minutes of a day from giving
     * absurd values (edge rule of the reference library). Test: {@code DiffuseSplitTest}.
     *
     * @param ghiWm2 global horizontal irradiance
     * @param cosZenith cosine of the zenith angle
     * @param extraterrestrialWm2 normal irradiance outside the atmosphere, above 0
     * @return 0 to 1
     */
    public static double clearness(double ghiWm2, double cosZenith, double extraterrestrialWm2) {
        double floored = cosZenith > LEAST_COS_ZENITH ? cosZenith : LEAST_COS_ZENITH;
        double kt = ghiWm2 / (extraterrestrialWm2 * floored);
        return kt < 0 ? 0 : kt > 1 ? 1 : kt;
    }

    /**
     * Diffuse share of global irradiance from clearness alone. Leaves out everything else that matters, so that a single
     * hour may be off by a third; a month is not.
     *
     * <p>{@code kt ≤ 0.22: 1 − 0.09 kt}; {@code kt ≤ 0.8: 0.9511 − 0.1604 kt + 4.388 kt² − 16.638 kt³ + 12.336 kt⁴};
     * above {@code 0.165}. Source: D. G. Erbs, S. A. Klein and J. A. Duffie, 1982, Estimation of the diffuse radiation
     * fraction for hourly, daily and monthly-average global radiation, Solar Energy 28, 293, equation 1 (equation number
     * from memory). Test: {@code DiffuseSplitTest}.
     *
     * @param clearness 0 to 1
     * @return 0.165 to 1
     */
    public static double erbsFraction(double clearness) {
        if (clearness <= 0.22) {
            return 1 - 0.09 * clearness;
        }
        if (clearness > 0.8) {
            return 0.165;
        }
        return 0.9511 + clearness * (-0.1604 + clearness * (4.388 + clearness * (-16.638 + clearness * 12.336)));
    }

    /**
     * Diffuse horizontal irradiance by {@link #erbsFraction}; beam is {@code (GHI − DHI)/cos z}. With the sun lower than
     * 3 degrees all light counts as diffuse (edge rule of the reference library). Test: {@code DiffuseSplitTest}.
     *
     * @param ghiWm2 global horizontal irradiance
     * @param cosZenith cosine of the zenith angle
     * @param extraterrestrialWm2 normal irradiance outside the atmosphere, above 0
     * @return W/m², at most {@code ghiWm2}
     */
    public static double erbsDhiWm2(double ghiWm2, double cosZenith, double extraterrestrialWm2) {
        if (cosZenith < COS_87_DEG || ghiWm2 < 0) {
            return ghiWm2;
        }
        return ghiWm2 * erbsFraction(clearness(ghiWm2, cosZenith, extraterrestrialWm2));
    }
}
