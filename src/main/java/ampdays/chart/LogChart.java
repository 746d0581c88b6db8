package ampdays.chart;

import ampdays.chart.LinesChart.Line;
import ampdays.chart.LinesChart.Marks;
import ampdays.chart.LinesChart.Panel;
import ampdays.chart.LinesChart.XAxis;
import ampdays.results.Reconciliation.Curves;
import ampdays.results.Series;
import java.util.List;
import java.util.stream.IntStream;

/** A promise with a log laid over it. */
public final class LogChart {
    private LogChart() {}

    /**
     * Lays them over each other.
     *
     * @param title of the scenario
     */
    public static LinesChart of(String title, Curves curves) {
        return new LinesChart(
                "As promised and as logged",
                title
                        + " (means of each hour; \u201ccauses as logged\u201d is the simulation under the logged conditions)",
                new XAxis(
                        "days from the start of the trip",
                        Marks.NUMBERS,
                        0,
                        curves.promisedSoc().size() / 24.0),
                List.of(
                        new Panel(
                                "state of charge, %",
                                true,
                                List.of(
                                        line("promised", curves.promisedSoc(), 100),
                                        line("logged", curves.loggedSoc(), 100),
                                        line("causes as logged", curves.explainedSoc(), 100))),
                        panel("use, kW", curves.promisedUseW(), curves.loggedUseW()),
                        panel("sun, kW", curves.promisedSunW(), curves.loggedSunW()),
                        panel("alternators, kW", curves.promisedAlternatorW(), curves.loggedAlternatorW())));
    }

    private static Panel panel(String label, Series promised, Series logged) {
        return new Panel(label, true, List.of(line("promised", promised, 1e-3), line("logged", logged, 1e-3)));
    }

    private static Line line(String label, Series hours, double times) {
        return new Line(
                label,
                IntStream.range(0, hours.size()).mapToObj(h -> (h + 0.5) / 24).toList(),
                IntStream.range(0, hours.size())
                        .mapToObj(h -> times * hours.get(h))
                        .toList());
    }
}
