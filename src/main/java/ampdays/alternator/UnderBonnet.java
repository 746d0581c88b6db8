package ampdays.alternator;

/**
 * Air under the bonnet, above outside air. With the engine on it follows the rise of the driving state with a lag. Once
 * the engine stops, air stands still around hot iron: the rise strives, faster, for that of the soak, which fades as the
 * engine cools. A start from cold leaves little heat to soak: the engine's warmth grows from 0 to 1 with the same lag as
 * the air.
 *
 * <pre>
 * on        dr/dt = (R(state) - r)/tau     dw/dt = (1 - w)/tau
 * stopped   dr/dt = (Rsoak w - r)/taus     dw/dt = -w/tauc
 * </pre>
 *
 * Exact for a state that holds over the step. Leaves out: sun on the bonnet, wind, the fan that runs on. Reference:
 * UnderBonnetTest (bands of practice; the closed form by integration). One run, one thread.
 */
public final class UnderBonnet {
    private final EngineSpec engine;
    private final double remainsOn;
    private final double remainsSoak;
    private final double remainsWarm;
    private final double soakGain;
    private final double meanOn;
    private final double meanSoak;
    private final double meanSoaked;
    private final double remainsSoaked;
    private final double soakRiseK;
    private double riseK;
    private double meanRiseK;
    private double warmth;

    public UnderBonnet(EngineSpec engine, double stepS) {
        this.engine = engine;
        double minutes = stepS / 60;
        this.remainsOn = Math.exp(-minutes / engine.riseMinutes());
        this.remainsSoak = Math.exp(-minutes / engine.soakMinutes());
        this.remainsWarm = Math.exp(-minutes / engine.coolMinutes());
        this.meanOn = (1 - remainsOn) * engine.riseMinutes() / minutes;
        this.meanSoak = (1 - remainsSoak) * engine.soakMinutes() / minutes;
        double meanWarm = (1 - remainsWarm) * engine.coolMinutes() / minutes;
        this.meanSoaked = meanWarm - meanSoak;
        this.remainsSoaked = remainsWarm - remainsSoak;
        this.soakRiseK = engine.soakRiseK();
        this.soakGain = engine.coolMinutes() / (engine.coolMinutes() - engine.soakMinutes());
    }

    /** Goes on from where another was. */
    public void goOnFrom(UnderBonnet before) {
        riseK = before.riseK;
        warmth = before.warmth;
    }

    /** Advances by a step in which the engine is in one state. */
    public void step(EngineState state) {
        if (state == EngineState.STOPPED) {
            double soakK = soakRiseK * warmth * soakGain;
            meanRiseK = riseK * meanSoak + soakK * meanSoaked;
            riseK = riseK * remainsSoak + soakK * remainsSoaked;
            warmth *= remainsWarm;
        } else {
            double targetK = engine.riseK(state);
            meanRiseK = targetK + (riseK - targetK) * meanOn;
            riseK = targetK + (riseK - targetK) * remainsOn;
            warmth = 1 + (warmth - 1) * remainsOn;
        }
    }

    /** Rise above outside air at the end of the last step, K. */
    public double riseK() {
        return riseK;
    }

    /** Its mean over the last step, K. */
    public double meanRiseK() {
        return meanRiseK;
    }
}
