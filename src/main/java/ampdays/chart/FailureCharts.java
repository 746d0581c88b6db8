package ampdays.chart;

import ampdays.chart.LinesChart.Line;
import ampdays.chart.LinesChart.Marks;
import ampdays.chart.LinesChart.Panel;
import ampdays.chart.LinesChart.XAxis;
import ampdays.results.FailureOutcome;
import ampdays.results.FailureOutcome.Curve;
import ampdays.results.FailureReport;
import ampdays.results.HeatAfterLoss;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The charts of what happens when something fails, by file name. */
public final class FailureCharts {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);
    private static final int SHOWN_MINUTES = 180;
    private static final int MOST_LINES = 4;
    private static final double NOTABLE_PERCENT = 3;

    private FailureCharts() {}

    public static SortedMap<String, ChartModel> of(FailureReport report) {
        SortedMap<String, ChartModel> charts = new TreeMap<>();
        charts.put("cabin-after-loss-of-cooling", heat(report.heat()));
        List<FailureOutcome> shown = lowest(report);
        if (!shown.isEmpty()) {
            charts.put("charge-after-failures", charge(report, shown));
        }
        return charts;
    }

    /** How the cabin warms when its cooling stops at the worst moment. */
    public static LinesChart heat(HeatAfterLoss heat) {
        List<Double> minutes = IntStream.rangeClosed(0, SHOWN_MINUTES)
                .mapToObj(minute -> (double) minute)
                .toList();
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("cabin", minutes, heat.cabinC().subList(0, SHOWN_MINUTES + 1)));
        for (double limitC : new double[] {32, 35, 40}) {
            lines.add(new Line(
                    Math.round(limitC) + " °C: " + after(minutesTo(heat, limitC)),
                    List.of(0.0, (double) SHOWN_MINUTES),
                    List.of(limitC, limitC)));
        }
        return new LinesChart(
                "Cabin after loss of cooling",
                String.format(
                        Locale.ROOT,
                        "Worst moment of the trip: %s, outside %.0f °C, parked in the sun, windows shut. No design makes it"
                                + " safe for children or pets.",
                        DATE.format(Instant.ofEpochSecond(heat.epochSecond()).atZone(heat.zone())),
                        heat.outsideC()),
                new XAxis("minutes after the cooling stops", Marks.NUMBERS, 0, SHOWN_MINUTES),
                List.of(new Panel("cabin air, °C", false, lines)));
    }

    private static double minutesTo(HeatAfterLoss heat, double limitC) {
        return limitC < 33 ? heat.minutesTo32C() : limitC < 36 ? heat.minutesTo35C() : heat.minutesTo40C();
    }

    private static String after(double minutes) {
        return Double.isNaN(minutes)
                ? "not within " + HeatAfterLoss.WATCHED_H + " h"
                : "after " + Math.round(minutes) + " min";
    }

    private static LinesChart charge(FailureReport report, List<FailureOutcome> shown) {
        List<Line> lines = new ArrayList<>();
        lines.add(line("without failure", report.undisturbedCurve()));
        shown.forEach(outcome -> lines.add(line(outcome.name(), outcome.curve())));
        double reserve = 100 * report.reserveShare();
        lines.add(new Line(
                "reserve " + Math.round(reserve) + " %", List.of(0.0, report.tripDays()), List.of(reserve, reserve)));
        return new LinesChart(
                "State of charge after failures",
                report.title() + ": " + report.option() + "; the failures that lower it most",
                new XAxis("days from the start of the trip", Marks.NUMBERS, 0, report.tripDays()),
                List.of(new Panel("state of charge, %", true, lines)));
    }

    /** Those that lower the charge most, in the order of the report. */
    private static List<FailureOutcome> lowest(FailureReport report) {
        List<FailureOutcome> by = report.outcomes().stream()
                .filter(outcome -> lowering(report, outcome) > NOTABLE_PERCENT)
                .sorted(Comparator.comparingDouble((FailureOutcome o) -> lowering(report, o))
                        .reversed())
                .limit(MOST_LINES)
                .toList();
        return report.outcomes().stream().filter(by::contains).collect(Collectors.toList());
    }

    /** How much lower the charge is at its mean over the whole trip, percent of the bank. */
    private static double lowering(FailureReport report, FailureOutcome outcome) {
        double from = outcome.curve().day().get(0);
        Curve all = report.undisturbedCurve();
        double without = IntStream.range(0, all.day().size())
                .filter(i -> all.day().get(i) >= from)
                .mapToDouble(i -> all.socPercent().get(i))
                .average()
                .orElse(0);
        double with = outcome.curve().socPercent().stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElse(0);
        return (without - with) * outcome.leftH() / (24 * report.tripDays());
    }

    private static Line line(String label, Curve curve) {
        return new Line(label, curve.day(), curve.socPercent());
    }
}
