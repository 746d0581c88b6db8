package ampdays.chart;

import ampdays.chart.LinesChart.Bands;
import ampdays.chart.LinesChart.Line;
import ampdays.chart.LinesChart.Panel;
import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The chart of a sweep over one knob, with a line for each value of a knob of words beside it. */
final class SweepLines {
    private static final String FALLING = "falling";
    private static final String HOLDS = "holds";
    private static final String HOLDS_WORDS = "holds: not empty within the trip";
    private static final String FALLING_WORDS = "falling: not empty within the trip, but lower day by day";

    private final SweepTable table;
    private final Column knob;
    private final Optional<Column> beside;
    private final KnobAxis axis;
    private final List<String> bands = new ArrayList<>();

    SweepLines(SweepTable table, Column knob, Optional<Column> beside, KnobAxis axis) {
        this.table = table;
        this.knob = knob;
        this.beside = beside;
        this.axis = axis;
        if (IntStream.range(0, table.rows()).anyMatch(this::falls)) {
            bands.add(FALLING);
        }
        bands.add(HOLDS);
    }

    LinesChart chart(String title, double tripDays) {
        return new LinesChart(
                "Days to empty, lowest charge and comfortable nights by " + KnobTitle.of(knob),
                title + "; " + (bands.contains(FALLING) ? FALLING_WORDS : HOLDS_WORDS),
                axis.axis(),
                List.of(
                        new Panel("days to empty", true, days(), Optional.of(new Bands(tripDays, bands))),
                        new Panel("lowest charge, %", true, lines(table.lowestPercent())),
                        new Panel("comfortable nights", true, lines(table.comfortableNights()))));
    }

    private boolean falls(int row) {
        return table.isPossible(row)
                && !table.holds().get(row)
                && Double.isNaN(table.daysToEmpty().get(row));
    }

    private List<Line> days() {
        List<Line> lines = lines(table.daysToEmpty());
        List<Line> banded = new ArrayList<>();
        for (int place = 0; place < lines.size(); place++) {
            Line line = lines.get(place);
            banded.add(new Line(
                    line.label(),
                    line.x(),
                    line.y(),
                    rows(place).stream().map(this::band).toList()));
        }
        return banded;
    }

    private int band(int row) {
        return table.holds().get(row) ? bands.indexOf(HOLDS) : falls(row) ? bands.indexOf(FALLING) : Bands.NONE;
    }

    private List<Line> lines(List<Double> metric) {
        List<String> names = beside.map(Column::values).orElse(List.of(""));
        List<Line> lines = new ArrayList<>();
        for (int place = 0; place < names.size(); place++) {
            List<Integer> rows = rows(place);
            lines.add(new Line(
                    names.get(place),
                    rows.stream().map(this::at).toList(),
                    rows.stream().map(metric::get).toList()));
        }
        return lines;
    }

    /** The rows of one line, from left to right. */
    private List<Integer> rows(int place) {
        return IntStream.range(0, table.rows())
                .filter(row ->
                        beside.map(column -> column.places().get(row) == place).orElse(true))
                .boxed()
                .sorted(Comparator.comparingDouble(this::at))
                .toList();
    }

    private double at(int row) {
        return axis.at().get(knob.places().get(row));
    }
}
