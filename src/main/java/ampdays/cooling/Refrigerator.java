package ampdays.cooling;

/**
 * A compressor refrigerator during one run: one heat node, a thermostat that switches at the instant the exact curve
 * crosses. One run, one thread.
 *
 * <p>While the compressor runs it draws constant power P and cools P·COP with COP = share · Te/(Tk - Te), Te the inside
 * less the approach, Tk the air at the condenser plus the approach, both in kelvin (Carnot with approaches). Leaves out
 * ice, defrost and speed control. Reference: CoolingTest, against the published growth of use with ambient (Int.
 * J. Energy Engineering, household units, 20 to 33 °C: 15 to 53 %, and its Carnot-type band 1.15 to 2.4).
 */
public final class Refrigerator {
    static final double KELVIN = 273.15;

    /** Hours a day in which people are up and use it; a guess. */
    private static final double USED_HOURS = 16;

    /** Warm food gives its heat off over so long; a guess. */
    private static final double FOOD_S = 3 * 3600;

    final RefrigeratorSpec spec;
    private final double tauS;
    final double stepS;
    final double wholeStep;
    final double askedPerRunW;
    final double workK;
    final double condenserRiseK;
    final double standingW;
    final double lowC;
    final double highC;
    final double usedK;
    final double foodK;
    double foodLeftS;
    double insideC;
    boolean on;
    private double askedW;

    public Refrigerator(RefrigeratorSpec spec, double stepS) {
        this.spec = spec;
        this.stepS = stepS;
        this.tauS = spec.heatCapacityJK() / spec.uaWK();
        this.wholeStep = Math.exp(-stepS / tauS);
        this.askedPerRunW = spec.compressorW() / stepS;
        this.workK = spec.compressorW() / spec.uaWK();
        this.condenserRiseK = spec.condenserRiseK();
        this.standingW = spec.standingW();
        this.lowC = spec.insideC() - spec.bandK() / 2;
        this.highC = spec.insideC() + spec.bandK() / 2;
        this.usedK = spec.dailyUseWh() / USED_HOURS / spec.uaWK();
        this.foodK = spec.shoppingWh() * 3600 / FOOD_S / spec.uaWK();
        this.insideC = spec.insideC();
    }

    /** Goes on from where another was. */
    public void goOnFrom(Refrigerator before) {
        foodLeftS = before.foodLeftS;
        insideC = before.insideC;
        on = before.on;
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

    /** Puts warm food in. */
    public void stock() {
        foodLeftS = FOOD_S;
    }

    /**
     * One step.
     *
     * @param cabinC air around it, °C
     * @param usersUp whether people are up and use it
     * @param powered whether it has power
     */
    public void step(double cabinC, boolean usersUp, boolean powered) {
        double warmRestC = usersUp ? cabinC + usedK : cabinC;
        if (foodLeftS > 0) {
            warmRestC += foodK;
            foodLeftS -= stepS;
        }
        double runS;
        if (powered) {
            runS = cycle(warmRestC, cabinC + condenserRiseK);
        } else {
            on = false;
            insideC = warmRestC + (insideC - warmRestC) * wholeStep;
            runS = insideC > spec.insideC() ? stepS : 0;
        }
        askedW = askedPerRunW * runS + standingW;
    }

    /** Seconds of the step in which the compressor runs; moves the inside temperature to the end of the step. */
    private double cycle(double warmRestC, double condenserAirC) {
        double runS = 0;
        double leftS = stepS;
        double remains = wholeStep;
        while (true) {
            if (on ? insideC <= lowC : insideC >= highC) {
                on = !on;
            }
            double restC = on ? warmRestC - coldK(condenserAirC) : warmRestC;
            double targetC = on ? lowC : highC;
            double endC = restC + (insideC - restC) * remains;
            boolean crosses = on ? endC < targetC : endC > targetC;
            if (!crosses) {
                insideC = endC;
                return runS + (on ? leftS : 0);
            }
            double timeS = tauS * Math.log((insideC - restC) / (targetC - restC));
            insideC = targetC;
            runS += on ? timeS : 0;
            leftS -= timeS;
            remains = Math.exp(-leftS / tauS);
        }
    }

    /** How far a compressor that never stops would pull the inside below its rest without it, K. */
    private double coldK(double condenserAirC) {
        return workK * cop(insideC, condenserAirC, spec.approachK(), spec.carnotShare());
    }

    public double insideC() {
        return insideC;
    }

    /**
     * Mean electrical input of the last step, W; without power, what it would have drawn. All of it ends as heat in the
     * cabin: what it pumps out of its box came from there.
     */
    public double askedW() {
        return askedW;
    }
}
