package ampdays.commission.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import ampdays.scenario.ScenarioException;
import ampdays.scenario.Variant;
import ampdays.sim.Van;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Vans are drawn evenly within the classes of their marks, as the section {@code tolerances} says (definition). */
class TolerancesTest {
    private static final Van VAN = new Van()
            .with("battery.capacity", "400 Ah (measured)")
            .with("battery.absorption", "14.2 V (datasheet)")
            .with("engine.idle", "750 rpm (practice)")
            .with("second-alternator.preset", "large frame")
            .with("second-alternator.cut-back-from", "100 °C (practice)")
            .with("second-alternator.cut-back-to", "140 °C (practice)")
            .with("factory-alternator.preset", "factory 180 A class")
            .with("factory-alternator.charger", "40 A (guess)")
            .with("factory-alternator.charger-efficiency", "95 % (guess)");

    private static List<Variant> vans(Van van, int count) throws ScenarioException {
        Tolerances tolerances = new Tolerances(van.values());
        SplittableRandom random = new SplittableRandom(7);
        List<Variant> vans = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            vans.add(tolerances.draw("drawn", 0.6, () -> random.nextDouble(-1, 1)));
        }
        return vans;
    }

    /** Least and most of 2,000 even draws miss the ends by more than 0.5 % of the width once in e^10. */
    @Test
    void theClassesAreFilledToTheirEndsAndNotBeyond() throws ScenarioException {
        List<Variant> vans = vans(VAN, 2000);
        ends(vans, v -> v.design().bank().capacityAh(), 400 * 0.97, 400 * 1.03);
        ends(vans, v -> v.design().bank().absorptionV(), 14.2 * (1 - 0.1 / 15), 14.2 * (1 + 0.1 / 15));
        ends(vans, v -> v.design().engine().idleRpm(), 750 * 0.95, 750 * 1.05);
        ends(vans, v -> v.design().second().orElseThrow().cutBackFromC(), 95.5, 104.5);
        ends(vans, v -> v.design().factory().orElseThrow().charger().ratedA(), 28, 52);
        ends(vans, v -> v.design().factory().orElseThrow().charger().efficiency(), 0.935, 0.965);
    }

    private static void ends(List<Variant> vans, ToDoubleFunction<Variant> value, double low, double high) {
        double least = vans.stream().mapToDouble(value).min().orElseThrow();
        double most = vans.stream().mapToDouble(value).max().orElseThrow();
        double close = 0.01 * (high - low);
        assertThat(least).isBetween(low - 1e-9, low + close);
        assertThat(most).isBetween(high - close, high + 1e-9);
        assertThat(vans.stream().mapToDouble(value).average().orElseThrow())
                .isCloseTo((low + high) / 2, within(0.03 * (high - low)));
    }

    /** Where a curve is given by points, its currents vary together by the class of its mark. */
    @Test
    void curvesByPointsVaryToo() throws ScenarioException {
        Van van = new Van()
                .with("second-alternator.preset", "large frame")
                .with("second-alternator.curve-points", "1800 rpm 100 A, 3000 rpm 200 A, 6000 rpm 260 A (datasheet)");
        ends(vans(van, 2000), v -> v.design().second().orElseThrow().curve().currentA(3000, 25), 180, 220);
    }

    /** What somebody sets does not vary. */
    @Test
    void settingsStay() throws ScenarioException {
        assertThat(vans(VAN, 5))
                .allSatisfy(v -> assertThat(v.design().bank().startShare()).isEqualTo(0.6));
    }

    @Test
    void tolerancesThatNoVanFitsAreSaid() {
        Tolerances tolerances = new Tolerances(VAN.values());
        assertThatThrownBy(() -> tolerances.draw("impossible", 0.6, () -> 100))
                .isInstanceOf(ScenarioException.class)
                .hasMessage("hardly any van within its tolerances can be built. Make the section tolerances narrower.");
    }
}
