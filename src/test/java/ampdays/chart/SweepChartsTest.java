package ampdays.chart;

import static ampdays.results.Fate.EMPTY;
import static ampdays.results.Fate.FALLS;
import static ampdays.results.Fate.HOLDS;
import static ampdays.results.Fate.IMPOSSIBLE;
import static ampdays.results.Fate.UNKNOWN;
import static org.assertj.core.api.Assertions.assertThat;

import ampdays.chart.HeatMap.Tile;
import ampdays.chart.LinesChart.Bands;
import ampdays.chart.LinesChart.Line;
import ampdays.chart.LinesChart.Marks;
import ampdays.chart.LinesChart.Panel;
import ampdays.chart.LinesChart.Place;
import ampdays.chart.LinesChart.XAxis;
import ampdays.results.Fate;
import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What the charts of a sweep say, on invented sweeps; no outside source. */
class SweepChartsTest {
    private static final double NEVER = Double.NaN;

    private static SweepTable table(List<Column> columns, List<Double> days, List<Fate> fates, List<Double> lowest) {
        List<Double> zeros = Collections.nCopies(days.size(), 0.0);
        return new SweepTable(columns, days, fates, lowest, zeros, zeros, zeros, zeros, "USD");
    }

    private static Panel days(SweepTable table) {
        LinesChart chart = (LinesChart) SweepCharts.of(table, "Trip", 14).get("lines");
        return chart.panels().get(0);
    }

    @Test
    void whatIsNeverEmptyLiesInABandAndWhatIsImpossibleNowhere() {
        SweepTable table = table(
                List.of(new Column("battery.capacity (Ah)", List.of("600", "200", "400", "800"), List.of(0, 1, 2, 3))),
                List.of(NEVER, 3.0, NEVER, NEVER),
                List.of(HOLDS, EMPTY, FALLS, IMPOSSIBLE),
                List.of(40.0, 10.0, 30.0, NEVER));
        LinesChart chart = (LinesChart) SweepCharts.of(table, "Trip", 14).get("lines");
        assertThat(chart.subtitle()).isEqualTo("Trip; falling: not empty within the trip, but lower day by day");
        Panel days = chart.panels().get(0);
        assertThat(days.bands()).contains(new Bands(14, List.of("falling", "holds")));
        assertThat(days.lines())
                .containsExactly(new Line(
                        "",
                        List.of(200.0, 400.0, 600.0, 800.0),
                        List.of(3.0, NEVER, NEVER, NEVER),
                        List.of(-1, 0, 1, -1)));
        assertThat(chart.panels().subList(1, 3)).allMatch(panel -> panel.bands().isEmpty());
    }

    /** Two days show no trend, three do. */
    @Test
    void whatATripIsTooShortToTellHasABandOfItsOwn() {
        SweepTable table = table(
                List.of(new Column("trip.days", List.of("2", "7"), List.of(0, 1))),
                List.of(NEVER, NEVER),
                List.of(UNKNOWN, FALLS),
                List.of(40.0, 30.0));
        LinesChart chart = (LinesChart) SweepCharts.of(table, "Trip", 7).get("lines");
        assertThat(chart.subtitle())
                .isEqualTo(
                        "Trip; falling: not empty within the trip, but lower day by day; unsure: not empty within the"
                                + " trip, which is too short to tell more");
        assertThat(days(table).bands()).contains(new Bands(7, List.of("falling", "unsure", "holds")));
        assertThat(days(table).lines().get(0).bands()).containsExactly(1, 0);
    }

    @Test
    void aSweepWhoseDesignsAllHoldHasTheAxisOfTheTrip() {
        SweepTable table = table(
                List.of(new Column("second-alternator.rated (A)", List.of("150", "300"), List.of(0, 1))),
                List.of(NEVER, NEVER),
                List.of(HOLDS, HOLDS),
                List.of(40.0, 41.0));
        assertThat(days(table).bands()).contains(new Bands(14, List.of("holds")));
        assertThat(days(table).lines().get(0).bands()).containsExactly(0, 0);
    }

    @Test
    void theBandsBeginAboveTheLongestTripWhereItsDaysAreVaried() {
        SweepTable table = table(
                List.of(new Column("trip.days", List.of("3", "21", "7"), List.of(0, 1, 2))),
                List.of(NEVER, 5.0, 5.0),
                List.of(HOLDS, EMPTY, EMPTY),
                List.of(40.0, 4.0, 4.0));
        assertThat(days(table).bands().orElseThrow().from()).isEqualTo(21);
    }

    @Test
    void wordsStandSideBySideWithALineForEachOption() {
        SweepTable table = table(
                List.of(
                        new Column("option", List.of("as it is", "more"), List.of(0, 0, 1, 1)),
                        new Column("cabin.covers", List.of("reflective", "none"), List.of(0, 1, 0, 1))),
                List.of(6.0, 5.0, NEVER, 9.0),
                List.of(EMPTY, EMPTY, HOLDS, EMPTY),
                List.of(4.0, 4.0, 30.0, 4.0));
        LinesChart chart = (LinesChart) SweepCharts.of(table, "Trip", 14).get("lines");
        assertThat(chart.title()).isEqualTo("Days to empty, lowest charge and comfortable nights by window covers");
        assertThat(chart.x())
                .isEqualTo(new XAxis(
                        "window covers",
                        Marks.WORDS,
                        -0.5,
                        1.5,
                        List.of(new Place(0, "reflective"), new Place(1, "none"))));
        assertThat(days(table).lines())
                .containsExactly(
                        new Line("as it is", List.of(0.0, 1.0), List.of(6.0, 5.0)),
                        new Line("more", List.of(0.0, 1.0), List.of(NEVER, 9.0), List.of(0, -1)));
    }

