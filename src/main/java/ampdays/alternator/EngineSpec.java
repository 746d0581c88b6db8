package ampdays.alternator;

import ampdays.units.Require;

/**
 * The engine that turns the alternators.
 *
 * @param idleRpm speed at idle, 1/min
 * @param townRpm mean speed in town, 1/min
 * @param highwayRpm mean speed on the highway, 1/min
 * @param idleLitresPerH fuel burnt at idle without any charging, l/h
 * @param idleRiseK under-bonnet air above outside air when hot at idle, K
 * @param townRiseK the same in town
 * @param highwayRiseK the same on the highway
 * @param riseMinutes time constant of the under-bonnet air, min
 */
public record EngineSpec(
        Fuel fuel,
        double idleRpm,
        double townRpm,
        double highwayRpm,
        double idleLitresPerH,
        double idleRiseK,
        double townRiseK,
        double highwayRiseK,
        double riseMinutes) {
    public EngineSpec {
        Require.within("idle speed", idleRpm, 300, 3000);
        Require.within("town speed", townRpm, 300, 6000);
        Require.within("highway speed", highwayRpm, 300, 8000);
        Require.notNegative("idle fuel", idleLitresPerH);
        Require.within("rise at idle", idleRiseK, 0, 100);
        Require.within("rise in town", townRiseK, 0, 100);
        Require.within("rise on the highway", highwayRiseK, 0, 100);
        Require.positive("time constant of the under-bonnet air", riseMinutes);
    }
}
