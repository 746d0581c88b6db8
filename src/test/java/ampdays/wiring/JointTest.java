package ampdays.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import ampdays.ReferenceTable.Row;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class JointTest {
    static List<Row> ohmicBodyHeating() {
        return ReferenceTable.rows("ohmic_body_heating");
    }

    /** Source: table ohmic_body_heating, its closed form of the steady state; ten printed digits. */
    @ParameterizedTest
    @MethodSource("ohmicBodyHeating")
    void steadyTemperature(Row row) {
        double steady = Joint.steadyC(
                row.number("current_A"),
                row.number("r20_ohm"),
                row.number("rth_K_per_W"),
                row.number("t_ambient_C"),
                row.number("other_loss_W"));
        assertThat(steady)
                .isCloseTo(row.number("t_steady_C"), within(1e-8 * Math.abs(row.number("t_steady_C")) + 1e-7));
    }

    /** Trade case: 1 mΩ at 150 A is 22 W and 150 mV, 2 mΩ 45 W; 200 A in 1 mΩ 40 W (Ohm and Joule, printed digits). */
    @Test
    void milliohms() {
        assertThat(Joint.heatW(0.001, 150)).isCloseTo(22.5, within(1e-9));
        assertThat(Joint.heatW(0.002, 150)).isCloseTo(45, within(1e-9));
        assertThat(Joint.heatW(0.001, 200)).isCloseTo(40, within(1e-9));
        assertThat(Joint.ohm(0.150, 150)).isCloseTo(0.001, within(1e-15));
    }

    /** 200 A in 1 mΩ are enough to melt the boot of a lug (a maker's page); soft PVC gives way near 80 °C (from memory). */
    @Test
    void aBadJointMeltsItsBoot() {
        double cableC = Ampacity.conductorC(67.43, 105, 2, 30, 200);
        assertThat(Joint.steadyC(200, 0.001, Joint.kelvinPerWatt(67.43), cableC, 0))
                .isGreaterThan(80);
        assertThat(Joint.steadyC(200, 0.00002, Joint.kelvinPerWatt(67.43), cableC, 0) - cableC)
                .isLessThan(10);
    }

    /** A joint whose resistance grows faster with heat than the heat is carried off has no steady state. */
    @Test
    void runsAway() {
        assertThat(Joint.steadyC(500, 0.002, Joint.kelvinPerWatt(5), 40, 0)).isInfinite();
    }

    /** Thin cables carry less heat away (fin: the conductance grows with the 3/4 power of the area when thin-walled). */
    @Test
    void thinCablesCoolBadly() {
        double ratio = Joint.kelvinPerWatt(8.37) / Joint.kelvinPerWatt(67.43);
        assertThat(ratio).isBetween(Math.sqrt(67.43 / 8.37), Math.pow(67.43 / 8.37, 0.75));
    }
}
