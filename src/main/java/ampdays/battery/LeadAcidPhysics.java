package ampdays.battery;

/** Equations of the lead-acid bank beside its two wells. */
public final class LeadAcidPhysics {
    private LeadAcidPhysics() {}

    /**
     * Rest voltage of one cell: Em = 2.18 - 6e-4 (273 + T)(1 - SoC), V.
     *
     * <p>Source: form of M. Ceraolo, IEEE Trans. Power Systems 15 (2000) 1184, from memory; parameters of a 50 Ah example
     * in an open initialization file that cites R. A. Jackey, SAE 2007-01-0778. Reference: LeadAcidPhysicsTest.
     *
     * @param soc state of charge, 0 to 1
     * @param temperatureC °C
     */
    public static double cellV(double soc, double temperatureC) {
        return 2.18 - slopeV(temperatureC) * (1 - soc);
    }

    /** Slope of {@link #cellV} with state of charge, V per whole charge. */
    public static double slopeV(double temperatureC) {
        return 6e-4 * (273 + temperatureC);
    }

    /**
     * What a charging current sees beside the resistance, as a resistance of one cell: R2 = 110 mΩ exp(-10 (1 - SoC)) for
     * 50 Ah, in inverse proportion to the capacity. It makes the voltage rise near full.
     *
     * <p>Leaves out the factor by current, which is near 1 on charge and near 0 on discharge. Source as of {@link #cellV}.
     * Reference: LeadAcidPhysicsTest.
     *
     * @param soc state of charge, 0 to 1
     * @param capacityAh rated capacity, Ah, above 0
     */
    public static double chargingOhm(double soc, double capacityAh) {
        return 0.110 * 50 / capacityAh * Math.exp(-10 * (1 - soc));
    }

    /**
     * Share of a charging current that is kept: 1 - exp(20.73 (SoC - 1)/(I/I10 + 0.55)).
     *
     * <p>The rest is gas and heat. Source: J. B. Copetti, E. Lorenzo and F. Chenlo, Progress in Photovoltaics 1 (1993)
     * 283, from memory. J. W. Stevens and G. P. Corey (Sandia, 1996) measured less near full; docs/MODEL.md says by how
     * much. Reference: LeadAcidPhysicsTest.
     *
     * @param soc state of charge, 0 to 1
     * @param currentShare I/I10, current over the one that empties the battery in ten hours, from 0
     */
    public static double chargeEfficiency(double soc, double currentShare) {
        return -Math.expm1(20.73 * (soc - 1) / (currentShare + 0.55));
    }

    /**
     * Share of the capacity at 25 °C that can be drawn: 1/K with K = -2.8117 x³ + 4.1916 x² - 2.4941 x + 1.405, x = T/100
     * °C, held to -5 to 50 °C and to 1 at most.
     *
     * <p>Source: polynomial fit to IEEE 485 table 1 (temperature correction of cell size), as printed in a public
     * power-system text. Reference: LeadAcidPhysicsTest.
     */
    public static double capacityShare(double temperatureC) {
        double share = 1 / sizeFactor(temperatureC);
        return share < 1 ? share : 1;
    }

    /** K of {@link #capacityShare}: how much larger a battery must be at a temperature. */
    static double sizeFactor(double temperatureC) {
        double x = (temperatureC < -5 ? -5 : temperatureC > 50 ? 50 : temperatureC) / 100;
        return ((-2.8117 * x + 4.1916) * x - 2.4941) * x + 1.405;
    }

    /**
     * Set point by temperature: that at 25 °C plus its change per kelvin; common practice is -3 mV/K per cell, -18 mV/K
     * for 12 V. Held to 0 to 50 °C (practice).
     *
     * <p>Reference: LeadAcidPhysicsTest.
     *
     * @param setPointV at 25 °C, V
     * @param perK V/K
     */
    public static double compensatedV(double setPointV, double perK, double temperatureC) {
        double t = temperatureC < 0 ? 0 : temperatureC > 50 ? 50 : temperatureC;
        return setPointV + perK * (t - 25);
    }
}
