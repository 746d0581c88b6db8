package ampdays.heat;

/** {@link OneNodeStep} for several bodies side by side; comes to the same numbers as one by one, to the last bit. */
public final class OneNodeSteps {
    private final int bodies;
    private final double[] kPerW;
    private final double[] remains;

    public OneNodeSteps(int bodies) {
        this.bodies = bodies;
        kPerW = new double[bodies];
        remains = new double[bodies];
    }

    /** Gives a body its step. */
    public void set(int body, OneNodeStep step) {
        kPerW[body] = step.kPerW;
        remains[body] = step.remains;
    }

    /** Temperatures after a step, °C. */
    public void next(double[] fromC, double[] environmentC, double[] heatW, double[] endC) {
        for (int i = 0; i < bodies; i++) {
            double restC = environmentC[i] + heatW[i] * kPerW[i];
            endC[i] = restC + (fromC[i] - restC) * remains[i];
        }
    }
}
