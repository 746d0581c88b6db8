package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.io.InputException;
import ampdays.io.ScenarioReader;
import ampdays.scenario.KnobText;
import ampdays.scenario.ScenarioFile;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Sweeps as a user meets them. What is compared are identities of the program with itself: no outside source. */
class SweepCommandTest extends CommandRun {
    private static final String DEMO = "scenarios/desert-survey.yaml";

    /** The capacities of the sweep that is killed and resumed. */
    private static final String MANY = "battery.capacity=201..600 Ah step 1 Ah";

    @TempDir
    private Path folder;

    private int sweep(Path into, String... more) {
        List<String> words = new ArrayList<>(List.of("sweep", DEMO, "--out", into.toString()));
        words.addAll(List.of(more));
        return run(words.toArray(String[]::new));
    }

    @Test
    void aCellEqualsTheSingleRunToTheLastDigit() throws IOException {
        Path swept = folder.resolve("swept");
        assertThat(sweep(swept, "--vary", "option=less heat, second alternator", "--vary", "solar.power=0.4, 0.75 kW"))
                .as(err.toString())
                .isZero();
        List<Map<String, String>> cells = rows(swept.resolve("sweep.csv"));
        assertThat(cells).hasSize(4);
        for (Map<String, String> cell : cells) {
            Path single = folder.resolve("single-" + cell.get("row"));
            assertThat(run(
                            "run",
                            DEMO,
                            "--option",
                            cell.get("option"),
                            "--set",
                            "solar.power=" + cell.get("solar.power (kW)") + " kW",
                            "--out",
                            single.toString()))
                    .isZero();
            Map<String, String> alone = rows(single.resolve("options.csv")).get(0);
            alone.remove("option");
            assertThat(alone).hasSizeGreaterThan(50);
            assertThat(cell).containsAllEntriesOf(alone);
        }
        assertThat(cells.get(0).keySet()).startsWith("row", "option", "solar.power (kW)", "days to empty (days)");
    }

    @Test
    void theNumberOfWorkersDoesNotShow() throws IOException {
        String[] vary = {
            "--vary", "battery.capacity=200..640 Ah step 10 Ah", "--vary", "cabin.set.asleep=24, 26 °C", "-j"
        };
        for (String workers : List.of("1", "2", "8")) {
            Path into = folder.resolve(workers);
            assertThat(sweep(
                            into,
                            Stream.concat(Stream.of(vary), Stream.of(workers)).toArray(String[]::new)))
                    .as(err.toString())
                    .isZero();
            for (String file : List.of("sweep.csv", "sweep.json", "days-to-empty.svg")) {
                assertThat(into.resolve(file))
                        .hasSameBinaryContentAs(folder.resolve("1").resolve(file));
            }
        }
        assertThat(rows(folder.resolve("8/sweep.csv"))).hasSize(90);
    }

    @Test
    void togetherVariesInStep() throws IOException {
        assertThat(sweep(
                        folder,
                        "--vary",
                        "battery.capacity=300, 600 Ah",
                        "--vary",
                        "solar.power=400, 800 W",
                        "--together"))
                .isZero();
        List<Map<String, String>> cells = rows(folder.resolve("sweep.csv"));
        assertThat(cells).hasSize(2);
        assertThat(cells.get(1)).containsEntry("battery.capacity (Ah)", "600").containsEntry("solar.power (W)", "800");
    }

