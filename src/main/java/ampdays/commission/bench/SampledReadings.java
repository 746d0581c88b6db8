package ampdays.commission.bench;

import ampdays.commission.Band;
import java.util.List;

/**
 * What sound vans of a design would read, in order, and bands from it.
 *
 * <p>Of n vans drawn alike, the next one reads between the i-th and the j-th smallest with probability (j - i)/(n + 1),
 * whatever the distribution (order statistics: S. S. Wilks, 1941, Determination of sample sizes for setting tolerance limits,
 * Annals of Mathematical Statistics 12; the formula from memory). With 399 vans, ranks 4 and 396 make 98 %, and for a band
 * that is open on one side rank 392 or 8. The drawing of vans is the propagation of distributions of JCGM 101:2008. A job
 * stops as far again beyond the edge as the edge is from the median, and never at a reading that one of the vans showed.
 * Reference: PromisedRateTest.
 */
final class SampledReadings {
    static final int VANS = 399;

    private static final double BOTH_SIDES_LEFT_OUT = 0.01;
    private static final double ONE_SIDE_LEFT_OUT = 0.02;

    private final double[] sorted;

    /** Which deviations count. */
    enum Pass {
        BETWEEN,
        UP_TO,
        FROM
    }

    /** On which side a reading may stop the job. */
    enum Stop {
        NEVER,
        ABOVE,
        BELOW,
        BOTH
    }

    /** @param readings of the vans; those without a number are left out */
    SampledReadings(List<Double> readings) {
        this.sorted = readings.stream()
                .mapToDouble(Double::doubleValue)
                .filter(Double::isFinite)
                .sorted()
                .toArray();
    }

    Band band(Pass pass, Stop stop) {
        double leftOut = pass == Pass.BETWEEN ? BOTH_SIDES_LEFT_OUT : ONE_SIDE_LEFT_OUT;
        int rank = Math.max(1, (int) Math.floor((sorted.length + 1) * leftOut));
        double from = sorted[rank - 1];
        double to = sorted[sorted.length - rank];
        double median = sorted[sorted.length / 2];
        double below = Math.min(sorted[0], 2 * from - median);
        double above = Math.max(sorted[sorted.length - 1], 2 * to - median);
        boolean stopsBelow = stop == Stop.BELOW || stop == Stop.BOTH;
        boolean stopsAbove = stop == Stop.ABOVE || stop == Stop.BOTH;
        return new Band(
                pass == Pass.UP_TO ? Double.NEGATIVE_INFINITY : from,
                pass == Pass.FROM ? Double.POSITIVE_INFINITY : to,
                stopsBelow && pass != Pass.UP_TO ? below : Double.NEGATIVE_INFINITY,
                stopsAbove && pass != Pass.FROM ? above : Double.POSITIVE_INFINITY);
    }

    int size() {
        return sorted.length;
    }
}
