package ampdays.results;

/**
 * One circuit in the table to print.
 *
 * @param conductor its size, and in the other measure
 * @param lengthM one way, m
 * @param mostA largest current of any minute, A
 * @param continuousA root mean square of the hardest hour, A
 * @param allowedA what the conductor may carry in the warmest air of the trip, A
 * @param dropV largest voltage drop there and back, V
 * @param dropShare of the nominal voltage
 * @param dropLimitShare its limit
 * @param airC warmest air around it, °C
 * @param conductorC warmest conductor, °C
 * @param jointC warmest joint, °C
 * @param protection in words; "none"
 * @param ratingA NaN without protection
 * @param leastHoldA least that it holds in any minute in which current flows, A; NaN without
 * @param protectionC its highest own temperature, °C; NaN without
 * @param faultA short-circuit current where it sits, A
 * @param interruptA what it can interrupt, A; NaN without
 */
public record WiringRow(
        String circuit,
        String from,
        String to,
        String conductor,
        String otherMeasure,
        double lengthM,
        boolean returnByBody,
        double mostA,
        double continuousA,
        double allowedA,
        double dropV,
        double dropShare,
        double dropLimitShare,
        String place,
        double airC,
        double conductorC,
        double jointC,
        String protection,
        double ratingA,
        double leastHoldA,
        double protectionC,
        double faultA,
        double interruptA) {}
