package ampdays.sim;

/** What was measured in place of what a plan works out, step by step; a step that is not told stays as planned. */
public final class Measured {
    /** Nothing in place of a plan. */
    public static final Measured NONE = new Measured(null, null, null);

    private final double[] useW;
    private final double[] solarW;
    private final double[] engine;

    private Measured(double[] useW, double[] solarW, double[] engine) {
        this.useW = useW;
        this.solarW = solarW;
        this.engine = engine;
    }

    /** Also the power that everything but the bank took from the bus, W; NaN where it is not told. */
    public Measured withUse(double... watts) {
        return new Measured(watts.clone(), solarW, engine);
    }

    /** Also the power that the panels could give at the bus, W; NaN where it is not told. */
    public Measured withSolar(double... watts) {
        return new Measured(useW, watts.clone(), engine);
    }

    /** Also the engine: 1 where it ran, 0 where it stood, NaN where it is not told. */
    public Measured withEngine(double... ran) {
        return new Measured(useW, solarW, ran.clone());
    }

    boolean tellsUse(int step) {
        return useW != null && !Double.isNaN(useW[step]);
    }

    double useW(int step) {
        return useW[step] > 0 ? useW[step] : 0;
    }

    boolean tellsSolar(int step) {
        return solarW != null && !Double.isNaN(solarW[step]);
    }

    double solarW(int step) {
        return solarW[step] > 0 ? solarW[step] : 0;
    }

    boolean tellsEngine() {
        return engine != null;
    }

    /** Whether the engine ran, or ran as planned where it is not told. */
    boolean engineRan(int step, boolean planned) {
        return Double.isNaN(engine[step]) ? planned : engine[step] > 0;
    }
}
