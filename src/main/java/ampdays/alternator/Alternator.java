package ampdays.alternator;

import ampdays.heat.TwoNodeStep;

/**
 * One alternator during one run: winding and case temperatures, ramp. One run, one thread.
 *
 * <p>A step is {@link #open} (how much current now, and why no more), then {@link #settle} with the current drawn.
 */
public final class Alternator {
    private final AlternatorSpec spec;
    private final EngineSpec engine;
    private final double stepS;
    private final double maxA;
    private final double copperOhm;
    private final Speed stopped;
    private final Speed idle;
    private final Speed town;
    private final Speed highway;

    private Speed speed;
    private double windingC;
    private double caseC;
    private double runningS;
    private double steadyA;
    private double rampShare;
    private AlternatorLimit limit = AlternatorLimit.ROTOR_SPEED;

    /** What depends on the rotor's speed alone, worked out once. */
    private record Speed(
            double rotorRpm,
            double turningLossW,
            double beltW,
            double toWindingWK,
            double toCaseWK,
            TwoNodeStep nodes) {}

    public Alternator(AlternatorSpec spec, EngineSpec engine, double airDensityShare, double startC, double stepS) {
        this.spec = spec;
        this.engine = engine;
        this.stepS = stepS;
        this.maxA = AlternatorPhysics.maxA(spec.ratedA(), spec.cutInRpm(), spec.curveRpm());
        this.copperOhm = AlternatorPhysics.copperOhm(spec.ratedA(), spec.halfLoadEfficiency());
        this.stopped = speed(0, airDensityShare);
        this.idle = speed(engine.idleRpm(), airDensityShare);
        this.town = speed(engine.townRpm(), airDensityShare);
        this.highway = speed(engine.highwayRpm(), airDensityShare);
        this.speed = stopped;
        this.windingC = startC;
        this.caseC = startC;
    }

    private Speed speed(double engineRpm, double airDensityShare) {
        double rotorRpm = engineRpm * spec.pulleyRatio();
        double cooling = AlternatorPhysics.coolingShare(rotorRpm, airDensityShare);
        double toWindingWK = spec.windingToAirWK() * cooling;
        double toCaseWK = spec.caseToAirWK() * cooling;
        return new Speed(
                rotorRpm,
                AlternatorPhysics.turningLossW(rotorRpm, spec.ratedA()),
                AlternatorPhysics.beltW(rotorRpm, spec.beltW(), spec.beltRpm()),
                toWindingWK,
                toCaseWK,
                new TwoNodeStep(spec.windingJK(), spec.caseJK(), toWindingWK, toCaseWK, spec.windingToCaseWK(), stepS));
    }

    /** Begins a step with the engine off. */
    public void openStopped() {
        speed = stopped;
        runningS = 0;
        steadyA = 0;
        rampShare = 0;
    }

    /** Begins a step with the engine at idle. */
    public void openIdle() {
        open(idle);
    }

    /** Begins a step in town traffic. */
    public void openTown() {
        open(town);
    }

    /** Begins a step on the highway. */
    public void openHighway() {
        open(highway);
    }

    private void open(Speed now) {
        speed = now;
        double least = AlternatorPhysics.curveA(now.rotorRpm, maxA, spec.cutInRpm(), spec.curveRpm(), windingC);
        AlternatorLimit why = AlternatorLimit.ROTOR_SPEED;
        double beltA = AlternatorPhysics.beltCurrentA(
                now.beltW, spec.setPointV(), copperOhm, windingC, spec.ratedA(), now.turningLossW);
        if (beltA < least) {
            least = beltA;
            why = AlternatorLimit.BELT;
        }
        if (spec.capA() < least) {
            least = spec.capA();
            why = AlternatorLimit.REGULATOR_CAP;
        }
        double cool = AlternatorPhysics.cutBackShare(caseC, spec.cutBackFromC(), spec.cutBackToC());
        double heatA = cool * (spec.capA() < maxA ? spec.capA() : maxA);
        if (cool < 1 && heatA < least) {
            least = heatA;
            why = AlternatorLimit.HEAT;
        }
        steadyA = least;
        rampShare = 1;
        if (runningS < spec.startDelayS() + spec.rampS()) {
            rampShare = AlternatorPhysics.rampShare(runningS, stepS, spec.startDelayS(), spec.rampS());
            why = AlternatorLimit.START_RAMP;
        }
        if (limit != why) {
            limit = why;
        }
        runningS += stepS;
    }

    /**
     * Ends the step.
     *
     * @param currentA mean current drawn, A
     * @param underBonnetC air around it, °C
     */
    public void settle(double currentA, double underBonnetC) {
        double lossW = AlternatorPhysics.electricalLossW(currentA, copperOhm, windingC, spec.ratedA());
        double q1W = lossW + speed.toWindingWK * underBonnetC;
        double q2W = speed.turningLossW + speed.toCaseWK * underBonnetC;
        double rest1C = speed.nodes.rest1C(q1W, q2W);
        double rest2C = speed.nodes.rest2C(q1W, q2W);
        double d1K = windingC - rest1C;
        double d2K = caseC - rest2C;
        windingC = rest1C + speed.nodes.after1K(d1K, d2K);
        caseC = rest2C + speed.nodes.after2K(d1K, d2K);
    }

    /**
     * Fuel that the last step cost, litres, beyond that of a smaller current; turning the machine without current is the
     * vehicle's own fuel.
     *
     * @param currentA current drawn, A
     * @param otherwiseA current that would have been drawn anyway, A
     * @param outputV voltage at its terminals, V
     */
    public double fuelLitres(double currentA, double otherwiseA, double outputV) {
        if (currentA <= otherwiseA) {
            return 0;
        }
        double moreW = (currentA - otherwiseA) * outputV
                + AlternatorPhysics.electricalLossW(currentA, copperOhm, windingC, spec.ratedA())
                - AlternatorPhysics.electricalLossW(otherwiseA, copperOhm, windingC, spec.ratedA());
        return AlternatorPhysics.fuelLitresPerH(moreW, engine.fuel()) * stepS / 3600;
    }

    /** Current it can give in this step, A, as a mean over the step. */
    public double availableA() {
        return rampShare * steadyA;
    }

    /**
     * What of that is left beside another draw on it, A as a mean over the step, from 0. During the ramp both get their
     * share of it, so that a start costs the same whatever the step.
     *
     * @param otherA the other draw once the ramp is over, A
     */
    public double spareA(double otherA) {
        return otherA < steadyA ? rampShare * (steadyA - otherA) : 0;
    }

    /** Mean over the step of the ramp after a start, 0 to 1; 0 with the engine off. */
    public double rampShare() {
        return rampShare;
    }

    /** What keeps it from giving more. */
    public AlternatorLimit limit() {
        return limit;
    }

    public double caseC() {
        return caseC;
    }

    public double windingC() {
        return windingC;
    }
}
