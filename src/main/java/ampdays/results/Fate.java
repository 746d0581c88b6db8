package ampdays.results;

/** What becomes of a bank. Test: {@code FateTest}. */
public enum Fate {
    /** Empty within the trip. */
    EMPTY,
    /** Not empty within the trip, but lower day by day. */
    FALLS,
    /** Not empty within a trip that is too short to tell a trend. */
    UNKNOWN,
    /** Never empty and not trending down. */
    HOLDS,
    /** That of a design that cannot be, and so was not run. */
    IMPOSSIBLE;

    /**
     * Of a bank that was run.
     *
     * @param daysToEmpty not a number when never
     * @param trend change of its charge per day; not a number on short trips
     */
    public static Fate of(boolean holds, double daysToEmpty, double trend) {
        if (holds) {
            return HOLDS;
        }
        return !Double.isNaN(daysToEmpty) ? EMPTY : Double.isNaN(trend) ? UNKNOWN : FALLS;
    }
}
