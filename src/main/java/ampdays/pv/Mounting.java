package ampdays.pv;

/** How a panel sits; carries the constants of King, Boyson and Kratochvil, SAND2004-3535 (2004), table 1. */
public enum Mounting {
    OPEN_RACK(-3.47, -0.0594, 3),
    FEET_WITH_GAP(-2.98, -0.0471, 1),
    BONDED(-2.81, -0.0455, 0);

    private final double a;
    private final double b;
    private final double deltaK;

    Mounting(double a, double b, double deltaK) {
        this.a = a;
        this.b = b;
        this.deltaK = deltaK;
    }

    public double a() {
        return a;
    }

    public double b() {
        return b;
    }

    public double deltaK() {
        return deltaK;
    }
}
