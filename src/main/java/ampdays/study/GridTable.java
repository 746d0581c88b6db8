package ampdays.study;

import ampdays.results.SweepRows;
import ampdays.results.SweepRows.Row;
import ampdays.results.SweepTable;
import ampdays.scenario.Grid;
import ampdays.scenario.Knob;
import ampdays.scenario.Parts;
import ampdays.scenario.ScenarioFile;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Runs every design of a grid and keeps what charts need of it, for a study that writes no table. Test: {@code GridTableTest}. */
public final class GridTable {
    private final ScenarioFile file;
    private final Grid grid;
    private final Map<String, Double> changePrices;

    private GridTable(ScenarioFile file, Grid grid, Map<String, Double> changePrices) {
        this.file = file;
        this.grid = grid;
        this.changePrices = changePrices;
    }

    /**
     * Runs a grid.
     *
     * @param file that the designs are changes of
     * @param changePrices what whole changes to options cost, by their names; these go before the prices of their parts
     */
    public static SweepTable of(
            ScenarioFile file, Grid grid, Map<String, Double> changePrices, Planner planner, int workers)
            throws IOException {
        SweepRows rows = new SweepRows(grid.knobs().stream().map(Knob::heading).toList(), Parts.currency(file.base()));
        new Sweep(file, grid, planner)
                .run(0, workers, new GridTable(file, grid, changePrices)::row, () -> false, rows::add);
        return rows.table();
    }

    private Row row(Sweep.Cell cell) {
        List<String> values = IntStream.range(0, cell.places().size())
                .mapToObj(i -> grid.knobs().get(i).cell(cell.places().get(i)))
                .toList();
        Parts parts = cell.parts();
        Double change = changePrices.get(grid.option(cell.places()));
        double price = change == null ? parts.price() : Parts.of(file.base()).price() + change;
        return Row.of(values, cell.result(), price, parts.massKg(), parts.panelM2());
    }
}
