package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import ampdays.audit.Reading;
import ampdays.audit.Readings;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Wrong lists of readings and the exact message each gets, and forms that are right; there is no outside source. */
class WrongReadingsTest {
    private static final String RIGHT = WrongScenarioTest.resource("right-readings.csv");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @MethodSource("mistakes")
    void eachMistakeGetsItsMessages(Mistake wrong) throws IOException {
        String text = wrong.in(RIGHT);
        Path file = written(text);
        InputException refused = catchThrowableOfType(InputException.class, () -> ReadingsReader.read(file));
        assertThat(refused.problems().stream().map(InputProblem::toString)).containsExactlyElementsOf(wrong.messages());
    }

    static Stream<Mistake> mistakes() {
        return Mistake.of("wrong-readings.txt");
    }

    @Test
    void theRightFileIsReadWithDischargeAsPlus() throws IOException, InputException {
        Readings readings = ReadingsReader.read(written(RIGHT));
        assertThat(readings.appliances()).containsExactly("lamp", "pump", "fan");
        assertThat(readings.rows().stream().map(Reading::currentA)).containsExactly(0.5, 1.9, 6.9, 3.9, 3.9);
        assertThat(readings.rows().get(3).on()).containsExactly("lamp", "fan");
        assertThat(readings.rows().get(2).surgeA()).isEqualTo(12);
        assertThat(readings.notes()).isEmpty();
    }

    /** By logic: semicolons with decimal commas, a byte order mark, CRLF and milliamps say the same. */
    @Test
    void formsOfOtherCountriesAndSpreadsheetsSayTheSame() throws IOException, InputException {
        String text = "\uFEFFstep;current mA;note\r\nall off;500,0;\r\n+lamp;1900,0;\r\n\"+pump; -lamp\";5500,5;\r\n";
        Readings readings = ReadingsReader.read(written(text));
        assertThat(readings.rows()).hasSize(3);
        assertThat(readings.rows().get(2).currentA()).isCloseTo(5.5005, within(1e-12));
        assertThat(readings.rows().get(2).on()).containsExactly("pump");
        assertThat(readings.resolutionA()).isCloseTo(0.0001, within(1e-12));
        assertThat(readings.notes()).hasSize(2);
    }

    /** By logic: a column without a name counts as a cell, and empty ones behind the last name do not. */
    @Test
    void columnsWithoutANameDoNotShiftTheOthers() throws IOException, InputException {
        Readings readings = ReadingsReader.read(written(
                "# sign: discharge plus\nstep,current A,,voltage V,,\nall off,0.5,x,13.2,,\nlamp on,2,,13.1\n"));
        assertThat(readings.rows().stream().map(Reading::voltageV)).containsExactly(13.2, 13.1);
    }

    /** By logic: while 20 A of charge hide the draws, switching on still takes from the reading. */
    @Test
    void theSignIsToldBySwitchingNotByTheReading() throws IOException, InputException {
        Readings readings =
                ReadingsReader.read(written("step,current A\nall off,20.0\n,\nlamp on,18.5\nfan on,15.5\n ,\n"));
        assertThat(readings.rows().stream().map(Reading::currentA)).containsExactly(-20.0, -18.5, -15.5);
    }

    private Path written(String text) throws IOException {
        Path file = folder.resolve("readings.csv");
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        return file;
    }
}
