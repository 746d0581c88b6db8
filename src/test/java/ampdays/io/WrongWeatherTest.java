package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Wrong weather files and the exact message each gets. The messages follow this program's own guide (where, what was read,
 * what is accepted, the likely repair); there is no outside source for their wording.
 */
class WrongWeatherTest {
    private static final List<String> RIGHT =
            List.of("right-weather.csv", "right-weather.epw", "right-weather-tmy3.csv");
    private static final String ALL = "ALL ";
    private static final Pattern CHARACTER_CODE = Pattern.compile("\\\\u([0-9a-f]{4})");

    @TempDir
    private Path folder;

    /** One wrong file: a right one with a text replaced. */
    record Case(String name, String right, String taken, String put, List<String> messages) {
        @Override
        public String toString() {
            return name;
        }

        String text() {
            if (taken.equals("WHOLE")) {
                return put;
            }
            String text = WrongScenarioTest.resource(right);
            String wanted = taken.startsWith(ALL) ? taken.substring(ALL.length()) : taken;
            assertThat(text).contains(wanted);
            int at = text.indexOf(wanted);
            return taken.startsWith(ALL)
                    ? text.replace(wanted, put)
                    : text.substring(0, at) + put + text.substring(at + wanted.length());
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void eachMistakeGetsItsMessages(Case wrong) throws IOException {
        InputException refused = refused(wrong.text().getBytes(StandardCharsets.UTF_8));
        assertThat(refused.problems().stream().map(InputProblem::toString)).containsExactlyElementsOf(wrong.messages());
    }

    static Stream<Case> cases() {
        return cases("wrong-weather.txt");
    }

    static Stream<Case> cases(String table) {
        List<Case> cases = new ArrayList<>();
        for (String block : WrongScenarioTest.resource(table).split("(?m)^=== ", -1)) {
            if (!block.isBlank()) {
                List<String> lines = block.lines().toList();
                cases.add(new Case(
                        lines.get(0),
                        lines.get(1).substring(2),
                        unescaped(lines.get(2).substring(2)),
                        unescaped(lines.get(3).substring(2)),
                        lines.subList(4, lines.size())));
            }
        }
        return cases.stream();
    }

    private static String unescaped(String text) {
        String lines = text.replace("\\n", "\n").replace("\\t", "\t");
        return CHARACTER_CODE
                .matcher(lines)
                .replaceAll(code -> Character.toString(Integer.parseInt(code.group(1), 16)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"right-weather.csv", "right-weather.epw", "right-weather-tmy3.csv"})
    void theFilesThatTheMistakesAreMadeInAreRight(String name) throws IOException, InputException {
        assertThat(read(WrongScenarioTest.resource(name).getBytes(StandardCharsets.UTF_8))
                        .size())
                .isEqualTo(9);
    }

    @Test
    void aFolderIsSaidToBeOne() {
        assertThatThrownBy(() -> WeatherReader.read(folder))
                .isInstanceOf(FileSystemException.class)
                .hasMessage(folder + ": this is a folder, not a weather file");
    }

    @Test
    void textInUtf16IsSaidNotToBePlain() throws IOException {
        String right = WrongScenarioTest.resource("right-weather.csv");
        assertThat(refused(right.getBytes(StandardCharsets.UTF_16)))
                .hasMessage(
                        "weather.csv: the file is not plain text. Save it as CSV in UTF-8; unpack an archive, export"
                                + " a spreadsheet.");
    }

    /** 2001 then 2003: two years that do not follow each other are neither a typical year nor a series. */
    @Test
    void yearsWithOneMissingBetweenThemAreRefusedAtTheJump() throws IOException {
        String right = WrongScenarioTest.resource("right-weather.csv");
        StringBuilder rows = new StringBuilder(right.substring(0, right.indexOf("2005-")));
        for (int year = 2001; year <= 2003; year += 2) {
            for (int day = 1; day <= 365; day++) {
                for (int hour = 1; hour <= 24; hour++) {
                    rows.append(LocalDate.ofYearDay(year, day)).append(' ').append(hour);
                    rows.append(":00,0,0,0,20,10,2,97300\n");
                }
            }
        }
        assertThat(refused(rows.toString().getBytes(StandardCharsets.UTF_8)))
                .hasMessage(
                        "weather.csv:8769: from this row on the file is longer than a year, but its years are missing"
                                + " or do not follow each other; give rows of consecutive years, or of one year.");
    }

    @Test
    void aFileFullOfMistakesShowsTheFirstTwentyAndCountsTheRest() throws IOException {
        StringBuilder rows = new StringBuilder(WrongScenarioTest.resource("right-weather.csv"));
        for (int hour = 10; hour < 24; hour++) {
            rows.append("2005-07-08 ").append(hour).append(":00,x,y,0,20,10,2,97300\n");
        }
        List<InputProblem> problems =
                refused(rows.toString().getBytes(StandardCharsets.UTF_8)).problems();
        assertThat(problems).hasSize(21);
        assertThat(problems.get(20)).hasToString("weather.csv: and 8 more problems of this kind.");
    }

    /** Whatever stands in the file, the answer is a series or a list of problems with places inside the file. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void noTextBreaksTheReader(long seed) throws IOException {
        Random random = new Random(seed);
        String alphabet = " \n\t:,;#'\"-.0195aAeE%°\u0000é/";
        for (int i = 0; i < 60; i++) {
            StringBuilder text = new StringBuilder(WrongScenarioTest.resource(RIGHT.get(i % RIGHT.size())));
            for (int edits = 1 + random.nextInt(4); edits > 0; edits--) {
                int at = random.nextInt(text.length());
                text.setCharAt(at, alphabet.charAt(random.nextInt(alphabet.length())));
            }
            try {
                assertThat(read(text.toString().getBytes(StandardCharsets.UTF_8))
                                .size())
                        .isPositive();
            } catch (InputException e) {
                long lines = text.chars().filter(c -> c == '\n').count() + 1;
                assertThat(e.problems()).isNotEmpty().allSatisfy(p -> {
                    assertThat(p.line()).isBetween(0, (int) lines);
                    assertThat(p.message()).matches("(?s).*\\.");
                });
            }
        }
    }

    private WeatherSeries read(byte[] bytes) throws IOException, InputException {
        Path file = folder.resolve("weather.csv");
        Files.write(file, bytes);
        return WeatherReader.read(file);
    }

    private InputException refused(byte[] bytes) throws IOException {
        Path file = folder.resolve("weather.csv");
        Files.write(file, bytes);
        return catchThrowableOfType(InputException.class, () -> WeatherReader.read(file));
    }
}
