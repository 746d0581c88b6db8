package ampdays.pv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class DirtTest {
    /** Source: table soiling_kimber; four decimals printed of sums of exact daily steps. */
    @Test
    void agreesWithTheTable() {
        Map<String, List<ReferenceTable.Row>> series = ReferenceTable.rows("soiling_kimber").stream()
                .collect(Collectors.groupingBy(row -> row.text("series")));
        assertThat(series).hasSize(4);
        series.values().forEach(DirtTest::assertSeries);
    }

    private static void assertSeries(List<ReferenceTable.Row> rows) {
        ReferenceTable.Row first = rows.get(0);
        Dirt dirt = new Dirt(
                first.number("initial_soiling"), first.number("loss_rate_per_day"), first.number("max_soiling"), (int)
                        first.number("grace_days"));
        double[] shares = dirt.ofDays(
                rows.stream().mapToDouble(row -> row.number("rain_mm")).toArray());
        for (int day = 0; day < shares.length; day++) {
            assertThat(shares[day])
                    .as(rows.get(day).toString())
                    .isCloseTo(rows.get(day).number("soiling_fraction"), within(1e-9));
        }
    }

    /** Without a rate, or without knowledge of rain, the share stays as it is: from its definition. */
    @Test
    void staysWhereNothingIsKnown() {
        double unknown = Double.NaN;
        assertThat(Dirt.constant(0.04).ofDays(new double[] {0, 20, 0})).containsOnly(0.04);
        assertThat(new Dirt(0.04, 0.003, 0.3, 14).ofDays(new double[] {unknown, unknown, unknown}))
                .containsOnly(0.04);
        assertThat(new Dirt(0.4, 0.003, 0.3, 14).ofDays(new double[] {0, 0})).containsOnly(0.4);
    }
}
