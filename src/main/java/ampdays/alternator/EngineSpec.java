package ampdays.alternator;

import ampdays.units.Require;

/**
 * The engine that turns the alternators, and the air around them.
 *
 * @param idleRpm speed at idle, 1/min
 * @param fastIdleRpm speed at fast idle, 1/min
 * @param townRpm mean speed in town, 1/min
 * @param highwayRpm mean speed on the highway, 1/min
 * @param idleLitresPerH fuel burnt at idle without any charging, l/h
 * @param fastIdleLitresPerH the same at fast idle
 * @param idleRiseK under-bonnet air above outside air when hot at idle, K
 * @param fastIdleRiseK the same at fast idle
 * @param townRiseK the same in town
 * @param highwayRiseK the same on the highway
 * @param soakRiseK the same that still air around a stopped hot engine strives for, K
 * @param riseMinutes time constant of the under-bonnet air, and of the engine's warming, with the engine on, min
 * @param soakMinutes time constant of that air after a stop, min
 * @param coolMinutes time constant of the stopped engine's cooling, min; above {@code soakMinutes}
 */
public record EngineSpec(
        Fuel fuel,
        double idleRpm,
        double fastIdleRpm,
        double townRpm,
        double highwayRpm,
        double idleLitresPerH,
        double fastIdleLitresPerH,
        double idleRiseK,
        double fastIdleRiseK,
        double townRiseK,
        double highwayRiseK,
        double soakRiseK,
        double riseMinutes,
        double soakMinutes,
        double coolMinutes) {
    public EngineSpec {
        Require.within("idle speed", idleRpm, 300, 3000);
        Require.within("fast idle speed", fastIdleRpm, 300, 4000);
        Require.within("town speed", townRpm, 300, 6000);
        Require.within("highway speed", highwayRpm, 300, 8000);
        Require.notNegative("idle fuel", idleLitresPerH);
        Require.notNegative("fast idle fuel", fastIdleLitresPerH);
        Require.within("rise at idle", idleRiseK, 0, 100);
        Require.within("rise at fast idle", fastIdleRiseK, 0, 100);
        Require.within("rise in town", townRiseK, 0, 100);
        Require.within("rise on the highway", highwayRiseK, 0, 100);
        Require.within("rise after a stop", soakRiseK, 0, 100);
        Require.positive("time constant of the under-bonnet air", riseMinutes);
        Require.positive("time constant of the air after a stop", soakMinutes);
        if (!(coolMinutes > soakMinutes)) {
            throw new IllegalArgumentException("the engine must cool more slowly than the air around it warms up");
        }
    }

    /** Speed, 1/min; 0 when stopped. */
    public double rpm(EngineState state) {
        return switch (state) {
            case STOPPED -> 0;
            case IDLE -> idleRpm;
            case FAST_IDLE -> fastIdleRpm;
            case TOWN -> townRpm;
            case HIGHWAY -> highwayRpm;
        };
    }

    /** Under-bonnet air above outside air that a hot engine leads to in the end, K. */
    public double riseK(EngineState state) {
        return switch (state) {
            case STOPPED -> soakRiseK;
            case IDLE -> idleRiseK;
            case FAST_IDLE -> fastIdleRiseK;
            case TOWN -> townRiseK;
            case HIGHWAY -> highwayRiseK;
        };
    }
}
