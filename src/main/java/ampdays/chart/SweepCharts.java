package ampdays.chart;

import ampdays.chart.HeatMap.Tile;
import ampdays.chart.LinesChart.Marks;
import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import ampdays.study.AlongOneKnob;
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
import java.util.stream.Stream;

/**
 * The charts of a sweep by file name: over one knob, lines, or points where it takes words; over two numeric ones, a heat
 * map. A further knob of words, such as the option, gives a line or a map for each of its values, and options over two knobs or three a map of who wins. Other
 * sweeps have none.
 */
public final class SweepCharts {
    private static final int MOST_LINES = 8;
    private static final int MOST_CELLS = 250_000;

    /** More words have no room below a chart. */
    private static final int MOST_WORDS = 24;

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
        charts.overOneKnob().ifPresent(chart -> models.put(SweepChart.LINES.fileName(), chart));
        if (fits && charts.numeric.size() == 2 && charts.isWholeGrid(lines)) {
            for (int place = 0; place < lines; place++) {
                models.put(
                        lines == 1 ? SweepChart.DAYS_TO_EMPTY.fileName() : SweepChart.DAYS_TO_EMPTY.fileName(place + 1),
                        charts.map(place));
            }
        }
        return models;
    }

    private boolean isWholeGrid(int lines) {
        return table.rows()
                == (long) lines
                        * sorted(numeric.get(0)).size()
                        * sorted(numeric.get(1)).size();
    }

    /** Names of the lines; one without a name when nothing but the one knob was varied. */
    private List<String> names() {
        return words.isEmpty() ? List.of("") : words.get(0).values();
    }

    private boolean isOf(int row, int place) {
        return words.isEmpty() || words.get(0).places().get(row) == place;
    }

    /** Over the one number, or where there is none over words or dates; another knob of words gives the lines. */
    private Optional<LinesChart> overOneKnob() {
        int knobs = numeric.size() + words.size();
        if (knobs < 1 || knobs > 2 || numeric.size() > 1 || table.rows() > MOST_CELLS) {
            return Optional.empty();
        }
        Column knob = numeric.isEmpty() ? alongWords() : numeric.get(0);
        if (knob.isNumeric() && sorted(knob).size() < 2) {
            return Optional.empty();
        }
        Optional<Column> beside =
                words.stream().filter(column -> !column.equals(knob)).findFirst();
        boolean fits =
                beside.map(column -> column.values().size() <= MOST_LINES).orElse(true);
        KnobAxis axis = KnobAxis.of(knob);
        boolean hasRoom = axis.axis().marks() != Marks.WORDS || knob.values().size() <= MOST_WORDS;
        return fits && hasRoom
                ? Optional.of(new SweepLines(table, knob, beside, axis).chart(title, tripDays))
                : Optional.empty();
    }

    /** The last of the knobs of words that is not the option, if there is one. */
    private Column alongWords() {
        return words.stream()
                .filter(column -> !column.heading().equals("option"))
                .reduce((first, second) -> second)
                .orElse(words.get(0));
    }

    private ChartModel map(int place) {
        Column y = numeric.get(0);
        Column x = numeric.get(1);
        List<Double> xs = sorted(x);
        List<Double> ys = sorted(y);
        Map<Double, Integer> columnOf = indexes(xs);
        Map<Double, Integer> rowOf = indexes(ys);
        List<List<Double>> days = filled(ys.size(), xs.size(), Double.NaN);
        List<List<Tile>> tiles = filled(ys.size(), xs.size(), Tile.IMPOSSIBLE);
        for (int row = 0; row < table.rows(); row++) {
            if (isOf(row, place)) {
                int down = rowOf.get(y.number(y.places().get(row)));
                int along = columnOf.get(x.number(x.places().get(row)));
                days.get(down).set(along, table.daysToEmpty().get(row));
                tiles.get(down).set(along, Tile.of(table.fates().get(row)));
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
                tiles,
                Stream.of(x, y)
                        .flatMap(knob -> againstMore(place, knob.heading()).stream())
                        .toList());
    }

    /** Where on a map more of a knob is not better, by the rows of that map alone. */
    private Optional<String> againstMore(int place, String heading) {
        SweepTable own = table.only(
                IntStream.range(0, table.rows())
                        .filter(row -> isOf(row, place))
                        .boxed()
                        .toList(),
                numeric.stream().map(Column::heading).toList());
        Column knob = own.columns().stream()
                .filter(column -> column.heading().equals(heading))
                .findFirst()
                .orElseThrow();
        return new AlongOneKnob(own, knob, KnobTitle::of)
                .againstMore()
                .map(words -> "Over " + KnobTitle.of(knob) + " " + words);
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