    /** A sweep that the scenario keeps is the sweep of the same words in the line; a wrong one is told with its place. */
    @Test
    void namedSweepsAreKeptInTheScenario() throws IOException {
        String demo = Files.readString(Path.of(DEMO));
        String weather = folder.toAbsolutePath()
                .relativize(Path.of("weather-profiles/low-desert-summer.csv").toAbsolutePath())
                .toString();
        String text = demo.replace("../weather-profiles/low-desert-summer.csv", weather)
                + "sweeps:\n  bank: {battery.capacity: 300..500 Ah step 100 Ah, option: all}\n";
        Path kept = folder.resolve("kept.yaml");
        Files.writeString(kept, text);
        Path a = folder.resolve("a");
        Path b = folder.resolve("b");
        assertThat(run("sweep", kept.toString(), "--named", "bank", "--out", a.toString()))
                .as(err.toString())
                .isZero();
        assertThat(sweep(b, "--vary", "battery.capacity=300..500 Ah step 100 Ah", "--vary", "option=all"))
                .isZero();
        assertThat(a.resolve("sweep.csv")).hasSameBinaryContentAs(b.resolve("sweep.csv"));
        assertThat(run("sweep", kept.toString(), "--named", "sun")).isEqualTo(2);
        assertThat(err.toString()).contains("There is no sweep \"sun\"", "Its sweeps: \"bank\".");
        Files.writeString(kept, text.replace("500 Ah step", "500 kg step"));
        err.getBuffer().setLength(0);
        assertThat(run("check", kept.toString())).isEqualTo(2);
        assertThat(err.toString())
                .matches("kept\\.yaml:\\d+:\\d+: Sweep \"bank\": battery\\.capacity \"500 kg\" is a mass\\. .*\\R");
    }

    @Test
    void screenAndSummaryTellTheSame() {
        assertThat(sweep(folder, "--vary", "option=all")).isZero();
        String screen = out.toString();
        assertThat(screen).contains("Of 5 designs 1 holds; 4 are empty", "By option:", "second alternator: holds");
        out.getBuffer().setLength(0);
        assertThat(run("sweep", "--summary", folder.resolve("sweep.csv").toString()))
                .isZero();
        assertThat(screen).contains(out.toString());
    }

