package ampdays.pv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IncidenceAngleTest {
    /** Source: table iam; 10 digits printed. */
    @Test
    void agreesWithTheTable() {
        for (var row : ReferenceTable.rows("iam")) {
            double incidence = Math.cos(Math.toRadians(row.number("aoi_deg")));
            assertThat(IncidenceAngle.ashrae(incidence, 0.05))
                    .as(row.toString())
                    .isCloseTo(row.number("iam_ashrae_b005"), within(1e-8));
            assertThat(IncidenceAngle.ashrae(incidence, 0.10))
                    .as(row.toString())
                    .isCloseTo(row.number("iam_ashrae_b010"), within(1e-8));
        }
    }

    /** Source: expected values of the reference library's own tests, 8 decimals. */
    @ParameterizedTest
    @CsvSource({"22.5, 0.99588039", "45, 0.97928932", "67.5, 0.9193437", "89, 0", "120, 0"})
    void publishedValues(double aoiDeg, double expected) {
        assertThat(IncidenceAngle.ashrae(Math.cos(Math.toRadians(aoiDeg)), 0.05))
                .isCloseTo(expected, within(1e-7));
    }
}
