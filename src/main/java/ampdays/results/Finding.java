package ampdays.results;

/**
 * One line of a check: a kind of event, merged over the run.
 *
 * @param firstEpochSecond when it first happened
 * @param minutes how long in all
 * @param worst the worst value met, NaN where none applies
 * @param unit its unit
 * @param text what it means and what to do, in plain words
 */
public record Finding(
        Severity severity, String kind, long firstEpochSecond, double minutes, double worst, String unit, String text) {
    /** How much it matters. */
    public enum Severity {
        NOTE,
        CAUTION,
        DANGER
    }
}
