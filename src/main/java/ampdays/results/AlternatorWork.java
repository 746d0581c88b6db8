package ampdays.results;

import java.util.List;

/**
 * Where one alternator worked on the trip, and the curves that bound it.
 *
 * @param name "second alternator" or "factory alternator"
 * @param coldC winding temperature of the cold curve, °C
 * @param hotC winding temperature of the hot curve, °C
 * @param rotorRpm rotor speeds at which the curves are given, 1/min
 * @param coldA most current on the cold curve, A
 * @param hotA most current on the hot curve, A
 * @param capA what the regulator allows, A
 * @param binA width of the bins of current, A
 * @param paces the engine's states that occurred, in the order of their speeds
 */
public record AlternatorWork(
        String name,
        double coldC,
        double hotC,
        Series rotorRpm,
        Series coldA,
        Series hotA,
        Series capA,
        double binA,
        List<Pace> paces) {
    public AlternatorWork {
        paces = List.copyOf(paces);
    }

    /**
     * What it gave in one state of the engine, the vehicle's own load included.
     *
     * @param name the engine's state in words
     * @param meanA mean current, A
     * @param binHours time at currents from each multiple of the bin's width up to the next, h
     */
    public record Pace(String name, double rotorRpm, double meanA, Series binHours) {}
}
