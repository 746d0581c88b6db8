package ampdays.cooling;

/**
 * A compressor refrigerator during one run: one heat node, a thermostat that switches at the instant the exact curve
 * crosses. One run, one thread.
 *
 * <p>While the compressor runs it draws constant power P and cools P·COP with COP = share · Te/(Tk - Te), Te the inside
 * less the approach, Tk the air at the condenser plus the approach, both in kelvin (Carnot with approaches). Leaves out
 * ice, defrost and speed control. Reference: RefrigeratorTest, against the published growth of use with ambient (Int.
 * J. Energy Engineering, household units, 20 to 33 °C: 15 to 53 %, and its Carnot-type band 1.15 to 2.4).
 */
public final class Refrigerator {
    private static final double KELVIN = 273.15;

    private final RefrigeratorSpec spec;
    private final double tauS;
    private final double stepS;
    private final double wholeStep;
    private double insideC;
    private boolean on;
    private double inputW;
    private double heatW;

    public Refrigerator(RefrigeratorSpec spec, double stepS) {
        this.spec = spec;
        this.stepS = stepS;
        this.tauS = spec.heatCapacityJK() / spec.uaWK();
        this.wholeStep = Math.exp(-stepS / tauS);
        this.insideC = spec.insideC();
    }

    /** Coefficient of performance at an inside and condenser air temperature, °C; from 0.2 to 10. */
    public static double cop(double insideC, double condenserAirC, double approachK, double carnotShare) {
        double coldK = insideC - approachK + KELVIN;
        double liftK = condenserAirC + approachK - (insideC - approachK);
        if (liftK <= carnotShare * coldK / 10) {
            return 10;
        }
        double cop = carnotShare * coldK / liftK;
        return cop < 0.2 ? 0.2 : cop;
    }

    /**
     * One step.
     *
     * @param cabinC air around it, °C
     * @param usersUp whether people are up and use it
     * @param powered whether it has power
     */
    public void step(double cabinC, boolean usersUp, boolean powered) {
        double leakAndUseW = usersUp ? spec.dailyUseWh() / 16 : 0;
        double condenserC = cabinC + spec.condenserRiseK();
        double cop = cop(insideC, condenserC, spec.approachK(), spec.carnotShare());
        double runS = powered
                ? cycle(cabinC + leakAndUseW / spec.uaWK(), cop)
                : floatFree(cabinC + leakAndUseW / spec.uaWK());
        double compressorW = spec.compressorW() * runS / stepS;
        inputW = powered ? compressorW + spec.standingW() : 0;
        heatW = inputW;
    }

    private double floatFree(double restC) {
        on = false;
        insideC = restC + (insideC - restC) * wholeStep;
        return 0;
    }

    private double cycle(double warmRestC, double cop) {
        double coldRestC = warmRestC - spec.compressorW() * cop / spec.uaWK();
        double lowC = spec.insideC() - spec.bandK() / 2;
        double highC = spec.insideC() + spec.bandK() / 2;
        double leftS = stepS;
        double runS = 0;
        boolean whole = true;
        while (leftS > 0) {
            if (on ? insideC <= lowC : insideC >= highC) {
                on = !on;
            }
            double restC = on ? coldRestC : warmRestC;
            double targetC = on ? lowC : highC;
            double endC = restC + (insideC - restC) * (whole ? wholeStep : Math.exp(-leftS / tauS));
            boolean crosses = on ? endC < targetC : endC > targetC;
            double timeS = leftS;
            if (crosses) {
                timeS = tauS * Math.log((insideC - restC) / (targetC - restC));
                endC = targetC;
                whole = false;
            }
            insideC = endC;
            runS += on ? timeS : 0;
            leftS -= timeS;
        }
        return runS;
    }

    public double insideC() {
        return insideC;
    }

    /** Mean electrical input of the last step, W. */
    public double inputW() {
        return inputW;
    }

    /**
     * Heat given to the cabin, W: the electrical input. What it pumps out of its box came from the cabin, so the rest
     * cancels over a cycle.
     */
    public double heatW() {
        return heatW;
    }
}
