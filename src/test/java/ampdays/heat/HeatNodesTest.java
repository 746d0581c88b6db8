package ampdays.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import ampdays.ReferenceTable.Row;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeatNodesTest {
    static List<Row> cabinTwoNode() {
        return ReferenceTable.rows("cabin_two_node");
    }

    static List<Row> ohmicBodyHeating() {
        return ReferenceTable.rows("ohmic_body_heating");
    }

    /** Source: table cabin_two_node (matrix exponentials); ten printed digits, temperatures of some tens of degrees. */
    @ParameterizedTest
    @MethodSource("cabinTwoNode")
    void twoNodesFollowTheMatrixExponential(Row row) {
        double ua = row.number("ua_W_per_K");
        double solar = row.number("q_solar_W");
        double share = row.number("solar_to_air_fraction");
        TwoNodeStep nodes = new TwoNodeStep(
                row.number("c_air_J_per_K"),
                row.number("c_mass_J_per_K"),
                ua,
                0,
                row.number("g_air_mass_W_per_K"),
                row.number("time_s"));
        double q1 = ua * row.number("t_out_C") + share * solar + row.number("q_internal_W") - row.number("q_cooling_W");
        double q2 = (1 - share) * solar;
        double rest1 = nodes.rest1C(q1, q2);
        double rest2 = nodes.rest2C(q1, q2);
        double d1 = row.number("t_air0_C") - rest1;
        double d2 = row.number("t_mass0_C") - rest2;

        assertThat(rest1).isCloseTo(row.number("t_air_steady_C"), within(1e-7));
        assertThat(rest2).isCloseTo(row.number("t_mass_steady_C"), within(1e-7));
        assertThat(rest1 + nodes.after1K(d1, d2)).isCloseTo(row.number("t_air_C"), within(1e-7));
        assertThat(rest2 + nodes.after2K(d1, d2)).isCloseTo(row.number("t_mass_C"), within(1e-7));
        assertThat(nodes.after1K(d1, d2, nodes.stepS())).isCloseTo(nodes.after1K(d1, d2), within(1e-9));
        assertThat(nodes.after2K(d1, d2, nodes.stepS())).isCloseTo(nodes.after2K(d1, d2), within(1e-9));
    }

    /** The gain of the first node by one watt, against the difference of two steps (identity). */
    @Test
    void gainPerWattIsTheDifferenceOfTwoSteps() {
        TwoNodeStep nodes = new TwoNodeStep(60_000, 600_000, 50, 2, 150, 60);
        double without = endOfStep1C(nodes, 30, 28, 900, 100);
        double with = endOfStep1C(nodes, 30, 28, 901, 100);
        assertThat(nodes.first1KPerW()).isCloseTo(with - without, within(1e-9));
    }

    private static double endOfStep1C(TwoNodeStep nodes, double from1, double from2, double q1, double q2) {
        double rest1 = nodes.rest1C(q1, q2);
        double rest2 = nodes.rest2C(q1, q2);
        return rest1 + nodes.after1K(from1 - rest1, from2 - rest2);
    }

    /**
     * Source: table ohmic_body_heating (closed form and integration). The copper's own temperature coefficient joins the
     * conductance: k = 1/Rth - I² R20 α.
     */
    @ParameterizedTest
    @MethodSource("ohmicBodyHeating")
    void oneNodeFollowsTheClosedForm(Row row) {
        double perK = row.number("current_A") * row.number("current_A") * row.number("r20_ohm") * 0.00393;
        double conductance = 1 / row.number("rth_K_per_W") - perK;
        OneNodeStep node = new OneNodeStep(row.number("c_J_per_K"), conductance, row.number("time_s"));
        double heat = perK / 0.00393
                - 20 * perK
                + row.number("other_loss_W")
                + row.number("t_ambient_C") / row.number("rth_K_per_W");
        assertThat(node.nextC(row.number("t_start_C"), 0, heat)).isCloseTo(row.number("t_end_C"), within(1e-4));
    }

    /** A thermostat in one long step against the same thermostat in steps of a hundredth of a second (identity). */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void switchesWhereTheExactCurveCrosses(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        double q1 = 50 * (30 + 10 * random.nextDouble()) + 400 * random.nextDouble();
        double q2 = 500 * random.nextDouble();
        double cooling = 2500 + 1000 * random.nextDouble();
        TwoNodeStep minute = new TwoNodeStep(60_000, 600_000, 50, 0, 150, 60);
        TwoNodeStep fine = new TwoNodeStep(60_000, 600_000, 50, 0, 150, 0.01);
        OnOffCooling coarse = new OnOffCooling(120, 90, 15);
        OnOffCooling exact = new OnOffCooling(120, 90, 15);
        double air = 24;
        double mass = 24;
        double fineAir = air;
        double fineMass = mass;
        double coarseRun = 0;
        double fineRun = 0;
        for (int i = 0; i < 60; i++) {
            coarse.step(minute, air, mass, q1, q2, cooling, 23.5, 24.5);
            air = coarse.node1C();
            mass = coarse.node2C();
            coarseRun += coarse.runS();
            for (int j = 0; j < 6000; j++) {
                exact.step(fine, fineAir, fineMass, q1, q2, cooling, 23.5, 24.5);
                fineAir = exact.node1C();
                fineMass = exact.node2C();
                fineRun += exact.runS();
            }
        }
        assertThat(coarseRun).isPositive().isCloseTo(fineRun, within(0.05));
        assertThat(air).isCloseTo(fineAir, within(1e-3));
    }

    @Test
    void aStoppedThermostatRestsBeforeItRunsAgain() {
        TwoNodeStep minute = new TwoNodeStep(60_000, 600_000, 50, 0, 150, 60);
        OnOffCooling cooling = new OnOffCooling(60, 180, 0);
        cooling.step(minute, 30, 30, 1500, 0, 2000, 23, 24);
        assertThat(cooling.runS()).isEqualTo(60);
        cooling.rest(60);
        cooling.step(minute, 30, 30, 1500, 0, 2000, 23, 24);
        assertThat(cooling.runS()).isZero();
        cooling.rest(60);
        cooling.step(minute, 30, 30, 1500, 0, 2000, 23, 24);
        assertThat(cooling.runS()).isEqualTo(60);
    }
}
