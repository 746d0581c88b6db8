package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.scenario.Registry;
import ampdays.scenario.Section;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

class PresetReaderTest {
    static Stream<String> sections() {
        return Registry.sections().stream().filter(Section::takesPresets).map(Section::name);
    }

    /** Source: a reader of the whole of YAML 1.2 finds in the files what their lines are taken for, in the same order. */
    @ParameterizedTest
    @MethodSource("sections")
    void theFilesAreYamlAndSayTheSame(String section) {
        String text = PresetReader.text(section);
        Object yaml = new Load(LoadSettings.builder().build()).loadFromString(text);
        assertThat(PresetReader.lines(text)).isNotEmpty().hasToString(yaml.toString());
    }
}
