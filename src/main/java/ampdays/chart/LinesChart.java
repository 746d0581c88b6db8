package ampdays.chart;

import java.util.List;

/**
 * Lines over a common horizontal axis, in one panel or several above each other.
 *
 * @param x what the horizontal axis is
 * @param panels from the top
 */
public record LinesChart(String title, String subtitle, XAxis x, List<Panel> panels) implements ChartModel {
    public LinesChart {
        panels = List.copyOf(panels);
        if (panels.isEmpty() || panels.stream().anyMatch(panel -> panel.lines().isEmpty())) {
            throw new IllegalArgumentException("a chart of lines needs a panel and a line in each");
        }
    }

    /** How the horizontal axis is marked. */
    public enum Marks {
        /** Round numbers. */
        NUMBERS,
        /** Months by name; x is in months from the start of the year, so that mid-January is 0.5. */
        MONTHS,
        /** Hours of the clock; x is 0 to 24. */
        HOURS
    }

    /**
     * The horizontal axis.
     *
     * @param label with its unit; may be empty where the marks speak for themselves
     */
    public record XAxis(String label, Marks marks, double from, double to) {
        public XAxis {
            if (!(from < to)) {
                throw new IllegalArgumentException("the horizontal axis runs from " + from + " to " + to);
            }
        }

        /** Months of a year from the first to the last, 1 to 12. */
        public static XAxis months(int first, int last) {
            return new XAxis("", Marks.MONTHS, first - 1.0, last);
        }

        /** The hours of a day. */
        public static XAxis dayByHour() {
            return new XAxis("", Marks.HOURS, 0, 24);
        }
    }

    /**
     * Lines that share a vertical axis.
     *
     * @param yLabel what it is, with its unit
     * @param fromZero whether the axis starts at zero
     */
    public record Panel(String yLabel, boolean fromZero, List<Line> lines) {
        public Panel {
            lines = List.copyOf(lines);
        }
    }

    /** One line; where y is not a number it has a gap. */
    public record Line(String label, List<Double> x, List<Double> y) {
        public Line {
            x = List.copyOf(x);
            y = List.copyOf(y);
            if (x.size() != y.size()) {
                throw new IllegalArgumentException(
                        "the line \"" + label + "\" has " + x.size() + " places and " + y.size() + " values");
            }
        }
    }
}
