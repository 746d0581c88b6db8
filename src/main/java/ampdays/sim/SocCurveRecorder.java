package ampdays.sim;

import ampdays.results.Series;
import ampdays.results.SocCurve;
import java.util.Arrays;

/** Thins the state of charge to a fixed number of buckets, each with its lowest and highest value. */
final class SocCurveRecorder implements Recorder {
    private static final int MOST_BUCKETS = 1200;

    private final int steps;
    private final int stepSeconds;
    private final int buckets;
    private final double[] low;
    private final double[] high;

    SocCurveRecorder(TripClock clock) {
        steps = clock.steps();
        stepSeconds = clock.stepSeconds();
        buckets = steps < MOST_BUCKETS ? steps : MOST_BUCKETS;
        low = new double[buckets];
        high = new double[buckets];
        Arrays.fill(low, 1);
    }

    @Override
    public void minute(Minute m, RunState state) {
        int bucket = (int) ((long) m.step * buckets / steps);
        double soc = state.bank.soc();
        low[bucket] = soc < low[bucket] ? soc : low[bucket];
        high[bucket] = soc > high[bucket] ? soc : high[bucket];
    }

    SocCurve curve() {
        double[] day = new double[buckets];
        for (int i = 0; i < buckets; i++) {
            day[i] = (i + 0.5) * steps / buckets * stepSeconds / 86_400;
        }
        return new SocCurve(Series.of(day), Series.of(low), Series.of(high));
    }
}
