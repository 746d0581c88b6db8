package ampdays.chart;

import ampdays.results.Fate;
import java.util.List;
import java.util.Locale;

/**
 * Which option wins over two knobs.
 *
 * @param xs values along the horizontal axis, rising
 * @param ys values along the vertical axis, rising
 * @param options by name
 * @param cells by row of {@code ys}, then by place in {@code xs}
 */
public record BreakEven(
        String title,
        String subtitle,
        String xLabel,
        String yLabel,
        List<Double> xs,
        List<Double> ys,
        List<String> options,
        List<List<Cell>> cells)
        implements ChartModel {
    /** More cannot be told apart in black and white. */
    public static final int MOST_OPTIONS = 8;

    public BreakEven {
        xs = List.copyOf(xs);
        ys = List.copyOf(ys);
        options = List.copyOf(options);
        cells = cells.stream().map(List::copyOf).toList();
        if (xs.size() < 2 || ys.size() < 2 || cells.size() != ys.size()) {
            throw new IllegalArgumentException(
                    "a break-even map needs two values or more each way, and a row for each");
        }
    }

    /** The same in other words. */
    public BreakEven worded(String newTitle, String newSubtitle, String newXLabel, String newYLabel) {
        return new BreakEven(newTitle, newSubtitle, newXLabel, newYLabel, xs, ys, options, cells);
    }

    /**
     * The winner at one place.
     *
     * @param option its place in the list of options; below zero where all are impossible
     * @param fate of its bank; where it does not hold it is the one that lasts longest
     * @param days until its bank is empty; not a number when never within the trip
     */
    public record Cell(int option, Fate fate, double days) {
        public boolean holds() {
            return fate == Fate.HOLDS;
        }

        /** The number of the option, and how long it lasts where it does not hold. */
        public String words() {
            String number = Integer.toString(option + 1);
            return switch (fate) {
                case EMPTY -> number + String.format(Locale.ROOT, ": %.1f days", days);
                case FALLS -> number + ": falling";
                case UNKNOWN -> number + ": not empty";
                case HOLDS -> number;
                case IMPOSSIBLE -> "–";
            };
        }
    }
}
