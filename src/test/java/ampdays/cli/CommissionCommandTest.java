package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commissioning sheet as a user meets it: screen, files, exit codes. */
class CommissionCommandTest extends CommandRun {
    private static final String DEMO = "scenarios/desert-survey.yaml";
    private static final List<String> DAY = List.of(
            "--option",
            "second alternator",
            "--ambient",
            "34 °C",
            "--under-bonnet",
            "60 °C",
            "--soc",
            "40 %",
            "--sun",
            "800 W/m²");

    @TempDir
    private Path folder;

    private int make(Path to) {
        List<String> args = new ArrayList<>(List.of("commission", DEMO, "--out", to.toString()));
        args.addAll(DAY);
        return run(args.toArray(String[]::new));
    }

    private int judge(Path sheet) {
        out.getBuffer().setLength(0);
        return run("commission", DEMO, "--read", sheet.toString());
    }

    /** Types readings into a sheet; what is not named is typed as predicted, questions as yes. */
    private Path filled(Map<String, String> readings) throws IOException {
        String text = Files.readString(folder.resolve("sheet.csv"))
                .lines()
                .map(line -> filled(line, readings))
                .collect(Collectors.joining("\n"));
        return Files.writeString(folder.resolve("filled.csv"), text);
    }

    private static String filled(String line, Map<String, String> readings) {
        if (line.startsWith("#") || line.startsWith("id,")) {
            return line;
        }
        String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
        String typed = readings.getOrDefault(cells[0], cells[5].isEmpty() ? "0.1" : cells[5]);
        cells[10] = cells[0].equals("cooling.split") ? "12" : typed;
        return String.join(",", cells);
    }

    @Test
    void aSheetIsShownAndWrittenTheSameEachTime() throws IOException {
        assertThat(make(folder)).isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(out.toString())
                .contains("Not a code check; have it inspected by a licensed person.")
                .contains("Resting voltage")
                .contains("Hot soak at fast idle")
                .contains("Never by pulling a cable");
        assertThat(make(folder.resolve("again"))).isZero();
        for (String name : List.of("sheet.csv", "sheet.html", "sheet.pdf", "sheet.json")) {
            assertThat(folder.resolve("again").resolve(name)).hasSameBinaryContentAs(folder.resolve(name));
        }
    }

    @Test
    void aSheetIsNeverWrittenOver() throws IOException {
        Files.writeString(folder.resolve("sheet.csv"), "filled in by hand");
        assertThat(make(folder)).isEqualTo(2);
        assertThat(err.toString()).contains("sheet.csv exists already.");
        assertThat(folder.resolve("sheet.csv")).hasContent("filled in by hand");
        for (String name : List.of("sheet.html", "sheet.pdf", "sheet.json")) {
            assertThat(folder.resolve(name)).doesNotExist();
        }
    }

    /** By definition: what was predicted passes. */
    @Test
    void readingsAsPredictedPass() throws IOException {
        make(folder);
        Path sheet = filled(Map.of());
        byte[] before = Files.readAllBytes(sheet);
        assertThat(judge(sheet)).as(out.toString()).isZero();
        assertThat(out.toString())
                .contains("No stop stands; the sheet is complete.")
                .doesNotContain("Investigate:");
        assertThat(Files.readAllBytes(sheet)).isEqualTo(before);
    }

    /** Common practice, no source: a joint that drops 300 mV is a stop, and is sought before a breaker is blamed. */
    @Test
    void aStopStandsWithItsCausesAndItsOwnExitCode() throws IOException {
        make(folder);
        Path sheet = filled(Map.of("joint.worst", "300.4", "hot.cable", "700", "second.idle", "60"));
        assertThat(judge(sheet)).isEqualTo(3);
        assertThat(out.toString())
                .contains("Stop:")
                .contains("joint.worst: The worst single joint 300.4 mV; pass at most ")
                .contains("; stop above ")
                .contains("1. a loose nut, a washer under the lug, dirt or paint between the faces")
                .contains(
                        "Next, to tell 1 from 2: The same millivolts after cleaning and tightening to the maker's torque.")
                .contains("Investigate:")
                .contains("another reading")
                .contains("A stop stands");
    }

