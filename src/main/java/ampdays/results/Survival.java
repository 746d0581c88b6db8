package ampdays.results;

import java.util.List;

/**
 * Which share of trips is not yet empty, as a falling staircase.
 *
 * @param steps where it falls, in the order of time
 */
public record Survival(List<Step> steps) {
    /** Shares that differ by less are the same: they are products of quotients. */
    private static final double ROUNDING = 1e-12;

    public Survival {
        steps = List.copyOf(steps);
    }

    /**
     * A fall.
     *
     * @param day days from the start of the trip
     * @param share not yet empty from then on
     */
    public record Step(double day, double share) {}

    /** The share that is not yet empty after so many days. */
    public double shareAfter(double days) {
        double share = 1;
        for (Step step : steps) {
            if (step.day() > days) {
                break;
            }
            share = step.share();
        }
        return share;
    }

    /** The day by which a share of trips is empty; infinite when so many never are. */
    public double dayOf(double emptyShare) {
        return steps.stream()
                .filter(step -> 1 - step.share() >= emptyShare - ROUNDING)
                .mapToDouble(Step::day)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
