package ampdays.chart;

import ampdays.results.Matters;
import java.util.List;

/**
 * How far each input alone moves an answer, the one that moves it most at the top.
 *
 * @param xLabel what the answer is, with its unit
 * @param usual the answer when nothing is moved
 * @param cap days of the trip, where an answer in days ends without an end of its own; infinite for other answers
 */
public record TornadoChart(String title, String subtitle, String xLabel, double usual, double cap, List<Bar> bars)
        implements ChartModel {
    private static final int MOST_BARS = 14;

    public TornadoChart {
        bars = List.copyOf(bars);
        if (bars.isEmpty()) {
            throw new IllegalArgumentException("a chart of what matters needs an input");
        }
    }

    /**
     * One input.
     *
     * @param low its low end in words; likewise high
     * @param atLow the answer there
     */
    public record Bar(String label, String low, String high, double atLow, double atHigh) {}

    /** Whether an answer is one of which only the least is known. */
    public boolean isCapped(double answer) {
        return answer >= cap;
    }

    /** What stands beside the low end of a bar: the input, and where the trip was over first, that it was. */
    public String lowWords(Bar bar) {
        return words(bar.low(), bar.atLow());
    }

    /** Likewise beside the high end. */
    public String highWords(Bar bar) {
        return words(bar.high(), bar.atHigh());
    }

    private String words(String end, double answer) {
        return isCapped(answer) ? end + ", over " + Words.days(cap) : end;
    }

    /** The inputs that move the answer most. */
    public static TornadoChart of(Matters matters) {
        return new TornadoChart(
                "What moves " + matters.answer() + ", one input at a time",
                matters.title() + " (" + matters.option()
                        + "; filled: at the low end of an input, white: at its high end)",
                matters.unit().equals("days") ? matters.answer() : matters.answer() + ", " + matters.unit(),
                matters.usual(),
                matters.cap(),
                matters.inputs().stream()
                        .limit(MOST_BARS)
                        .map(input -> new Bar(
                                PlainNames.of(input.name()),
                                input.low(),
                                input.high(),
                                input.answerAtLow(),
                                input.answerAtHigh()))
                        .toList());
    }
}
