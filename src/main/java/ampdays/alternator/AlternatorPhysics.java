package ampdays.alternator;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** An alternator's equations: output curve, losses, belt, cut-back, cooling, fuel. */
public final class AlternatorPhysics {
    /** Voltage at which ratings are given, V (ISO 8854 as carried by SAE J56: 13.5 V). */
    public static final double RATING_V = 13.5;

    /** Two rectifier diodes in series, V; from memory. */
    static final double DIODES_V = 1.8;

    /** Winding temperature at which the efficiency test of (EU) 2017/785 is taken to run, °C; a guess. */
    static final double TEST_WINDING_C = 80;

    /** Loss of iron, bearings and fan at 6,000 1/min, share of the rated output; a guess. */
    static final double TURNING_SHARE = 0.04;

    /** Power of the field winding at full field, share of the rated output; a guess. */
    static final double FIELD_SHARE = 0.02;

    /** Temperature coefficient of copper, 1/K (IEC 60028). */
    static final double COPPER_PER_K = 0.00393;

    /** Fall of the curve's end value with winding temperature, 1/K; our fit, see {@link #curveA}. */
    static final double IMAX_PER_K = 0.00154;

    /** Rise of the cut-in speed with winding temperature, 1/K; our fit, see {@link #curveA}. */
    static final double CUT_IN_PER_K = 0.00122;

    /** Winding temperature taken for the "hot" of the points behind that fit, °C; a guess. */
    static final double FIT_HOT_C = 130;

    private static final double RATED_RPM = 6000;
    private static final double COOLING_EXPONENT = 0.7;
    private static final double STILL_SHARE = 0.12;

    private AlternatorPhysics() {}

    /**
     * Largest current at a rotor speed and winding temperature:
     * I = Imax' (1 - exp(-(n - n0')/nc)), Imax' = Imax (1 - 0.00154 (Tw - 25)), n0' = n0 (1 + 0.00122 (Tw - 25)); 0
     * below n0'.
     *
     * <p>The form and the two temperature coefficients are our fit to the published hot and cold points of a 50 A
     * machine (Westerbeke 33A engine manual, p. 83: hot 16 A at 1,300, 41 A at 2,500, 48 A at 5,000; cold 24 A at
     * 1,300, 50 A at 2,500 1/min), taking its "hot" for 130 °C of winding. Leaves out the fall of output with voltage.
     * Reference: AlternatorPhysicsTest.
     *
     * @param rotorRpm rotor speed, 1/min, from 0
     * @param maxA Imax, A
     * @param cutInRpm n0, 1/min
     * @param curveRpm nc, 1/min
     * @param windingC winding temperature, °C; meant for -20 to 180
     * @return A, from 0
     */
    public static double curveA(double rotorRpm, double maxA, double cutInRpm, double curveRpm, double windingC) {
        double aboveK = windingC - 25;
        double cutIn = cutInRpm * (1 + CUT_IN_PER_K * aboveK);
        if (rotorRpm <= cutIn) {
            return 0;
        }
        double hot = maxA * (1 - IMAX_PER_K * aboveK);
        double current = hot * (1 - Math.exp(-(rotorRpm - cutIn) / curveRpm));
        return current > 0 ? current : 0;
    }

    /** End value Imax of the curve whose cold current at 6,000 1/min is the rating, A. */
    public static double maxA(double ratedA, double cutInRpm, double curveRpm) {
        return ratedA / (1 - Math.exp(-(RATED_RPM - cutInRpm) / curveRpm));
    }

    /**
     * Resistance of windings and leads at 20 °C, Ω, for which the efficiency at half the rated current, weighted over
     * 1,800, 3,000, 6,000 and 10,000 1/min by 0.25, 0.40, 0.25, 0.10, is the given one.
     *
     * <p>Source of the test: Commission Implementing Decision (EU) 2017/785, annex (ISO 8854:2012 base); its baseline
     * is 67 %. How the loss splits between copper, diodes, field and turning is ours.
     */
    public static double copperOhm(double ratedA, double halfLoadEfficiency) {
        double mostOhm = RATING_V / ratedA;
        if (!(weightedEfficiency(ratedA, 0) > halfLoadEfficiency
                && weightedEfficiency(ratedA, mostOhm) < halfLoadEfficiency)) {
            throw new IllegalArgumentException("an efficiency of " + halfLoadEfficiency
                    + " at half load cannot be reached by this model of an alternator");
        }
        return new BrentSolver(1e-15, 1e-12)
                .solve(200, ohm -> weightedEfficiency(ratedA, ohm) - halfLoadEfficiency, 0, mostOhm);
    }

    static double weightedEfficiency(double ratedA, double copperOhm) {
        double halfA = ratedA / 2;
        double sum = 0;
        double[][] speedsAndWeights = {{1800, 0.25}, {3000, 0.40}, {6000, 0.25}, {10_000, 0.10}};
        for (double[] point : speedsAndWeights) {
            double outW = RATING_V * halfA;
            double lossW = electricalLossW(halfA, copperOhm, TEST_WINDING_C, ratedA) + turningLossW(point[0], ratedA);
            sum += point[1] * outW / (outW + lossW);
        }
        return sum;
    }

