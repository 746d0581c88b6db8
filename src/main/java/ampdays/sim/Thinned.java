package ampdays.sim;

import ampdays.results.Series;
import ampdays.results.TripCurve;
import java.util.Arrays;

/** Keeps a quantity's lowest and highest value in each of a fixed number of buckets of time. */
final class Thinned {
    private static final int MOST_BUCKETS = 1200;

    private final int steps;
    private final double dayPerStep;
    private final double[] low;
    private final double[] high;

    Thinned(TripClock clock) {
        steps = clock.steps();
        dayPerStep = clock.stepSeconds() / 86_400.0;
        int buckets = steps < MOST_BUCKETS ? steps : MOST_BUCKETS;
        low = new double[buckets];
        high = new double[buckets];
        Arrays.fill(low, Double.POSITIVE_INFINITY);
        Arrays.fill(high, Double.NEGATIVE_INFINITY);
    }

    void enter(int step, double value) {
        int bucket = (int) ((long) step * low.length / steps);
        low[bucket] = value < low[bucket] ? value : low[bucket];
        high[bucket] = value > high[bucket] ? value : high[bucket];
    }

    TripCurve curve() {
        double[] day = new double[low.length];
        for (int i = 0; i < day.length; i++) {
            day[i] = (i + 0.5) * steps / day.length * dayPerStep;
        }
        return new TripCurve(Series.of(day), Series.of(low), Series.of(high));
    }
}
