package ampdays.results;

import java.time.LocalDate;
import java.util.List;

/**
 * What one trip of one option came to.
 *
 * @param trip its number, from 1; the trip of another option with the same number had the same luck
 * @param start first day
 * @param weather which weather it had, in words
 * @param drawn what was drawn for it, in the order of {@link Chances#drawn}
 * @param daysToEmpty NaN when never
 * @param worst the three days that lacked most
 */
public record TripOutcome(
        int trip,
        LocalDate start,
        String weather,
        List<Double> drawn,
        double tripDays,
        double daysToEmpty,
        boolean holds,
        double lowestSoc,
        int comfortableNights,
        int nights,
        double servedWh,
        double unservedWh,
        ThreeDays worst) {
    public TripOutcome {
        drawn = List.copyOf(drawn);
    }

    public boolean isNeverEmpty() {
        return Double.isNaN(daysToEmpty);
    }

    /** Whether every night was comfortable. */
    public boolean isComfortable() {
        return comfortableNights == nights;
    }

    /** Whether it is empty later than another trip, or never while the other is. */
    public boolean outlasts(TripOutcome other) {
        return !other.isNeverEmpty() && (isNeverEmpty() || daysToEmpty > other.daysToEmpty);
    }
}
