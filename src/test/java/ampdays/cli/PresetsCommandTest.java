package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.io.InputException;
import ampdays.io.PresetReader;
import ampdays.io.ScenarioReader;
import ampdays.scenario.Presets;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Values;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Presets as a user meets them. */
class PresetsCommandTest extends CommandRun {
    private static final Presets PRESETS = PresetReader.presets();

    @TempDir
    private Path folder;

    @Test
    void everyPresetHasItsLineUnderItsKind() {
        assertThat(run("presets")).isZero();
        List<String> lines = out.toString().lines().toList();
        for (String kind : PRESETS.bySection().keySet()) {
            int head = lines.stream()
                    .map(line -> line.startsWith(kind + ": "))
                    .toList()
                    .indexOf(true);
            assertThat(head).as(kind).isNotNegative();
            List<Presets.Preset> presets = PRESETS.of(kind);
            for (int i = 0; i < presets.size(); i++) {
                assertThat(lines.get(head + 1 + i))
                        .startsWith("  " + presets.get(i).name() + "  ");
            }
        }
        assertThat(lines).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void aKindAloneListsItsOwn() {
        assertThat(run("presets", "inverter")).isZero();
        assertThat(out.toString()).contains("2,000 W class", "3,000 W class").doesNotContain("large frame");
    }

    @Test
    void aNameShowsEveryValueWithRangeMarkAndNote() {
        assertThat(run("presets", "second-alternator", "large", "frame")).isZero();
        assertThat(out.toString())
                .containsPattern("rated +280 A +240 to 320 A +practice")
                .containsPattern("curve +1340 rpm +1100 to 1700 rpm +guess +cold idle about half")
                .contains("second-alternator:", "  preset: large frame", "  # rated: 280 A (practice)");
        assertThat(out.toString().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    /** The lines that are printed, with what they leave open filled in, are a scenario: with and without the remarks. */
    @Test
    void thePrintedLinesAreTakenByAScenario() throws IOException, InputException {
        Files.copy(Path.of("src/test/resources/ampdays/right-weather.csv"), folder.resolve("weather.csv"));
        for (String kind : PRESETS.bySection().keySet()) {
            for (Presets.Preset preset : PRESETS.of(kind)) {
                out.getBuffer().setLength(0);
                run("presets", kind, preset.name());
                String printed = out.toString();
                String lines = printed.substring(printed.indexOf("\n" + kind + ":") + 1)
                        .replace("capacity: …", "capacity: 300 Ah")
                        .replace("power: …", "power: 300 W")
                        .replace("charger: …", "charger: 30 A");
                reads(kind, lines);
                reads(kind, lines.replaceAll("(?m)^  # ", "  "));
            }
        }
    }

    /** The reader refuses what it does not understand. */
    private void reads(String kind, String lines) throws IOException, InputException {
        String scenario = Files.readString(Path.of("src/test/resources/ampdays/right-scenario.yaml"));
        Path file = folder.resolve("scenario.yaml");
        Files.writeString(file, sectionOf(kind).matcher(scenario).replaceFirst("") + "\n" + lines);
        Values read = ScenarioReader.read(file).values(ScenarioFile.BASE_NAME).orElseThrow();
        assertThat(lines).contains("preset: " + read.word(kind + ".preset") + "\n");
    }

    private static Pattern sectionOf(String kind) {
        return Pattern.compile("(?m)^" + kind + ":.*\n(^ .*\n)*");
    }

    @Test
    void anUnknownKindOrNameIsToldWithWhatThereIs() {
        assertThat(run("presets", "coling")).isEqualTo(2);
        assertThat(run("presets", "second-alternator", "larg", "frame")).isEqualTo(2);
        assertThat(err.toString().lines())
                .containsExactly(
                        "There is no kind of preset \"coling\". Kinds: "
                                + String.join("; ", PRESETS.bySection().keySet()) + ". Did you mean cooling?",
                        "There is no preset \"larg frame\" of the kind second-alternator. Presets: large frame; medium frame;"
                                + " small frame. Did you mean large frame?");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void jsonHoldsAllOfThem() throws IOException {
        assertThat(run("presets", "--json")).isZero();
        JsonNode document = new ObjectMapper().readTree(out.toString());
        assertThat(document.get("schemaVersion").asInt()).isEqualTo(1);
        assertThat(document.get("presets"))
                .hasSize(PRESETS.bySection().keySet().stream()
                        .mapToInt(kind -> PRESETS.of(kind).size())
                        .sum());
        JsonNode rated = document.at("/presets").findValues("values").stream()
                .filter(values -> values.has("cut-in"))
                .findFirst()
                .orElseThrow()
                .get("rated");
        assertThat(rated.get("value").asText()).isEqualTo("280 A");
        assertThat(rated.get("low").asText()).isEqualTo("240 A");
        assertThat(rated.get("high").asText()).isEqualTo("320 A");
        assertThat(rated.get("mark").asText()).isEqualTo("practice");
    }
}
