package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.io.ScenarioReader;
import ampdays.io.WeatherReader;
import ampdays.results.Limit;
import ampdays.results.RunResult;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.sim.SkyCompletion;
import ampdays.weather.WeatherSeries;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Designs whose next limit is known by construction; no outside source. */
class LiftTest {
    private static ScenarioFile demo;
    private static Planner planner;

    @BeforeAll
    static void read() throws Exception {
        demo = ScenarioReader.read(Path.of("scenarios/desert-survey.yaml"));
        WeatherSeries desert =
                SkyCompletion.complete(WeatherReader.read(Path.of("weather-profiles/low-desert-summer.csv")));
        planner = sky -> {
            RunPlan.Maker maker = new RunPlan.Maker(60);
            return variant -> maker.plan(variant, desert);
        };
    }

    private static Lift lift(Values values) throws Exception {
        Variant variant = VariantBuilder.build("test", values);
        RunResult result = Simulator.run(planner.under(Sky.AS_IT_IS).apply(variant));
        return Lift.of(variant, values, result, planner);
    }

    /** A charger of 40 A in front of a bank whose protection takes 60 A: without the charger's rating the bank rules. */
    @Test
    void aSmallChargerBeforeABankThatTakesLittle() throws Exception {
        Lift lift = lift(demo.base().with("battery.charge-limit", "60 A"));
        assertThat(lift.ruling()).contains(Limit.CHARGER_RATING);
        assertThat(lift.next()).contains(Limit.CHARGE_LIMIT);
        assertThat(lift.then().daysToEmpty()).isGreaterThan(lift.asItIs().daysToEmpty());
        assertThat(lift.words())
                .matches(
                        "\"test\": charger rating rules \\d+ h \\(a charger of 40 A\\)\\. Without it battery charge limit"
                                + " would, \\d+ h \\(a bank that takes 60 A\\); the van is empty after \\S+ days \\(now it is empty"
                                + " after \\S+ days\\), .*comfortable nights.*\\.");
    }

    /** Without alternators and hook-up no part of the charging path can rule. */
    @Test
    void whereNoPartRules() throws Exception {
        Lift lift = lift(demo.base().without("factory-alternator"));
        assertThat(lift.ruling()).isEmpty();
        assertThat(lift.words())
                .isEqualTo(
                        "\"test\": no part of the van holds its charging back; only more driving, sun or hook-up would"
                                + " bring more.");
    }
}
