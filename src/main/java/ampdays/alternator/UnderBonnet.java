package ampdays.alternator;

/**
 * Air under the bonnet: outside air plus a rise that follows the driving state with a lag, exact for a constant target
 * over the step. Leaves out the extra soak of the first minutes after a stop. One run, one thread.
 */
public final class UnderBonnet {
    private final EngineSpec engine;
    private final double remains;
    private double riseK;

    public UnderBonnet(EngineSpec engine, double stepS) {
        this.engine = engine;
        this.remains = Math.exp(-stepS / (engine.riseMinutes() * 60));
    }

    public void stopped() {
        follow(0);
    }

    public void idle() {
        follow(engine.idleRiseK());
    }

    public void town() {
        follow(engine.townRiseK());
    }

    public void highway() {
        follow(engine.highwayRiseK());
    }

    private void follow(double targetK) {
        riseK = targetK + (riseK - targetK) * remains;
    }

    /** Rise above outside air at the end of the last step, K. */
    public double riseK() {
        return riseK;
    }
}
