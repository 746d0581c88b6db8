package ampdays.alternator;

import ampdays.heat.TwoNodeStep;
import java.util.EnumMap;
import java.util.Map;

/**
 * An alternator on its engine: what depends on the rotor's speed alone, worked out once for all runs that turn it the same.
 * Immutable.
 */
public final class TurningAlternator {
    final AlternatorSpec spec;
    final EngineSpec engine;
    final double stepS;
    final double endA;
    final double copperOhm;
    private final Map<EngineState, Speed> speeds = new EnumMap<>(EngineState.class);

    /** One rotor speed. */
    record Speed(
            WindingTable curve,
            WindingTable belt,
            double turningLossW,
            double capA,
            double toWindingWK,
            double toCaseWK,
            TwoNodeStep nodes) {}

    /**
     * @param airDensityShare air density over that at sea level
     * @param stepS length of a step, s
     */
    public TurningAlternator(AlternatorSpec spec, EngineSpec engine, double airDensityShare, double stepS) {
        this.spec = spec;
        this.engine = engine;
        this.stepS = stepS;
        this.endA = spec.curve().endA();
        this.copperOhm = AlternatorPhysics.copperOhm(spec.ratedA(), spec.halfLoadEfficiency());
        for (EngineState each : EngineState.values()) {
            speeds.put(each, speed(engine.rpm(each) * spec.pulleyRatio(), airDensityShare));
        }
    }

    private Speed speed(double rotorRpm, double airDensityShare) {
        double cooling = AlternatorPhysics.coolingShare(rotorRpm, airDensityShare);
        double turningLossW = AlternatorPhysics.turningLossW(rotorRpm, spec.ratedA());
        double beltW = AlternatorPhysics.beltW(rotorRpm, spec.beltW(), spec.beltRpm());
        double toWindingWK = spec.windingToAirWK() * cooling;
        double toCaseWK = spec.caseToAirWK() * cooling;
        return new Speed(
                new WindingTable(windingC -> spec.curve().currentA(rotorRpm, windingC)),
                new WindingTable(windingC -> AlternatorPhysics.beltCurrentA(
                        beltW, spec.setPointV(), copperOhm, windingC, spec.ratedA(), turningLossW)),
                turningLossW,
                spec.capA(rotorRpm),
                toWindingWK,
                toCaseWK,
                new TwoNodeStep(spec.windingJK(), spec.caseJK(), toWindingWK, toCaseWK, spec.windingToCaseWK(), stepS));
    }

    Speed at(EngineState state) {
        return speeds.get(state);
    }
}