    /** Loss in copper, diodes and field, W, at an output current (A) and winding temperature (°C); 0 at rest. */
    public static double electricalLossW(double currentA, double copperOhm, double windingC, double ratedA) {
        if (currentA <= 0) {
            return 0;
        }
        double ohm = copperOhm * (1 + COPPER_PER_K * (windingC - 20));
        return currentA * (DIODES_V + ohm * currentA) + FIELD_SHARE * RATING_V * ratedA;
    }

    /** Loss of iron, bearings and fan, W, growing with rotor speed to the power of 1.5. */
    public static double turningLossW(double rotorRpm, double ratedA) {
        double share = rotorRpm / RATED_RPM;
        return TURNING_SHARE * RATING_V * ratedA * share * Math.sqrt(share);
    }

    /** Shaft power, W, from 0: output plus all losses. Electrical output and heat add up to it. */
    public static double shaftW(double outputW, double electricalLossW, double turningLossW) {
        return outputW + electricalLossW + turningLossW;
    }

    /**
     * Power a belt carries, W: a torque limit, so P = Prated min(1, n/nref).
     *
     * @param rotorRpm rotor speed, 1/min
     */
    public static double beltW(double rotorRpm, double ratedW, double referenceRpm) {
        return rotorRpm < referenceRpm ? ratedW * rotorRpm / referenceRpm : ratedW;
    }

    /**
     * Output current at which the shaft power reaches what the belt carries, A: the positive root of
     * R I² + (V + Vd) I + field + turning = P; 0 when the belt cannot even turn it.
     */
    public static double beltCurrentA(
            double beltW, double outputV, double copperOhm, double windingC, double ratedA, double turningLossW) {
        double spareW = beltW - turningLossW - FIELD_SHARE * RATING_V * ratedA;
        if (spareW <= 0) {
            return 0;
        }
        double ohm = copperOhm * (1 + COPPER_PER_K * (windingC - 20));
        double b = outputV + DIODES_V;
        return 2 * spareW / (b + Math.sqrt(b * b + 4 * ohm * spareW));
    }

    /** Share of the cap that the regulator leaves at a case temperature: 1 up to {@code fromC}, 0 from {@code toC}. */
    public static double cutBackShare(double caseC, double fromC, double toC) {
        if (caseC <= fromC) {
            return 1;
        }
        return caseC >= toC ? 0 : (toC - caseC) / (toC - fromC);
    }

    /**
     * Share of the conductances to air at a rotor speed and air density: (n/6000)^0.7 times the density relative to
     * sea level, never below 0.12 (still air around the stopped machine; a guess).
     *
     * <p>The exponent is in the range 0.6 to 0.8 of shaft-driven fans, from memory.
     */
    public static double coolingShare(double rotorRpm, double airDensityShare) {
        double share = Math.pow(rotorRpm / RATED_RPM, COOLING_EXPONENT);
        return (share < STILL_SHARE ? STILL_SHARE : share) * airDensityShare;
    }

    /**
     * Mean of a ramp over a step: 0 up to the delay, then a straight line to 1.
     *
     * @param fromS seconds since the engine started, at the start of the step
     * @param stepS length of the step, s
     */
    public static double rampShare(double fromS, double stepS, double delayS, double rampS) {
        return (rampIntegralS(fromS + stepS, delayS, rampS) - rampIntegralS(fromS, delayS, rampS)) / stepS;
    }

    /**
     * Mean square of such a ramp over a step, divided by the square of its mean: copper is heated by the mean square of the
     * current, so its loss exceeds that of the mean current by this factor. From 1 on; 1 where the ramp has not begun. Closed
     * form of a straight line; reference: AlternatorPhysicsTest, by integration.
     */
    public static double rampSquareFactor(double fromS, double stepS, double delayS, double rampS) {
        double share = rampShare(fromS, stepS, delayS, rampS);
        double square =
                (rampSquareIntegralS(fromS + stepS, delayS, rampS) - rampSquareIntegralS(fromS, delayS, rampS)) / stepS;
        return share > 0 ? square / (share * share) : 1;
    }

    private static double rampSquareIntegralS(double untilS, double delayS, double rampS) {
        double t = untilS - delayS;
        if (t <= 0) {
            return 0;
        }
        return t < rampS ? t * t * t / (3 * rampS * rampS) : t - 2 * rampS / 3;
    }

    private static double rampIntegralS(double untilS, double delayS, double rampS) {
        double t = untilS - delayS;
        if (t <= 0) {
            return 0;
        }
        return t < rampS ? t * t / (2 * rampS) : t - rampS / 2;
    }

    /**
     * Fuel for shaft power at the marginal rate, l/h.
     *
     * <p>Source: consumption of effective power, (EU) 2017/785 and 2020/728, annex: litres per mechanical kWh.
     * Reference: AlternatorPhysicsTest against table alternator_fuel.
     */
    public static double fuelLitresPerH(double shaftW, Fuel fuel) {
        return shaftW / 1000 * fuel.litresPerKWh();
    }
}
