package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.ScenarioReader;
import ampdays.io.WeatherReader;
import ampdays.results.RunResult;
import ampdays.scenario.PricedPart;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Values;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.sim.SkyCompletion;
import ampdays.study.UpgradePath.Stage;
import ampdays.weather.WeatherSeries;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The order against single runs of the same designs (identity of the program with itself); no outside source. */
class UpgradePathTest {
    private static final Map<PricedPart, Double> PRICES = Map.of(
            PricedPart.BATTERY, 650.0,
            PricedPart.SOLAR, 320.0,
            PricedPart.SECOND_ALTERNATOR, 19.0,
            PricedPart.INSULATION, 1500.0,
            PricedPart.COVERS, 400.0);

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

    private static RunResult run(Values values) throws Exception {
        return Simulator.run(planner.under(Sky.AS_IT_IS).apply(VariantBuilder.build("test", values)));
    }

    private static List<Stage> path(ScenarioFile file, Map<String, Double> wholePrices) throws Exception {
        return UpgradePath.of(file, run(file.base()), wholePrices, planner);
    }

    private static Values option(String name) {
        return demo.values(name).orElseThrow();
    }

    /** Days and nights of the runs of single options alone, as compare has them. */
    private static double good(String option) throws Exception {
        RunResult run = run(option(option));
        return run.comfortableNights() + (run.holds() ? run.tripDays() + 1 : run.daysToEmpty());
    }

    @Test
    void withoutPricesTheLargestGainComesFirst() throws Exception {
        List<Stage> path = path(demo, Map.of());
        for (String other : List.of("more solar", "bigger bank", "less heat")) {
            assertThat(good("second alternator")).isGreaterThan(good(other));
        }
        assertThat(path).extracting(Stage::name).containsExactly("second alternator");
        assertThat(path.get(0).result().holds()).isTrue();
        assertThat(path.get(0).price()).isEmpty();
        // 270 A at 0.09 kg, the mass in force
        assertThat(path.get(0).addedKg()).isEqualTo(24.3, within(1e-9));
    }

    /** 300 W at 320 for 100 W gain most for their money; then each stage stands on those before it. */
    @Test
    void withPricesTheGainForItsPriceDecides() throws Exception {
        List<Stage> path = path(demo.priced(PRICES, "EUR", "test"), Map.of());
        assertThat(path).extracting(Stage::name).containsExactly("more solar", "less heat");
        assertThat(path.get(0).price()).hasValue(960);
        assertThat(path.get(1).price()).hasValue(1900);
        RunResult both = run(option("less heat").with("solar.power", "700 W"));
        assertThat(path.get(1).result().lowestSoc()).isEqualTo(both.lowestSoc());
        assertThat(both.holds()).isTrue();
    }

    private static ScenarioFile withAWarmerSetPoint(ScenarioFile file) {
        List<ScenarioFile.Option> options = new ArrayList<>(file.options());
        options.add(new ScenarioFile.Option(
                "warmer set point",
                file.base().with("cabin.set.asleep", "27.5 °C").with("cabin.set.awake", "29 °C")));
        return new ScenarioFile(file.scenario(), file.base(), options, file.sweeps(), file.failures());
    }

    /** It is taken first, and hides the prices of no other. */
    @Test
    void aSetPointCostsNothing() throws Exception {
        List<Stage> path = path(withAWarmerSetPoint(demo.priced(PRICES, "EUR", "test")), Map.of());
        assertThat(path.get(0).name()).isEqualTo("warmer set point");
        assertThat(path.get(0).price()).hasValue(0);
        assertThat(path).extracting(Stage::name).contains("more solar").doesNotContain("second alternator");
        assertThat(path.get(path.size() - 1).result().holds()).isTrue();
        List<Stage> unpriced = path(withAWarmerSetPoint(demo), Map.of());
        assertThat(unpriced).extracting(Stage::name).startsWith("warmer set point");
        assertThat(unpriced.get(1).price()).isEmpty();
    }

    @Test
    void aPriceForTheWholeOptionGoesFirst() throws Exception {
        List<Stage> path = path(demo.priced(PRICES, "EUR", "test"), Map.of("more solar", 50_000.0));
        assertThat(path.get(0).name()).isNotEqualTo("more solar");
    }

    @Test
    void aVanThatHoldsHasNoStages() throws Exception {
        ScenarioFile cool = new ScenarioFile(
                demo.scenario(),
                demo.base().with("weather-offset", "-7 K"),
                demo.options(),
                demo.sweeps(),
                demo.failures());
        assertThat(path(cool, Map.of())).isEmpty();
    }
}
