package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.io.ScenarioReader;
import ampdays.io.WeatherReader;
import ampdays.results.Metric;
import ampdays.results.RunResult;
import ampdays.results.Sizing;
import ampdays.results.Sizing.Tried;
import ampdays.scenario.Grid;
import ampdays.scenario.KnobText;
import ampdays.scenario.ScenarioFile;
import ampdays.sim.RunPlan;
import ampdays.sim.SkyCompletion;
import ampdays.weather.WeatherSeries;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The search against running every value of the range, which needs no outside source. */
class SizeTest {
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

    private static Sizing find(String knob, boolean smallest, String goal) {
        return Size.find(
                demo,
                "as it is",
                KnobText.readRange(knob, demo),
                "range",
                smallest,
                Goal.read(goal, Metric.all(List.of())),
                planner);
    }

    private static List<Integer> reaching(String knob, String goal) {
        Grid grid = Size.grid("as it is", KnobText.readRange(knob, demo));
        Benches.Bench bench = Benches.bench(planner);
        List<Goal> goals = Goal.read(goal, Metric.all(List.of()));
        return IntStream.range(0, (int) grid.rows())
                .filter(row -> {
                    RunResult run = Sweep.cell(demo, grid, row, bench).result().orElseThrow();
                    return goals.stream().allMatch(g -> g.isReached(run));
                })
                .boxed()
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "battery.capacity=300..1200 Ah step 20 Ah, true, daysToEmpty >= 7",
        "battery.capacity=300..1200 Ah step 20 Ah, true, comfortableNights >= 8 and daysToEmpty >= 6.5",
        "cabin.air-changes=0..20 1/h step 0.5 1/h, false, daysToEmpty >= 5.8",
        "solar.power=300..1200 W step 20 W, true, lowestSoc >= 11 %",
    })
    void theSearchFindsWhatRunningAllFinds(String knob, boolean smallest, String goal) {
        List<Integer> reaching = reaching(knob, goal);
        Sizing sizing = find(knob, smallest, goal);
        assertThat(sizing.bestTried().place()).isEqualTo(reaching.get(smallest ? 0 : reaching.size() - 1));
        assertThat(sizing.tried()).hasSizeLessThan(26);
    }

    /** Two bounds that only banks of middle size lie between: larger ones do not. */
    @Test
    void whatSpeaksAgainstTheAnswerIsTold() {
        Sizing sizing =
                find("battery.capacity=300..1200 Ah step 20 Ah", true, "daysToEmpty >= 5.95 and daysToEmpty <= 6.2");
        assertThat(sizing.answer()).isPresent();
        assertThat(sizing.notEnough().map(Tried::reached)).contains(false);
        assertThat(sizing.against()).contains("1200 Ah").doesNotContain("300 Ah");
        assertThat(SizeText.of(sizing).get(3))
                .startsWith(
                        "Beware: more is not always better here. Of the values that were run, these do not meet it: ");
    }

    @Test
    void atTheEndOfTheRangeTheAnswerSaysSo() {
        Sizing sizing = find("battery.capacity=800..1200 Ah step 100 Ah", true, "daysToEmpty >= 5");
        assertThat(sizing.bestTried().value()).isEqualTo("800 Ah");
        assertThat(sizing.notEnough()).isEmpty();
        assertThat(SizeText.of(sizing).get(2))
                .isEqualTo("That is the low end of the range, so the answer may lie beyond. Search a wider range.");
    }

    /** By common sense, and against running all: out of reach, the one that lasts longest is named, wherever it lies. */
    @ParameterizedTest
    @CsvSource({
        "battery.capacity=100..500 Ah step 100 Ah, true, holds, 500 Ah",
        "weather-offset=0..15 K step 5 K, false, holds, 0 K",
        "battery.capacity=100..500 Ah step 100 Ah, true, holds and daysToEmpty >= 1, 500 Ah",
        "weather-offset=0..15 K step 5 K, false, lowestSoc >= 1 % and holds, 0 K",
    })
    void outOfReachTheNearestIsTold(String knob, boolean smallest, String goal, String best) {
        Sizing sizing = find(knob, smallest, goal);
        assertThat(sizing.answer()).isEmpty();
        assertThat(sizing.bestTried().value()).isEqualTo(best);
        double longest = sizing.tried().stream()
                .mapToDouble(tried -> tried.result().orElseThrow().daysToEmpty())
                .max()
                .orElseThrow();
        assertThat(sizing.bestTried().result().orElseThrow().daysToEmpty()).isEqualTo(longest);
    }

    /** By common sense: no less can be driven than nothing, and no more days parked in a row than the trip has. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "trip.drive-hours=0..1 h/day step 1 h/day | true | No driving is needed, but for drives past midnight where there are any.",
                "trip.drive-hours=0.5..1 h/day step 0.5 h/day | true | That is the low end of the range",
                "trip.parked-days=12..13 step 1 | false | No more can be parked in a row on a trip of 14 days",
                "trip.parked-days=11..12 step 1 | false | That is the high end of the range"
            })
    void whereNoMoreCanBeNoWiderRangeIsAskedFor(String knob, boolean smallest, String words) {
        assertThat(SizeText.of(find(knob, smallest, "daysToEmpty >= 1")).get(2)).startsWith(words);
    }

    /** Against a run without driving, asked for in another way. */
    @Test
    void parkedForGoodIsARunWithoutDriving() {
        RunResult still = find("trip.drive-hours=0..1 h/day step 1 h/day", true, "daysToEmpty >= 1")
                .tried()
                .get(0)
                .result()
                .orElseThrow();
        Sizing parked = find("trip.parked-days=0..2 step 1", false, "daysToEmpty >= tripDays");
        assertThat(parked.parkedForGood().orElseThrow().daysToEmpty())
                .isEqualTo(still.daysToEmpty())
                .isLessThan(14);
        assertThat(SizeText.of(parked))
                .last(InstanceOfAssertFactories.STRING)
                .contains(". Parked at once and for good, the van is empty after "
                        + Verdict.twoDigits(still.daysToEmpty()) + " days, with ");
    }

    /** Identity: 5 K more in the whole weather are 5 K more by day and by night. */
    @Test
    void anOffsetIsToldAsHeat() {
        double[] asItIs = heat(find("weather-offset=0..5 K step 5 K", false, "daysToEmpty >= 20"), 2);
        double[] warmer = heat(find("weather-offset=0..5 K step 5 K", false, "daysToEmpty >= 0.01"), 2);
        assertThat(warmer).containsExactly(asItIs[0] + 5, asItIs[1] + 5);
        assertThat(asItIs[0]).isGreaterThan(asItIs[1]);
    }

    private static double[] heat(Sizing sizing, int sentence) {
        Matcher matcher = Pattern.compile(
                        "hottest afternoon of the trip reaches (\\d+) °C, and in its warmest night .* below (\\d+) °C")
                .matcher(SizeText.of(sizing).get(sentence));
        assertThat(matcher.find()).isTrue();
        return new double[] {Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2))};
    }
}
