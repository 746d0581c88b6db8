package ampdays.chart;

import ampdays.results.RunResult;
import ampdays.study.Comparison;
import java.util.List;

/**
 * Days until each option is empty.
 *
 * @param days length of the trip, where the axis ends
 */
public record DaysBars(String title, String subtitle, String xLabel, double days, List<Bar> bars)
        implements ChartModel {
    public DaysBars {
        bars = List.copyOf(bars);
    }

    /** How a bar ends. */
    public enum End {
        /** At the day on which the bank is empty. */
        EMPTY,
        /** Beyond the trip: it holds. */
        HOLDS,
        /** At the end of the trip, not empty and not holding: what comes after is not known. */
        NOT_EMPTY
    }

    /**
     * One option.
     *
     * @param days length of the bar
     * @param words what happened, such as "3.4 days"
     */
    public record Bar(String label, double days, End end, String words) {}

    public static DaysBars of(Comparison comparison) {
        return new DaysBars(
                "Days until the bank is empty",
                comparison.title() + " (empty: at the reserve of " + Math.round(100 * comparison.reserveShare())
                        + " %)",
                "days from the start of the trip",
                comparison.tripDays(),
                comparison.options().stream()
                        .map(option -> bar(option.result()))
                        .toList());
    }

    private static Bar bar(RunResult run) {
        boolean empty = !Double.isNaN(run.daysToEmpty());
        End end = empty ? End.EMPTY : run.holds() ? End.HOLDS : End.NOT_EMPTY;
        return new Bar(run.option(), empty ? run.daysToEmpty() : run.tripDays(), end, Words.outcome(run));
    }
}
