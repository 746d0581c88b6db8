package ampdays.alternator;

import ampdays.alternator.TurningAlternator.Speed;
import ampdays.heat.TwoNodeStep;

/**
 * One alternator during one run: winding and case temperatures, ramp. One run, one thread.
 *
 * <p>A step is {@link #open} (how much current now, and why no more), then {@link #settle} with the current drawn. Limits
 * and loss of a step are those at the middle between its start and the end foretold from it, so that the feedback of warm
 * copper and of the cut-back is of second order in the step. In a step with a ramp in it the loss in copper is that of the
 * ramp's mean square. A machine at rest has no losses: {@link #open} cools it towards the air around it, and nothing is
 * left to settle. Reference: AlternatorIntegrationTest.
 */
public final class Alternator {
    private final TurningAlternator turning;
    private final AlternatorSpec spec;
    private final EngineSpec engine;
    private final double stepS;
    private final double endA;
    private final double copperOhm;
    final TwoNodeStep atRest;

    private EngineState state = EngineState.STOPPED;
    private Speed speed;
    double windingC;
    double caseC;
    private double windingAirW;
    private double caseW;
    private double runningS;
    private double steadyA;
    private double rampShare;
    /** Resistance of the copper times what a ramp's mean square exceeds the square of its mean by. */
    private double stepOhm;

    private AlternatorLimit limit = AlternatorLimit.ROTOR_SPEED;

    /**
     * @param airDensityShare air density over that at sea level
     * @param startC temperature at the start, °C
     * @param stepS length of a step, s
     */
    public Alternator(AlternatorSpec spec, EngineSpec engine, double airDensityShare, double startC, double stepS) {
        this(new TurningAlternator(spec, engine, airDensityShare, stepS), startC);
    }

    /** @param startC temperature at the start, °C */
    public Alternator(TurningAlternator turning, double startC) {
        this.turning = turning;
        this.spec = turning.spec;
        this.engine = turning.engine;
        this.stepS = turning.stepS;
        this.endA = turning.endA;
        this.copperOhm = turning.copperOhm;
        this.speed = turning.at(state);
        this.atRest = speed.nodes();
        this.windingC = startC;
        this.caseC = startC;
    }

    /** Goes on from where another was. */
    public void goOnFrom(Alternator before) {
        state = before.state;
        speed = turning.at(state);
        windingC = before.windingC;
        caseC = before.caseC;
        runningS = before.runningS;
    }

    /**
     * Begins a step.
     *
     * @param underBonnetC air around it, °C
     */
    public void open(EngineState now, double underBonnetC) {
        if (state != now) {
            state = now;
            speed = turning.at(now);
            if (now == EngineState.STOPPED) {
                runningS = 0;
                steadyA = 0;
                rampShare = 0;
            }
        }
        if (now == EngineState.STOPPED) {
            rest(underBonnetC);
        } else {
            turn(underBonnetC);
        }
    }

    private void rest(double airC) {
        double windingK = windingC - airC;
        double caseK = caseC - airC;
        windingC = airC + atRest.after1K(windingK, caseK);
        caseC = airC + atRest.after2K(windingK, caseK);
    }

    private void turn(double underBonnetC) {
        windingAirW = speed.toWindingWK() * underBonnetC;
        caseW = speed.turningLossW() + speed.toCaseWK() * underBonnetC;
        boolean ramps = runningS < spec.startDelayS() + spec.rampS();
        if (ramps) {
            rampShare = AlternatorPhysics.rampShare(runningS, stepS, spec.startDelayS(), spec.rampS());
            stepOhm = copperOhm * AlternatorPhysics.rampSquareFactor(runningS, stepS, spec.startDelayS(), spec.rampS());
        } else {
            rampShare = 1;
            stepOhm = copperOhm;
        }
        runningS += stepS;
        double atStartA = rampShare * steadyA(windingC, caseC);
        double windingW = windingAirW + lossW(atStartA, windingC);
        double rest1C = speed.nodes().rest1C(windingW, caseW);
        double rest2C = speed.nodes().rest2C(windingW, caseW);
        double d1K = windingC - rest1C;
        double d2K = caseC - rest2C;
        steadyA = steadyA(
                (windingC + rest1C + speed.nodes().after1K(d1K, d2K)) / 2,
                (caseC + rest2C + speed.nodes().after2K(d1K, d2K)) / 2);
        if (ramps) {
            limit = AlternatorLimit.START_RAMP;
        }
    }

    /** Current at two temperatures but for the ramp, A; names the limit. */
    private double steadyA(double atWindingC, double atCaseC) {
        double least = speed.curve().currentA(atWindingC);
        AlternatorLimit why = AlternatorLimit.ROTOR_SPEED;
        double beltA = speed.belt().currentA(atWindingC);
        if (beltA < least) {
            least = beltA;
            why = AlternatorLimit.BELT;
        }
        if (speed.capA() < least) {
            least = speed.capA();
            why = AlternatorLimit.REGULATOR_CAP;
        }
        double cool = AlternatorPhysics.cutBackShare(atCaseC, spec.cutBackFromC(), spec.cutBackToC());
        double heatA = cool * (speed.capA() < endA ? speed.capA() : endA);
        if (cool < 1 && heatA < least) {
            least = heatA;
            why = AlternatorLimit.HEAT;
        }
        if (limit != why) {
            limit = why;
        }
        return least;
    }

    /**
     * Ends the step.
     *
     * @param currentA mean current drawn, A; 0 with the engine off
     */
    public void settle(double currentA) {
        if (state == EngineState.STOPPED) {
            return;
        }
        double windingW = windingAirW + lossW(currentA, windingC);
        if (currentA > 0) {
            double restC = speed.nodes().rest1C(windingW, caseW);
            double endC = restC
                    + speed.nodes()
                            .after1K(windingC - restC, caseC - speed.nodes().rest2C(windingW, caseW));
            windingW = windingAirW + lossW(currentA, (windingC + endC) / 2);
        }
        double rest1C = speed.nodes().rest1C(windingW, caseW);
        double rest2C = speed.nodes().rest2C(windingW, caseW);
        double d1K = windingC - rest1C;
        double d2K = caseC - rest2C;
        windingC = rest1C + speed.nodes().after1K(d1K, d2K);
        caseC = rest2C + speed.nodes().after2K(d1K, d2K);
    }

    private double lossW(double currentA, double atC) {
        return AlternatorPhysics.electricalLossW(currentA, stepOhm, atC, spec.ratedA());
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
        double moreW = (currentA - otherwiseA) * outputV + lossW(currentA, windingC) - lossW(otherwiseA, windingC);
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

    /** Seconds that the engine has been on; while a step is open, up to its end. */
    public double runningS() {
        return runningS;
    }

    public double caseC() {
        return caseC;
    }

    public double windingC() {
        return windingC;
    }
}
