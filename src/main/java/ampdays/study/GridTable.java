package ampdays.study;

import ampdays.results.Fate;
import ampdays.results.RunResult;
import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import ampdays.scenario.Grid;
import ampdays.scenario.Knob;
import ampdays.scenario.Parts;
import ampdays.scenario.ScenarioFile;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Runs every design of a grid and keeps what charts need of it, for a study that writes no table. Test: {@code GridTableTest}. */
public final class GridTable {
    private final ScenarioFile file;
    private final Grid grid;
    private final Map<String, Double> changePrices;
    private final List<Row> rows = new ArrayList<>();

    private GridTable(ScenarioFile file, Grid grid, Map<String, Double> changePrices) {
        this.file = file;
        this.grid = grid;
        this.changePrices = changePrices;
    }

    private record Row(
            List<Integer> places,
            double daysToEmpty,
            Fate fate,
            double lowestPercent,
            double comfortableNights,
            double price,
            Parts parts) {}

    /**
     * Runs a grid.
     *
     * @param file that the designs are changes of
     * @param changePrices what whole changes to options cost, by their names; these go before the prices of their parts
     */
    public static SweepTable of(
            ScenarioFile file, Grid grid, Map<String, Double> changePrices, Planner planner, int workers)
            throws IOException {
        GridTable table = new GridTable(file, grid, changePrices);
        new Sweep(file, grid, planner).run(0, workers, table::row, () -> false, table.rows::add);
        return table.table();
    }

    private Row row(Sweep.Cell cell) {
        Parts parts = cell.parts();
        Double change = changePrices.get(grid.option(cell.places()));
        double price = change == null ? parts.price() : Parts.of(file.base()).price() + change;
        return cell.result()
                .map(run -> row(cell.places(), run, price, parts))
                .orElseGet(() ->
                        new Row(cell.places(), Double.NaN, Fate.IMPOSSIBLE, Double.NaN, Double.NaN, price, parts));
    }

    private static Row row(List<Integer> places, RunResult run, double price, Parts parts) {
        return new Row(
                places, run.daysToEmpty(), run.fate(), 100 * run.lowestSoc(), run.comfortableNights(), price, parts);
    }

    private SweepTable table() {
        List<Column> columns = IntStream.range(0, grid.knobs().size())
                .mapToObj(this::column)
                .filter(column -> column.values().size() > 1)
                .toList();
        return new SweepTable(
                columns,
                all(Row::daysToEmpty),
                rows.stream().map(Row::fate).toList(),
                all(Row::lowestPercent),
                all(Row::comfortableNights),
                all(Row::price),
                all(row -> row.parts().massKg()),
                all(row -> row.parts().panelM2()),
                Parts.currency(file.base()));
    }

    private Column column(int number) {
        Knob knob = grid.knobs().get(number);
        return new Column(
                knob.heading(),
                IntStream.range(0, knob.values().size()).mapToObj(knob::cell).toList(),
                rows.stream().map(row -> row.places().get(number)).toList());
    }

    private List<Double> all(ToDoubleFunction<Row> metric) {
        return rows.stream().mapToDouble(metric).boxed().toList();
    }
}
