package ampdays.battery;

import ampdays.units.Require;

/**
 * A charger fed from the hook-up.
 *
 * @param ratedA output current at most, A
 * @param efficiency output over input, 0 to 1
 * @param inletW power the hook-up allows, W
 */
public record ShoreChargerSpec(double ratedA, double efficiency, double inletW) {
    public ShoreChargerSpec {
        Require.positive("charger rating", ratedA);
        Require.within("charger efficiency", efficiency, 0.3, 1);
        Require.positive("hook-up power", inletW);
    }
}
