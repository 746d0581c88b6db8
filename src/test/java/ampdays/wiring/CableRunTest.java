package ampdays.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import ampdays.ReferenceTable.Row;
import ampdays.units.QuantityException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CableRunTest {
    static List<Row> cableVoltageDrop() {
        return ReferenceTable.rows("cable_voltage_drop");
    }

    /** Source: table cable_voltage_drop; ten printed digits. */
    @ParameterizedTest
    @MethodSource("cableVoltageDrop")
    void dropOfTheTable(Row row) throws QuantityException {
        double perKm = Conductor.parse(row.text("area_mm2") + " mm²").ohmPerKm(row.number("conductor_temp_C"));
        double jointOhm = row.number("joint_micro_ohm") * 1e-6;
        double jointsOhm = row.number("joints") * jointOhm;
        double loop = CableRun.loopOhm(row.number("one_way_length_m"), perKm, jointsOhm);
        double current = row.number("current_A");
        double drop = CableRun.dropV(loop, current);
        assertThat(loop).isCloseTo(row.number("loop_ohm"), within(1e-9 * row.number("loop_ohm") + 1e-12));
        assertThat(drop).isCloseTo(row.number("drop_V"), within(1e-8));
        assertThat(100 * CableRun.dropShare(drop, row.number("system_V")))
                .isCloseTo(row.number("drop_percent"), within(1e-8));
        assertThat(Joint.heatW(jointOhm, current)).isCloseTo(row.number("heat_per_joint_W"), within(1e-8));
    }

    /**
     * Trade cases of a 6 m run, to the digit: 60 A on 6 AWG 0.94 V (7 %), on 2 AWG 0.37 V; 200 A on 2/0 0.61 V (4.6 %),
     * on 4/0 0.39 V. They are reckoned at 20 °C from resistances of solid copper (17.241 Ω mm²/km over the gauge
     * law's area) rounded to three digits, at 13.3 V; unrounded, 6 AWG would give 0.933 V. Common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({"6, 60, 0.94", "2, 60, 0.37", "-1, 200, 0.61", "-3, 200, 0.39"})
    void tradeCases(int gauge, double current, double dropV) {
        double perKm = new BigDecimal(17.241 / Conductor.gaugeAreaMm2(gauge))
                .round(new MathContext(3))
                .doubleValue();
        double drop = CableRun.dropV(CableRun.loopOhm(6, perKm, 0), current);
        assertThat(drop).isCloseTo(dropV, within(0.005));
        if (gauge == -1) {
            assertThat(100 * CableRun.dropShare(drop, 13.3)).isCloseTo(4.6, within(0.05));
        }
        if (gauge == 6) {
            assertThat(100 * CableRun.dropShare(drop, 13.3)).isCloseTo(7, within(0.5));
        }
    }

    /** Worked example of common practice: 35 mm², 3 m one way, 150 A: 0.4986 V, 3.90 % of 12.8 V; 0.577 V at 60 °C. */
    @Test
    void workedExample() throws QuantityException {
        Conductor cable = Conductor.parse("35 mm²");
        double loop = CableRun.loopOhm(3, cable.ohmPerKm(20), 0);
        assertThat(loop).isCloseTo(0.003324, within(5e-7));
        assertThat(CableRun.dropV(loop, 150)).isCloseTo(0.4986, within(5e-5));
        assertThat(CableRun.dropShare(0.4986, 12.8)).isCloseTo(0.0390, within(5e-5));
        assertThat(CableRun.dropV(CableRun.loopOhm(3, cable.ohmPerKm(60), 0), 150))
                .isCloseTo(0.577, within(5e-4));
    }

    /** Twice the length drops twice as much, twice the area half, twice the system voltage a quarter in per cent at one power. */
    @Test
    void proportions() {
        double one = CableRun.dropV(CableRun.loopOhm(2, 1, 0), 100);
        assertThat(CableRun.dropV(CableRun.loopOhm(4, 1, 0), 100)).isEqualTo(2 * one);
        assertThat(CableRun.dropV(CableRun.loopOhm(2, 0.5, 0), 100)).isEqualTo(one / 2);
        double power = 1280;
        double at12 = CableRun.dropShare(CableRun.dropV(CableRun.loopOhm(2, 1, 0), power / 12.8), 12.8);
        double at24 = CableRun.dropShare(CableRun.dropV(CableRun.loopOhm(2, 1, 0), power / 25.6), 25.6);
        assertThat(at24).isCloseTo(at12 / 4, within(1e-15));
    }
}
