package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.chart.ChartModel;
import ampdays.chart.DriveChart;
import ampdays.chart.EnergyBalance;
import ampdays.chart.EnergyBalance.Part;
import ampdays.chart.EnergyBalance.Step;
import ampdays.chart.EnergyDays;
import ampdays.chart.OperatingPoints;
import ampdays.results.Energy;
import ampdays.sim.RunPlan;
import ampdays.study.Compare;
import ampdays.study.Comparison;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which charts the demonstration gets, and that they say what its ledger and its timetable say. */
class ResultChartsTest {
    private static Made demo;
    private static Comparison comparison;
    private static SortedMap<String, ChartModel> charts;

    private record Made(Comparison comparison, ResultCharts charts) {}

    @TempDir
    private Path folder;

    @BeforeAll
    static void compareTheDemo() throws Exception {
        demo = compare(Path.of("scenarios/desert-survey.yaml"));
        comparison = demo.comparison;
        charts = demo.charts.byName();
    }

    private static Made compare(Path scenario) throws Exception {
        Loaded loaded = Loaded.read(scenario);
        List<RunPlan> plans = loaded.plans(Outputs.STEP_SECONDS);
        Comparison compared = Compare.of(loaded.scenario(), plans);
        return new Made(compared, ResultCharts.of(compared, plans));
    }

    /** The best option is the one that the verdict names; only the second alternator changes the alternators. */
    @Test
    void onlyChartsThatTellSomethingNewAreMade() {
        assertThat(charts.keySet())
                .contains("state-of-charge", "days-to-empty")
                .filteredOn(name -> name.startsWith("cabin"))
                .containsExactly("cabin-as-it-is", "cabin-second-alternator");
        assertThat(charts.keySet())
                .filteredOn(name -> name.startsWith("alternator"))
                .containsExactly(
                        "alternator-day-as-it-is",
                        "alternator-day-second-alternator",
                        "alternator-points-as-it-is",
                        "alternator-points-second-alternator");
        assertThat(charts.keySet())
                .filteredOn(name -> name.startsWith("energy-"))
                .containsExactly(
                        "energy-balance-as-it-is",
                        "energy-balance-second-alternator",
                        "energy-days-as-it-is",
                        "energy-days-second-alternator");
        assertThat(demo.charts.kinds())
                .containsExactly(
                        "state-of-charge",
                        "days-to-empty",
                        "day-…",
                        "energy-balance-…",
                        "energy-days-…",
                        "cabin-…",
                        "alternator-day-…",
                        "alternator-points-…");
    }

    /** Sources = uses + losses + change of store (docs/OUTPUT.md): the stair ends at nothing but for rounding. */
    @Test
    void theStairClosesWithTheLedger() {
        for (Comparison.Option option : comparison.options()) {
            Energy energy = option.result().energy();
            List<Step> steps = EnergyBalance.of(comparison, option).steps();
            double tolerance = 1e-9 * energy.sourcesWh();
            assertThat(steps.get(steps.size() - 1).toWh()).isCloseTo(0, within(tolerance));
            assertThat(sum(steps, Part.LOSS)).isCloseTo(-energy.lossesWh(), within(tolerance));
            assertThat(sum(steps, Part.SOURCE)).isCloseTo(energy.sourcesWh(), within(tolerance));
            assertThat(steps.stream()
                            .filter(step -> step.label().equals("used"))
                            .mapToDouble(Step::toWh)
                            .sum())
                    .isCloseTo(energy.servedWh(), within(tolerance));
        }
    }

    private static double sum(List<Step> steps, Part part) {
        return steps.stream()
                .filter(step -> step.part() == part)
                .mapToDouble(step -> step.toWh() - step.fromWh())
                .sum();
    }

    @Test
    void usesOfTheDaysAddUpToWhatWasUsedLostAndNotServed() {
        for (Comparison.Option option : comparison.options()) {
            Energy energy = option.result().energy();
            double kwh = EnergyDays.of(comparison, option).bars().stream()
                    .flatMap(bar -> bar.useKwh().stream())
                    .mapToDouble(Double::doubleValue)
                    .sum();
            assertThat(1000 * kwh).isCloseTo(energy.servedWh() + energy.lossesWh() + energy.unservedWh(), within(1.0));
        }
    }

    /** By the timetable: highway 1.5 h on ten field days and 0.75 h on four rest days, town 0.75 h on these. */
    @Test
    void operatingPointsCoverTheDrivingOfTheTimetable() {
        OperatingPoints chart = (OperatingPoints) charts.get("alternator-points-second-alternator");
        for (OperatingPoints.Unit unit : chart.units()) {
            assertThat(unit.speeds()).extracting(OperatingPoints.Speed::words).containsExactly("town", "highway");
            assertThat(hours(unit.speeds().get(0))).isCloseTo(3, within(1e-9));
            assertThat(hours(unit.speeds().get(1))).isCloseTo(18, within(1e-9));
        }
    }

    private static double hours(OperatingPoints.Speed speed) {
        return speed.binHours().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Two drives of 45 min: each minute of them has one ruling limit. */
    @Test
    void everyMinuteOfTheDrivesHasItsLimit() {
        DriveChart chart = (DriveChart) charts.get("alternator-day-as-it-is");
        assertThat(chart.columns()).hasSize(2);
        for (DriveChart.Column column : chart.columns()) {
            double ruled = column.ruled().stream()
                    .flatMap(List::stream)
                    .mapToDouble(span -> span.toHour() - span.fromHour())
                    .sum();
            assertThat(ruled).isCloseTo(0.75, within(1e-9));
            assertThat(column.toHour() - column.fromHour()).isCloseTo(0.75 + 35 / 60.0, within(1e-9));
        }
    }

    @Test
    void aVanWithoutAlternatorsHasNoChartOfThem() throws Exception {
        String text = Files.readString(Path.of("scenarios/desert-survey.yaml"));
        String without = text.replaceAll("(?m)^factory-alternator:.*\\R", "")
                .replaceAll("(?m)^  second alternator:.*\\R", "")
                .replaceAll("(?m)^cooling:.*\\R", "")
                .replace("../weather-profiles/", "");
        Path weather = Path.of("weather-profiles/low-desert-summer.csv");
        Files.copy(weather, folder.resolve(weather.getFileName()));
        SortedMap<String, ChartModel> plain = compare(Files.writeString(folder.resolve("plain.yaml"), without))
                .charts
                .byName();
        assertThat(plain.keySet()).noneMatch(name -> name.startsWith("alternator"));
        assertThat(plain).containsKeys("cabin-as-it-is", "energy-balance-as-it-is", "energy-days-as-it-is");
    }
}
