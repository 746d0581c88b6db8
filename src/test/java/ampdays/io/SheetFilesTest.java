package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import ampdays.commission.Conditions;
import ampdays.commission.Judge;
import ampdays.commission.Sheet;
import ampdays.commission.SmallSheet;
import ampdays.commission.Sunlight;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

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

    /** By definition: the day in the heading is the day that the sheet was made for. */
    @Test
    void eachWayToTellTheSunComesBack() throws Exception {
        for (Sunlight sun : List.of(
                Sunlight.NOT_TOLD,
                Sunlight.parse(Optional.of("812.5 W/m²"), Optional.empty()),
                Sunlight.parse(Optional.of("812.5 W/m² horizontal"), Optional.of("2026-07-14 13:05")),
                Sunlight.parse(Optional.empty(), Optional.of("2026-07-14 13:05")))) {
            Conditions told = new Conditions(34, 60, 0.6, sun);
            Sheet sheet = new Sheet("t", "as it is", told, SHEET.steps(), List.of());
            assertThat(SheetReader.open(written(SheetCsv.text(sheet))).conditions())
                    .isEqualTo(told);
        }
    }

    /** By logic: what somebody noted in a column of his own, at the end or between, is not ours to read or refuse. */
    @Test
    void addedColumnsChangeNothing() throws IOException, InputException {
        StringBuilder atEnd = new StringBuilder();
        StringBuilder between = new StringBuilder();
        FILLED.lines().forEach(line -> {
            boolean heading = line.startsWith("id,");
            boolean told = line.startsWith("#");
            atEnd.append(line)
                    .append(told ? "" : heading ? ",torque" : ",25 Nm")
                    .append('\n');
            between.append(told ? line : line.replaceFirst(",", heading ? ",by," : ",7,"))
                    .append('\n');
        });
        assertThat(read(atEnd.toString())).isEqualTo(read(FILLED));
        assertThat(read(between.toString())).isEqualTo(read(FILLED));
    }

    /** By logic: spreadsheets leave rows of separators behind. */
    @Test
    void rowsOfBlankCellsAreNoReadings() throws IOException, InputException {
        assertThat(read(FILLED + ",,,,,,,,,,,,\n")).isEqualTo(read(FILLED));
    }

    /** By logic: a number cut in two by its comma shifts the added cell beyond the names. */
    @Test
    void aNumberCutInTwoIsFoundBesideAnAddedColumn() throws IOException {
        Path file =
                written(FILLED.replace(",reading,note", ",reading,note,torque").replace(",13.2,", ",13,2,,25 Nm"));
        InputException refused = catchThrowableOfType(
                InputException.class, () -> SheetReader.open(file).readings(SHEET));
        assertThat(refused)
                .hasMessage("sheet.csv:11: cells in this row: 14; names above: 13. Write numbers with a point, or put"
                        + " quotation marks around the cell.");
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void eachMistakeGetsItsMessages(Mistake wrong) throws IOException {
        String text = wrong.in(FILLED);
        Path file = written(text);
        InputException refused = catchThrowableOfType(InputException.class, () -> {
            SheetReader reader = SheetReader.open(file);
            reader.conditions();
            reader.option();
            reader.readings(SHEET);
        });
        assertThat(refused.problems().stream().map(InputProblem::toString)).containsExactlyElementsOf(wrong.messages());
    }

    static Stream<Mistake> mistakes() {
        return Mistake.of("wrong-sheets.txt");
    }

    /** By the band of the small sheet: 13.2 V passes, 94 °C passes, 190 mV at 96 A pass, 450 mV are a stop. */
    @Test
    void whatIsJudgedIsWrittenLineByLine() throws IOException, InputException {
        Map<String, Double> readings = read(FILLED.replace(",0.19 V,", ",0.45 V,"));
        String table = JudgementCsv.text(SHEET, Judge.of(SHEET, readings));
        List<String> lines = table.lines().toList();
        assertThat(lines).hasSize(1 + (int) SHEET.items().count());
        assertThat(lines.get(0))
                .isEqualTo(
                        "id,step,what,where,unit,predicted,pass from,pass to,stop below,stop above,reading,outcome,likely"
                                + " causes,next reading");
        assertThat(lines.get(1)).startsWith("look.cables,Look,All well?,by eye,yes or no,yes,yes,yes,yes,,yes,pass,");
        assertThat(lines.get(2)).isEqualTo("look.codes,Look,All well?,by eye,yes or no,yes,yes,yes,,,,not read,,");
        assertThat(lines.get(3))
                .isEqualTo(
                        "rest.voltage,At rest,Reading of rest.voltage,somewhere,V,13.22,13.11,13.36,12.99,13.49,13.2,"
                                + "pass,,");
        // 340 mV at 100 A are 326 mV at the 96 A that were read
        assertThat(lines.get(5))
                .startsWith("hot.cable,Hot,Reading of hot.cable,somewhere,mV,200,,250,,326,450,stop,")
                .contains("a loose");
    }

    @Test
    void programsReadTheSheetAndTheJudgementAsJson() throws IOException, InputException {
        StringWriter sheet = new StringWriter();
        SheetJson.write(sheet, SHEET);
        JsonNode made = new ObjectMapper().readTree(sheet.toString());
        assertThat(made.path("title").asText()).isEqualTo(SHEET.title());
        assertThat(made.path("conditions").path("ambientC").asDouble()).isEqualTo(34);
        JsonNode cable = made.path("steps").path(2).path("items").path(1);
        assertThat(cable.path("id").asText()).isEqualTo("hot.cable");
        assertThat(cable.path("passFrom").isNull()).isTrue();
        assertThat(cable.path("stopAbove").asDouble()).isEqualTo(340);
        assertThat(cable.path("scalesWith").asText()).isEqualTo("hot.current");
        JsonNode question = made.path("steps").path(0).path("items").path(1);
        assertThat(question.path("pass").asText()).isEqualTo("yes");
        assertThat(question.path("stop").isNull()).isTrue();

        StringWriter judged = new StringWriter();
        SheetJson.write(judged, SHEET, Judge.of(SHEET, read(FILLED.replace(",0.19 V,", ",0.45 V,"))));
        JsonNode said = new ObjectMapper().readTree(judged.toString());
        assertThat(said.path("stopStands").asBoolean()).isTrue();
        assertThat(said.path("readings")).hasSize(6);
        JsonNode hot = said.path("readings").path(3);
        assertThat(hot.path("reading").asDouble()).isEqualTo(450);
        assertThat(hot.path("stopAbove").asDouble()).isEqualTo(326);
        assertThat(hot.path("outcome").asText()).isEqualTo("stop");
        assertThat(hot.path("causes").size()).isPositive();
        assertThat(hot.path("next").asText()).isNotEmpty();
        assertThat(said.path("notRead")).hasSize(2);
    }
}
