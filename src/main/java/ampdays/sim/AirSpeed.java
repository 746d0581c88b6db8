package ampdays.sim;

import ampdays.trip.Vehicle;

/** Air speed over panels and skin, from wind and driving. */
final class AirSpeed {
    /** End of the fit of the module temperature model, m/s. */
    private static final double MOST_OVER_PANELS_MS = 10;

    /** Mean road speeds, m/s; a guess. */
    private static final double TOWN_MS = 8;

    private static final double HIGHWAY_MS = 25;

    /** A van's skin in a parking place feels this share of the wind at 10 m; a guess. */
    private static final double SHELTER = 0.5;

    private AirSpeed() {}

    /** Wind at 10 m for the module model, or the road speed where that is more; at most 10 m/s. */
    static double overPanelsMs(Vehicle vehicle, double windMs) {
        double road = roadMs(vehicle);
        double speed = windMs > road ? windMs : road;
        return speed < MOST_OVER_PANELS_MS ? speed : MOST_OVER_PANELS_MS;
    }

    /** Air speed along the skin. */
    static double alongSkinMs(Vehicle vehicle, double windMs) {
        double road = roadMs(vehicle);
        double sheltered = windMs * SHELTER;
        return sheltered > road ? sheltered : road;
    }

    private static double roadMs(Vehicle vehicle) {
        return switch (vehicle) {
            case PARKED, IDLING, FAST_IDLING -> 0;
            case TOWN -> TOWN_MS;
            case HIGHWAY -> HIGHWAY_MS;
        };
    }
}
