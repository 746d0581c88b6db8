package ampdays.chart;

import ampdays.study.Comparison;
import java.util.List;

/**
 * State of charge over the trip, one line per option.
 *
 * @param days length of the trip; the axis runs from 0
 * @param reservePercent state of charge that counts as empty, %
 * @param nights stretches without sun, days from the start
 */
public record SocChart(
        String title,
        String subtitle,
        String yLabel,
        double days,
        double reservePercent,
        String reserveLabel,
        List<Night> nights,
        List<Line> lines)
        implements ChartModel {
    public SocChart {
        nights = List.copyOf(nights);
        lines = List.copyOf(lines);
    }

    /** A stretch without sun, days from the start. */
    public record Night(double fromDay, double toDay) {}

    /**
     * One option.
     *
     * @param outcome how it ended, in plain words
     * @param day where the line goes, days from the start
     * @param percent and how high, %
     * @param emptyDay when it first met the reserve, days; NaN when never
     */
    public record Line(String label, String outcome, List<Double> day, List<Double> percent, double emptyDay) {
        public Line {
            day = List.copyOf(day);
            percent = List.copyOf(percent);
        }

        public double endPercent() {
            return percent.get(percent.size() - 1);
        }
    }

    public static SocChart of(Comparison comparison) {
        List<Line> lines = comparison.options().stream()
                .map(option -> new Line(
                        option.result().option(),
                        Words.shortOutcome(option.result()),
                        CurvePath.days(option.curve()),
                        CurvePath.values(option.curve(), 100),
                        option.result().daysToEmpty()))
                .toList();
        return new SocChart(
                "State of charge over the trip",
                comparison.title(),
                "state of charge, %",
                comparison.tripDays(),
                100 * comparison.reserveShare(),
                "reserve " + Math.round(100 * comparison.reserveShare()) + " %",
                nights(comparison),
                lines);
    }

    static List<Night> nights(Comparison comparison) {
        return comparison.darkness().stream()
                .map(span -> new Night(span.fromDay(), span.toDay()))
                .toList();
    }
}
