package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import ampdays.commission.Sheet;
import ampdays.commission.SmallSheet;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** A commissioning sheet as files: what is written, what comes back from a spreadsheet, and each mistake's exact message. */
class SheetFilesTest {
    private static final Sheet SHEET = SmallSheet.sheet();
    private static final String BLANK = SheetCsv.text(SHEET);

    /** What was typed behind each line of the sheet. */
    private static final String FILLED = filled(Map.of(
            "look.cables", "yes",
            "rest.voltage", "13.2",
            "hot.current", "96 A",
            "hot.cable", "0.19 V",
            "hot.case", "201.2 °F",
            "co.pillow", "0"));

    @TempDir
    private Path folder;

    private static String filled(Map<String, String> typed) {
        StringBuilder text = new StringBuilder();
        BLANK.lines().forEach(line -> {
            String value = typed.getOrDefault(line.split(",", -1)[0], "");
            text.append(line.endsWith(",,") ? line.substring(0, line.length() - 1) + value + "," : line)
                    .append('\n');
        });
        return text.toString();
    }

    private Path written(String text) throws IOException {
        Path file = folder.resolve("sheet.csv");
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        return file;
    }

    private Map<String, Double> read(String text) throws IOException, InputException {
        SheetReader reader = SheetReader.open(written(text));
        assertThat(reader.conditions()).isEqualTo(SHEET.conditions());
        assertThat(reader.option()).isEqualTo("as it is");
        return reader.readings(SHEET);
    }

    /** 201.2 °F is 94 °C by definition; 0.19 V is 190 mV. */
    @Test
    void readingsComeBackInTheUnitsOfTheSheet() throws IOException, InputException {
        Map<String, Double> readings = read(FILLED);
        assertThat(readings)
                .containsOnlyKeys("look.cables", "rest.voltage", "hot.current", "hot.cable", "hot.case", "co.pillow");
        assertThat(readings.get("look.cables")).isEqualTo(1);
        assertThat(readings.get("hot.cable")).isCloseTo(190, within(1e-9));
        assertThat(readings.get("hot.case")).isCloseTo(94, within(1e-9));
    }

    @Test
    void aBlankSheetHasNoReadings() throws IOException, InputException {
        assertThat(read(BLANK)).isEmpty();
    }

    /** By logic: semicolons, decimal commas, lost zeros, a byte order mark, CRLF, and heading lines filled up with separators. */
    @Test
    void whatSpreadsheetsDoChangesNothing() throws IOException, InputException {
        StringBuilder text = new StringBuilder("\uFEFF");
        FILLED.lines().forEach(line -> {
            String other = line.startsWith("#")
                    ? line + ";;;;"
                    : line.replace(",", ";").replaceAll("(\\d)\\.(\\d)", "$1,$2");
            text.append(other.replace("13,20", "13,2")).append("\r\n");
        });
        assertThat(read(text.toString())).isEqualTo(read(FILLED));
    }

    record Case(String name, String taken, String put, List<String> messages) {
        @Override
        public String toString() {
            return name;
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void eachMistakeGetsItsMessages(Case wrong) throws IOException {
        assertThat(wrong.taken().equals("WHOLE") || FILLED.contains(wrong.taken()))
                .isTrue();
        String text = wrong.taken().equals("WHOLE")
                ? wrong.put()
                : FILLED.replaceFirst(Pattern.quote(wrong.taken()), Matcher.quoteReplacement(wrong.put()));
        Path file = written(text);
        InputException refused = catchThrowableOfType(InputException.class, () -> {
            SheetReader reader = SheetReader.open(file);
            reader.conditions();
            reader.option();
            reader.readings(SHEET);
        });
        assertThat(refused.problems().stream().map(InputProblem::toString)).containsExactlyElementsOf(wrong.messages());
    }

    static Stream<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (String block : WrongScenarioTest.resource("wrong-sheets.txt").split("(?m)^=== ", -1)) {
            if (!block.isBlank()) {
                List<String> lines = block.lines().toList();
                cases.add(new Case(
                        lines.get(0),
                        lines.get(1).substring(2),
                        lines.get(2).substring(2).replace("\\n", "\n").replace("\\0", "\u0003"),
                        lines.subList(3, lines.size())));
            }
        }
        return cases.stream();
    }

    /** The page is well-formed XML with a blank for every item, no script, and nothing fetched. */
    @Test
    void thePageIsCleanAndHasABlankForEveryItem() throws Exception {
        String page = SheetHtml.text(SHEET);
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(page)));
        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("Commissioning sheet: Test <van>, \"small\" & plain");
        assertThat(document.getElementsByTagName("script").getLength()).isZero();
        long rows = SHEET.items().count() + SHEET.steps().size();
        assertThat(document.getElementsByTagName("tr").getLength()).isEqualTo((int) rows);
        assertThat(page.replace("http://www.w3.org/1999/xhtml", "")).doesNotContain("http", "src=", "href=", "@import");
        assertThat(page).contains("Not a code check; have it inspected by a licensed person.");
    }
}
