package ampdays.results;

/**
 * Capacity that the bank's cells lose, as shares of that when new. Used to rank; it promises no date. NaN where the bank's
 * chemistry has no model of it.
 *
 * @param tripLoss lost during the trip
 * @param yearLoss lost in a year of such trips end to end, from the same start
 * @param yearLossByUse the part of it that use takes; the rest is the calendar's
 * @param yearResistanceGrowth growth of resistance by the calendar in that year
 */
public record Ageing(double tripLoss, double yearLoss, double yearLossByUse, double yearResistanceGrowth) {
    /** No model. */
    public static final Ageing UNKNOWN = new Ageing(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
}
