package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What each demonstration comes to. The expected verdicts are the program's own output, held fast because README and the
 * scenarios' notes tell them; none of them is checked against the world.
 */
class DemosRegressionTest {
    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    /** The options of a demo by name, as summary.json has them. */
    private Map<String, JsonNode> compare(String demo) throws IOException {
        assertThat(Main.run(
                        new PrintWriter(out),
                        new PrintWriter(err),
                        "compare",
                        "scenarios/" + demo + ".yaml",
                        "--out",
                        folder.toString()))
                .as(err.toString())
                .isZero();
        Map<String, JsonNode> options = new TreeMap<>();
        new ObjectMapper()
                .readTree(folder.resolve("summary.json").toFile())
                .get("options")
                .forEach(option -> options.put(option.get("name").asText(), option));
        return options;
    }

    private static List<String> holding(Map<String, JsonNode> options) {
        return options.values().stream()
                .filter(option -> option.get("holds").asBoolean())
                .map(option -> option.get("name").asText())
                .toList();
    }

    private String verdict() {
        return out.toString().replaceAll("\\s+", " ");
    }

    @Test
    void inTheDesertOnlyTheSecondAlternatorHolds() throws IOException {
        Map<String, JsonNode> options = compare("desert-survey");
        assertThat(holding(options)).containsExactly("second alternator");
        assertThat(verdict()).contains("Only \"second alternator\" holds");
    }

    /** The bank is full on Friday evening: what fills it faster changes nothing, what makes it larger does. */
    @Test
    void onTheCoastABiggerBankOrAHookUpHoldsAndASecondAlternatorDoesNot() throws IOException {
        Map<String, JsonNode> options = compare("coast-weekends");
        assertThat(holding(options)).containsExactly("bigger bank", "hook-up on Fridays");
        assertThat(options.get("as it is").get("daysToEmpty").asDouble()).isBetween(1.0, 2.0);
        assertThat(options.get("second alternator").get("daysToEmpty").asDouble())
                .isCloseTo(options.get("as it is").get("daysToEmpty").asDouble(), within(0.01));
        assertThat(verdict()).contains("\"bigger bank\" and \"hook-up on Fridays\" hold;");
    }

    /** The one demo that names its circuits: a loose lug, of which the breaker beside it may open, and its cure. */
    @Test
    void onTheCoastTheWiringHasALooseLug() throws IOException {
        assertThat(Main.run(
                        new PrintWriter(out),
                        new PrintWriter(err),
                        "wiring",
                        "scenarios/coast-weekends.yaml",
                        "--fix",
                        "--out",
                        folder.toString()))
                .as(err.toString())
                .isZero();
        JsonNode findings = new ObjectMapper()
                .readTree(folder.resolve("wiring.json").toFile())
                .get("findings");
        assertThat(findings.findValuesAsText("kind")).containsExactly("protection may open", "hot joint");
        assertThat(findings.findValuesAsText("where")).containsOnly("air conditioner");
        assertThat(verdict())
                .contains("they leave no finding:", "circuits.air conditioner.worst-joint-drop: ")
                .doesNotContain("offered");
    }

    /** The lowest charge comes on a morning before the drive, and a cold bank takes no more than the charger gives anyway. */
    @Test
    void onThePlateauNoSecondAlternatorIsNeeded() throws IOException {
        Map<String, JsonNode> options = compare("plateau-autumn");
        assertThat(holding(options)).containsExactly("as it is", "bigger bank", "second alternator");
        JsonNode base = options.get("as it is");
        JsonNode second = options.get("second alternator");
        assertThat(base.get("comfortableNights").asInt())
                .isEqualTo(base.get("nights").asInt());
        assertThat(second.get("lowestSoc").asDouble())
                .isCloseTo(base.get("lowestSoc").asDouble(), within(0.01));
        assertThat(verdict())
                .contains("None of the changes is needed: \"second alternator\" and \"bigger bank\" hold too and add no"
                        + " comfortable night.");
    }

    /** The weather that ships is the generator's own output: its rows can be made again as the headings say. */
    @ParameterizedTest
    @CsvSource({
        "humid-coast-late-summer, humid-coast-normals, 17, 08-20, 30",
        "high-plateau-autumn, high-plateau-normals, 2, 10-01, 31"
    })
    void theWeatherIsMadeAgainFromItsNormals(String profile, String normals, String seed, String from, String days)
            throws IOException {
        List<String> shipped = Files.readAllLines(Path.of("weather-profiles", profile + ".csv"));
        assertThat(String.join(" ", shipped.subList(0, 3)))
                .contains(normals + ".csv")
                .contains("--seed " + seed + " --from " + from + " --days " + days);
        Path again = folder.resolve("again.csv");
        assertThat(Main.run(
                        new PrintWriter(out),
                        new PrintWriter(err),
                        "weather",
                        "make",
                        "weather-profiles/" + normals + ".csv",
                        "--seed",
                        seed,
                        "--from",
                        from,
                        "--days",
                        days,
                        "--out",
                        again.toString()))
                .as(err.toString())
                .isZero();
        assertThat(rows(Files.readAllLines(again))).isEqualTo(rows(shipped));
    }

    private static List<String> rows(List<String> lines) {
        return lines.stream().filter(line -> !line.startsWith("#")).toList();
    }

    @Test
    void everyDemoSaysThatItIsInventedAndHasItsLineInTheReadme() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        List<Path> demos = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            files.filter(file -> file.toString().endsWith(".yaml")).forEach(demos::add);
        }
        assertThat(demos).hasSize(3);
        for (Path demo : demos) {
            assertThat(Files.readString(demo)).contains("# Invented example: no real people, places or products.");
            assertThat(readme).contains("scenarios/" + demo.getFileName() + "`");
        }
    }
}
