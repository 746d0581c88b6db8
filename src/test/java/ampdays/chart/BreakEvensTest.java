package ampdays.chart;

import static ampdays.results.Fate.EMPTY;
import static ampdays.results.Fate.HOLDS;
import static ampdays.results.Fate.UNKNOWN;
import static org.assertj.core.api.Assertions.assertThat;

import ampdays.chart.BreakEven.Cell;
import ampdays.results.Fate;
import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Winners worked out by hand on an invented sweep; no outside source. */
class BreakEvensTest {
    private static final double NEVER = Double.NaN;

    /** Two options (1,000 and 3,000) by parked days 0 and 1 (slow) and driving 0 and 2 h (fast); the option fastest. */
    private static SweepTable table(List<Double> days, List<Fate> fates) {
        List<Double> zeros = Collections.nCopies(8, 0.0);
        return new SweepTable(
                List.of(
                        new Column("trip.parked-days", List.of("0", "1"), List.of(0, 0, 0, 0, 1, 1, 1, 1)),
                        new Column("trip.drive-hours (h/day)", List.of("0", "2"), List.of(0, 0, 1, 1, 0, 0, 1, 1)),
                        new Column("option", List.of("as it is", "more"), List.of(0, 1, 0, 1, 0, 1, 0, 1))),
                days,
                fates,
                zeros,
                zeros,
                List.of(1000.0, 3000.0, 1000.0, 3000.0, 1000.0, 3000.0, 1000.0, 3000.0),
                zeros,
                zeros,
                "USD");
    }

    @Test
    void theCheapestThatHoldsWinsElseTheOneThatLastsLongest() {
        Map<String, BreakEven> maps = BreakEvens.of(
                table(
                        List.of(4.0, NEVER, NEVER, NEVER, 3.0, 5.0, NEVER, 6.0),
                        List.of(EMPTY, HOLDS, HOLDS, HOLDS, EMPTY, EMPTY, UNKNOWN, EMPTY)),
                "Trip");
        BreakEven map = maps.get("break-even");
        assertThat(map.xLabel()).isEqualTo("driving (h/day)");
        assertThat(map.yLabel()).isEqualTo("days parked in a row");
        assertThat(map.cells().get(0)).containsExactly(new Cell(1, HOLDS, NEVER), new Cell(0, HOLDS, NEVER));
        assertThat(map.cells().get(1)).containsExactly(new Cell(1, EMPTY, 5), new Cell(0, UNKNOWN, NEVER));
    }

    /** Heat, which changes slowest, gives a map for each of its values. */
    @Test
    void aThirdNumberGivesAMapForEachOfItsValues() {
        SweepTable two = table(Collections.nCopies(8, 1.0), Collections.nCopies(8, EMPTY));
        List<Column> columns = new ArrayList<>();
        columns.add(new Column(
                "weather-offset (K)",
                List.of("0", "5"),
                Stream.concat(Collections.nCopies(8, 0).stream(), Collections.nCopies(8, 1).stream())
                        .toList()));
        two.columns()
                .forEach(column -> columns.add(new Column(column.heading(), column.values(), twice(column.places()))));
        SweepTable three = new SweepTable(
                columns,
                twice(two.daysToEmpty()),
                twice(two.fates()),
                twice(two.lowestPercent()),
                twice(two.comfortableNights()),
                twice(two.prices()),
                twice(two.massesKg()),
                twice(two.panelsM2()),
                "USD");
        Map<String, BreakEven> maps = BreakEvens.of(three, "Trip");
        assertThat(maps).containsOnlyKeys("break-even-1", "break-even-2");
        assertThat(maps.get("break-even-1").subtitle()).isEqualTo("Trip; weather as in the file");
        assertThat(maps.get("break-even-2").subtitle()).isEqualTo("Trip; all air 5 K hotter");
    }

    private static <T> List<T> twice(List<T> list) {
        return Stream.concat(list.stream(), list.stream()).toList();
    }

    @Test
    void otherSweepsHaveNone() {
        SweepTable whole = table(Collections.nCopies(8, 1.0), Collections.nCopies(8, EMPTY));
        SweepTable withoutOptions = new SweepTable(
                whole.columns().subList(0, 2),
                whole.daysToEmpty(),
                whole.fates(),
                whole.lowestPercent(),
                whole.comfortableNights(),
                whole.prices(),
                whole.massesKg(),
                whole.panelsM2(),
                "USD");
        assertThat(BreakEvens.of(withoutOptions, "Trip")).isEmpty();
    }
}
