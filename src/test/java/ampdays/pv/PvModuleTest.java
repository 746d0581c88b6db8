package ampdays.pv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import org.junit.jupiter.api.Test;

class PvModuleTest {
    /** Source: table dc_power_linear, without and with the term for weak light; 10 digits printed. */
    @Test
    void agreesWithTheTable() {
        for (var row : ReferenceTable.rows("dc_power_linear")) {
            assertPower(row, 0, "pdc_W");
            assertPower(row, 0.01, "pdc_k001_W");
        }
    }

    private static void assertPower(ReferenceTable.Row row, double lowLightShare, String column) {
        double dcW = PvModule.dcW(
                row.number("effective_irradiance_Wm2"),
                row.number("temp_cell_C"),
                row.number("pdc0_W"),
                row.number("gamma_pdc_perK"),
                lowLightShare);
        assertThat(dcW).as(column + " of " + row).isCloseTo(row.number(column), within(1e-6));
    }

    /** Source: expected values of the reference library's own tests: 88.65 W, and 8.9125 W with k = 0.01. */
    @Test
    void publishedValues() {
        assertThat(PvModule.dcW(900, 30, 100, -0.003, 0)).isCloseTo(88.65, within(1e-9));
        assertThat(PvModule.dcW(100, 30, 100, -0.003, 0.01)).isCloseTo(8.9125, within(1e-9));
    }

    /** Physics: no panel takes power, however weak the light. */
    @Test
    void neverNegative() {
        assertThat(PvModule.dcW(1, 110, 100, -0.005, 0.03)).isZero();
        assertThat(PvModule.dcW(0, 25, 100, -0.0035, 0.03)).isZero();
    }
}