    /** The process is ended by the system's kill, which it cannot notice, at random sizes of its table. */
    @Test
    void aKilledSweepEndsWithTheSameBytesWhenResumed() throws IOException, InterruptedException {
        Path whole = folder.resolve("whole");
        Path killed = folder.resolve("killed");
        assertThat(sweep(whole, "--vary", MANY)).as(err.toString()).isZero();
        long size = Files.size(whole.resolve("sweep.csv"));
        Random random = new Random(20261125);
        Path partial = killed.resolve("sweep.partial.csv");
        int kills = 0;
        for (long end = random.nextInt(20_000);
                kills < 20 && end < size;
                end += 8_192 + random.nextInt((int) (size / 20) - 8_192)) {
            kills += kill(child(killed), partial, end) ? 1 : 0;
        }
        assertThat(kills).isEqualTo(20);
        assertThat(sweep(killed, "--vary", MANY)).isEqualTo(2);
        assertThat(err.toString()).contains("rows of an unfinished sweep. Add --resume to go on with it, or --replace");
        assertThat(sweep(killed, "--vary", "battery.capacity=201..601 Ah step 1 Ah", "--resume"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("was begun with another scenario, weather or values to vary");
        assertThat(sweep(killed, "--vary", MANY, "--resume")).as(err.toString()).isZero();
        // the chart of the one is of rows as they were kept, that of the other of rows that were read again
        for (String file : List.of("sweep.csv", "sweep.json", "lines.svg")) {
            assertThat(killed.resolve(file)).hasSameBinaryContentAs(whole.resolve(file));
        }
        assertThat(partial).doesNotExist();
        assertThat(sweep(killed, "--vary", MANY, "--resume")).isZero();
        assertThat(killed.resolve("sweep.csv")).hasSameBinaryContentAs(whole.resolve("sweep.csv"));
    }

    /** Of a finished sweep nothing is lost to another; the same again takes away what it does not make this time. */
    @Test
    void aFinishedSweepGivesWayOnlyToItself() throws IOException {
        String[] old = {"--vary", "battery.capacity=300, 600 Ah", "--vary", "option=as it is, more solar"};
        String[] other = {"--vary", "battery.capacity=200, 300, 400 Ah"};
        assertThat(sweep(
                        folder,
                        Stream.concat(Stream.of(old), Stream.of("--front")).toArray(String[]::new)))
                .as(err.toString())
                .isZero();
        Path own = Files.writeString(folder.resolve("front-door.csv"), "not of a sweep");
        assertThat(folder.resolve("front.csv")).exists();
        byte[] table = Files.readAllBytes(folder.resolve("sweep.csv"));
        byte[] study = Files.readAllBytes(folder.resolve("sweep.json"));
        for (String resume : List.of("", "--resume")) {
            String[] words = Stream.concat(Stream.of(other), Stream.of(resume))
                    .filter(word -> !word.isEmpty())
                    .toArray(String[]::new);
            err.getBuffer().setLength(0);
            assertThat(sweep(folder, words)).isEqualTo(2);
            assertThat(err.toString().strip())
                    .isEqualTo(folder.resolve("sweep.csv")
                            + ": has 4 rows of a sweep of other values, or of this scenario or weather before a change."
                            + " Give another --out, or add --replace to write over it.");
        }
        assertThat(folder.resolve("sweep.csv")).hasBinaryContent(table);
        assertThat(folder.resolve("sweep.json")).hasBinaryContent(study);
        assertThat(folder.resolve("front.csv")).exists();
        assertThat(sweep(folder, old)).as(err.toString()).isZero();
        assertThat(folder.resolve("sweep.csv")).hasBinaryContent(table);
        assertThat(folder).isDirectoryContaining(file -> file.endsWith("lines.svg"));
        assertThat(folder)
                .isDirectoryNotContaining(file -> file.getFileName().toString().startsWith("front."));
        assertThat(sweep(folder, "--vary", "option=more solar", "--replace", "--resume"))
                .isEqualTo(2);
        assertThat(folder.resolve("sweep.csv")).hasBinaryContent(table);
        assertThat(sweep(folder, "--vary", "option=more solar", "--replace"))
                .as(err.toString())
                .isZero();
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactlyInAnyOrder(own, folder.resolve("sweep.csv"), folder.resolve("sweep.json"));
        }
    }

    /** Divided by hand. */
    @ParameterizedTest
    @CsvSource({
        "3600, 1000, 2, 30 minutes on 2 cores",
        "7200, 1000, 2, 1 hour on 2 cores",
        "7200, 1, 2, 2 hours on one core",
        "61, 4, 8, 1 minute on 4 cores",
        "259200, 1, 1, 3 days on one core"
    })
    void moreWorkersThanCoresBringNothing(double coreSeconds, int workers, int cores, String told) {
        assertThat(SweepCommand.work(coreSeconds, workers, cores)).isEqualTo(told);
    }

    /** Sweeps over the same knobs, such as two examples of the README, do not meet in one folder. */
    @Test
    void foldersAreNamedAfterTheEndsOfNumbers() throws IOException, InputException {
        ScenarioFile file = ScenarioReader.read(Path.of(DEMO));
        assertThat(List.of(
                        "battery.capacity=200..800 Ah step 50 Ah",
                        "battery.capacity=300..900 Ah step 100 Ah",
                        "solar.power=0.4, 0.75 kW",
                        "trip.reserve=20 %"))
                .extracting(knob ->
                        SweepCommand.folderName(List.of(KnobText.read(knob, file), KnobText.read("option=all", file))))
                .containsExactly(
                        "sweep-battery-capacity-200-800-ah-option",
                        "sweep-battery-capacity-300-900-ah-option",
                        "sweep-solar-power-0-4-0-75-kw-option",
                        "sweep-trip-reserve-20-option");
    }

    private static Process child(Path into) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "sweep",
                        DEMO,
                        "--vary",
                        MANY,
                        "--resume",
                        "-j",
                        "1",
                        "--out",
                        into.toString())
                .redirectErrorStream(true)
                .redirectOutput(new File(into + ".log"))
                .start();
    }

    /** Whether the process was still at work when its table had grown to a size. */
    private static boolean kill(Process process, Path table, long bytes) throws IOException, InterruptedException {
        while (process.isAlive() && !(Files.exists(table) && Files.size(table) >= bytes)) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
        boolean atWork = process.isAlive();
        process.destroyForcibly().waitFor();
        return atWork;
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaidPlainly() throws IOException {
        Path blocked = folder.resolve("file");
        Files.writeString(blocked, "not a folder");
        assertThat(sweep(blocked.resolve("results"), "--vary", "option=all")).isEqualTo(4);
        assertThat(err.toString()).startsWith("Cannot write ").doesNotContain("Exception");
    }

    /** A design that cannot be keeps its row, with the reason; the others run. */
    @Test
    void impossibleCombinationsAreToldInTheirRows() throws IOException {
        assertThat(sweep(folder, "--vary", "cabin.comfort.low=10, 22 °C", "--vary", "cabin.comfort.high=24, 20 °C"))
                .as(err.toString())
                .isZero();
        List<Map<String, String>> cells = rows(folder.resolve("sweep.csv"));
        assertThat(cells.get(3).get("why impossible")).isNotEmpty();
        assertThat(cells.get(3).get("days to empty (days)")).isEmpty();
        assertThat(cells.get(3).get("holds")).isEmpty();
        assertThat(cells.subList(0, 3))
                .allMatch(cell -> cell.get("why impossible").isEmpty());
        assertThat(out.toString()).contains("1 is impossible");
    }

    static Stream<Arguments> wrong() throws IOException {
        String text = new String(
                SweepCommandTest.class
                        .getResourceAsStream("/ampdays/wrong-sweeps.txt")
                        .readAllBytes(),
                StandardCharsets.UTF_8);
        return Arrays.stream(text.split("\n\n", -1)).skip(1).map(block -> {
            String[] lines = block.strip().split("\n", 2);
            return Arguments.of(lines[0], lines[1]);
        });
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void wrongSweepsAreRefusedWithTheseWords(String words, String message) {
        Path into = folder.resolve("results");
        assertThat(sweep(into, words.split("\\|", -1))).isEqualTo(2);
        assertThat(err.toString().strip()).isEqualTo(message);
        assertThat(into).doesNotExist();
    }

    private static final String NINE = IntStream.rangeClosed(1, 8)
            .mapToObj(i -> "  solar " + i + ": {solar.power: " + i + "00 W}\n")
            .collect(Collectors.joining());

    static Stream<Arguments> noMaps() {
        return Stream.of(
                Arguments.of(
                        "",
                        "",
                        "A break-even map says which option wins, but van.yaml has one design only. Write another under"
                                + " \"options\", like more solar: {solar.power: 900 W}."),
                Arguments.of(
                        "",
                        NINE,
                        "A break-even map shows at most 8 options, the design as it is among them, but van.yaml has 9."
                                + " Take some away, or vary with --vary option=all."),
                Arguments.of(
                        "drive",
                        "  more solar: {solar.power: 900 W}\n",
                        "With weather-offset -5 K, trip.parked-days 0, trip.drive-hours 4.0 h/day, option as it is:"
                                + " trip.drive-hours makes drives longer, but the timetable has none: write a line like"
                                + " 17:00 drive highway, aboard."));
    }

    /** Scenarios of which no map can be made: one option, too many, a timetable without a drive. */
    @ParameterizedTest
    @MethodSource("noMaps")
    void breakEvenMapsThatCannotBeAreRefusedWithTheseWords(String leftOut, String options, String message)
            throws IOException {
        Path van = StudiedVan.in(folder, "{}", options.isEmpty() ? "  none: {}\n" : options);
        String text = Files.readString(van);
        text = options.isEmpty() ? text.substring(0, text.indexOf("options:")) : text;
        Files.writeString(
                van,
                text.lines()
                        .filter(line -> leftOut.isEmpty() || !line.contains("- ") || !line.contains(leftOut))
                        .collect(Collectors.joining("\n")));
        Path into = folder.resolve("results");
        assertThat(run("sweep", van.toString(), "--break-even", "--out", into.toString()))
                .isEqualTo(2);
        assertThat(err.toString().replace(folder + "/", "").strip()).isEqualTo(message);
        assertThat(into).doesNotExist();
    }
}
