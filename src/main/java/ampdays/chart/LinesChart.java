package ampdays.chart;

import java.util.Collections;
import java.util.List;
import java.util.Optional;

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
        HOURS,
        /** Days of the calendar by name; x is in days. */
        DATES,
        /** Words side by side, at 0, 1, 2 …, with nothing between them. */
        WORDS
    }

    /**
     * The horizontal axis.
     *
     * @param label with its unit; may be empty where the marks speak for themselves
     * @param named of dates and words what is called what; empty for others
     */
    public record XAxis(String label, Marks marks, double from, double to, List<Place> named) {
        public XAxis {
            named = List.copyOf(named);
            if (!(from < to)) {
                throw new IllegalArgumentException("the horizontal axis runs from " + from + " to " + to);
            }
        }

        /** Whose marks need no names. */
        public XAxis(String label, Marks marks, double from, double to) {
            this(label, marks, from, to, List.of());
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

    /** A place on the horizontal axis that has a name. */
    public record Place(double at, String word) {}

    /**
     * Lines that share a vertical axis.
     *
     * @param yLabel what it is, with its unit
     * @param fromZero whether the axis starts at zero
     * @param bands what may lie above all values; empty where nothing does
     */
    public record Panel(String yLabel, boolean fromZero, List<Line> lines, Optional<Bands> bands) {
        public Panel {
            lines = List.copyOf(lines);
            int known = bands.map(b -> b.names().size()).orElse(0);
            if (lines.stream().flatMap(line -> line.bands().stream()).anyMatch(band -> band >= known)) {
                throw new IllegalArgumentException("a line of \"" + yLabel + "\" lies in a band that is not there");
            }
        }

        /** Without bands. */
        public Panel(String yLabel, boolean fromZero, List<Line> lines) {
            this(yLabel, fromZero, lines, Optional.empty());
        }
    }

    /**
     * Bands above the values, for what is beyond them all and has no number, such as a bank that is never empty.
     *
     * @param from where the values end and the bands begin
     * @param names from below
     */
    public record Bands(double from, List<String> names) {
        /** Of a place that lies in none. */
        public static final int NONE = -1;

        public Bands {
            names = List.copyOf(names);
            if (!(from > 0) || names.isEmpty()) {
                throw new IllegalArgumentException("bands begin above zero and have names, not at " + from);
            }
        }
    }

    /**
     * One line.
     *
     * @param y not a number where it has a gap or lies in a band
     * @param bands for each place the band in which the line lies there, or {@link Bands#NONE}
     */
    public record Line(String label, List<Double> x, List<Double> y, List<Integer> bands) {
        public Line {
            x = List.copyOf(x);
            y = List.copyOf(y);
            bands = List.copyOf(bands);
            if (x.size() != y.size() || bands.size() != y.size()) {
                throw new IllegalArgumentException(
                        "the line \"" + label + "\" has " + x.size() + " places and " + y.size() + " values");
            }
        }

        /** Without bands. */
        public Line(String label, List<Double> x, List<Double> y) {
            this(label, x, y, Collections.nCopies(y.size(), Bands.NONE));
        }
    }
}
