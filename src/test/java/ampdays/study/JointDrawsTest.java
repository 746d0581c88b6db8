package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.RunResult;
import ampdays.scenario.Inputs;
import ampdays.scenario.Uncertain;
import ampdays.scenario.Variant;
import ampdays.sim.RunPlan;
import ampdays.sim.Van;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Inputs drawn together, where the answer has a closed form. */
class JointDrawsTest {
    private static final TripWeather STEADY = new TripWeather() {
        @Override
        public List<List<LocalDate>> starts(Variant option) {
            return List.of(List.of(option.trip().start()));
        }

        @Override
        public String startWords(Variant option) {
            return "one day";
        }

        @Override
        public String words(Variant option) {
            return "steady";
        }

        @Override
        public String name(Variant option, int trip) {
            return "steady";
        }

        @Override
        public Function<Variant, RunPlan> of(int trip) {
            RunPlan.Maker maker = new RunPlan.Maker(60);
            return variant -> maker.plan(variant, Van.dark(25));
        }
    };

    /**
     * Closed form: 5 A take 80 % of 400 Ah in 64 h, times the health that is said or drawn, times what wear leaves of it. Rows:
     * all from A, all from B, then from B the weather alone, the wear alone, the health alone.
     */
    @Test
    void bankWearCountsBesideASaidHealth() {
        Van van = new Van()
                .lossless()
                .with("battery.health", "80 %")
                .with("chances.bank-wear", "10 %")
                .load("lamp", "5 A", "always");
        List<Uncertain> inputs = Inputs.of(van.values()).stream()
                .filter(input -> List.of("bank wear", "battery.health").contains(input.name()))
                .toList();
        assertThat(inputs).extracting(Uncertain::name).containsExactly("bank wear", "battery.health");
        JointDraws draws = new JointDraws(van.variant(), van.values(), STEADY, inputs, 2, 4, 1);
        double[][] points = EvenPoints.of(4, 8, 1);
        for (int sample = 0; sample < 4; sample++) {
            double[] at = points[sample];
            List<RunResult> runs = draws.runs(sample);
            assertThat(runs).hasSize(5);
            assertDays(runs.get(0), inputs, at[2], at[3]);
            assertDays(runs.get(1), inputs, at[6], at[7]);
            assertDays(runs.get(2), inputs, at[2], at[3]);
            assertDays(runs.get(3), inputs, at[6], at[3]);
            assertDays(runs.get(4), inputs, at[2], at[7]);
        }
    }

    /** To a step and the rounding of one. */
    private static void assertDays(RunResult run, List<Uncertain> inputs, double wear, double health) {
        double kept = (1 - inputs.get(0).at(wear)) * inputs.get(1).at(health);
        assertThat(run.daysToEmpty()).isCloseTo(0.8 * 400 * kept / 5 / 24, within(1.5 / 1440));
    }
}
