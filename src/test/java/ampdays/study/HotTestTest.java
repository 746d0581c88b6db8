package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.ScenarioReader;
import ampdays.results.Limit;
import ampdays.scenario.Variant;
import ampdays.sim.AlternatorBench;
import ampdays.sim.AlternatorBench.Pace;
import ampdays.sim.AlternatorBench.Reading;
import ampdays.study.HotTest.Line;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The tag of spare amps of the demo's second alternator and of its factory unit. */
class HotTestTest {
    private static Variant variant(String option) throws Exception {
        return ScenarioReader.read(Path.of("scenarios/desert-survey.yaml"))
                .scenario()
                .variant(option)
                .orElseThrow();
    }

    /**
     * Source: the ambulance specification warns that the cold rating "may be substantially higher" than what is left at 93
     * °C (200 °F) under the bonnet. Steps 6 and 7 of commissioning (common practice, no source): hot, at fast idle, 25 to
     * 45 % of nameplate, case below 105 to 110 °C depending on where the sensor sits; at 93 °C, which is hotter than any
     * van's bay that practice speaks of, the case may stand a few kelvin above.
     */
    @Test
    void hotIsLessThanColdAndNeverMoreThanTheNameplate() throws Exception {
        for (HotTest.Unit unit :
                HotTest.of(variant("second alternator")).orElseThrow().units()) {
            for (Line line : unit.lines()) {
                assertThat(line.hot().currentA()).isBetween(0.0, line.cold().currentA());
                assertThat(line.cold().currentA()).isBetween(0.0, unit.ratedA() + 1e-9);
                assertThat(line.hot().caseC()).isBetween(93.0, 120.0);
            }
        }
    }

    /** A faster engine never gives less, hot or cold; held back by heat is what the hot column is about. */
    @Test
    void fasterGivesMore() throws Exception {
        HotTest.Unit second =
                HotTest.of(variant("second alternator")).orElseThrow().units().get(0);
        for (int i = 1; i < second.lines().size(); i++) {
            assertThat(second.lines().get(i).hot().currentA())
                    .isGreaterThan(second.lines().get(i - 1).hot().currentA());
            assertThat(second.lines().get(i).cold().currentA())
                    .isGreaterThanOrEqualTo(second.lines().get(i - 1).cold().currentA());
        }
        assertThat(second.lines().get(0).hot().limit()).isEqualTo(Limit.ALTERNATOR_HEAT);
    }

    /** Two hours give what 30 min give within 3 A (30 min is steady). */
    @Test
    void halfAnHourIsSteady() throws Exception {
        AlternatorBench bench = AlternatorBench.of(variant("second alternator"));
        Reading tag = bench.second(Pace.FAST_IDLE, 93, 1800);
        Reading longer = bench.second(Pace.FAST_IDLE, 93, 7200);
        assertThat(tag.currentA()).isCloseTo(longer.currentA(), within(3.0));
    }

    @Test
    void theBaseDesignHasItsFactoryUnitAndChargerOnly() throws Exception {
        HotTest test = HotTest.of(variant("as it is")).orElseThrow();
        assertThat(test.units()).extracting(HotTest.Unit::name).hasSize(2).noneMatch(name -> name.contains("second"));
    }
}
