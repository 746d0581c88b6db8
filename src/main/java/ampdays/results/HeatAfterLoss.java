package ampdays.results;

import java.time.ZoneId;
import java.util.List;

/**
 * How a closed van warms after its cooling stops, at the worst moment of the trip.
 *
 * @param epochSecond when the cooling stops
 * @param keptC cabin air until then, °C
 * @param outsideC outside air then, °C
 * @param minutesTo32C minutes until the cabin passes 32 °C; 0 when it was above already, NaN when never within
 *     {@link #WATCHED_H} hours
 * @param minutesTo35C the same for 35 °C
 * @param minutesTo40C the same for 40 °C
 * @param cabinC cabin air at the end of each minute, °C, the first that at the stop
 */
public record HeatAfterLoss(
        String option,
        ZoneId zone,
        long epochSecond,
        double keptC,
        double outsideC,
        double minutesTo32C,
        double minutesTo35C,
        double minutesTo40C,
        List<Double> cabinC) {
    /** How long the cabin is watched, h. */
    public static final int WATCHED_H = 6;

    /** What every output that shows it says. */
    public static final String CAUTION =
            "No design makes it safe to leave children or pets in a parked van. Whoever does so"
                    + " all the same needs an alarm that does not hang on the van's power, and a second person nearby.";

    public HeatAfterLoss {
        cabinC = List.copyOf(cabinC);
    }

    /** Cabin air so many minutes after the stop, °C. */
    public double cabinC(int minutes) {
        return cabinC.get(minutes);
    }
}
