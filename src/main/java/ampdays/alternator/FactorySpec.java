package ampdays.alternator;

import ampdays.units.Require;

/**
 * The factory alternator and the DC-DC charger behind it.
 *
 * @param vehicleIdleA what the vehicle itself takes at idle, A
 * @param vehicleDrivingA what it takes while driving, A
 * @param chargerA rating of the charger at its output, A
 * @param chargerEfficiency output over input, 0 to 1
 */
public record FactorySpec(
        AlternatorSpec alternator,
        double vehicleIdleA,
        double vehicleDrivingA,
        double chargerA,
        double chargerEfficiency) {
    public FactorySpec {
        Require.notNegative("vehicle load at idle", vehicleIdleA);
        Require.notNegative("vehicle load while driving", vehicleDrivingA);
        Require.positive("charger rating", chargerA);
        Require.within("charger efficiency", chargerEfficiency, 0.5, 1);
    }
}
