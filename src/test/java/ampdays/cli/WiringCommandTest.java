package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code ampdays wiring} as a user meets it. Wording and exit codes are this program's own; there is no outside source. */
class WiringCommandTest {
    private static final String WEATHER = "weather-profiles/low-desert-summer.csv";

    /** A run that burns, a breaker that opens, a fuse at the wrong end; and a circuit that only an option needs. */
    private static final String BAD = """
            circuits:
              second alternator:
                from: second alternator
                to: bus
                length: 16 ft
                conductor: 4 AWG
                air: under bonnet
                opened: under load
                worst-joint: 1 mΩ
                protection: thermal breaker
                rating: 250 A
                protection-air: under bonnet
              air conditioner:
                from: bus
                to: air conditioner
                length: 4 m
                conductor: 10 mm²
                protection: blade fuse
                rating: 80 A
                protection-near: air conditioner
            """;

    @TempDir
    private Path folder;

    private String demo;
    private Path scenario;
    private StringWriter out;
    private StringWriter err;

    @BeforeEach
    void aShortTripOfTheDemo() throws IOException {
        Files.createDirectories(folder.resolve("weather-profiles"));
        Files.copy(Path.of(WEATHER), folder.resolve(WEATHER));
        Files.createDirectories(folder.resolve("scenarios"));
        scenario = folder.resolve("scenarios/van.yaml");
        demo = Files.readString(Path.of("scenarios/desert-survey.yaml"))
                .replace("days: 14 ", "days: 3 ")
                .replace("field days: 1-5, 8-12 ", "field days: 1-2 ");
    }

    private int run(String text, String... args) throws IOException {
        Files.writeString(scenario, text);
        out = new StringWriter();
        err = new StringWriter();
        return Main.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    private int wiring(String text, String... more) throws IOException {
        String[] args = new String[more.length + 4];
        args[0] = "wiring";
        args[1] = scenario.toString();
        args[2] = "--out";
        args[3] = folder.resolve("out").toString();
        System.arraycopy(more, 0, args, 4, more.length);
        return run(text, args);
    }

    @Test
    void withoutCircuitsASetIsOfferedThatTheScenarioTakesIn() throws IOException {
        assertThat(wiring(demo, "--option", "second alternator")).isZero();
        assertThat(out.toString())
                .contains("9 circuits (offered, all of it a guess)", "No finding", "To confirm:", "bracket")
                .contains("not a code check; have it inspected by a licensed person");
        assertThat(err.toString()).isEmpty();
        String table = Files.readString(folder.resolve("out/wiring.csv"));
        assertThat(table.lines().findFirst().orElseThrow()).startsWith("circuit,from,to,conductor,");
        assertThat(table.lines()).hasSize(10).anyMatch(row -> row.startsWith("bank to bus,bank,bus,"));
        String section = Files.readString(folder.resolve("out/circuits.yaml"));

        assertThat(wiring(demo + "\n" + section, "--option", "second alternator"))
                .isZero();
        assertThat(Files.readString(folder.resolve("out/wiring.csv"))).isEqualTo(table);
        assertThat(out.toString()).doesNotContain("offered").contains("simulated with another cable");
    }

    /** What --fix says, put into the scenario as it stands, clears every finding. */
    @Test
    void aDangerEndsWithThreeAndItsFixClearsIt() throws IOException {
        String option = "  second alternator: {second-alternator: {preset: large frame, rated: 270 A (datasheet)}}\n";
        String bad = demo.replace("\noptions: ", "\n" + BAD + "\noptions: ");
        assertThat(bad).isNotEqualTo(demo).contains(option);
        assertThat(wiring(bad, "--option", "second alternator", "--fix")).isEqualTo(3);
        assertThat(out.toString())
                .contains("danger: second alternator: conductor overloaded", "Source: 33 CFR 183.425")
                .contains("danger: air conditioner: protection at the wrong end")
                .contains("they leave no finding:", "options:\n  wiring mended:\n");

        String patch = out.toString()
                .lines()
                .dropWhile(line -> !line.equals("  wiring mended:"))
                .skip(1)
                .takeWhile(line -> !line.isBlank())
                .reduce("", (all, line) -> all + line + "\n");
        String mended = bad.replace(
                option,
                "  wiring mended:\n    second-alternator.preset: large frame\n    second-alternator.rated: 270 A\n"
                        + patch);
        assertThat(wiring(mended, "--option", "wiring mended")).isZero();
        assertThat(out.toString()).contains("No finding: no minute of the trip was beyond any limit");
    }

    @Test
    void circuitsThatAnOptionDoesNotHaveAreNotChecked() throws IOException {
        assertThat(wiring(demo.replace("\noptions: ", "\n" + BAD + "\noptions: ")))
                .isEqualTo(3);
        assertThat(out.toString()).contains("Not in this option, so not checked: second alternator.");
    }

    @Test
    void jsonIsOneDocumentTheSameEachTimeAndEqualsTheFile() throws IOException {
        String bad = demo.replace("\noptions: ", "\n" + BAD + "\noptions: ");
        assertThat(wiring(bad, "--option", "second alternator", "--fix", "--json"))
                .isEqualTo(3);
        String first = out.toString();
        assertThat(Files.readString(folder.resolve("out/wiring.json"))).isEqualTo(first);
        JsonNode json = new ObjectMapper().readTree(first);
        assertThat(json.get("notice").asText()).contains("not a code check");
        assertThat(json.get("circuits")).hasSize(2);
        assertThat(json.get("findings")).allSatisfy(finding -> {
            assertThat(finding.get("severity").asText()).isIn("danger", "caution", "note");
            assertThat(finding.get("remedy").asText()).isNotBlank();
            assertThat(finding.get("source").asText()).isNotBlank();
        });
        assertThat(json.get("fix").get("left")).isEmpty();
        wiring(bad, "--option", "second alternator", "--fix", "--json");
        assertThat(out.toString()).isEqualTo(first);
    }

    @Test
    void compareTellsTheirNumberInALine() throws IOException {
        String out1 = folder.resolve("out").toString();
        String bad = demo.replace("\noptions: ", "\n" + BAD + "\noptions: ");
        assertThat(run(bad, "compare", scenario.toString(), "--out", out1)).isZero();
        assertThat(out.toString()).containsPattern("Wiring findings: as it is \\d+ \\(\\d+ of danger\\); more solar");
        assertThat(run(demo, "compare", scenario.toString(), "--out", out1)).isZero();
        assertThat(out.toString()).doesNotContain("Wiring");
    }

    @Test
    void wrongOptionAndFolder() throws IOException {
        assertThat(wiring(demo, "--option", "secnd")).isEqualTo(2);
        assertThat(err.toString()).contains("There is no option \"secnd\"").contains("\"second alternator\"");
        Files.writeString(folder.resolve("out"), "a file");
        assertThat(wiring(demo)).isEqualTo(4);
        assertThat(err.toString()).contains("is a file, not a folder").doesNotContain("\tat ");
    }
}
