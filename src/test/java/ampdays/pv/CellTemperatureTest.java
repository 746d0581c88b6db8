package ampdays.pv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellTemperatureTest {
    /** Source: table cell_temperature; 10 digits printed. */
    @Test
    void agreesWithTheTable() {
        for (var row : ReferenceTable.rows("cell_temperature")) {
            assertCell(row, Mounting.OPEN_RACK, "tcell_sandia_open_rack_glass_glass");
            assertCell(row, Mounting.FEET_WITH_GAP, "tcell_sandia_close_mount_glass_glass");
            assertCell(row, Mounting.BONDED, "tcell_sandia_insulated_back_glass_polymer");
        }
    }

    private static void assertCell(ReferenceTable.Row row, Mounting mounting, String column) {
        double cellC = CellTemperature.sandiaC(
                row.number("poa_Wm2"), row.number("temp_air_C"), row.number("wind_speed_ms"), mounting);
        assertThat(cellC).as(column + " of " + row).isCloseTo(row.number(column), within(1e-6));
    }

    /** Source: expected values of the reference library's own tests and documentation; tolerance is the last digit. */
    @ParameterizedTest
    @CsvSource({"900, 20, 5, 43.509, 0.001", "1000, 10, 0, 44.11703066, 1e-8", "500, 10, 5, 23.06066166, 1e-8"})
    void publishedValues(double poaWm2, double airC, double windMs, double expectedC, double tolerance) {
        assertThat(CellTemperature.sandiaC(poaWm2, airC, windMs, Mounting.OPEN_RACK))
                .isCloseTo(expectedC, within(tolerance));
    }
}
