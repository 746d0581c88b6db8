package ampdays.chart;

import ampdays.chart.LinesChart.Bands;
import ampdays.chart.LinesChart.Line;
import ampdays.chart.LinesChart.Panel;
import ampdays.results.Fate;
import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The chart of a sweep over one knob, with a line for each value of a knob of words beside it. */
final class SweepLines {
    /** What has no number, from below. */
    private static final List<Fate> BANDS = List.of(Fate.FALLS, Fate.UNKNOWN, Fate.HOLDS);

    private static final Map<Fate, String> NAMES =
            Map.of(Fate.FALLS, "falling", Fate.UNKNOWN, "unsure", Fate.HOLDS, "holds");
    private static final Map<Fate, String> MEANINGS = Map.of(
            Fate.FALLS, "falling: not empty within the trip, but lower day by day",
            Fate.UNKNOWN, "unsure: not empty within the trip, which is too short to tell more");

    private final SweepTable table;
    private final Column knob;
    private final Optional<Column> beside;
    private final KnobAxis axis;
    private final List<Fate> bands;

    SweepLines(SweepTable table, Column knob, Optional<Column> beside, KnobAxis axis) {
        this.table = table;
        this.knob = knob;
        this.beside = beside;
        this.axis = axis;
        this.bands = BANDS.stream()
                .filter(fate -> fate == Fate.HOLDS || table.fates().contains(fate))
                .toList();
    }

    LinesChart chart(String title, double tripDays) {
        return new LinesChart(
                "Days to empty, lowest charge and comfortable nights by " + KnobTitle.of(knob),
                title + "; " + meaning(),
                axis.axis(),
                List.of(
                        new Panel(
                                "days to empty",
                                true,
                                days(),
                                Optional.of(new Bands(
                                        tripDays, bands.stream().map(NAMES::get).toList()))),
                        new Panel("lowest charge, %", true, lines(table.lowestPercent())),
                        new Panel("comfortable nights", true, lines(table.comfortableNights()))));
    }

    private String meaning() {
        return bands.equals(List.of(Fate.HOLDS))
                ? "holds: not empty within the trip"
                : bands.stream()
                        .filter(MEANINGS::containsKey)
                        .map(MEANINGS::get)
                        .collect(Collectors.joining("; "));
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
        int band = bands.indexOf(table.fates().get(row));
        return band < 0 ? Bands.NONE : band;
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
