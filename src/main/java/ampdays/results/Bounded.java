package ampdays.results;

/**
 * An estimate from a sample, with the bounds between which the truth lies in 95 of 100 samples.
 *
 * @param value infinite where it lies beyond what was looked at; likewise the bounds
 */
public record Bounded(double value, double low, double high) {
    /** The larger distance from a bound; infinite when one is. */
    public double halfWidth() {
        return value == low && value == high ? 0 : Math.max(value - low, high - value);
    }
}
