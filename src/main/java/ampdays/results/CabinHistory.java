package ampdays.results;

import java.util.List;

/**
 * Cabin and outside air over the trip, and how the people slept in it.
 *
 * @param outsideC outside air, °C
 * @param cabinC cabin air, °C
 * @param comfortLowC people sleep well from this temperature, °C
 * @param comfortHighC and up to this one, °C
 * @param sleeps every unbroken stretch asleep, also one that the trip begins or ends in
 */
public record CabinHistory(
        TripCurve outsideC, TripCurve cabinC, double comfortLowC, double comfortHighC, List<Sleep> sleeps) {
    public CabinHistory {
        sleeps = List.copyOf(sleeps);
    }

    /**
     * One stretch asleep.
     *
     * @param fromDay its start, days from the start of the trip
     * @param toDay its end
     * @param tooWarmHours how long the cabin was above the comfort band, h
     * @param tooColdHours how long below it, h
     */
    public record Sleep(double fromDay, double toDay, double tooWarmHours, double tooColdHours) {}
}
