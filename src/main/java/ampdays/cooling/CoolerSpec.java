package ampdays.cooling;

import ampdays.units.Require;

/**
 * An air conditioner on the house bank.
 *
 * @param ratedCapacityW total cooling at the rating point (indoor 19.4 °C wet bulb, outdoor 35 °C), W
 * @param ratedCop coefficient of performance there
 * @param curves how capacity and input follow the temperatures
 * @param variableSpeed whether the compressor changes speed; if not, it runs on and off
 * @param turnDownShare lowest share of full capacity before it cycles (variable speed), 0 to 1
 * @param partLoadBlend input against part load: 0 = the best published curve, 1 = the worst
 * @param cyclingLoss share of input lost by cycling below the turn-down (degradation coefficient)
 * @param bandK thermostat band, K (fixed speed)
 * @param leastRunS shortest run, s (fixed speed)
 * @param leastRestS shortest rest, s (fixed speed)
 * @param coldStartS seconds after each start without cooling (fixed speed)
 * @param stepDownV below this bus voltage it runs at {@code stepDownShare}, V
 * @param stepDownShare share of full capacity it is held to then, 0 to 1
 * @param cutOutV below this bus voltage it stops, V
 * @param restartV it may start again from this bus voltage, V
 * @param startFactor input in the first half second of a run over its full input, from 1 (soft start) (fixed speed)
 * @param onInverter whether it hangs behind the inverter
 */
public record CoolerSpec(
        double ratedCapacityW,
        double ratedCop,
        CoolingCurves curves,
        boolean variableSpeed,
        double turnDownShare,
        double partLoadBlend,
        double cyclingLoss,
        double bandK,
        double leastRunS,
        double leastRestS,
        double coldStartS,
        double stepDownV,
        double stepDownShare,
        double cutOutV,
        double restartV,
        double startFactor,
        boolean onInverter) {
    public CoolerSpec {
        Require.positive("cooling capacity", ratedCapacityW);
        Require.positive("coefficient of performance", ratedCop);
        Require.within("turn-down", turnDownShare, 0.05, 1);
        Require.share("part-load blend", partLoadBlend);
        Require.within("cycling loss", cyclingLoss, 0, 0.5);
        Require.positive("band", bandK);
        Require.notNegative("least run", leastRunS);
        Require.notNegative("least rest", leastRestS);
        Require.notNegative("cold start", coldStartS);
        Require.share("step-down share", stepDownShare);
        Require.notNegative("cut-out voltage", cutOutV);
        Require.within("start factor", startFactor, 1, 20);
        if (restartV < cutOutV || stepDownV < cutOutV) {
            throw new IllegalArgumentException(
                    "the cooler's restart and step-down voltages must not lie below its cut-out voltage");
        }
    }
}
