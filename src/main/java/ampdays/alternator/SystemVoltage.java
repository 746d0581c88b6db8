package ampdays.alternator;

import ampdays.units.Require;

/**
 * Voltage of the vehicle's own system at the take-off point, as a mean over each driving state.
 *
 * <p>A fixed system holds its set point. A smart one holds it until the start battery is content, then saves fuel with a
 * low voltage and recovers on overrun with a high one; the means by driving state hold both. Leaves out: the swing within
 * a minute, the vehicle's own heavy consumers that call for the set point. Source: common practice (system voltage roams
 * 12.0 to 15.5 V and falls to about 12.5 V once the start battery is content). Reference: FactoryUnitTest.
 *
 * @param smart whether the vehicle's computer moves it
 * @param setPointV voltage while fixed or still charging the start battery, V
 * @param idleV mean at idle and fast idle once content, V
 * @param townV the same in town
 * @param highwayV the same on the highway
 * @param contentAfterS seconds after each start until the start battery is content
 */
public record SystemVoltage(
        boolean smart, double setPointV, double idleV, double townV, double highwayV, double contentAfterS) {
    public SystemVoltage {
        Require.positive("set point", setPointV);
        Require.positive("voltage at idle", idleV);
        Require.positive("voltage in town", townV);
        Require.positive("voltage on the highway", highwayV);
        Require.notNegative("time until the start battery is content", contentAfterS);
    }

    /**
     * Voltage, V.
     *
     * @param runningS seconds since the engine started
     */
    double at(EngineState state, double runningS) {
        if (!smart || runningS < contentAfterS) {
            return setPointV;
        }
        return switch (state) {
            case STOPPED -> setPointV;
            case IDLE, FAST_IDLE -> idleV;
            case TOWN -> townV;
            case HIGHWAY -> highwayV;
        };
    }
}
