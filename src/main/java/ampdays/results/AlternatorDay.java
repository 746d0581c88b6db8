package ampdays.results;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * The day on which the alternators gave most, step by step around each stretch with the engine on.
 *
 * @param drives in the order of the clock; the longest of them where there are many
 * @param drivesOfDay how many there were
 */
public record AlternatorDay(LocalDate date, List<Drive> drives, int drivesOfDay) {
    public AlternatorDay {
        drives = List.copyOf(drives);
    }

    /**
     * One stretch with the engine on, a little before it and a while after it.
     *
     * @param fromHour start of the first step, hours of the clock
     * @param toHour end of the last step
     * @param hour end of each step
     * @param temperatureC case and winding by name, at the end of each step, °C
     * @param currentA currents by name, means over each step, A
     * @param limits what ruled while the engine was on
     */
    public record Drive(
            double fromHour,
            double toHour,
            Series hour,
            Map<String, Series> temperatureC,
            Map<String, Series> currentA,
            List<Ruled> limits) {
        public Drive {
            limits = List.copyOf(limits);
        }
    }

    /** A stretch in which one limit ruled, hours of the clock. */
    public record Ruled(Limit limit, double fromHour, double toHour) {}
}
