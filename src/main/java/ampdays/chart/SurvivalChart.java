package ampdays.chart;

import ampdays.chart.LinesChart.Line;
import ampdays.chart.LinesChart.Marks;
import ampdays.chart.LinesChart.Panel;
import ampdays.chart.LinesChart.XAxis;
import ampdays.results.Chances;
import ampdays.results.Survival.Step;
import java.util.ArrayList;
import java.util.List;

/** Which share of the trips of each option is not yet empty, day by day. */
public final class SurvivalChart {
    private SurvivalChart() {}

    public static LinesChart of(Chances chances) {
        return new LinesChart(
                "How many trips are not yet empty",
                chances.title() + " (" + chances.trips() + " trips of each option; empty: at the reserve of "
                        + Math.round(100 * chances.reserveShare()) + " %)",
                new XAxis("days from the start of the trip", Marks.NUMBERS, 0, chances.longestTripDays()),
                List.of(new Panel(
                        "trips not yet empty, %",
                        true,
                        chances.options().stream().map(SurvivalChart::line).toList())));
    }

    /** A staircase from all trips down to those that are never empty. */
    private static Line line(Chances.Option option) {
        List<Double> days = new ArrayList<>(List.of(0.0));
        List<Double> percent = new ArrayList<>(List.of(100.0));
        for (Step step : option.survival().steps()) {
            days.add(step.day());
            percent.add(percent.get(percent.size() - 1));
            days.add(step.day());
            percent.add(100 * step.share());
        }
        days.add(option.tripDays());
        percent.add(percent.get(percent.size() - 1));
        return new Line(option.name() + ", " + Math.round(percent.get(percent.size() - 1)) + " %", days, percent);
    }
}
