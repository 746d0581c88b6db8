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
        planner = planner("low-desert-summer.csv");
    }

    private static Planner planner(String profile) throws Exception {
        WeatherSeries weather = SkyCompletion.complete(WeatherReader.read(Path.of("weather-profiles", profile)));
        return sky -> {
            RunPlan.Maker maker = new RunPlan.Maker(60);
            return variant -> maker.plan(variant, weather);
        };
    }

    private static Lift lift(Values values) throws Exception {
        return lift(values, planner);
    }

    private static Lift lift(Values values, Planner planner) throws Exception {
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
                        "\"test\": of the limits that a part can lift, charger rating rules longest, \\d+ h \\(a charger of 40"
                                + " A\\)\\. Without it battery charge limit"
                                + " would, \\d+ h \\(a bank that takes 60 A\\); the van is empty after \\S+ days \\(now it is empty"
                                + " after \\S+ days\\), .*comfortable nights.*\\.");
    }

    /** A van on a hook-up with a shore charger of 8 A and a DC-DC charger beside it: the shore charger is what is lifted. */
    @Test
    void theShoreChargerIsNotTheDcDcCharger() throws Exception {
        Values values = ScenarioReader.read(Path.of("scenarios/coast-weekends.yaml"))
                .base()
                .with("shore-charger.rated", "8 A");
        Lift lift = lift(values, planner("humid-coast-late-summer.csv"));
        assertThat(lift.ruling()).contains(Limit.SHORE_CHARGER);
        assertThat(lift.words())
                .contains("of the limits that a part can lift, shore charger rules longest, ")
                .contains(" h (a shore charger of 8 A). Without it ");
        assertThat(Factor.lifted(Limit.SHORE_CHARGER, values).word("factory-alternator.charger"))
                .isEqualTo(values.word("factory-alternator.charger"));
    }

    /** A bank that fills in an hour and is empty by night: what helps is more bank. */
    @Test
    void aFullBankIsLiftedByMoreBank() throws Exception {
        Values values = demo.base().with("battery.capacity", "20 Ah").with("solar.power", "1 kW");
        Lift lift = lift(values);
        assertThat(lift.ruling()).contains(Limit.FULL);
        assertThat(lift.then().daysToEmpty()).isGreaterThan(lift.asItIs().daysToEmpty());
        assertThat(lift.words())
                .contains(" battery full rules longest, ")
                .contains(" (a bank of 20 Ah). With twice the bank ");
    }

    /** Without alternators, panels and hook-up no part of the charging path can rule. */
    @Test
    void whereNoPartRules() throws Exception {
        Lift lift = lift(demo.base().without("factory-alternator").without("solar"));
        assertThat(lift.ruling()).isEmpty();
        assertThat(lift.words())
                .isEqualTo(
                        "\"test\": no part of the van holds its charging back; only more driving, sun or hook-up would"
                                + " bring more.");
    }
}
