package ampdays.trip;

/** What the vehicle does in a stretch of the timetable. */
public enum Vehicle {
    PARKED,
    IDLING,
    TOWN,
    HIGHWAY;

    public boolean engineRuns() {
        return this != PARKED;
    }

    public boolean moves() {
        return this == TOWN || this == HIGHWAY;
    }
}
