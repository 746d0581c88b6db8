package ampdays.alternator;

import ampdays.units.Require;

/**
 * The DC-DC charger between the factory alternator and the house bank.
 *
 * @param ratedA rating at its output, A
 * @param efficiency output over input, 0 to 1
 * @param leastInputV input voltage below which it draws no more, V
 * @param inEngineBay whether it sits in the under-bonnet air; else in the cabin
 * @param heatJK heat capacity, J/K
 * @param toAirWK conductance to the air around it, W/K
 * @param derateFromC own temperature at which it begins to give less, °C
 * @param derateToC temperature at which it gives nothing, °C
 */
public record ChargerSpec(
        double ratedA,
        double efficiency,
        double leastInputV,
        boolean inEngineBay,
        double heatJK,
        double toAirWK,
        double derateFromC,
        double derateToC) {
    public ChargerSpec {
        Require.positive("charger rating", ratedA);
        Require.within("charger efficiency", efficiency, 0.5, 1);
        Require.positive("least input voltage", leastInputV);
        Require.positive("heat capacity of the charger", heatJK);
        Require.positive("charger to air conductance", toAirWK);
        if (!(derateToC > derateFromC)) {
            throw new IllegalArgumentException(
                    "the charger's derating must end at a higher temperature than it begins");
        }
    }
}
