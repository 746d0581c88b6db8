package ampdays.battery;

import ampdays.units.Require;

/**
 * The house bank, lithium iron phosphate.
 *
 * @param capacityAh capacity at full health, Ah
 * @param seriesCells cells in series (4 = 12 V, 8 = 24 V, 16 = 48 V)
 * @param resistanceOhm resistance on the scale of minutes at 25 °C, with its electronics, Ω
 * @param chargeC charge limit of the cells at 25 to 45 °C, share of capacity per hour
 * @param chargeLimitA charge limit of the protection, A
 * @param dischargeLimitA discharge limit of the protection, A
 * @param absorptionV voltage that charging is held to, V
 * @param taperFromShare state of charge from which charging tapers, 0 to 1
 * @param tailC current at full, share of capacity per hour
 * @param coulombicEfficiency share of the charge put in that can be taken out, 0 to 1
 * @param selfDischargePerMonth share of capacity lost in thirty days, 0 to 1
 * @param electronicsA draw of its own electronics, A
 * @param startShare state of charge at the start, 0 to 1
 * @param cutOutShare state of charge at which loads are cut, 0 to 1
 * @param cutOutV bus voltage at which loads are cut, V
 * @param reconnectShare state of charge from which loads come back, 0 to 1
 * @param heatJK heat capacity, J/K
 * @param heatWK conductance to the cabin, W/K
 */
public record BankSpec(
        double capacityAh,
        int seriesCells,
        double resistanceOhm,
        double chargeC,
        double chargeLimitA,
        double dischargeLimitA,
        double absorptionV,
        double taperFromShare,
        double tailC,
        double coulombicEfficiency,
        double selfDischargePerMonth,
        double electronicsA,
        double startShare,
        double cutOutShare,
        double cutOutV,
        double reconnectShare,
        double heatJK,
        double heatWK) {
    public BankSpec {
        Require.within("bank capacity", capacityAh, 1, 100_000);
        Require.within("cells in series", seriesCells, 1, 32);
        Require.positive("bank resistance", resistanceOhm);
        Require.positive("charge rate", chargeC);
        Require.positive("charge limit", chargeLimitA);
        Require.positive("discharge limit", dischargeLimitA);
        Require.positive("absorption voltage", absorptionV);
        Require.within("taper start", taperFromShare, 0.5, 0.999);
        Require.within("tail current", tailC, 0.001, chargeC);
        Require.within("coulombic efficiency", coulombicEfficiency, 0.5, 1);
        Require.share("self-discharge", selfDischargePerMonth);
        Require.notNegative("electronics", electronicsA);
        Require.share("start", startShare);
        Require.within("cut-out", cutOutShare, 0, 0.99);
        Require.notNegative("cut-out voltage", cutOutV);
        Require.within("re-connect", reconnectShare, cutOutShare, 1);
        Require.positive("heat capacity", heatJK);
        Require.positive("heat conductance", heatWK);
    }
}