    /** 15 June to 8 July are 23 days, 1 July is the 16th of them; the calendar. */
    @Test
    void datesStandInTheOrderOfTime() {
        SweepTable table = table(
                List.of(new Column("trip.start", List.of("07-08", "06-15", "07-01"), List.of(0, 1, 2))),
                List.of(5.0, 7.0, 6.0),
                List.of(EMPTY, EMPTY, EMPTY),
                List.of(4.0, 4.0, 4.0));
        LinesChart chart = (LinesChart) SweepCharts.of(table, "Trip", 14).get("lines");
        assertThat(chart.x().marks()).isEqualTo(Marks.DATES);
        assertThat(chart.x().named()).extracting(Place::word).containsExactly("8 Jul", "15 Jun", "1 Jul");
        Line line = days(table).lines().get(0);
        assertThat(line.y()).containsExactly(7.0, 6.0, 5.0);
        assertThat(line.x().get(1) - line.x().get(0)).isEqualTo(16);
        assertThat(line.x().get(2) - line.x().get(0)).isEqualTo(23);
    }

    /** Dates of which only some name their year have no order. */
    @Test
    void datesOfTwoKindsAreWords() {
        SweepTable table = table(
                List.of(new Column("trip.start", List.of("07-08", "2024-06-15"), List.of(0, 1))),
                List.of(5.0, 7.0),
                List.of(EMPTY, EMPTY),
                List.of(4.0, 4.0));
        LinesChart chart = (LinesChart) SweepCharts.of(table, "Trip", 14).get("lines");
        assertThat(chart.x().marks()).isEqualTo(Marks.WORDS);
    }

    /** A design that cannot be, and one of which a short trip tells no more, are not shown as falling. */
    @Test
    void aMapShowsWhatBecomesOfEachDesign() {
        SweepTable table = table(
                List.of(
                        new Column("trip.days", List.of("2", "7"), List.of(0, 0, 0, 1, 1, 1)),
                        new Column("battery.capacity (Ah)", List.of("200", "400", "600"), List.of(0, 1, 2, 0, 1, 2))),
                List.of(1.5, NEVER, NEVER, 1.5, NEVER, NEVER),
                List.of(EMPTY, UNKNOWN, IMPOSSIBLE, EMPTY, FALLS, HOLDS),
                List.of(20.0, 40.0, NEVER, 20.0, 30.0, 50.0));
        HeatMap map = (HeatMap) SweepCharts.of(table, "Trip", 7).get("days-to-empty");
        assertThat(map.tiles())
                .containsExactly(
                        List.of(Tile.DAYS, Tile.UNKNOWN, Tile.IMPOSSIBLE), List.of(Tile.DAYS, Tile.FALLS, Tile.HOLDS));
    }

    /** By hand: on the first map more panels help, but not at 200 Ah; on the second they only harm; a larger bank helps on both. */
    @Test
    void aMapTellsWhereMoreIsNoBetterOnItAlone() {
        List<Integer> options = List.of(0, 0, 0, 0, 1, 1, 1, 1);
        SweepTable table = table(
                List.of(
                        new Column("option", List.of("as it is", "second alternator"), options),
                        new Column("battery.capacity (Ah)", List.of("200", "400"), List.of(0, 0, 1, 1, 0, 0, 1, 1)),
                        new Column("solar.power (W)", List.of("400", "800"), List.of(0, 1, 0, 1, 0, 1, 0, 1))),
                List.of(2.0, 1.5, 5.0, NEVER, 3.0, 1.2, NEVER, NEVER),
                List.of(EMPTY, EMPTY, EMPTY, HOLDS, EMPTY, EMPTY, HOLDS, HOLDS),
                Collections.nCopies(8, 20.0));
        SortedMap<String, ChartModel> charts = SweepCharts.of(table, "Trip", 7);
        assertThat(((HeatMap) charts.get("days-to-empty-1")).notes())
                .containsExactly(
                        "Over power of the panels more is worse in some places and better in others: at 400 W it is"
                                + " empty after 2.0 days, at 800 W it is empty after 1.5 days; with size of the bank 200 Ah. Worse"
                                + " in 1 of 2 places, better in 1.");
        assertThat(((HeatMap) charts.get("days-to-empty-2")).notes())
                .containsExactly(
                        "Over power of the panels more is worse: at 400 W it is empty after 3.0 days, at 800 W it is"
                                + " empty after 1.2 days; with size of the bank 200 Ah. So in 1 of 2 places.");
    }

    @Test
    void moreWordsThanHaveRoomGiveNoChart() {
        List<String> words = IntStream.range(0, 25).mapToObj(i -> "word " + i).toList();
        SweepTable table = table(
                List.of(new Column(
                        "option", words, IntStream.range(0, 25).boxed().toList())),
                Collections.nCopies(25, 5.0),
                Collections.nCopies(25, EMPTY),
                Collections.nCopies(25, 4.0));
        assertThat(SweepCharts.of(table, "Trip", 14)).isEmpty();
    }

    @Test
    void oneNumberWrittenInTwoWaysGivesNoChart() {
        SweepTable table = table(
                List.of(new Column("battery.capacity (Ah)", List.of("200", "200.0"), List.of(0, 1))),
                List.of(5.0, 5.0),
                List.of(EMPTY, EMPTY),
                List.of(4.0, 4.0));
        assertThat(SweepCharts.of(table, "Trip", 14)).isEmpty();
    }
}
