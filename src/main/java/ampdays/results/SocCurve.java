package ampdays.results;

/**
 * State of charge over the trip, thinned to what a chart can show: lowest and highest value of each bucket of time.
 *
 * @param day middle of each bucket, days from the start
 * @param low lowest state of charge in it, 0 to 1
 * @param high highest
 */
public record SocCurve(Series day, Series low, Series high) {}
