package ampdays.cooling;

import ampdays.units.Require;

/**
 * A compressor refrigerator.
 *
 * @param uaWK heat leak of the box, W/K
 * @param insideC temperature kept inside, °C
 * @param bandK thermostat band, K
 * @param heatCapacityJK box with its content, J/K
 * @param compressorW input while the compressor runs, W
 * @param standingW electronics and fan, always, W
 * @param carnotShare share of the ideal coefficient of performance, 0 to 1
 * @param approachK how far evaporator and condenser stand off their air, K
 * @param condenserRiseK how much warmer than the cabin the air at the condenser is, K
 * @param dailyUseWh heat that doors and warm food bring in while people are up, Wh per day
 * @param shoppingWh heat of warm food put in after each drive in town, Wh
 */
public record RefrigeratorSpec(
        double uaWK,
        double insideC,
        double bandK,
        double heatCapacityJK,
        double compressorW,
        double standingW,
        double carnotShare,
        double approachK,
        double condenserRiseK,
        double dailyUseWh,
        double shoppingWh) {
    public RefrigeratorSpec {
        Require.positive("heat leak", uaWK);
        Require.within("inside temperature", insideC, -30, 20);
        Require.positive("band", bandK);
        Require.positive("heat capacity", heatCapacityJK);
        Require.positive("compressor", compressorW);
        Require.notNegative("standing draw", standingW);
        Require.share("carnot share", carnotShare);
        Require.positive("approach", approachK);
        Require.notNegative("condenser rise", condenserRiseK);
        Require.notNegative("daily use", dailyUseWh);
        Require.notNegative("warm food after shopping", shoppingWh);
    }
}
