package ampdays.log;

import java.util.Arrays;

/** What one signal measured, minute by minute. */
final class Track {
    private static final int MINUTE = 60;
    private static final int FIRST_SIZE = 1440;
    private static final long NONE = Long.MIN_VALUE;

    private final Signal signal;
    /** Value times seconds of means, the last value of levels, growth of counters. */
    private double[] sum = new double[FIRST_SIZE];

    private float[] seconds = new float[FIRST_SIZE];
    private long origin = NONE;
    private int used;

    Track(Signal signal) {
        this.signal = signal;
    }

    void clear() {
        sum = new double[FIRST_SIZE];
        seconds = new float[FIRST_SIZE];
        origin = NONE;
        used = 0;
    }

    /** A mean that held from one instant to another. */
    void hold(double value, long from, long to) {
        long at = from;
        while (at < to) {
            long next = Math.min(to, (Math.floorDiv(at, MINUTE) + 1) * MINUTE);
            int minute = room(at);
            sum[minute] += value * (next - at);
            seconds[minute] += next - at;
            at = next;
        }
    }

    /** Takes back what was measured in the minutes from one instant to another. */
    void forget(long from, long to) {
        for (int minute = firstOf(from); minute <= lastOf(to); minute++) {
            sum[minute] = 0;
            seconds[minute] = 0;
        }
    }

    private int firstOf(long from) {
        return (int) Math.max(0, Math.floorDiv(from, MINUTE) - origin);
    }

    private int lastOf(long to) {
        return (int) Math.min(used - 1, Math.floorDiv(to, MINUTE) - origin);
    }

    void level(double value, long at) {
        int minute = room(at);
        sum[minute] = value * MINUTE;
        seconds[minute] = MINUTE;
    }

    void grow(double by, long at) {
        int minute = room(at);
        sum[minute] += by;
        seconds[minute] = MINUTE;
    }

    /** The place of an instant, which lies in no minute before the first one that was entered. */
    private int room(long at) {
        long minute = Math.floorDiv(at, MINUTE);
        if (origin == NONE) {
            origin = minute;
        }
        int place = Math.toIntExact(minute - origin);
        if (place >= sum.length) {
            int size = Math.max(place + 1, 2 * sum.length);
            sum = Arrays.copyOf(sum, size);
            seconds = Arrays.copyOf(seconds, size);
        }
        used = Math.max(used, place + 1);
        return place;
    }

    private int place(long minute) {
        long place = origin == NONE ? NONE : minute - origin;
        return place >= 0 && place < used ? (int) place : -1;
    }

    boolean isEmpty() {
        return origin == NONE;
    }

    /** First minute that was entered, in minutes since 1970. */
    long firstMinute() {
        return origin;
    }

    /** Last minute that was entered. */
    long lastMinute() {
        return origin + used - 1;
    }

    /** Lowest value of any minute; NaN without one. */
    double least() {
        return extreme(0, used - 1, false);
    }

    /** Highest value of any minute. */
    double most() {
        return extreme(0, used - 1, true);
    }

    /** Highest less lowest value of the minutes from one instant to another; NaN without any. */
    double spread(long from, long to) {
        return extreme(firstOf(from), lastOf(to), true) - extreme(firstOf(from), lastOf(to), false);
    }

    private double extreme(int first, int last, boolean highest) {
        double found = Double.NaN;
        for (int i = first; i <= last; i++) {
            double next = valueAt(i);
            if (!Double.isNaN(next) && !(highest ? next <= found : next >= found)) {
                found = next;
            }
        }
        return found;
    }

    /** Seconds of a minute since 1970 that were measured, 0 to 60. */
    double seconds(long minute) {
        int place = place(minute);
        return place < 0 ? 0 : seconds[place];
    }

    /** Mean of a minute since 1970, its last level, or the growth within it; NaN when it was not measured. */
    double value(long minute) {
        int place = place(minute);
        return place < 0 ? Double.NaN : valueAt(place);
    }

    private double valueAt(int place) {
        if (!(seconds[place] > 0)) {
            return Double.NaN;
        }
        return signal.isCounter() ? sum[place] : sum[place] / seconds[place];
    }
}
