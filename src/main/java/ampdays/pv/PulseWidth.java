package ampdays.pv;

/** A controller that joins panels and battery by a switch, so that the battery's voltage holds the panels. */
public final class PulseWidth {
    /**
     * Change of a panel's best voltage per kelvin, as a share. Measured −0.0041 to −0.0043 on five crystalline modules, −0.0033
     * on a heterojunction one: NREL mPERT data set, 2014.
     */
    private static final double BETA_PER_K = -0.0041;

    /** Open-circuit voltage over best voltage: 1.17 to 1.33 on the modules of that set, least when bright and hot. */
    private static final double OPEN_OVER_BEST = 1.2;

    private PulseWidth() {}

    /**
     * Best voltage of a string of panels at its cell temperature. Leaves out that it falls in weak light. Source: linear
     * temperature coefficient as above. Test: {@code PulseWidthTest}.
     *
     * @param bestV at 25 °C, above 0
     * @param cellC cell temperature, −40 to 110
     * @return V
     */
    public static double bestV(double bestV, double cellC) {
        return bestV * (1 + BETA_PER_K * (cellC - 25));
    }

    /**
     * Current of panels held at a voltage. At or below their best voltage it is the current of the best point (a panel gives a
     * few per cent more towards short circuit, which is left out); above, it falls straight to nothing at 1.2 times the best
     * voltage (the true curve is bulged, so this is the careful side).
     *
     * <p>So the power is {@code Imp Vbattery} and not {@code Pmp}: Kirchhoff's laws. Test: {@code PulseWidthTest}.
     *
     * @param bestW power that the panels could give at their best point, at least 0
     * @param bestV best voltage at the present cell temperature, above 0
     * @param heldV voltage they are held at, above 0
     * @return A
     */
    public static double currentA(double bestW, double bestV, double heldV) {
        double over = heldV / bestV - 1;
        double share = over <= 0 ? 1 : 1 - over / (OPEN_OVER_BEST - 1);
        return share > 0 ? bestW / bestV * share : 0;
    }
}
