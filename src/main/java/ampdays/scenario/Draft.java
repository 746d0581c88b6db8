package ampdays.scenario;

/**
 * A design on its way to one trip of a study.
 *
 * @param drivesShare length of every drive over that in the timetable
 */
public record Draft(Values values, double drivesShare) {
    /** A design as it is. */
    public static Draft of(Values values) {
        return new Draft(values, 1);
    }

    Draft with(Values changed) {
        return new Draft(changed, drivesShare);
    }

    /** The same on another first day. */
    public Draft startingOn(String date) {
        return with(values.with("trip.start", date));
    }

    /**
     * The design, ready to be simulated.
     *
     * @param builder that may have made others before
     * @throws ScenarioException when its values contradict each other
     */
    public Variant variant(String name, VariantBuilder builder) throws ScenarioException {
        Variant built = builder.next(name, values);
        return drivesShare == 1 ? built : built.onTrip(name, TripChanges.stretchedDrives(built.trip(), drivesShare));
    }
}
