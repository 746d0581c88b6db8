package ampdays.battery;

import ampdays.units.Require;

/**
 * The house bank.
 *
 * @param capacityAh capacity when new, Ah; for lead-acid at the current that empties it in {@link LeadAcid#ratedH}
 * @param seriesCells cells in series (lithium iron phosphate: 4 = 12 V; lead-acid: 6 = 12 V)
 * @param resistanceOhm resistance of the new bank on the scale of minutes at 25 °C, with its electronics, Ω
 * @param capacityHealth capacity at the start over that when new, 0.3 to 1
 * @param resistanceHealth resistance at the start over that when new, 1 to 10
 * @param chargeLimitA charge limit of the protection, A
 * @param dischargeLimitA discharge limit of the protection, A
 * @param absorptionV voltage that charging is held to, V; for lead-acid at 25 °C
 * @param tailC current at full, share of capacity per hour
 * @param selfDischargePerMonth share of capacity lost in thirty days, 0 to 1
 * @param electronicsA draw of its own electronics, A
 * @param startShare state of charge at the start, 0 to 1
 * @param heatJK heat capacity, J/K
 * @param heatWK conductance to the cabin, W/K
 */
public record BankSpec(
        double capacityAh,
        int seriesCells,
        double resistanceOhm,
        double capacityHealth,
        double resistanceHealth,
        double chargeLimitA,
        double dischargeLimitA,
        double absorptionV,
        double tailC,
        double selfDischargePerMonth,
        double electronicsA,
        double startShare,
        double heatJK,
        double heatWK,
        CutOut cutOut,
        Protection protection,
        Strings strings,
        Chemistry chemistry) {
    public BankSpec {
        Require.within("bank capacity", capacityAh, 1, 100_000);
        Require.within("cells in series", seriesCells, 1, 32);
        Require.positive("bank resistance", resistanceOhm);
        Require.within("health", capacityHealth, 0.3, 1);
        Require.within("resistance health", resistanceHealth, 1, 10);
        Require.positive("charge limit", chargeLimitA);
        Require.positive("discharge limit", dischargeLimitA);
        Require.positive("absorption voltage", absorptionV);
        Require.within("tail current", tailC, 0.001, 10);
        Require.share("self-discharge", selfDischargePerMonth);
        Require.notNegative("electronics", electronicsA);
        Require.share("start", startShare);
        Require.positive("heat capacity", heatJK);
        Require.positive("heat conductance", heatWK);
    }

    /** Energy from full to flat at the nominal voltage, with the capacity at the start, Wh. */
    public double nominalWh() {
        return capacityAh * capacityHealth * seriesCells * chemistry.cellV();
    }

    /**
     * When loads are cut off and when they come back.
     *
     * @param share state of charge at which loads are cut, 0 to 1
     * @param busV bus voltage at which loads are cut, V
     * @param reconnectShare state of charge from which loads come back, 0 to 1
     */
    public record CutOut(double share, double busV, double reconnectShare) {
        public CutOut {
            Require.within("cut-out", share, 0, 0.99);
            Require.notNegative("cut-out voltage", busV);
            Require.within("re-connect", reconnectShare, share, 1);
        }
    }

    /**
     * What opens the bank.
     *
     * @param chargeColdC no charging below, °C
     * @param chargeHotC no charging above, °C
     * @param dischargeColdC no discharging below, °C
     * @param dischargeHotC no discharging above, °C
     * @param bandK how far it must come back before it closes again, K
     * @param trips whether the limits of current open it; else sources and loads are held to them
     * @param tripWaitS how long it stays open after that, s
     * @param heldOpen whether it is open both ways until somebody resets it
     */
    public record Protection(
            double chargeColdC,
            double chargeHotC,
            double dischargeColdC,
            double dischargeHotC,
            double bandK,
            boolean trips,
            double tripWaitS,
            boolean heldOpen) {
        public Protection {
            Require.notNegative("hysteresis of the protection", bandK);
            Require.notNegative("wait of the protection", tripWaitS);
            Require.within("charge stop in the heat", chargeHotC, chargeColdC + 2 * bandK, 200);
            Require.within("discharge stop in the heat", dischargeHotC, dischargeColdC + 2 * bandK, 200);
        }
    }

    /**
     * Equal strings side by side; sources and loads hang on the first.
     *
     * @param count how many
     * @param linkOhm resistance between neighbours, plus and minus link together, Ω
     */
    public record Strings(int count, double linkOhm) {
        public Strings {
            Require.within("strings", count, 1, 64);
            Require.notNegative("link", linkOhm);
        }

        /** Share of the bank's current that the first string carries; the bank's resistance without links is given, Ω. */
        public double nearestShare(double bankOhm) {
            return ParallelStrings.nearestShare(count, count * bankOhm, linkOhm);
        }
    }

    /** What the cells are made of. */
    public sealed interface Chemistry permits Lithium, LeadAcid {
        /** Nominal voltage of a cell, V. */
        double cellV();
    }

    /**
     * Lithium iron phosphate.
     *
     * @param chargeSteps charge limits of the cells by temperature, A
     * @param taperFromShare state of charge from which charging tapers, 0 to 1
     * @param coulombicEfficiency share of the charge put in that can be taken out, 0 to 1
     * @param coldShare share of the charge within reach at 0 °C, 0 to 1; all at 25 °C, a straight line between and below
     */
    public record Lithium(ChargeSteps chargeSteps, double taperFromShare, double coulombicEfficiency, double coldShare)
            implements Chemistry {
        /** Nominal voltage of a cell, V. */
        public static final double CELL_V = 3.2;

        public Lithium {
            Require.within("taper start", taperFromShare, 0.5, 0.999);
            Require.within("coulombic efficiency", coulombicEfficiency, 0.5, 1);
            Require.share("capacity at 0 °C", coldShare);
        }

        @Override
        public double cellV() {
            return CELL_V;
        }
    }

    /**
     * Lead-acid.
     *
     * @param ratedH hours in which the rated current empties the full battery, h
     * @param availableShare c of the two-well model, 0 to 1
     * @param ratePerH k of its closed form, 1/h
     * @param chargeSteps charge limits of the cells by temperature, A
     * @param floatV voltage it is held at once full, at 25 °C, V
     * @param compensationVK change of absorption and float voltage of the bank with temperature, V/K
     */
    public record LeadAcid(
            double ratedH,
            double availableShare,
            double ratePerH,
            ChargeSteps chargeSteps,
            double floatV,
            double compensationVK)
            implements Chemistry {
        /** Nominal voltage of a cell, V. */
        public static final double CELL_V = 2;

        public LeadAcid {
            Require.within("rated hours", ratedH, 1, 200);
            Require.within("available share", availableShare, 0.01, 0.99);
            Require.positive("rate between the wells", ratePerH);
            Require.positive("float voltage", floatV);
        }

        @Override
        public double cellV() {
            return CELL_V;
        }
    }
}
