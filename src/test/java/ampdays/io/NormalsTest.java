package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import ampdays.weather.MonthlyNormals;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files of monthly normals. The wording of messages is this program's own; there is no outside source for it. */
class NormalsTest {
    @TempDir
    private Path folder;

    static Stream<WrongWeatherTest.Case> cases() {
        return WrongWeatherTest.cases("wrong-normals.txt");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void eachMistakeGetsItsMessages(WrongWeatherTest.Case wrong) throws Exception {
        Path file = Files.writeString(folder.resolve("weather.csv"), wrong.text(), StandardCharsets.UTF_8);
        InputException refused = catchThrowableOfType(InputException.class, () -> NormalsReader.read(file));
        assertThat(refused.problems().stream().map(InputProblem::toString)).containsExactlyElementsOf(wrong.messages());
    }

    @Test
    void theFileThatTheMistakesAreMadeInIsRight() throws Exception {
        Path file = Files.writeString(folder.resolve("a.csv"), WrongScenarioTest.resource("right-normals.csv"));
        MonthlyNormals normals = NormalsReader.read(file);
        assertThat(normals.months()).hasSize(12).allMatch(m -> m.spread().isEmpty());
        assertThat(normals.months().get(6).dewPointC()).isEqualTo(13.5);
    }

    /** Identity: normals written and read are the same, to the digits written. */
    @Test
    void whatIsWrittenIsReadAgain() throws Exception {
        MonthlyNormals coast = NormalsReader.read(Path.of("weather-profiles", "humid-coast-normals.csv"));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        NormalsWriter.write(bytes, coast, List.of("made for a test"));
        Path file = Files.write(folder.resolve("a.csv"), bytes.toByteArray());
        assertThat(NormalsReader.read(file)).isEqualTo(coast);
        assertThat(Files.readString(file)).contains("# made for a test\n# latitude: 25.8\n");
    }
}
