package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.io.InputException;
import ampdays.io.ScenarioReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Options of the demo against knobs that take their changes back; read off its file: no outside source. */
class OverriddenOptionsTest {
    static Stream<Arguments> studies() {
        return Stream.of(
                Arguments.of("battery.capacity=400, 600 Ah", "less heat", ""),
                Arguments.of("battery.start=80, 90 %", "all", ""),
                Arguments.of(
                        "battery.capacity=400, 600 Ah",
                        "all",
                        "\"bigger bank\" sets battery.capacity, which is varied here: its rows equal those of \"as it is\""
                                + " with the same battery.capacity."),
                Arguments.of(
                        "cabin.covers=insulated",
                        "less heat",
                        "\"less heat\" sets cabin.covers, which is varied here: its rows have only the rest of it."),
                Arguments.of(
                        "cabin.covers=insulated|cabin.insulation=25, 50 mm|cabin.bridges=0.3 W/(m² K)",
                        "as it is, less heat",
                        "\"less heat\" sets cabin.covers, cabin.insulation, cabin.bridges, which are varied here:"
                                + " its rows equal those of \"as it is\" with the same values."));
    }

    @ParameterizedTest
    @MethodSource("studies")
    void anOptionWhoseChangeIsVariedIsNamed(String knobs, String options, String remark)
            throws IOException, InputException {
        ScenarioFile file = ScenarioReader.read(Path.of("scenarios/desert-survey.yaml"));
        Grid grid = new Grid(
                Arrays.stream((knobs + "|option=" + options).split("\\|", -1))
                        .map(text -> KnobText.read(text, file))
                        .toList(),
                false);
        assertThat(String.join("\n", OverriddenOptions.remarks(file, grid))).isEqualTo(remark);
    }
}
