package ampdays.chart;

import ampdays.chart.BreakEven.Cell;
import ampdays.results.Fate;
import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Break-even maps of a sweep over options and two knobs, or three, of which the first then gives a map for each of its
 * values. In each place the cheapest of the options that hold wins, by the prices of their parts, and among those of one price
 * the one with more comfortable nights; where none holds, the one that lasts longest. Test: {@code BreakEvensTest}.
 */
public final class BreakEvens {
    private final SweepTable table;
    private final Column option;
    private final Column x;
    private final Column y;

    private BreakEvens(SweepTable table, Column option, Column y, Column x) {
        this.table = table;
        this.option = option;
        this.x = x;
        this.y = y;
    }

    /** The maps by file name; empty for other sweeps. */
    public static SortedMap<String, BreakEven> of(SweepTable table, String title) {
        List<Column> numeric =
                table.columns().stream().filter(Column::isNumeric).toList();
        List<Column> options = table.columns().stream()
                .filter(c -> c.heading().equals("option"))
                .toList();
        SortedMap<String, BreakEven> maps = new TreeMap<>();
        boolean fits = options.size() == 1
                && options.get(0).values().size() <= BreakEven.MOST_OPTIONS
                && numeric.size() + 1 == table.columns().size();
        long rows = table.columns().stream().mapToLong(c -> c.values().size()).reduce(1, (a, b) -> a * b);
        boolean differ =
                numeric.stream().allMatch(column -> SweepCharts.sorted(column).size() > 1);
        if (!fits || !differ || rows != table.rows() || numeric.size() < 2 || numeric.size() > 3) {
            return maps;
        }
        int last = numeric.size() - 1;
        BreakEvens evens = new BreakEvens(table, options.get(0), numeric.get(last - 1), numeric.get(last));
        if (numeric.size() == 2) {
            maps.put(
                    SweepChart.BREAK_EVEN.fileName(),
                    evens.map(title, IntStream.range(0, table.rows()).boxed().toList()));
            return maps;
        }
        Column slice = numeric.get(0);
        for (int place = 0; place < slice.values().size(); place++) {
            int wanted = place;
            maps.put(
                    SweepChart.BREAK_EVEN.fileName(place + 1),
                    evens.map(
                            title + "; " + KnobTitle.at(slice, place),
                            IntStream.range(0, table.rows())
                                    .filter(row -> slice.places().get(row) == wanted)
                                    .boxed()
                                    .toList()));
        }
        return maps;
    }

    private BreakEven map(String title, List<Integer> rows) {
        List<Double> xs = SweepCharts.sorted(x);
        List<Double> ys = SweepCharts.sorted(y);
        List<List<Cell>> cells = new ArrayList<>();
        for (double down : ys) {
            List<Cell> line = new ArrayList<>();
            for (double along : xs) {
                line.add(winner(rows.stream()
                        .filter(row -> x.number(x.places().get(row)) == along
                                && y.number(y.places().get(row)) == down)
                        .toList()));
            }
            cells.add(line);
        }
        return new BreakEven(
                "Which option wins", title, KnobTitle.axis(x), KnobTitle.axis(y), xs, ys, option.values(), cells);
    }

    private Cell winner(List<Integer> rows) {
        Comparator<Integer> cheapest = Comparator.comparingDouble(
                        (Integer row) -> table.prices().get(row))
                .thenComparingDouble(row -> -table.comfortableNights().get(row))
                .thenComparingInt(option.places()::get);
        List<Integer> possible = rows.stream().filter(table::isPossible).toList();
        return possible.stream()
                .filter(table::holds)
                .min(cheapest)
                .or(() -> possible.stream()
                        .min(Comparator.comparingDouble((Integer row) -> -lasting(row))
                                .thenComparing(cheapest)))
                .map(row -> new Cell(
                        option.places().get(row),
                        table.fates().get(row),
                        table.daysToEmpty().get(row)))
                .orElse(new Cell(-1, Fate.IMPOSSIBLE, Double.NaN));
    }

    private double lasting(int row) {
        double days = table.daysToEmpty().get(row);
        return Double.isNaN(days) ? Double.POSITIVE_INFINITY : days;
    }
}
