package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.Metric;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Questions of size as a user asks them. Answers are checked by single runs of the program: no outside source. */
class SizeCommandTest extends CommandRun {
    private static final String DEMO = "scenarios/desert-survey.yaml";

    @TempDir
    private Path folder;

    private int size(String... more) {
        List<String> words = new ArrayList<>(
                List.of("size", DEMO, "--out", folder.resolve("results").toString()));
        words.addAll(List.of(more));
        return run(words.toArray(String[]::new));
    }

    private JsonNode answer() throws IOException {
        return new ObjectMapper().readTree(folder.resolve("results/size.json").toFile());
    }

    private JsonNode single(String option, String path, String value) throws IOException {
        out.getBuffer().setLength(0);
        Path into = folder.resolve("single");
        assertThat(run(
                        "run",
                        DEMO,
                        "--option",
                        option,
                        "--set",
                        path + "=" + value,
                        "--json",
                        "--out",
                        into.toString()))
                .as(err.toString())
                .isZero();
        return new ObjectMapper().readTree(out.toString()).get("options").get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "as it is, battery.capacity, 200..1600 Ah step 10 Ah, daysToEmpty >= 7, daysToEmpty, 7",
        "as it is, battery.capacity, 2..20 kWh step 0.25 kWh, comfortableNights >= 9, comfortableNights, 9",
        "second alternator, battery.capacity, 100..800 Ah step 5 Ah, lowestSoc >= 30 %, lowestSoc, 0.3",
        "more solar, solar.power, 0.3..1.2 kW step 0.01 kW, lowestSoc >= 11 %, lowestSoc, 0.11",
    })
    void theAnswerReachesTheGoalAndTheNextSmallerStepDoesNot(
            String option, String path, String range, String goal, String metric, double bound) throws IOException {
        assertThat(size("--option", option, "--knob", path + "=" + range, "--goal", goal))
                .as(err.toString())
                .isZero();
        JsonNode answer = answer();
        JsonNode enough = single(option, path, answer.get("answer").asText()).get(metric);
        assertThat(enough.isNull() ? Double.POSITIVE_INFINITY : enough.asDouble())
                .isGreaterThanOrEqualTo(bound);
        assertThat(single(option, path, answer.get("notEnough").asText())
                        .get(metric)
                        .asDouble())
                .isLessThan(bound);
    }

    @Test
    void theLargestIsFoundFromTheOtherEnd() throws IOException {
        String path = "cabin.air-changes";
        assertThat(size(
                        "--largest",
                        "--knob",
                        path + "=0..20 per hour step 0.1 per hour",
                        "--goal",
                        "daysToEmpty >= 5.8"))
                .as(err.toString())
                .isZero();
        JsonNode answer = answer();
        assertThat(single("as it is", path, answer.get("answer").asText())
                        .get("daysToEmpty")
                        .asDouble())
                .isGreaterThanOrEqualTo(5.8);
        assertThat(single("as it is", path, answer.get("notEnough").asText())
                        .get("daysToEmpty")
                        .asDouble())
                .isLessThan(5.8);
    }

    /** What the ready questions answer for the demo's second alternator; each neighbour is run on its own. */
    @ParameterizedTest
    @CsvSource({
        "least bank, battery.capacity, smallest",
        "least driving, trip.drive-hours, smallest",
        "warmest weather, weather-offset, largest",
        "longest parked, trip.parked-days, largest",
    })
    void readyQuestionsBringTheirKnobAndGoal(String question, String path, String wanted) throws IOException {
        assertThat(size("--question", question, "--option", "second alternator"))
                .as(err.toString())
                .isZero();
        JsonNode answer = answer();
        assertThat(answer.get("knob").asText()).isEqualTo(path);
        assertThat(answer.get("wanted").asText()).isEqualTo(wanted);
        JsonNode enough = single("second alternator", path, answer.get("answer").asText());
        assertThat(enough.get("daysToEmpty").isNull()).isTrue();
        JsonNode next =
                single("second alternator", path, answer.get("notEnough").asText());
        assertThat(next.get("holds").asBoolean()).isFalse();
    }

    @Test
    void aGoalOutOfReachEndsWithCodeThreeTheBestAndWhatRulesThere() throws IOException {
        assertThat(size("--knob", "battery.capacity=200..600 Ah step 50 Ah", "--goal", "daysToEmpty >= 7"))
                .isEqualTo(3);
        assertThat(answer().get("reached").asBoolean()).isFalse();
        assertThat(answer().get("answer").isNull()).isTrue();
        assertThat(answer().get("best").asText()).isEqualTo("600 Ah");
        assertThat(out.toString())
                .contains(
                        "No battery.capacity that was run in 200..600 Ah step 50 Ah meets \"daysToEmpty >= 7\"",
                        "The best was 600 Ah: daysToEmpty is 6.",
                        "what rules its charging: engine off");
        assertThat(out.toString().replaceAll("\\s+", " "))
                .contains(answer().get("betterPart").get("words").textValue());
    }

    @Test
    void screenAndDocumentAgreeAndTheSameQuestionGivesTheSameBytes() throws IOException {
        String[] question = {
            "--knob", "battery.capacity=200..1600 Ah step 10 Ah", "--goal", "daysToEmpty >= 7", "--json"
        };
        assertThat(size(question)).isZero();
        String first = out.toString();
        assertThat(Files.readString(folder.resolve("results/size.json"))).isEqualTo(first);
        byte[] table = Files.readAllBytes(folder.resolve("results/sweep.csv"));
        out.getBuffer().setLength(0);
        assertThat(size(question)).isZero();
        assertThat(out.toString()).isEqualTo(first);
        assertThat(folder.resolve("results/sweep.csv")).hasBinaryContent(table);
    }

    /** What can be asked for is what the files have: every number of summary.json, every column of options.csv. */
    @Test
    void everyNumberOfTheFilesIsAMetric() throws IOException {
        Path into = folder.resolve("single");
        assertThat(run("run", DEMO, "--out", into.toString())).isZero();
        JsonNode summary = new ObjectMapper()
                .readTree(into.resolve("summary.json").toFile())
                .get("options")
                .get(0);
        Set<String> uses = new TreeSet<>();
        summary.get("servedWh").fieldNames().forEachRemaining(uses::add);
        List<Metric> all = Metric.all(uses);
        List<String> names = new ArrayList<>();
        summary.properties().forEach(field -> {
            if (field.getValue().isObject()) {
                field.getValue().properties().forEach(below -> {
                    if (below.getValue().isNumber()) {
                        names.add(field.getKey() + "." + below.getKey());
                    }
                });
            } else if (field.getValue().isNumber() || field.getValue().isBoolean()) {
                names.add(field.getKey());
            }
        });
        assertThat(names)
                .hasSizeGreaterThan(45)
                .allSatisfy(name -> assertThat(Metric.find(name, all).name()).isEqualTo(name));
        List<String> headings =
                new ArrayList<>(rows(into.resolve("options.csv")).get(0).keySet());
        headings.removeAll(List.of("option", "lowest state of charge at"));
        assertThat(headings).hasSizeGreaterThan(50).allSatisfy(heading -> {
            Metric metric = Metric.find(heading, all);
            String unit =
                    metric.unit().equals("%") && metric.name().equals("trendPerDay") ? "% per day" : metric.unit();
            assertThat(metric.heading() + (unit.isEmpty() ? "" : " (" + unit + ")"))
                    .isEqualTo(heading);
        });
    }

    static Stream<Arguments> wrong() throws IOException {
        String text = new String(
                SizeCommandTest.class
                        .getResourceAsStream("/ampdays/wrong-sizes.txt")
                        .readAllBytes(),
                StandardCharsets.UTF_8);
        return Arrays.stream(text.split("\n\n", -1)).skip(1).map(block -> {
            String[] lines = block.strip().split("\n", 2);
            return Arguments.of(lines[0], lines[1]);
        });
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void wrongQuestionsAreRefusedWithTheseWords(String words, String message) {
        assertThat(size(words.split("\\|", -1))).isEqualTo(2);
        assertThat(err.toString().strip()).isEqualTo(message);
        assertThat(folder.resolve("results")).doesNotExist();
    }
}