    @Test
    void theJudgementIsWrittenBesideTheScreenAndNeverOver() throws IOException {
        make(folder);
        Path sheet = filled(Map.of("joint.worst", "300"));
        out.getBuffer().setLength(0);
        Path judged = folder.resolve("judged");
        assertThat(run("commission", DEMO, "--read", sheet.toString(), "--out", judged.toString()))
                .isEqualTo(3);
        assertThat(out.toString()).contains("Stop:", "Wrote " + judged.resolve("judgement.csv"));
        assertThat(judged.resolve("judgement.csv")).content().contains("joint.worst", ",300,stop,");
        byte[] json = Files.readAllBytes(judged.resolve("judgement.json"));
        out.getBuffer().setLength(0);
        assertThat(run("commission", DEMO, "--read", sheet.toString(), "--json"))
                .isEqualTo(3);
        assertThat(out.toString().getBytes(StandardCharsets.UTF_8)).isEqualTo(json);
        assertThat(run("commission", DEMO, "--read", sheet.toString(), "--out", judged.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("judgement.csv exists already.");
        assertThat(judged.resolve("judgement.json")).hasBinaryContent(json);
    }

    @Test
    void aSheetOfAChangedDesignIsRefused() throws IOException {
        make(folder);
        Path sheet = filled(Map.of());
        Files.writeString(
                sheet, Files.readString(sheet).replace("# option: second alternator", "# option: bigger bank"));
        assertThat(judge(sheet)).isEqualTo(2);
        assertThat(err.toString())
                .contains("filled.csv:")
                .contains("but the scenario now gives")
                .contains("is not on the sheet of this van and day");
    }

    @Test
    void whatIsMissingOrImpossibleIsSaid() {
        assertThat(run("commission", DEMO)).isEqualTo(2);
        assertThat(run("commission", DEMO, "--ambient", "34", "--under-bonnet", "60 °C", "--soc", "60 %"))
                .isEqualTo(2);
        assertThat(run("commission", DEMO, "--ambient", "34 °C", "--under-bonnet", "20 °C", "--soc", "60 %"))
                .isEqualTo(2);
        assertThat(run("commission", DEMO, "--ambient", "34 °C", "--under-bonnet", "60 °C", "--soc", "160 %"))
                .isEqualTo(2);
        assertThat(run("commission", DEMO, "--read", "nowhere.csv", "--soc", "60 %"))
                .isEqualTo(2);
        assertThat(run("commission", DEMO, "--read", "nowhere.csv")).isEqualTo(4);
        assertThat(run(
                        "commission",
                        DEMO,
                        "--ambient",
                        "34 °C",
                        "--under-bonnet",
                        "60 °C",
                        "--soc",
                        "60 %",
                        "--paper",
                        "A3"))
                .isEqualTo(2);
        for (List<String> sun : List.of(
                List.of("--sun", "600 W/m² horizontal"),
                List.of("--at", "noon"),
                List.of("--at", "9999-06-21 13:00"),
                List.of("--sun", "8000 W/m²"),
                List.of("--at", "2026-07-14 03:00"))) {
            List<String> args = new ArrayList<>(
                    List.of("commission", DEMO, "--ambient", "34 °C", "--under-bonnet", "60 °C", "--soc", "60 %"));
            args.addAll(sun);
            assertThat(run(args.toArray(String[]::new))).isEqualTo(2);
        }
        assertThat(run(
                        "commission",
                        DEMO,
                        "--option",
                        "more sun",
                        "--ambient",
                        "34 °C",
                        "--under-bonnet",
                        "60 °C",
                        "--soc",
                        "60 %"))
                .isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString().lines())
                .containsExactly(
                        "The sheet is made for a day: --ambient is missing. Write it like: --ambient \"34 °C\""
                                + " --under-bonnet \"60 °C\" --soc \"60 %\" --sun \"800 W/m²\".",
                        "--ambient \"34\" has no unit. Write 34 °C, or 93 °F.",
                        "--under-bonnet \"20 °C\": air under the bonnet is colder than the air outside; read it with the"
                                + " engine warm.",
                        "--soc \"160 %\" is out of range. It must lie from 0 % to 100 %.",
                        "--read takes option and conditions from the sheet. Leave other options than --out and --json"
                                + " out.",
                        "nowhere.csv: there is no such file. Check the path.",
                        "--paper \"A3\" is not one of its choices: A4, letter.",
                        "--sun \"600 W/m² horizontal\" depends on the sun's height. Tell the time too (at), such as"
                                + " 2026-07-14 13:00.",
                        "--at \"noon\" is not a date and a time of day. Write it like: \"2026-07-14 13:00\".",
                        "--at \"9999-06-21 13:00\" is out of range. Its year must lie from 1950 to 2100.",
                        "--sun \"8000 W/m²\" is out of range. It must lie from 0 W/m² to 1400 W/m².",
                        "No sheet can be made: at 2026-07-14 03:00 the sun stands 25° below the horizon there, too low to"
                                + " judge panels. Take a time with the sun at least 10° high.",
                        "There is no option \"more sun\" in scenarios/desert-survey.yaml. Its options: \"as it is\", \"more"
                                + " solar\", \"bigger bank\", \"second alternator\", \"less heat\".");
    }
}
