package ampdays.results;

/**
 * The first step of a stretch of a trip at whose end something was so; -1 where it never was.
 *
 * @param reserve state of charge at the reserve, or nothing left within reach at the bank's temperature
 * @param cutOut loads cut off until the bank has recovered
 * @param unserved anything asked for and not delivered
 * @param over32C cabin air above 32 °C
 * @param over35C cabin air above 35 °C
 * @param over40C cabin air above 40 °C
 * @param warmRefrigerator refrigerator {@link #WARM_REFRIGERATOR_K} above its set temperature
 * @param chargeRefused the bank's protection or its temperature lets no charge in
 * @param hotHours how long the cabin was above 32 °C with people in it, h
 */
public record Milestones(
        int reserve,
        int cutOut,
        int unserved,
        int over32C,
        int over35C,
        int over40C,
        int warmRefrigerator,
        int chargeRefused,
        double hotHours) {
    /** What counts as a refrigerator that has become warm, K above its set temperature; practice. */
    public static final double WARM_REFRIGERATOR_K = 4;

    /** This stretch and one that follows it. */
    public Milestones then(Milestones later) {
        return new Milestones(
                first(reserve, later.reserve),
                first(cutOut, later.cutOut),
                first(unserved, later.unserved),
                first(over32C, later.over32C),
                first(over35C, later.over35C),
                first(over40C, later.over40C),
                first(warmRefrigerator, later.warmRefrigerator),
                first(chargeRefused, later.chargeRefused),
                hotHours + later.hotHours);
    }

    private static int first(int before, int after) {
        return before >= 0 ? before : after;
    }
}
