package ampdays.chart;

import ampdays.results.CabinHistory;
import ampdays.study.Comparison;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Cabin and outside air over the trip, with the comfort band while people sleep and how long they slept out of it.
 *
 * @param days length of the trip; the axis runs from 0
 * @param nights stretches without sun, days from the start
 * @param day places of both lines, days from the start
 * @param outOfBandLabel what the bars below are, with their unit
 * @param outOfBandTotal their sum, in words
 * @param coolestC lowest temperature of lines and band, °C
 * @param warmestC highest, °C
 * @param bothDegrees whether its temperatures are marked in degrees Fahrenheit beside those in degrees Celsius
 */
public record CabinChart(
        String title,
        String subtitle,
        String temperatureLabel,
        String comfortLabel,
        String outOfBandLabel,
        String outOfBandTotal,
        double days,
        double comfortLowC,
        double comfortHighC,
        double coolestC,
        double warmestC,
        List<SocChart.Night> nights,
        List<Sleep> sleeps,
        List<Double> day,
        List<Double> outsideC,
        List<Double> cabinC,
        boolean bothDegrees)
        implements ChartModel {
    public static final String OUTSIDE = "outside";
    public static final String CABIN = "cabin";
    public static final String TOO_WARM = "too warm";
    public static final String TOO_COLD = "too cold";

    public CabinChart {
        nights = List.copyOf(nights);
        sleeps = List.copyOf(sleeps);
        day = List.copyOf(day);
        outsideC = List.copyOf(outsideC);
        cabinC = List.copyOf(cabinC);
    }

    /**
     * One stretch asleep.
     *
     * @param fromDay days from the start of the trip
     * @param tooWarmHours above the comfort band, h
     * @param tooColdHours below it, h
     */
    public record Sleep(double fromDay, double toDay, double tooWarmHours, double tooColdHours) {
        public double hours() {
            return 24 * (toDay - fromDay);
        }
    }

    public static CabinChart of(Comparison comparison, Comparison.Option option) {
        CabinHistory history = option.cabin();
        List<Sleep> sleeps = history.sleeps().stream()
                .map(s -> new Sleep(s.fromDay(), s.toDay(), s.tooWarmHours(), s.tooColdHours()))
                .toList();
        List<Double> outsideC = CurvePath.values(history.outsideC(), 1);
        List<Double> cabinC = CurvePath.values(history.cabinC(), 1);
        double[] shown = DoubleStream.concat(
                        Stream.concat(outsideC.stream(), cabinC.stream()).mapToDouble(Double::doubleValue),
                        DoubleStream.of(history.comfortLowC(), history.comfortHighC()))
                .sorted()
                .toArray();
        return new CabinChart(
                option.result().option() + ": cabin and outside air",
                comparison.title(),
                "temperature, °C",
                "comfort band asleep, " + Words.tenth(history.comfortLowC()) + " to "
                        + Words.tenth(history.comfortHighC()) + " °C",
                "hours asleep out of the comfort band, by night",
                total(sleeps),
                option.result().tripDays(),
                history.comfortLowC(),
                history.comfortHighC(),
                shown[0],
                shown[shown.length - 1],
                SocChart.nights(comparison),
                sleeps,
                CurvePath.days(history.outsideC()),
                outsideC,
                cabinC,
                false);
    }

    private static String total(List<Sleep> sleeps) {
        if (sleeps.isEmpty()) {
            return "nobody sleeps aboard on this trip";
        }
        double asleep = sleeps.stream().mapToDouble(Sleep::hours).sum();
        double warm = sleeps.stream().mapToDouble(Sleep::tooWarmHours).sum();
        double cold = sleeps.stream().mapToDouble(Sleep::tooColdHours).sum();
        return String.format(
                Locale.ROOT, "%s %.1f h, %s %.1f h, of %.1f h asleep", TOO_WARM, warm, TOO_COLD, cold, asleep);
    }
}
