package ampdays.pv;

/**
 * How a panel sits on its support: the constants of the Sandia cell temperature model. Which set stands for which way of
 * mounting on a vehicle is a judgement: a framed panel on feet behaves like a close roof mount, a flexible panel glued down
 * like one with an insulated back.
 *
 * <p>Source: D. L. King, W. E. Boyson and J. A. Kratochvil, 2004, Photovoltaic array performance model, Sandia report
 * SAND2004-3535, table 1 (table number from memory).
 *
 * @param a logarithm of the rise per irradiance in still air, K m²/W
 * @param bPerMs change of that logarithm with wind, s/m
 * @param cellOverBackK cells above the panel's back at 1000 W/m², K
 */
public record Mounting(double a, double bPerMs, double cellOverBackK) {
    /** Air on both sides: glass and glass, open rack. */
    public static final Mounting OPEN_RACK = new Mounting(-3.47, -0.0594, 3);
    /** On feet with a gap of an inch: glass and glass, close roof mount. */
    public static final Mounting FEET_WITH_GAP = new Mounting(-2.98, -0.0471, 1);
    /** Glued down: glass and polymer, insulated back. */
    public static final Mounting BONDED = new Mounting(-2.81, -0.0455, 0);

    private static final double INCH_M = 0.0254;

    /** Gaps in inches: the middles of the published steps (the outer two beyond them), and what each adds, K. */
    private static final double[] GAP_IN = {0.25, 1, 2, 3, 4};

    private static final double[] ADDER_K = {18, 11, 6, 2, 0};

    /**
     * What a gap between panel and roof adds to the panel's nominal operating temperature: 18 K below half an inch, 11 to an
     * inch and a half, 6 to two and a half, 2 to three and a half, 0 above. Source: wind-and-gap correlation of
     * NREL/TP-6A20-67399, 2018, section 10.6. Here the steps are joined by straight lines between their middles (ours), so
     * that a millimetre more never matters much, and no gap counts as the smallest: the published routine gives 0 K there,
     * as if the panel stood free. Test: {@code CellTemperatureTest}.
     *
     * @param gapM between panel and roof, 0 or more
     * @return K, 0 to 18
     */
    public static double gapAdderK(double gapM) {
        double gapIn = gapM / INCH_M;
        if (gapIn <= GAP_IN[0]) {
            return ADDER_K[0];
        }
        for (int i = 1; i < GAP_IN.length; i++) {
            if (gapIn <= GAP_IN[i]) {
                double share = (gapIn - GAP_IN[i - 1]) / (GAP_IN[i] - GAP_IN[i - 1]);
                return ADDER_K[i - 1] + share * (ADDER_K[i] - ADDER_K[i - 1]);
            }
        }
        return 0;
    }

    /**
     * Mounting by gap: the constants run straight from bonded (18 K of {@link #gapAdderK}) over feet with a gap (11 K) to
     * open rack (0 K). The correlation thus says where between the measured sets a gap lies; how warm the cells get is left
     * to the sets. Ours; test: {@code CellTemperatureTest}.
     *
     * @param gapM between panel and roof, 0 or more
     */
    public static Mounting ofGap(double gapM) {
        double feetK = ADDER_K[1];
        double adderK = gapAdderK(gapM);
        return adderK > feetK
                ? between(BONDED, FEET_WITH_GAP, (ADDER_K[0] - adderK) / (ADDER_K[0] - feetK))
                : between(FEET_WITH_GAP, OPEN_RACK, (feetK - adderK) / feetK);
    }

    /**
     * How much of the panels' warmth above outside air the roof beneath feels: 75 % bonded, 30 % on feet with a gap, 15 % on an
     * open rack, straight in between by {@link #gapAdderK}. The three are guesses (no source).
     *
     * @param gapM between panel and roof, 0 or more
     * @return 0.15 to 0.75
     */
    public static double roofShare(double gapM) {
        double feetK = ADDER_K[1];
        double adderK = gapAdderK(gapM);
        return adderK > feetK
                ? along(0.75, 0.30, (ADDER_K[0] - adderK) / (ADDER_K[0] - feetK))
                : along(0.30, 0.15, (feetK - adderK) / feetK);
    }

    private static Mounting between(Mounting from, Mounting to, double share) {
        return new Mounting(
                along(from.a, to.a, share),
                along(from.bPerMs, to.bPerMs, share),
                along(from.cellOverBackK, to.cellOverBackK, share));
    }

    private static double along(double from, double to, double share) {
        return from * (1 - share) + to * share;
    }
}
