package ampdays.trip;

/** What the vehicle does in a stretch of the timetable. */
public enum Vehicle {
    PARKED,
    IDLING,
    /** At idle with the speed raised by hand or by an idle-up module. */
    FAST_IDLING,
    TOWN,
    HIGHWAY;

    public boolean engineRuns() {
        return this != PARKED;
    }

    /** Whether the engine runs although the van stands. */
    public boolean idles() {
        return this == IDLING || this == FAST_IDLING;
    }

    public boolean moves() {
        return this == TOWN || this == HIGHWAY;
    }
}
