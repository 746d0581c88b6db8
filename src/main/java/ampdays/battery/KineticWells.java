package ampdays.battery;

/**
 * The kinetic two-well model of a lead-acid battery for steps of one length: charge at hand q1 and bound charge q2 flow
 * into each other, only q1 feeds the terminals. With q0 = q1 + q2, e = exp(-kt) and the current I > 0 on discharge:
 *
 * <pre>
 * q1' = q1 e + (q0 k c - I)(1 - e)/k - I c (kt - 1 + e)/k
 * q2' = q2 e + q0 (1 - c)(1 - e) - I (1 - c)(kt - 1 + e)/k
 * </pre>
 *
 * <p>k is the rate of this closed form, k = k_well/(c (1 - c)) of the well equation. Leaves out temperature and losses;
 * nothing is clamped. Source: J. F. Manwell and J. G. McGowan, Lead acid battery storage model for hybrid energy systems,
 * Solar Energy 50 (1993) 399. Reference: KineticWellsTest against table kibam.
 */
public final class KineticWells {
    private final double availableShare;
    private final double e;
    private final double direct;
    private final double shared;

    /**
     * @param availableShare c, width of the well at hand, above 0 to below 1
     * @param ratePerH k, 1/h, above 0
     * @param stepH t, h, above 0
     */
    public KineticWells(double availableShare, double ratePerH, double stepH) {
        this.availableShare = availableShare;
        this.e = Math.exp(-ratePerH * stepH);
        this.direct = -Math.expm1(-ratePerH * stepH) / ratePerH;
        this.shared = stepH - direct;
    }

    /** Charge at hand at the end of the step, Ah; below 0 if the current was too large. */
    public double availableAh(double q1Ah, double q2Ah, double currentA) {
        return q1Ah * e + (q1Ah + q2Ah) * availableShare * (1 - e) - currentA * availableA();
    }

    /** Bound charge at the end of the step, Ah. */
    public double boundAh(double q1Ah, double q2Ah, double currentA) {
        return q2Ah * e + (q1Ah + q2Ah) * (1 - availableShare) * (1 - e) - currentA * (1 - availableShare) * shared;
    }

    /** How much less charge at hand an ampere leaves at the end of the step, Ah/A. */
    double availableA() {
        return direct + availableShare * shared;
    }

    /** Constant current that empties the well at hand just at the end of the step, A. */
    public double maxDischargeA(double q1Ah, double q2Ah) {
        return availableAh(q1Ah, q2Ah, 0) / availableA();
    }

    /**
     * Constant charging current that fills the well at hand just at the end of the step, A, positive into the battery.
     *
     * @param wholeAh charge of both wells when full, Ah
     */
    public double maxChargeA(double q1Ah, double q2Ah, double wholeAh) {
        return (availableShare * wholeAh - availableAh(q1Ah, q2Ah, 0)) / availableA();
    }

    /**
     * Charge of both wells when full, from the charge that a constant current draws from the full battery.
     *
     * @param ratedAh charge drawn, Ah
     * @param ratedH in this time, h
     */
    public static double wholeAh(double availableShare, double ratePerH, double ratedAh, double ratedH) {
        return ratedAh / (ratedH * fullBatteryA(availableShare, ratePerH, ratedH));
    }

    /** Constant current per ampere-hour of both wells that empties the full battery in a time, A/Ah. */
    static double fullBatteryA(double availableShare, double ratePerH, double hours) {
        return new KineticWells(availableShare, ratePerH, hours).maxDischargeA(availableShare, 1 - availableShare);
    }
}
