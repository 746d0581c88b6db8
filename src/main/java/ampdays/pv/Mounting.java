package ampdays.pv;

/**
 * How a panel sits on its support, with the constants of the Sandia cell temperature model. Which set stands for which way of
 * mounting on a vehicle is a judgement: a framed panel on feet behaves like a close roof mount, a flexible panel glued down
 * like one with an insulated back.
 *
 * <p>Source: D. L. King, W. E. Boyson and J. A. Kratochvil, 2004, Photovoltaic array performance model, Sandia report
 * SAND2004-3535, table 1 (table number from memory).
 */
public enum Mounting {
    /** Air on both sides: glass and glass, open rack. */
    OPEN_RACK(-3.47, -0.0594, 3),
    /** On feet with a gap of some 20 to 40 mm: glass and glass, close roof mount. */
    FEET_WITH_GAP(-2.98, -0.0471, 1),
    /** Glued down: glass and polymer, insulated back. */
    BONDED(-2.81, -0.0455, 0);

    final double a;
    final double bPerMs;
    final double cellOverBackK;

    Mounting(double a, double bPerMs, double cellOverBackK) {
        this.a = a;
        this.bPerMs = bPerMs;
        this.cellOverBackK = cellOverBackK;
    }
}
