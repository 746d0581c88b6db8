package ampdays.chart;

import ampdays.chart.LinesChart.Bands;
import ampdays.chart.LinesChart.Line;
import ampdays.chart.LinesChart.Marks;
import ampdays.chart.LinesChart.Panel;
import ampdays.chart.LinesChart.XAxis;
import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * The charts of a sweep by file name: over one numeric knob, lines; over two, a heat map. A further knob of words, such as
 * the option, gives a line or a map for each of its values, and options over two knobs or three a map of who wins. Other
 * sweeps have none.
 */
public final class SweepCharts {
    private static final int MOST_LINES = 8;
    private static final int MOST_CELLS = 250_000;

    /** Bands over the days to empty. */
    private static final String FALLING = "falling";

    private static final String HOLDS = "holds";
    private static final String HOLDS_WORDS = "holds: not empty within the trip";
    private static final String FALLING_WORDS = "falling: not empty within the trip, but lower day by day";

    private final SweepTable table;
    private final String title;
    private final double tripDays;
    private final List<Column> numeric;
    private final List<Column> words;

    private SweepCharts(SweepTable table, String title, double tripDays) {
        this.table = table;
        this.title = title;
        this.tripDays = table.columns().stream()
                .filter(column -> column.heading().equals("trip.days"))
                .flatMap(column -> sorted(column).stream())
                .max(Comparator.naturalOrder())
                .orElse(tripDays);
        this.numeric = table.columns().stream().filter(Column::isNumeric).toList();
        this.words = table.columns().stream().filter(c -> !c.isNumeric()).toList();
    }

    /**
     * The charts of a table.
     *
     * @param tripDays length of the longest trip, unless its days are varied
     */
    public static SortedMap<String, ChartModel> of(SweepTable table, String title, double tripDays) {
        SweepCharts charts = new SweepCharts(table, title, tripDays);
        int lines = charts.words.isEmpty() ? 1 : charts.words.get(0).values().size();
        boolean fits = charts.words.size() <= 1 && lines <= MOST_LINES && table.rows() <= MOST_CELLS;
        SortedMap<String, ChartModel> models = new TreeMap<>(BreakEvens.of(table, title));
        if (fits && charts.numeric.size() == 1) {
            models.put("lines", charts.lines());
        } else if (fits && charts.numeric.size() == 2 && charts.isWholeGrid(lines)) {
            for (int place = 0; place < lines; place++) {
                models.put(lines == 1 ? "days-to-empty" : "days-to-empty-" + (place + 1), charts.map(place));
            }
        }
        return models;
    }

    private boolean isWholeGrid(int lines) {
        return table.rows()
                == (long) lines
                        * numeric.get(0).values().size()
                        * numeric.get(1).values().size();
    }

    /** Names of the lines; one without a name when nothing but the one knob was varied. */
    private List<String> names() {
        return words.isEmpty() ? List.of("") : words.get(0).values();
    }

    private boolean isOf(int row, int place) {
        return words.isEmpty() || words.get(0).places().get(row) == place;
    }

    private ChartModel lines() {
        Column knob = numeric.get(0);
        List<Double> sorted = sorted(knob);
        List<String> bands = new ArrayList<>();
        if (IntStream.range(0, table.rows()).anyMatch(this::falls)) {
            bands.add(FALLING);
        }
        bands.add(HOLDS);
        return new LinesChart(
                "Days to empty, lowest charge and comfortable nights by " + KnobTitle.of(knob),
                title + "; " + (bands.contains(FALLING) ? FALLING_WORDS : HOLDS_WORDS),
                new XAxis(KnobTitle.axis(knob), Marks.NUMBERS, sorted.get(0), sorted.get(sorted.size() - 1)),
                List.of(
                        new Panel(
                                "days to empty", true, daysLines(knob, bands), Optional.of(new Bands(tripDays, bands))),
                        new Panel("lowest charge, %", true, lines(knob, table.lowestPercent())),
                        new Panel("comfortable nights", true, lines(knob, table.comfortableNights()))));
    }

    private boolean falls(int row) {
        return table.isPossible(row)
                && !table.holds().get(row)
                && Double.isNaN(table.daysToEmpty().get(row));
    }

    private List<Line> daysLines(Column knob, List<String> bands) {
        List<Line> lines = lines(knob, table.daysToEmpty());
        List<Line> banded = new ArrayList<>();
        for (int place = 0; place < lines.size(); place++) {
            Line line = lines.get(place);
            banded.add(new Line(
                    line.label(),
                    line.x(),
                    line.y(),
                    rows(knob, place).stream()
                            .map(row -> table.holds().get(row)
                                    ? bands.indexOf(HOLDS)
                                    : falls(row) ? bands.indexOf(FALLING) : Bands.NONE)
                            .toList()));
        }
        return banded;
    }

    private List<Line> lines(Column knob, List<Double> metric) {
        List<Line> lines = new ArrayList<>();
        for (int place = 0; place < names().size(); place++) {
            List<Integer> rows = rows(knob, place);
            lines.add(new Line(
                    names().get(place),
                    rows.stream()
                            .map(row -> knob.number(knob.places().get(row)))
                            .toList(),
                    rows.stream().map(metric::get).toList()));
        }
        return lines;
    }

    /** The rows of one line, by the values of the knob. */
    private List<Integer> rows(Column knob, int place) {
        return IntStream.range(0, table.rows())
                .filter(row -> isOf(row, place))
                .boxed()
                .sorted(Comparator.comparingDouble(
                        row -> knob.number(knob.places().get(row))))
                .toList();
    }

    private ChartModel map(int place) {
        Column y = numeric.get(0);
        Column x = numeric.get(1);
        List<Double> xs = sorted(x);
        List<Double> ys = sorted(y);
        Map<Double, Integer> columnOf = indexes(xs);
        Map<Double, Integer> rowOf = indexes(ys);
        List<List<Double>> days = filled(ys.size(), xs.size(), Double.NaN);
        List<List<Boolean>> holds = filled(ys.size(), xs.size(), false);
        for (int row = 0; row < table.rows(); row++) {
            if (isOf(row, place)) {
                int down = rowOf.get(y.number(y.places().get(row)));
                int along = columnOf.get(x.number(x.places().get(row)));
                days.get(down).set(along, table.daysToEmpty().get(row));
                holds.get(down).set(along, table.holds().get(row));
            }
        }
        String name = names().get(place);
        return new HeatMap(
                "Days until the bank is empty" + (name.isEmpty() ? "" : ": " + name),
                title,
                KnobTitle.axis(x),
                KnobTitle.axis(y),
                xs,
                ys,
                days,
                holds);
    }

    private static <T> List<List<T>> filled(int rows, int columns, T value) {
        List<List<T>> filled = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            filled.add(new ArrayList<>(Collections.nCopies(columns, value)));
        }
        return filled;
    }

    private static Map<Double, Integer> indexes(List<Double> values) {
        Map<Double, Integer> indexes = new HashMap<>();
        values.forEach(value -> indexes.put(value, indexes.size()));
        return indexes;
    }

    /** The values of a knob in rising order. */
    static List<Double> sorted(Column knob) {
        return IntStream.range(0, knob.values().size())
                .mapToObj(knob::number)
                .sorted()
                .distinct()
                .toList();
    }
}
