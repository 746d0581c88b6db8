package ampdays.battery;

/** The bank's equations: bus voltage, resistance, limits of charging. */
public final class BankPhysics {
    static final int FACTORS_PER_K = 4;

    /** exp(0.02 (25 - T)) from -20 to 60 °C in quarters of a kelvin; straight between, within 4e-6. */
    static final double[] RESISTANCE_FACTORS = resistanceFactors();

    private BankPhysics() {}

    private static double[] resistanceFactors() {
        double[] factors = new double[80 * FACTORS_PER_K + 1];
        for (int i = 0; i < factors.length; i++) {
            factors[i] = Math.exp(0.02 * (45 - (double) i / FACTORS_PER_K));
        }
        return factors;
    }

    /**
     * Bus voltage of a source of voltage E behind resistance R, with a constant current and a constant power fed into
     * the bus: V solves V = E + R (I + P/V), so V = (B + sqrt(B² + 4 R P))/2 with B = E + R I.
     *
     * <p>For P &lt; 0 this is the constant-power discharge I = (E - sqrt(E² - 4 R P))/(2R) of the internal-resistance
     * model. Reference: BankPhysicsTest against table constant_power_battery.
     *
     * @param emfV open-circuit voltage E, V
     * @param resistanceOhm R, Ω, from 0
     * @param currentA constant current into the bus, A; negative for a load
     * @param powerW constant power into the bus, W; negative for a load
     * @return V, or NaN when no voltage can carry that power
     */
    public static double busV(double emfV, double resistanceOhm, double currentA, double powerW) {
        double b = emfV + resistanceOhm * currentA;
        double root = b * b + 4 * resistanceOhm * powerW;
        return root < 0 || b <= 0 ? Double.NaN : (b + Math.sqrt(root)) / 2;
    }

    /**
     * The same with a regulated source besides: set point U behind resistance Rc, so that its current is (U - V)/Rc.
     * V solves V (1 + R/Rc) = E + R U/Rc + R I + R P/V.
     *
     * @param setPointV U, V
     * @param cableOhm Rc, Ω, above 0
     */
    public static double regulatedBusV(
            double emfV, double resistanceOhm, double currentA, double powerW, double setPointV, double cableOhm) {
        double ratio = resistanceOhm / cableOhm;
        double a = 1 + ratio;
        return busV((emfV + ratio * setPointV) / a, resistanceOhm / a, currentA, powerW);
    }

    /**
     * Resistance at a temperature over that at 25 °C: exp(0.02 (25 - T)), from memory; held to -20 to 60 °C. Quick where the
     * last reading lay between the same two entries of the table. Reference: BankPhysicsTest.
     */
    static final class ResistanceFactor {
        private double entry = Double.NaN;
        private double left;
        private double rise;

        /** The factor at a temperature, °C. */
        double at(double temperatureC) {
            double at = (temperatureC + 20) * FACTORS_PER_K;
            double share = at - entry;
            return share >= 0 && share < 1 ? left + rise * share : find(at);
        }

        private double find(double at) {
            int last = RESISTANCE_FACTORS.length - 1;
            double held = at < 0 ? 0 : at > last ? last : at;
            int i = held < last ? (int) held : last - 1;
            entry = i;
            left = RESISTANCE_FACTORS[i];
            rise = RESISTANCE_FACTORS[i + 1] - left;
            return left + rise * (held - entry);
        }
    }

    /**
     * Charge current near full: the limit up to {@code fromShare}, then a straight line to the tail current at full.
     *
     * @param soc state of charge, 0 to 1
     * @param limitA limit below the taper, A
     * @param tailA current at full, A
     */
    public static double taperA(double soc, double limitA, double tailA, double fromShare) {
        if (soc <= fromShare || limitA <= tailA) {
            return limitA;
        }
        double share = (soc - fromShare) / (1 - fromShare);
        return limitA + (tailA - limitA) * share;
    }
}
