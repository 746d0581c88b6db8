package ampdays.pv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import org.junit.jupiter.api.Test;

class PvModuleTest {
    /** Source: table dc_power_linear; 10 digits printed. */
    @Test
    void agreesWithTheTable() {
        for (var row : ReferenceTable.rows("dc_power_linear")) {
            double dcW = PvModule.dcW(
                    row.number("effective_irradiance_Wm2"),
                    row.number("temp_cell_C"),
                    row.number("pdc0_W"),
                    row.number("gamma_pdc_perK"),
                    0);
            assertThat(dcW).as(row.toString()).isCloseTo(row.number("pdc_W"), within(1e-6));
        }
    }

    /** Source: expected value of the reference library's own test: 88.65 W. */
    @Test
    void publishedValue() {
        assertThat(PvModule.dcW(900, 30, 100, -0.003, 0)).isCloseTo(88.65, within(1e-9));
    }
}
