package ampdays.chart;

import ampdays.results.TripCurve;
import java.util.ArrayList;
import java.util.List;

/** The way of a line through a thinned quantity: two places for each bucket of time. */
final class CurvePath {
    private CurvePath() {}

    /** Each bucket is met at its lowest and its highest value, the nearer one first. */
    static List<Double> values(TripCurve curve, double factor) {
        List<Double> values = new ArrayList<>();
        double last = curve.day().size() == 0 ? 0 : factor * curve.high().get(0);
        for (int i = 0; i < curve.day().size(); i++) {
            double low = factor * curve.low().get(i);
            double high = factor * curve.high().get(i);
            boolean lowFirst = Math.abs(low - last) < Math.abs(high - last);
            values.add(lowFirst ? low : high);
            last = lowFirst ? high : low;
            values.add(last);
        }
        return values;
    }

    /** Days from the start of the trip, each twice. */
    static List<Double> days(TripCurve curve) {
        List<Double> days = new ArrayList<>();
        for (int i = 0; i < curve.day().size(); i++) {
            days.add(curve.day().get(i));
            days.add(curve.day().get(i));
        }
        return days;
    }
}
