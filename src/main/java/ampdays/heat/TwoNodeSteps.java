package ampdays.heat;

/**
 * {@link TwoNodeStep} for several bodies side by side: one of each in every array, so that the compiler may take several
 * bodies at a time. Comes to the same numbers as one by one, to the last bit.
 */
public final class TwoNodeSteps {
    private final int bodies;
    private final double[] s11;
    private final double[] s12;
    private final double[] s22;
    private final double[] p11;
    private final double[] p12;
    private final double[] p21;
    private final double[] p22;

    public TwoNodeSteps(int bodies) {
        this.bodies = bodies;
        s11 = new double[bodies];
        s12 = new double[bodies];
        s22 = new double[bodies];
        p11 = new double[bodies];
        p12 = new double[bodies];
        p21 = new double[bodies];
        p22 = new double[bodies];
    }

    /** Gives a body its step. */
    public void set(int body, TwoNodeStep step) {
        s11[body] = step.s11;
        s12[body] = step.s12;
        s22[body] = step.s22;
        p11[body] = step.p11;
        p12[body] = step.p12;
        p21[body] = step.p21;
        p22[body] = step.p22;
    }

    /** Temperatures at rest, °C, for heat flows (W) into the first nodes and one flow into all second nodes. */
    public void rest(double[] q1W, double q2W, double[] rest1C, double[] rest2C) {
        for (int i = 0; i < bodies; i++) {
            rest1C[i] = s11[i] * q1W[i] + s12[i] * q2W;
            rest2C[i] = s12[i] * q1W[i] + s22[i] * q2W;
        }
    }

    /** First nodes after a whole step, °C. */
    public void first(double[] from1C, double[] from2C, double[] rest1C, double[] rest2C, double[] end1C) {
        for (int i = 0; i < bodies; i++) {
            double d1K = from1C[i] - rest1C[i];
            double d2K = from2C[i] - rest2C[i];
            end1C[i] = rest1C[i] + (p11[i] * d1K + p12[i] * d2K);
        }
    }

    /** Second nodes after a whole step, °C. */
    public void second(double[] from1C, double[] from2C, double[] rest1C, double[] rest2C, double[] end2C) {
        for (int i = 0; i < bodies; i++) {
            double d1K = from1C[i] - rest1C[i];
            double d2K = from2C[i] - rest2C[i];
            end2C[i] = rest2C[i] + (p21[i] * d1K + p22[i] * d2K);
        }
    }

    /** Both nodes after a whole step in which all bodies stand in one air and nothing heats them, °C. */
    public void rest(double airC, double[] from1C, double[] from2C, double[] end1C, double[] end2C) {
        for (int i = 0; i < bodies; i++) {
            double d1K = from1C[i] - airC;
            double d2K = from2C[i] - airC;
            end1C[i] = airC + (p11[i] * d1K + p12[i] * d2K);
            end2C[i] = airC + (p21[i] * d1K + p22[i] * d2K);
        }
    }
}
