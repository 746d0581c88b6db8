package ampdays.pv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellTemperatureTest {
    private static final double INCH_M = 0.0254;

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

    /**
     * What a gap adds, put into the correlation it comes from, gives the table's columns for 0.2, 1 and 4 inches; 10 digits
     * printed. Source: table cell_temperature and NREL/TP-6A20-67399, section 10.6.
     */
    @Test
    void gapAddsWhatTheCorrelationSays() {
        for (var row : ReferenceTable.rows("cell_temperature")) {
            assertThat(correlationC(row, 0.2)).isCloseTo(row.number("tcell_noct45_eff20_gap0p2in"), within(1e-6));
            assertThat(correlationC(row, 1)).isCloseTo(row.number("tcell_noct45_eff20_gap1in"), within(1e-6));
            assertThat(correlationC(row, 4)).isCloseTo(row.number("tcell_noct45_eff20_gap4in"), within(1e-6));
        }
    }

    private static double correlationC(ReferenceTable.Row row, double gapIn) {
        double noctC = 45 + Mounting.gapAdderK(gapIn * INCH_M);
        return row.number("temp_air_C")
                + row.number("poa_Wm2")
                        / 800
                        * (noctC - 20)
                        * (1 - 0.20 / 0.9)
                        * 9.5
                        / (5.7 + 3.8 * 0.51 * row.number("wind_speed_ms"));
    }

    /** The named sets lie where the gap says, and no gap is the warmest: the published routine's trap is to add nothing. */
    @Test
    void gapRunsThroughTheMeasuredSets() {
        assertThat(Mounting.ofGap(0)).isEqualTo(Mounting.BONDED);
        assertThat(Mounting.ofGap(INCH_M)).isEqualTo(Mounting.FEET_WITH_GAP);
        assertThat(Mounting.ofGap(4 * INCH_M)).isEqualTo(Mounting.OPEN_RACK);
        assertThat(Mounting.ofGap(1)).isEqualTo(Mounting.OPEN_RACK);
        double warmerC = Double.MAX_VALUE;
        double roofShare = 1;
        for (int mm = 0; mm < 120; mm++) {
            double cellC = CellTemperature.sandiaC(1000, 40, 2, Mounting.ofGap(mm / 1000.0));
            assertThat(cellC).isLessThanOrEqualTo(warmerC);
            assertThat(Mounting.roofShare(mm / 1000.0)).isLessThanOrEqualTo(roofShare);
            warmerC = cellC;
            roofShare = Mounting.roofShare(mm / 1000.0);
        }
    }

    /**
     * What a gap of 20 mm is worth in light wind, air at 44 °C, at −0.45 %/K. Published by an owner and a retailer (weak): 10.6 K
     * cooler and about 9 % more power; 3 to 9 % in the trade. The model gives 6 K and 4 %, at the low end: one cannot tell from
     * those reports how much wind there was. The correlation behind the gap and the measured sets agree within 3 K in what an
     * inch is worth at 1000 W/m² and 2 m/s.
     */
    @Test
    void whatAGapIsWorth() {
        double bondedC = CellTemperature.sandiaC(1000, 44, 1, Mounting.ofGap(0));
        double gapC = CellTemperature.sandiaC(1000, 44, 1, Mounting.ofGap(0.020));
        assertThat(bondedC - gapC).isBetween(5.0, 10.6);
        double gain = PvModule.dcW(1000, gapC, 1, -0.0045, 0) / PvModule.dcW(1000, bondedC, 1, -0.0045, 0) - 1;
        assertThat(gain).isBetween(0.03, 0.09);
        double correlationK = 1000.0 / 800 * (18 - 11) * (1 - 0.20 / 0.9) * 9.5 / (5.7 + 3.8 * 0.51 * 2);
        double setsK = CellTemperature.sandiaC(1000, 44, 2, Mounting.BONDED)
                - CellTemperature.sandiaC(1000, 44, 2, Mounting.FEET_WITH_GAP);
        assertThat(setsK).isCloseTo(correlationK, within(3.0));
    }

    /**
     * Two other models beside the sets, at 1 m/s. Source: D. Faiman, 2008, Progress in Photovoltaics 16, 307, open rack, 25
     * and 6.84; E. Skoplaki and J. A. Palyvos, 2009, Renewable Energy 34, 23 (title from memory), sloped roof without air
     * behind, 0.0563 K m²/W. 10 %, the scatter among such models (practice).
     */
    @Test
    void otherModelsAgree() {
        double openK = CellTemperature.sandiaC(800, 0, 1, Mounting.OPEN_RACK);
        assertThat(openK).isCloseTo(800 / (25 + 6.84), within(0.1 * openK));
        double bondedK = CellTemperature.sandiaC(800, 0, 1, Mounting.BONDED);
        assertThat(bondedK).isCloseTo(0.0563 * 800, within(0.1 * bondedK));
    }
}
