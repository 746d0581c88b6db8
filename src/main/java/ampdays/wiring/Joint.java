package ampdays.wiring;

/**
 * Lugs, studs and screws. A good crimped lug has 20 to 50 µΩ, a loose or corroded one 0.5 to 2 mΩ (a maker's figures).
 * Reference: JointTest.
 */
public final class Joint {
    /** Heat passed from a cable to the air, W/(m² K); guess, still air with radiation. */
    private static final double FILM_WM2K = 10;

    /** Conductivity of copper, W/(m K); from memory, pure copper near 350 K. */
    private static final double COPPER_WMK = 390;

    /** Diameter of a flexible conductor over that of a solid one of the same copper; guess. */
    private static final double STRANDING = 1.13;

    /** Insulation, both sides together, m; guess. */
    private static final double INSULATION_M = 0.004;

    private Joint() {}

    /** Resistance from a voltage measured across a joint under load, Ω (Ohm's law). */
    public static double ohm(double measuredV, double atA) {
        return measuredV / atA;
    }

    /** Heat of a joint, W (Joule's law): 1 mΩ at 150 A is 22 W. */
    static double heatW(double ohm, double currentA) {
        return currentA * currentA * ohm;
    }

    /**
     * How much warmer than the cable a joint gets per watt, K/W, cooled by the two cables that meet there, each a long fin:
     * {@code 1/(2 sqrt(h P k A))}. F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, table 3.4, case D
     * (infinite fin); from memory. Leaves out what the body of a fuse or breaker gives off itself, so it is on the warm
     * side; thin cables on small terminals cool badly.
     *
     * @param areaMm2 copper of one of the two cables, mm²
     */
    public static double kelvinPerWatt(double areaMm2) {
        double areaM2 = areaMm2 * 1e-6;
        double outerM = STRANDING * Math.sqrt(4 * areaM2 / Math.PI) + INSULATION_M;
        return 1 / (2 * Math.sqrt(FILM_WM2K * Math.PI * outerM * COPPER_WMK * areaM2));
    }

    /**
     * Temperature that a copper joint comes to, °C; infinite when its heat grows faster than it is carried off:
     * {@code (I² R20 (1 − 20 α) + Ta/Rth)/(1/Rth − I² R20 α)}. Source: heat balance with α of IEC 60028; table
     * ohmic_body_heating.
     *
     * @param ohm20 at 20 °C, Ω
     * @param kelvinPerWatt to its surroundings, K/W
     * @param aroundC temperature of these, °C
     * @param otherW other heat in it, W
     */
    public static double steadyC(double currentA, double ohm20, double kelvinPerWatt, double aroundC, double otherW) {
        double squareW = heatW(ohm20, currentA);
        double net = 1 / kelvinPerWatt - squareW * Conductor.ALPHA_PER_K;
        return net > 0
                ? (squareW * (1 - 20 * Conductor.ALPHA_PER_K) + otherW + aroundC / kelvinPerWatt) / net
                : Double.POSITIVE_INFINITY;
    }
}
