package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands as a user meets them: what is printed, what is written, the exit code. */
class CommandLineTest extends CommandRun {
    private static final String DEMO = "scenarios/desert-survey.yaml";

    @TempDir
    private Path folder;

    @Test
    void helpNamesEveryCommand() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString())
                .contains(
                        "new",
                        "check",
                        "run",
                        "compare",
                        "sweep",
                        "size",
                        "chances",
                        "matters",
                        "failures",
                        "wiring",
                        "proposal",
                        "audit",
                        "commission",
                        "reconcile",
                        "weather",
                        "presets",
                        "Exit codes");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void aWrongCommandIsAnsweredInOneLineWithASuggestion() {
        assertThat(run("compair", DEMO)).isEqualTo(2);
        assertThat(err.toString()).contains("compair").contains("compare").doesNotContain("\tat ");
    }

    @Test
    void aMissingFileHasItsOwnExitCode() {
        assertThat(run("check", "nowhere.yaml")).isEqualTo(4);
        assertThat(err.toString()).isEqualTo("nowhere.yaml: there is no such file. Check the path." + nl());
    }

    /** What cannot be printed is not passed over in silence, as on a full disk. */
    @Test
    void lostOutputHasItsOwnExitCode() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        PrintWriter lost = new PrintWriter(new Screen(full), true, StandardCharsets.UTF_8);
        assertThat(Main.run(lost, new PrintWriter(err), "--version")).isEqualTo(4);
        assertThat(err.toString()).isEqualTo("Not all could be written to standard output. Is the disk full?" + nl());
    }

    /** A reader that has seen enough is no trouble; what it has not read goes nowhere. */
    @Test
    void aReaderThatStopsIsNoTrouble() {
        int[] written = new int[1];
        OutputStream head = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                if (++written[0] > 8) {
                    throw new IOException("Broken pipe");
                }
            }
        };
        PrintWriter read = new PrintWriter(new Screen(head), true, StandardCharsets.UTF_8);
        assertThat(Main.run(read, new PrintWriter(err), "presets")).isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(written[0]).isEqualTo(9);
    }

    @Test
    void whyIsNotPassedOverWhereNothingIsRun() {
        assertThat(run("run", DEMO, "--show", "--why")).isEqualTo(2);
        assertThat(err.toString()).isEqualTo("--why needs the run that --show leaves out. Give one of them." + nl());
    }

    @Test
    void aWrongScenarioIsToldWithItsPlacesAndNothingIsWritten() throws IOException {
        Path file = folder.resolve("wrong.yaml");
        Files.writeString(file, Files.readString(Path.of(DEMO)).replace("500 Ah (datasheet)", "500"));
        Path results = folder.resolve("results");
        assertThat(run("compare", file.toString(), "--out", results.toString())).isEqualTo(2);
        assertThat(err.toString())
                .contains("wrong.yaml:")
                .contains("battery.capacity")
                .contains("Write 500 Ah");
        assertThat(out.toString()).isEmpty();
        assertThat(results).doesNotExist();
    }

    @Test
    void weatherThatDoesNotCoverTheTripIsRefused() throws IOException {
        String weather = Path.of("weather-profiles/low-desert-summer.csv")
                .toAbsolutePath()
                .toString();
        Path file = folder.resolve("winter.yaml");
        String relative = folder.toAbsolutePath().relativize(Path.of(weather)).toString();
        Files.writeString(
                file,
                Files.readString(Path.of(DEMO))
                        .replace("../weather-profiles/low-desert-summer.csv", relative)
                        .replace("start: 07-08", "start: 12-20"));
        assertThat(run("check", file.toString())).isEqualTo(2);
        assertThat(err.toString())
                .contains("low-desert-summer.csv covers 05-01 to 09-30")
                .contains("2025-12-20");
    }

    @Test
    void dirtThatNoRainInTheFileCanMoveIsRemarked() throws IOException {
        Path file = folder.resolve("dusty.yaml");
        Path weather = Path.of("weather-profiles/low-desert-summer.csv").toAbsolutePath();
        Files.writeString(
                file,
                Files.readString(Path.of(DEMO))
                        .replace(
                                "../weather-profiles/low-desert-summer.csv",
                                folder.toAbsolutePath().relativize(weather).toString())
                        .replace("power: 400 W}", "power: 400 W, dirt-a-day: 0.2 %}"));
        assertThat(run("check", file.toString())).isZero();
        assertThat(out.toString())
                .contains("low-desert-summer.csv: no rain is in the file, so solar.dirt-a-day has no effect.");
    }

    @Test
    void anUnknownOptionListsTheKnownOnes() {
        assertThat(run("run", DEMO, "--option", "third alternator")).isEqualTo(2);
        assertThat(err.toString())
                .startsWith("There is no option \"third alternator\"")
                .contains("\"second alternator\"");
    }

    @Test
    void newWritesAScenarioThatChecksAndNeverOverwrites() throws IOException {
        Path file = folder.resolve("my-van.yaml");
        String weather = Path.of("weather-profiles/low-desert-summer.csv")
                .toAbsolutePath()
                .toString();
        assertThat(run("new", file.toString(), "--weather", weather)).isZero();
        assertThat(run("check", file.toString())).as(err.toString()).isZero();
        String before = Files.readString(file);
        assertThat(run("new", file.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("exists already");
        assertThat(Files.readString(file)).isEqualTo(before);
    }

    @Test
    void auditWritesLoadsThatAScenarioTakesInAndNeverOverwrites() throws IOException {
        Path readings = folder.resolve("readings.csv");
        Path loads = folder.resolve("loads.yaml");
        assertThat(run("audit", "--example", readings.toString())).isZero();
        assertThat(run("audit", readings.toString(), "--out", loads.toString()))
                .as(err.toString())
                .isZero();
        assertThat(Files.readString(loads)).contains("(measured: ±", "(practice");
        Path scenario = folder.resolve("van.yaml");
        String weather = Path.of("weather-profiles/low-desert-summer.csv")
                .toAbsolutePath()
                .toString();
        assertThat(run("new", scenario.toString(), "--weather", weather)).isZero();
        String starter = Files.readString(scenario);
        String withoutLoads =
                starter.substring(0, starter.indexOf("loads:")) + starter.substring(starter.indexOf("options:"));
        Files.writeString(scenario, "use: loads.yaml\n" + withoutLoads);
        assertThat(run("check", scenario.toString())).as(err.toString()).isZero();
        assertThat(run("run", scenario.toString(), "--show")).isZero();
        assertThat(out.toString()).containsPattern("loads\\.roof fan\\.draw .*measured");
        String before = Files.readString(loads);
        assertThat(run("audit", readings.toString(), "--out", loads.toString())).isEqualTo(2);
        assertThat(run("audit", "--example", readings.toString())).isEqualTo(2);
        assertThat(Files.readString(loads)).isEqualTo(before);
    }

    @Test
    void auditTellsAsJsonWhatItPrints() throws IOException {
        Path readings = folder.resolve("readings.csv");
        assertThat(run("audit", "--example", readings.toString())).isZero();
        out.getBuffer().setLength(0);
        assertThat(run("audit", readings.toString(), "--json")).isZero();
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertThat(json.get("draws")).hasSize(6);
        assertThat(json.get("draws").get(4).get("names").get(0).asText()).isEqualTo("water pump");
        // the example's own rows: 10.1 A with the pump, 4.8 A without, 14.2 A at its start
        assertThat(json.get("draws").get(4).get("drawA").asDouble()).isCloseTo(5.3, within(0.1));
        assertThat(json.get("draws").get(4).get("surgeA").asDouble()).isCloseTo(9.4, within(0.1));
        assertThat(json.get("day").get("hourAh")).hasSize(24);
    }

    @Test
    void showFillsInDefaultsWithTheirMarks() {
        assertThat(run("run", DEMO, "--option", "second alternator", "--show")).isZero();
        assertThat(out.toString())
                .containsPattern("second-alternator\\.rated +270 A +datasheet")
                .containsPattern("battery\\.reconnect +15 % +practice +default")
                .containsPattern("second-alternator\\.curve .*guess +preset large frame");
    }

    @Test
    void hotTestPrintsTheTagWithItsMethodAndItsCautions() {
        assertThat(run("run", DEMO, "--option", "second alternator", "--hot-test"))
                .as(err.toString())
                .isZero();
        assertThat(out.toString())
                .contains("second alternator (rated 270 A)", "DC-DC charger, into the bank (rated 40 A)")
                .contains("idle, 750 rpm", "fast idle, 1200 rpm", "cruise, 2200 rpm", "alternator heat")
                .contains("93 °C (200 °F)", "KKK-A-1822", "30 min", "to be confirmed by measurement", "Exhaust kills");
        assertThat(out.toString().lines().mapToInt(String::length).max().orElse(0))
                .isLessThanOrEqualTo(100);
    }

    @Test
    void compareScreenHasVerdictTableAndFiles() {
        assertThat(run("compare", DEMO, "--out", folder.toString()))
                .as(err.toString())
                .isZero();
        assertThat(out.toString())
                .contains("As it is, the van")
                .contains("days to 20 % (empty)", "lowest charge", "comfortable nights", "ruling limit")
                .contains("options.csv", "days.csv", "summary.json", "state-of-charge")
                .contains("not a code check");
        assertThat(out.toString().lines().mapToInt(String::length).max().orElse(0))
                .isLessThanOrEqualTo(100);
        assertThat(names(folder))
                .contains("options.csv", "days.csv", "summary.json", "state-of-charge.svg", "days-to-empty.png")
                .noneMatch(name -> name.endsWith(".tmp"));
    }

    @Test
    void whyTellsCausesAndTheCheapestChangeOfEachOptionThatFails() throws IOException {
        assertThat(run("compare", DEMO, "--why", "--out", folder.toString()))
                .as(err.toString())
                .isZero();
        assertThat(out.toString())
                .contains(
                        "Why \"as it is\" does not hold", "Why \"less heat\" does not hold", "cooling ", "other uses ")
                .contains("Cheapest single change that turns it: ", "(guess)", "USD")
                .doesNotContain("Why \"second alternator\"");
        assertThat(out.toString().lines().mapToInt(String::length).max().orElse(0))
                .isLessThanOrEqualTo(100);
        for (JsonNode option : new ObjectMapper()
                .readTree(folder.resolve("summary.json").toFile())
                .get("options")) {
            assertThat(option.has("causes")).isEqualTo(!option.get("holds").booleanValue());
            JsonNode better = option.get("betterPart");
            assertThat(fields(better))
                    .containsExactly(
                            "ruling",
                            "rulingHours",
                            "next",
                            "nextHours",
                            "daysToEmpty",
                            "holds",
                            "lowestSoc",
                            "comfortableNights",
                            "words");
            assertThat(out.toString().replaceAll("\\s+", " "))
                    .contains(better.get("words").textValue());
            assertThat(better.get("rulingHours").doubleValue())
                    .isEqualTo(option.get("limitHours")
                            .get(better.get("ruling").textValue())
                            .doubleValue());
        }
        JsonNode causes = new ObjectMapper()
                .readTree(folder.resolve("summary.json").toFile())
                .get("options")
                .get(0)
                .get("causes");
        assertThat(fields(causes)).containsExactly("drawWh", "usableWh", "shares", "changes");
        double sum = 0;
        for (JsonNode share : causes.get("shares")) {
            sum += share.doubleValue();
        }
        assertThat(sum).isCloseTo(1, within(1e-12));
        assertThat(fields(causes.get("changes").get(0)))
                .containsExactly(
                        "change",
                        "turns",
                        "price",
                        "perTrip",
                        "currency",
                        "priceFrom",
                        "lackWh",
                        "daysToEmpty",
                        "holds",
                        "comfortableNights");
    }

    @Test
    void whyGivesTheSameBytesAgain() throws IOException {
        Path first = folder.resolve("first");
        Path second = folder.resolve("second");
        run("run", DEMO, "--why", "--out", first.toString());
        run("run", DEMO, "--why", "--out", second.toString());
        assertThat(contents(second)).isEqualTo(contents(first));
    }

    /** README shows what the demo prints today: paste it anew when this fails. */
    @Test
    void readmeShowsTodaysScreen() throws IOException {
        assertThat(run("compare", DEMO, "--out", folder.toString())).isZero();
        String screen = out.toString().replace(nl(), "\n");
        String shown = screen.substring(0, screen.indexOf("\ncaution")).strip();
        assertThat(Files.readString(Path.of("README.md")).replace(nl(), "\n")).contains(shown);
    }

    @Test
    void jsonIsOneDocumentAndEqualsTheFile() throws IOException {
        assertThat(run("compare", DEMO, "--out", folder.toString(), "--json")).isZero();
        JsonNode printed = new ObjectMapper().readTree(out.toString());
        assertThat(printed)
                .isEqualTo(new ObjectMapper()
                        .readTree(folder.resolve("summary.json").toFile()));
        assertThat(printed.get("schemaVersion").asInt()).isEqualTo(1);
        assertThat(printed.get("scenario").asText()).isEqualTo("desert-survey");
        assertThat(printed.get("options")).hasSize(5);
        for (JsonNode option : printed.get("options")) {
            assertThat(fields(option))
                    .contains(
                            "name",
                            "daysToEmpty",
                            "holds",
                            "lowestSoc",
                            "lowestSocAt",
                            "comfortableNights",
                            "nights",
                            "energyWh",
                            "limitHours",
                            "fuelLitres",
                            "engineChargingHours",
                            "alternatorPeakCaseC",
                            "ledgerResidualWh");
            assertThat(fields(option.get("energyWh")))
                    .contains(
                            "solar",
                            "shore",
                            "factoryAlternator",
                            "secondAlternator",
                            "served",
                            "unserved",
                            "curtailed",
                            "losses");
            assertThat(option.get("ledgerResidualWh").asDouble()).isCloseTo(0, within(1e-4));
        }
    }

    private static List<String> fields(JsonNode node) {
        return node.properties().stream().map(Map.Entry::getKey).toList();
    }

    @Test
    void theSameInputsGiveTheSameBytes() throws IOException {
        Path first = folder.resolve("first");
        Path second = folder.resolve("second");
        run("compare", DEMO, "--out", first.toString());
        run("compare", DEMO, "--out", second.toString());
        assertThat(contents(second)).isEqualTo(contents(first));
    }

    @Test
    void runWritesMinutesOfOneOption() throws IOException {
        assertThat(run("run", DEMO, "--option", "less heat", "--minutes", "--out", folder.toString()))
                .isZero();
        List<String> minutes = Files.readAllLines(folder.resolve("minutes.csv"));
        assertThat(minutes).hasSize(14 * 1440 + 1);
        assertThat(minutes.get(0)).contains("state of charge (%)", "cabin air (°C)", "ruling limit");
        assertThat(minutes.get(1)).startsWith("2025-07-08T00:00");
    }

    @Test
    void weatherSaysWhatAFileHolds() {
        assertThat(run("weather", "weather-profiles/low-desert-summer.csv", "--out", folder.toString()))
                .isZero();
        assertThat(out.toString()).contains("UTC-07:00", "July", "hottest week", "kWh/m² a day", "°C");
        assertThat(names(folder)).contains("months.svg", "hottest-week.png");
    }

    @Test
    void weatherIsMadeFromNormalsTheSameWayEachTime() throws IOException {
        Path first = folder.resolve("first.csv");
        Path second = folder.resolve("second.csv");
        String normals = "weather-profiles/humid-coast-normals.csv";
        for (Path file : List.of(first, second)) {
            assertThat(run("weather", "make", normals, "--seed", "4", "--out", file.toString()))
                    .as(err.toString())
                    .isZero();
        }
        assertThat(second).hasSameBinaryContentAs(first);
        assertThat(Files.readString(first))
                .contains("Invented, not measured", "humid-coast-normals.csv", "seed 4")
                .hasLineCount(10 + 8760);
        assertThat(out.toString()).contains("365 days of invented weather from Humid coast");
        assertThat(run(
                        "weather",
                        first.toString(),
                        "--out",
                        folder.resolve("charts").toString()))
                .isZero();
        assertThat(out.toString()).contains("01-01 to 12-31 of any year").doesNotContain("caution");
    }

    @Test
    void madeWeatherServesAScenarioOverNewYear() throws IOException {
        Path weather = folder.resolve("summer.csv");
        assertThat(run(
                        "weather",
                        "make",
                        "weather-profiles/high-plateau-normals.csv",
                        "--seed",
                        "1",
                        "--from",
                        "12-15",
                        "--days",
                        "90",
                        "--out",
                        weather.toString()))
                .isZero();
        Path file = folder.resolve("van.yaml");
        Files.writeString(
                file,
                Files.readString(Path.of(DEMO))
                        .replace("../weather-profiles/low-desert-summer.csv", "summer.csv")
                        .replace("start: 07-08", "start: 12-26"));
        assertThat(run("check", file.toString())).as(err.toString()).isZero();
        assertThat(run("weather", weather.toString(), "--out", folder.toString()))
                .isZero();
        assertThat(out.toString()).contains("12-15 to 03-14 of any year");
    }

    @Test
    void fitGivesNormalsThatMakeTakes() throws IOException {
        Path year = folder.resolve("year.csv");
        Path normals = folder.resolve("normals.csv");
        run("weather", "make", "weather-profiles/low-desert-normals.csv", "--seed", "2", "--out", year.toString());
        assertThat(run("weather", "fit", year.toString(), "--out", normals.toString()))
                .isZero();
        assertThat(run(
                        "weather",
                        "make",
                        normals.toString(),
                        "--seed",
                        "2",
                        "--out",
                        folder.resolve("b.csv").toString()))
                .isZero();
        out.getBuffer().setLength(0);
        assertThat(run("weather", "fit", year.toString())).isZero();
        assertThat(out.toString()).isEqualTo(Files.readString(normals));
    }

    @Test
    void weatherNeverOverwritesAndSaysWhatItNeeds() throws IOException {
        Path file = folder.resolve("mine.csv");
        Files.writeString(file, "precious");
        String normals = "weather-profiles/low-desert-normals.csv";
        assertThat(run("weather", "make", normals, "--seed", "2", "--out", file.toString()))
                .isEqualTo(2);
        assertThat(run("weather", "fit", "weather-profiles/low-desert-summer.csv", "--out", file.toString()))
                .isEqualTo(2);
        assertThat(file).hasContent("precious");
        assertThat(run("weather", "make", normals, "--seed", "2", "--from", "1 May"))
                .isEqualTo(2);
        assertThat(run("weather", "make", normals, "--seed", "2", "--days", "366"))
                .isEqualTo(2);
        assertThat(run("weather", "make", normals)).isEqualTo(2);
        assertThat(run("weather", "fit", "weather-profiles/low-desert-summer.csv"))
                .isEqualTo(2);
        assertThat(run("weather")).isEqualTo(2);
        assertThat(err.toString())
                .contains("mine.csv exists already.")
                .contains("--from is \"1 May\"; expected are month and day in two digits each, such as 05-01.")
                .contains("--days is 366; expected is 1 to 365.")
                .contains("Missing required option: '--seed=N'")
                .contains(
                        "has fewer than 20 whole days in January, February, March, April, October, November, December")
                .contains("Missing: a weather FILE, or one of the commands make and fit.");
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaidPlainly() throws IOException {
        Path blocked = folder.resolve("file");
        Files.writeString(blocked, "not a folder");
        assertThat(run("compare", DEMO, "--out", blocked.resolve("results").toString()))
                .isEqualTo(4);
        assertThat(err.toString()).startsWith("Cannot write ").doesNotContain("Exception");
        assertThat(names(folder)).containsExactly("file");
    }

    private static List<String> names(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        for (String name : names(folder)) {
            contents.put(name, new String(Files.readAllBytes(folder.resolve(name)), StandardCharsets.ISO_8859_1));
        }
        return contents;
    }

    private static String nl() {
        return System.lineSeparator();
    }
}
