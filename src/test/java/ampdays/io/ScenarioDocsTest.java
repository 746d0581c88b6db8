package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.scenario.Fallback;
import ampdays.scenario.Kind;
import ampdays.scenario.Parameter;
import ampdays.scenario.Presets;
import ampdays.scenario.Registry;
import ampdays.scenario.Section;
import ampdays.scenario.Value;
import ampdays.units.QuantityException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The generated documents are those of this registry; run with -Dampdays.update=true to write them anew. */
class ScenarioDocsTest {
    private static final Path DEMO = Path.of("scenarios/desert-survey.yaml");

    @Test
    void theReferencePageIsFresh() throws IOException {
        isFresh(Path.of("docs/SCENARIO.md"), ScenarioDocs.markdown(Files.readString(DEMO)));
    }

    @Test
    void theSchemaIsFresh() throws IOException {
        isFresh(Path.of("docs/scenario.schema.json"), ScenarioSchema.json());
    }

    private static void isFresh(Path file, String wanted) throws IOException {
        if (Boolean.getBoolean("ampdays.update")) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, wanted);
        }
        assertThat(Files.readString(file))
                .as(file + " is stale: mvn test -Dtest=ScenarioDocsTest -Dampdays.update=true")
                .isEqualTo(wanted);
    }

    @Test
    void theSchemaIsJsonOfDraftSevenAndNamesEverySection() throws IOException {
        var schema = new ObjectMapper().readTree(ScenarioSchema.json());
        assertThat(schema.get("$schema").asText()).isEqualTo("http://json-schema.org/draft-07/schema#");
        Set<String> names = new HashSet<>();
        schema.get("properties").fieldNames().forEachRemaining(names::add);
        assertThat(names).containsAll(List.of("title", "weather", "use", "options"));
        assertThat(names)
                .containsAll(Registry.sections().stream()
                        .map(Section::name)
                        .filter(n -> !n.isEmpty())
                        .toList());
    }

    /** A text that the reader takes must not be marked by an editor: defaults and presets all match their pattern. */
    @Test
    void whatTheReaderTakesMatchesTheSchema() {
        for (Section section : Registry.sections()) {
            for (Parameter parameter : section.parameters()) {
                if (parameter.fallback() instanceof Fallback.Fixed fixed) {
                    matches(parameter, fixed.text());
                    matches(parameter, fixed.text() + " (guess: by eye)");
                }
            }
        }
        Presets presets = PresetReader.presets();
        for (String section : presets.bySection().keySet()) {
            for (Presets.Preset preset : presets.of(section)) {
                for (var entry : preset.values().entrySet()) {
                    Value value = entry.getValue();
                    matches(Registry.parameter(entry.getKey()).orElseThrow(), value.text());
                }
            }
        }
    }

    private static void matches(Parameter parameter, String text) {
        String pattern = ScenarioSchema.pattern(parameter.kind());
        if (!pattern.isEmpty()) {
            assertThat(text).as(parameter.path()).containsPattern(pattern);
        }
    }

    @Test
    void aBareNumberDoesNotMatchTheSchemaWhereAUnitIsNeeded() {
        String pattern = ScenarioSchema.pattern(
                Registry.parameter("battery.capacity").orElseThrow().kind());
        assertThat("400").doesNotContainPattern(pattern);
        assertThat("400 W").doesNotContainPattern(pattern);
        assertThat("400 Ah (certain)").doesNotContainPattern(pattern);
        assertThat("5.1 kWh (datasheet)").containsPattern(pattern);
        String money = ScenarioSchema.pattern(
                Registry.parameter("prices.budget").orElseThrow().kind());
        assertThat("9000 USD (practice: two quotes)").containsPattern(money);
        assertThat("9000$").containsPattern(money);
        assertThat("9,000 USD").doesNotContainPattern(money);
        assertThat("USD 9000").doesNotContainPattern(money);
    }

    @Test
    void everyPresetThatTheRegistryOffersExistsAndNoOther() {
        Presets presets = PresetReader.presets();
        for (Section section : Registry.sections()) {
            List<String> offered = Registry.parameter(section.name() + ".preset")
                    .map(p -> p.kind() instanceof Kind.Choice choice ? choice.words() : List.<String>of())
                    .orElse(List.of());
            assertThat(presets.of(section.name()).stream().map(Presets.Preset::name))
                    .as(section.name())
                    .containsExactlyElementsOf(offered);
        }
    }

    @Test
    void everyValueOfAPresetHasItsMarkAndEveryMeasureItsRange() throws QuantityException {
        Presets presets = PresetReader.presets();
        for (String section : presets.bySection().keySet()) {
            for (Presets.Preset preset : presets.of(section)) {
                assertThat(preset.about()).endsWith(".");
                for (Map.Entry<String, Value> entry : preset.values().entrySet()) {
                    String path = entry.getKey();
                    String name = preset.name() + " " + path;
                    assertThat(entry.getValue().mark()).as(name).isPresent();
                    Kind kind = Registry.parameter(path).orElseThrow().kind();
                    assertThat(!preset.range(path).isEmpty()).as(name).isEqualTo(kind instanceof Kind.Measured);
                    if (kind instanceof Kind.Measured) {
                        double low = kind.read(preset.low(path)).number();
                        double high = kind.read(preset.high(path)).number();
                        assertThat(low).as(name).isLessThan(high);
                        assertThat(entry.getValue().number()).as(name).isBetween(low, high);
                    }
                }
            }
        }
    }
}
