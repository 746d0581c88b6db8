package ampdays.results;

import ampdays.results.Finding.Severity;

/**
 * One line of the wiring check: one rule that one circuit breaks, merged over the trip.
 *
 * @param where name of the circuit, or the component
 * @param measured what was found, against what, in plain words
 * @param firstEpochSecond when it first happened; meaningless when {@code minutes} is NaN
 * @param minutes how long in all; NaN when it does not depend on the trip
 * @param worst the value farthest beyond its limit, in {@code unit}
 * @param limit that limit
 * @param remedy the smallest change found that clears it
 */
public record WiringFinding(
        Severity severity,
        String where,
        WiringRule rule,
        String measured,
        long firstEpochSecond,
        double minutes,
        double worst,
        double limit,
        String unit,
        String remedy) {}
