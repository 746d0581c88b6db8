package ampdays.alternator;

import ampdays.units.Require;

/**
 * The factory alternator and the DC-DC charger behind it.
 *
 * @param voltage of the vehicle's system at the take-off point
 * @param vehicleIdleA what the vehicle itself takes at idle and fast idle, A
 * @param vehicleDrivingA what it takes while driving, A
 */
public record FactorySpec(
        AlternatorSpec alternator,
        SystemVoltage voltage,
        double vehicleIdleA,
        double vehicleDrivingA,
        ChargerSpec charger) {
    public FactorySpec {
        Require.notNegative("vehicle load at idle", vehicleIdleA);
        Require.notNegative("vehicle load while driving", vehicleDrivingA);
    }

    /** What the vehicle itself takes, A. */
    double vehicleA(EngineState state) {
        return switch (state) {
            case STOPPED -> 0;
            case IDLE, FAST_IDLE -> vehicleIdleA;
            case TOWN, HIGHWAY -> vehicleDrivingA;
        };
    }
}
