package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import ampdays.scenario.Parts.Limits;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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
                columns.get(3).stream().map(d -> d < 0).toList(),
                Collections.nCopies(rows.length, 20.0),
                columns.get(2),
                columns.get(0),
                columns.get(1),
                columns.get(4),
                "EUR");
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
        Front front = Front.of(table, NONE);
        assertThat(front.rows()).containsExactly(0, 4, 2, 3);
        assertThat(front.words(4)).isEqualTo("battery.capacity 4 Ah");
        assertThat(front.lasts(3)).isEqualTo("holds");
    }

    @Test
    void limitsLeaveOutBeforeDesignsAreCompared() {
        SweepTable table = table(
                new double[] {100, 50, 9, -1, 1},
                new double[] {120, 10, 9, -1, 6},
                new double[] {150, 10, 5, 4, 1},
                new double[] {900, 10, 9, -1, 1});
        Front front = Front.of(table, new Limits(500, 40, 5));
        assertThat(front.rows()).containsExactly(2);
        assertThat(front.beyond()).isEqualTo(3);
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
        Front front = Front.of(table(rows), NONE);
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
