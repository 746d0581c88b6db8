package ampdays.results;

/**
 * A quantity over the trip, thinned to what a chart can show: its lowest and highest value in each bucket of time.
 *
 * @param day middle of each bucket, days from the start
 * @param low lowest value in it
 * @param high highest
 */
public record TripCurve(Series day, Series low, Series high) {}
