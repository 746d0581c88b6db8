package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Wrong scenario files and the exact message each gets. The messages follow this program's own guide (where, what was
 * read, what is accepted, the likely repair); there is no outside source for their wording.
 */
class WrongScenarioTest {
    private static final String RIGHT = resource("right-scenario.yaml");

    @TempDir
    private Path folder;

    @BeforeEach
    void weatherLiesBesideTheScenario() throws IOException {
        Files.createDirectories(folder.resolve("van"));
        Files.writeString(folder.resolve("van/weather.csv"), "only its presence matters here");
        Files.writeString(folder.resolve("van.yaml"), "title: Outside the scenario's folder");
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void eachMistakeGetsItsMessages(Mistake wrong) throws IOException {
        InputException refused = refused(wrong.in(RIGHT).getBytes(StandardCharsets.UTF_8));
        assertThat(refused.problems().stream().map(InputProblem::toString)).containsExactlyElementsOf(wrong.messages());
        assertThat(refused).hasMessage(String.join("\n", wrong.messages()));
    }

    static Stream<Mistake> mistakes() {
        return Mistake.of("wrong-scenarios.txt", "wrong-circuits.txt");
    }

    @Test
    void aFileThatIsNotUtf8IsSaidToBe() throws IOException {
        assertThat(refused(new byte[] {'t', ':', ' ', (byte) 0xE9}))
                .hasMessage("scenario.yaml: The file is not UTF-8 text. Save it as UTF-8.");
    }

    @Test
    void aFileNestedThousandsDeepIsRefusedCalmly() throws IOException {
        assertThat(refused("[".repeat(20_000).getBytes(StandardCharsets.UTF_8)))
                .hasMessage("scenario.yaml: Brackets or indentation are nested thousands deep.");
    }

    @Test
    void problemsOfASharedFileCarryItsName() throws IOException {
        Files.writeString(folder.resolve("van/parts.yaml"), "solar: {power: 400}\noptions: {}\n");
        String text = RIGHT.replace("solar: {power: 400 W}", "use: parts.yaml");
        assertThat(refused(text.getBytes(StandardCharsets.UTF_8)))
                .hasMessage("parts.yaml:1:16: solar.power \"400\" has no unit. Write 400 W, or 0.4 kW.\n"
                        + "parts.yaml:2:1: options may only stand in the scenario itself, not in a shared file.");
    }

    /** Whatever stands in the file, the answer is a scenario or a list of problems with places inside the file. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void noTextBreaksTheReader(long seed) throws IOException {
        Random random = new Random(seed);
        String alphabet = " \n\t:,{}[]()&*#'\"-.0aA%°\u0000é|>!";
        for (int i = 0; i < 150; i++) {
            StringBuilder text = new StringBuilder(RIGHT);
            for (int edits = 1 + random.nextInt(3); edits > 0; edits--) {
                int at = random.nextInt(text.length());
                text.setCharAt(at, alphabet.charAt(random.nextInt(alphabet.length())));
            }
            write(text.toString().getBytes(StandardCharsets.UTF_8));
            try {
                assertThat(ScenarioReader.read(scenario()).scenario().variants())
                        .isNotEmpty();
            } catch (InputException e) {
                long lines = text.chars().filter(c -> c == '\n').count() + 1;
                assertThat(e.problems()).isNotEmpty().allSatisfy(p -> {
                    assertThat(p.line()).isBetween(0, (int) lines);
                    assertThat(p.message()).matches("(?s).*[.?]");
                });
            }
        }
    }

    private Path scenario() {
        return folder.resolve("van/scenario.yaml");
    }

    private void write(byte[] bytes) throws IOException {
        Files.write(scenario(), bytes);
    }

    private InputException refused(byte[] bytes) throws IOException {
        write(bytes);
        return catchThrowableOfType(InputException.class, () -> ScenarioReader.read(scenario()));
    }

    static String resource(String name) {
        try (InputStream in = WrongScenarioTest.class.getResourceAsStream("/ampdays/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
