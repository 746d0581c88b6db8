package ampdays.wiring;

/**
 * Currents of a short, and what a conductor stands. The electronics of a bank do not count: they may not limit it.
 * Reference: ProtectionTest.
 */
public final class Fault {
    /** Voltage of a full lithium iron phosphate cell, V. */
    private static final double LITHIUM_CELL_V = 3.325;

    /** Resistance of a 200 Ah cell, Ω: a maker's upper bound, so a bank gives rather more than this says... */
    private static final double LITHIUM_CELL_OHM = 0.0002;

    /** ...and of the links of four such cells, Ω. */
    private static final double LITHIUM_LINK_OHM = 0.0005;

    private static final double LITHIUM_CELL_AH = 200;

    /** Voltage of a full lead-acid cell, V, and resistance of a 100 Ah cell, Ω; from memory. */
    private static final double LEAD_CELL_V = 2.12;

    private static final double LEAD_CELL_OHM = 0.0005;
    private static final double LEAD_CELL_AH = 100;

    private Fault() {}

    /** Current of a bank shorted at its terminals, estimated by its chemistry, A. */
    public static double bankA(boolean lithium, int cells, int strings, double stringAh) {
        return lithium ? lithiumA(cells, strings, stringAh) : leadAcidA(cells, strings, stringAh);
    }

    /**
     * Current that a lithium iron phosphate bank drives into a short at its terminals, A: {@code N E/(n Rcell + Rlinks)},
     * resistances in inverse proportion to the capacity of a string. One 200 Ah bank of 12 V gives 10.2 kA.
     *
     * @param cells in series, n
     * @param strings side by side, N
     * @param stringAh capacity of one string, Ah
     */
    static double lithiumA(int cells, int strings, double stringAh) {
        double stringOhm = (cells * LITHIUM_CELL_OHM + cells / 4.0 * LITHIUM_LINK_OHM) * LITHIUM_CELL_AH / stringAh;
        return strings * cells * LITHIUM_CELL_V / stringOhm;
    }

    /** The same of a lead-acid bank; from memory, on the high side. */
    static double leadAcidA(int cells, int strings, double stringAh) {
        return strings * cells * LEAD_CELL_V / (cells * LEAD_CELL_OHM * LEAD_CELL_AH / stringAh);
    }

    /** Voltage of a full bank that drives a short, V. */
    public static double emfV(boolean lithium, int cells) {
        return cells * (lithium ? LITHIUM_CELL_V : LEAD_CELL_V);
    }

    /**
     * What is left of it behind a length of cable, A: Ohm's law with the source's own resistance.
     *
     * @param faultA at the source, A
     * @param emfV its voltage, V
     * @param cableOhm loop between, Ω
     */
    public static double behindA(double faultA, double emfV, double cableOhm) {
        return emfV / (emfV / faultA + cableOhm);
    }

    /**
     * Energy per ohm that a conductor stands while a short is cleared, A²s: {@code k² S²} with k of 115 for insulation of up
     * to 80 °C (as PVC) and 143 above (thermosets of 90 °C). Source: IEC 60364-4-43, table 43A, by a maker's page.
     *
     * @param areaMm2 S, mm²
     * @param insulationC temperature rating, °C
     */
    public static double withstandA2s(double areaMm2, double insulationC) {
        double k = insulationC < 90 ? 115 : 143;
        return k * k * areaMm2 * areaMm2;
    }
}
