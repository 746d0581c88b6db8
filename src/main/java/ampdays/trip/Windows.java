package ampdays.trip;

/** What a line of the timetable says of the window covers. */
public enum Windows {
    /** Nothing: the design's own rule holds. */
    BY_RULE,
    COVERED,
    UNCOVERED
}
