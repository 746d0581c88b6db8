package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.Bounded;
import ampdays.results.Chances;
import ampdays.results.Fate;
import ampdays.results.Survival;
import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import ampdays.results.ThreeDays;
import ampdays.results.TripOutcome;
import ampdays.scenario.Parts.Limits;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Invented designs against the definition of Pareto's order; no outside source. */
class FrontTest {
    private static final Limits NONE = new Limits(Double.NaN, Double.NaN, 100);

    /** Rows of: price, mass, nights, days (below zero: holds), panels. */
    private static SweepTable table(double[]... rows) {
        List<List<Double>> columns = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            int at = i;
            columns.add(IntStream.range(0, rows.length)
                    .mapToObj(row -> rows[row][at])
                    .toList());
        }
        return new SweepTable(
                List.of(new Column(
                        "battery.capacity (Ah)",
                        IntStream.range(0, rows.length)
                                .mapToObj(Integer::toString)
                                .toList(),
                        IntStream.range(0, rows.length).boxed().toList())),
                columns.get(3).stream().map(d -> d < 0 ? Double.NaN : d).toList(),
                columns.get(3).stream()
                        .map(d -> d < 0 ? Fate.HOLDS : Fate.EMPTY)
                        .toList(),
                Collections.nCopies(rows.length, 20.0),
                columns.get(2),
                columns.get(0),
                columns.get(1),
                columns.get(4),
                "EUR");
    }

    private static Front oneTrip(SweepTable table, Limits limits) {
        return Front.ofOneTrip(table, Allowed.of(table, row -> limits).rows());
    }

    /** By hand: the first is 60 % over the budget, the second 20 and 30 %, the third 31 %. */
    @Test
    void ofDesignsBeyondTheLimitsTheNearestLacksLeast() {
        SweepTable table = table(
                new double[] {160, 10, 5, 4, 1}, new double[] {120, 130, 5, 4, 1}, new double[] {10, 131, 5, 4, 1});
        Allowed allowed = Allowed.of(table, row -> new Limits(100, 100, 5));
        assertThat(allowed.rows()).isEmpty();
        assertThat(allowed.leftOut())
                .isEqualTo("2 are beyond 100 EUR (prices.budget), 2 beyond 100 kg (masses.payload)");
        assertThat(allowed.nearest())
                .contains(
                        "battery.capacity 1 Ah, with 130 kg, 30 % beyond its 100 kg (masses.payload), which rules, and 120"
                                + " EUR, 20 % beyond its 100 EUR (prices.budget)");
    }

    /** By hand: 6 m² of panels lie on a roof of 7 m², not of 5 m²; 900 EUR are too much of 500 and of 800 EUR. */
    @Test
    void eachDesignKeepsToItsOwnLimits() {
        SweepTable table = table(
                new double[] {100, 10, 5, 4, 6},
                new double[] {100, 10, 5, 4, 6},
                new double[] {900, 10, 9, -1, 1},
                new double[] {900, 10, 9, -1, 1});
        List<Limits> limits =
                List.of(new Limits(500, 40, 5), new Limits(500, 40, 7), new Limits(500, 40, 5), new Limits(800, 40, 5));
        Allowed allowed = Allowed.of(table, limits::get);
        assertThat(allowed.rows()).containsExactly(1);
        assertThat(allowed.leftOut())
                .isEqualTo("2 are beyond their own limit of 500 to 800 EUR (prices.budget), 1 beyond 5.0 m² of panels"
                        + " (cabin.roof)");
    }

    @Test
    void aBudgetOfNothingIsPassedByNoShareOfIt() {
        Allowed allowed = Allowed.of(table(new double[] {100, 10, 5, 4, 6}), row -> new Limits(0, 40, 7));
        assertThat(allowed.nearest()).contains("battery.capacity 0 Ah, with 100 EUR beyond its 0 EUR (prices.budget)");
    }

    /** Three banks that all hold: the one trip beats the larger two, one after the other; a fourth is beaten by all. */
    @Test
    void whatTheOneTripCannotTellApartIsTriedAfterItsFront() {
        SweepTable table = table(
                new double[] {300, 30, 9, -1, 1},
                new double[] {200, 20, 9, -1, 1},
                new double[] {100, 10, 9, -1, 1},
                new double[] {400, 40, 3, 2, 1},
                new double[] {50, 5, 1, 1, 1});
        List<Integer> all = List.of(0, 1, 2, 3, 4);
        assertThat(Front.worthTrying(table, all, 1)).containsExactly(2, 4);
        assertThat(Front.worthTrying(table, all, 3)).containsExactly(1, 2, 4);
        assertThat(Front.worthTrying(table, all, 4)).containsExactly(0, 1, 2, 4);
        assertThat(Front.worthTrying(table, all, 9)).isEqualTo(all);
    }

    private static Chances.Option chances(double neverEmpty, double comfortable) {
        Bounded any = new Bounded(0, 0, 0);
        Chances.Tenths tenths = new Chances.Tenths(any, any, any);
        ThreeDays days = new ThreeDays(LocalDate.of(2025, 7, 1), 0, 0);
        TripOutcome trip =
                new TripOutcome(1, LocalDate.of(2025, 7, 1), "", List.of(), 7, Double.NaN, true, 0.5, 7, 7, 0, 0, days);
        return new Chances.Option(
                "",
                "",
                "",
                new Bounded(neverEmpty, neverEmpty, neverEmpty),
                new Bounded(comfortable, comfortable, comfortable),
                tenths,
                tenths,
                new Survival(List.of()),
                trip,
                0,
                0,
                List.of(trip));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void overManyTripsTheSharesTakeThePlaceOfTheOneTrip(long seed) {
        Random random = new Random(seed);
        double[][] rows = IntStream.range(0, 40)
                .mapToObj(row ->
                        new double[] {random.nextInt(8), random.nextInt(8), random.nextInt(8), random.nextInt(8) - 1, 1
                        })
                .toArray(double[][]::new);
        List<Integer> tried =
                IntStream.range(0, 40).filter(row -> row % 4 != 0).boxed().toList();
        double[][] byChance = IntStream.range(0, 40)
                .mapToObj(row -> new double[] {rows[row][0], rows[row][1], random.nextInt(8), random.nextInt(8)})
                .toArray(double[][]::new);
        Front front = Front.ofManyTrips(
                table(rows),
                tried,
                tried.stream()
                        .map(row -> chances(byChance[row][2] / 8, byChance[row][3] / 8))
                        .toList());
        for (int row : tried) {
            double[] me = byChance[row];
            boolean beaten = tried.stream().anyMatch(other -> beats(byChance[other], me));
            boolean twin = tried.stream().anyMatch(other -> other < row && isSame(byChance[other], me));
            assertThat(front.rows().contains(row)).isEqualTo(!beaten && !twin);
        }
        assertThat(front.rows()).doesNotContain(0, 4, 8);
    }

    /** By hand: the dearer and heavier one lasts longer on the one trip; over many it must be empty less often to stay. */
    @ParameterizedTest
    @CsvSource({"0.5, 1, 0", "0.6, 0, 1"})
    void whatTheOneTripPrefersMayBeBeatenOverMany(double neverEmpty, long beaten, int last) {
        SweepTable table = table(new double[] {100, 10, 5, 4, 1}, new double[] {200, 20, 9, -1, 1});
        Front front = Front.ofManyTrips(table, List.of(0, 1), List.of(chances(0.5, 0.5), chances(neverEmpty, 0.5)));
        assertThat(front.beatenByChance()).isEqualTo(beaten);
        assertThat(front.rows()).last().isEqualTo(last);
    }

    @Test
    void whatAnotherBeatsIsLeftOut() {
        SweepTable table = table(
                new double[] {100, 10, 5, 4, 1},
                new double[] {200, 10, 5, 4, 1},
                new double[] {200, 20, 9, 4, 1},
                new double[] {300, 20, 9, -1, 1},
                new double[] {150, 5, 5, 4, 1},
                new double[] {100, 10, 5, 4, 1});
        Front front = oneTrip(table, NONE);
        assertThat(front.rows()).containsExactly(0, 4, 2, 3);
        assertThat(front.beaten()).containsExactly(1, 5);
        assertThat(DesignWords.of(table, 4)).isEqualTo("battery.capacity 4 Ah");
        assertThat(DesignWords.lasts(table, 3)).isEqualTo("holds");
    }

    @Test
    void limitsLeaveOutBeforeDesignsAreCompared() {
        SweepTable table = table(
                new double[] {100, 50, 9, -1, 1},
                new double[] {120, 10, 9, -1, 6},
                new double[] {150, 10, 5, 4, 1},
                new double[] {900, 10, 9, -1, 1});
        Allowed allowed = Allowed.of(table, row -> new Limits(500, 40, 5));
        assertThat(allowed.rows()).containsExactly(2);
        assertThat(allowed.leftOut())
                .isEqualTo(
                        "1 is beyond 500 EUR (prices.budget), 1 beyond 40 kg (masses.payload), 1 beyond 5.0 m² of panels"
                                + " (cabin.roof)");
        assertThat(allowed.nearest()).isEmpty();
        assertThat(Front.ofOneTrip(table, allowed.rows()).rows()).containsExactly(2);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theFrontIsWhatTheDefinitionSays(long seed) {
        Random random = new Random(seed);
        double[][] rows = IntStream.range(0, 60)
                .mapToObj(row ->
                        new double[] {random.nextInt(8), random.nextInt(8), random.nextInt(8), random.nextInt(8) - 1, 1
                        })
                .toArray(double[][]::new);
        Front front = oneTrip(table(rows), NONE);
        for (int row = 0; row < rows.length; row++) {
            double[] me = rows[row];
            boolean beaten = IntStream.range(0, rows.length).anyMatch(other -> beats(rows[other], me));
            boolean twin = IntStream.range(0, row).anyMatch(other -> isSame(rows[other], me));
            assertThat(front.rows().contains(row)).isEqualTo(!beaten && !twin);
        }
    }

    private static double days(double[] row) {
        return row[3] < 0 ? Double.POSITIVE_INFINITY : row[3];
    }

    private static boolean isSame(double[] a, double[] b) {
        return a[0] == b[0] && a[1] == b[1] && a[2] == b[2] && days(a) == days(b);
    }

    private static boolean beats(double[] a, double[] b) {
        return a[0] <= b[0] && a[1] <= b[1] && a[2] >= b[2] && days(a) >= days(b) && !isSame(a, b);
    }
}
