package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command as a user meets it. */
class ReconcileCommandTest {
    private static final String VAN = "scenarios/desert-survey.yaml";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Main.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    private Path write(String name, String text) throws IOException {
        return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    }

    /** Two days with 60 W used throughout, and 300 W of sun from 10 to 16 o'clock. */
    private Path log(String firstDay) throws IOException {
        StringBuilder log = new StringBuilder("Time,V,A,Sun (W),Charger state\n");
        for (int minute = 0; minute < 2880; minute += 5) {
            double sunW = minute / 60 % 24 >= 10 && minute / 60 % 24 < 16 ? 300 : 0;
            log.append(String.format(
                    Locale.ROOT,
                    "%s %02d:%02d,%.1f,%.3f,%.0f,0\n",
                    minute < 1440 ? firstDay : firstDay.substring(0, 8) + "10",
                    minute / 60 % 24,
                    minute % 60,
                    sunW > 0 ? 13.4 : 13.1,
                    (sunW - 60) / (sunW > 0 ? 13.4 : 13.1),
                    sunW));
        }
        return write("log.csv", log.toString());
    }

    private Path map() throws IOException {
        return write("map.yaml", """
                time: {column: Time, form: year month day}
                columns:
                  bank voltage: {column: V, unit: V}
                  bank current: {column: A, unit: A, plus: charge}
                  solar power: {column: Sun (W), unit: W}
                  DC-DC charger power: {column: Charger state, unit: W}
                """);
    }

    /** By hand: 6 h of 300 W and 24 h of 60 W a day. */
    @Test
    void eachDayStandsAsPromisedAndAsLogged() throws IOException {
        Path log = log("2026-07-09");
        byte[] before = Files.readAllBytes(log);
        assertThat(run(
                        "reconcile",
                        VAN,
                        "--log",
                        log.toString(),
                        "--map",
                        map().toString(),
                        "--out",
                        folder.resolve("o").toString()))
                .as(err.toString())
                .isZero();
        assertThat(folder.resolve("o/promise-and-log.svg")).isNotEmptyFile();
        assertThat(folder.resolve("o/log-days.csv"))
                .content()
                .startsWith("day,covered (%),sun promised (Wh),sun logged (Wh),")
                .contains("\n2026-07-09,100.0,")
                .contains(",1800.0,");
        assertThat(folder.resolve("o/log-gap.csv")).content().startsWith("cause,takes (Wh)\nuse,");
        assertThat(folder.resolve("o/log-values.csv")).content().startsWith("path,what,unit,promised,by the log,");
        assertThat(out.toString())
                .contains(
                        "log.csv: 576 rows from 2026-07-09 00:00 to 2026-07-11 00:00 (America/Phoenix), one every 300 s")
                .contains("no gaps")
                .contains("charge against state of charge: cannot be told")
                .containsPattern("2026-07-09    100 %  [\\d.]+ / 1.80 +[\\d.]+ / 0.00 +[\\d.]+ / 1.44 +not told")
                .containsPattern("2026-07-10    100 %");
        assertThat(Files.readAllBytes(log)).isEqualTo(before);
    }

    /** A log may lie in the folder of the results under the name of one of them; and results of before stay. */
    @Test
    void nothingIsWrittenOver() throws IOException {
        Path o = Files.createDirectory(folder.resolve("o"));
        Path log = Files.move(log("2026-07-09"), o.resolve("log-days.csv"));
        byte[] before = Files.readAllBytes(log);
        assertThat(run("reconcile", VAN, "--log", log.toString(), "--map", map().toString(), "--out", o.toString()))
                .isEqualTo(Exit.WRONG_INPUT);
        assertThat(err.toString()).contains("log-days.csv exists already.");
        assertThat(Files.readAllBytes(log)).isEqualTo(before);
        assertThat(o.resolve("reconcile.json")).doesNotExist();
        Path place = folder.resolve("p/log-gap.csv");
        assertThat(run(
                        "reconcile",
                        VAN,
                        "--log",
                        log.toString(),
                        "--map",
                        map().toString(),
                        "--out",
                        folder.resolve("p").toString(),
                        "--patch",
                        place.toString()))
                .isEqualTo(Exit.WRONG_INPUT);
        assertThat(err.toString()).contains("log-gap.csv is the place of one of the results.");
        assertThat(place).doesNotExist();
    }

    @Test
    void aLogOfMinutesIsRefusedBeforeAnythingIsWritten() throws IOException {
        Path log = log("2026-07-09");
        Files.write(log, Files.readAllLines(log).subList(0, 8));
        Path o = folder.resolve("o");
        assertThat(run("reconcile", VAN, "--log", log.toString(), "--map", map().toString(), "--out", o.toString()))
                .isEqualTo(Exit.WRONG_INPUT);
        assertThat(err.toString()).contains("minutes only. A promise is held against an hour or more.");
        assertThat(o).doesNotExist();
    }

    /** The document is that of the file, and stands alone on standard output. */
    @Test
    void theResultIsAJsonDocument() throws IOException {
        String log = log("2026-07-09").toString();
        Path o = folder.resolve("o");
        assertThat(run("reconcile", VAN, "--log", log, "--map", map().toString(), "--out", o.toString(), "--json"))
                .as(err.toString())
                .isZero();
        assertThat(out.toString()).isEqualTo(Files.readString(o.resolve("reconcile.json")));
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertThat(json.at("/log/rows").asLong()).isEqualTo(576);
        assertThat(json.at("/log/covers/0/what").asText()).isEqualTo("bank voltage");
        assertThat(json.at("/days/0/day").asText()).isEqualTo("2026-07-09");
        assertThat(json.at("/days/0/logged/solarWh").asDouble()).isCloseTo(1800, within(1.0));
        double sum = 0;
        for (JsonNode cause : json.at("/gap/causes")) {
            sum += cause.get("wh").asDouble();
        }
        assertThat(sum).isCloseTo(json.at("/gap/gapWh").asDouble(), within(1e-6));
        assertThat(json.at("/untold").size()).isPositive();
    }

    /** Identity: the minutes of a run are a log without a gap; what is found is an option that a scenario takes in. */
    @Test
    void theMinutesOfARunAreALogOfThePromise() throws IOException {
        assertThat(run("run", VAN, "--minutes", "--out", folder.toString())).isZero();
        Path map = write("map.yaml", """
                time: {column: start of step, form: year month day}
                columns:
                  bank voltage: {column: bus voltage (V), unit: V}
                  bank current: {column: bank current (A), unit: A, plus: charge}
                  state of charge: {column: "state of charge (%)", unit: "%"}
                  solar power: {column: solar (W), unit: W}
                  DC-DC charger power: {column: factory alternator (W), unit: W}
                """);
        Path patch = folder.resolve("patch.yaml");
        String[] words = {
            "reconcile",
            VAN,
            "--log",
            folder.resolve("minutes.csv").toString(),
            "--map",
            map.toString(),
            "--out",
            folder.resolve("o").toString(),
            "--patch",
            patch.toString()
        };
        assertThat(run(words)).as(err.toString()).isZero();
        assertThat(out.toString())
                .containsPattern("The gap of -?0.0\\d kWh by cause:")
                .containsPattern("not explained +-?0.0\\d kWh")
                .contains("What the log does not tell:");
        assertThat(folder.resolve("o/log-values.csv"))
                .content()
                .containsPattern("battery.resistance,[^,]+,mΩ,1\\.2,1\\.\\d+,0\\.\\d+\n");
        assertThat(patch)
                .content()
                .containsPattern("options:\n  as logged:\n    factory-alternator.charger: (40|39.9\\d) A")
                .contains(" A (measured: ± 0.4 A by minutes.csv)");
        Files.copy(Path.of("weather-profiles/low-desert-summer.csv"), folder.resolve("low-desert-summer.csv"));
        String van = Files.readString(Path.of(VAN)).replace("../weather-profiles/", "");
        Path patched = write("patched.yaml", van.substring(0, van.indexOf("options:")) + Files.readString(patch));
        assertThat(run("check", patched.toString())).as(err.toString()).isZero();
        assertThat(run(words)).isEqualTo(Exit.WRONG_INPUT);
        assertThat(err.toString()).contains("patch.yaml exists already");
    }

    @Test
    void aTripOnOtherDaysOfTheYearIsNamed() throws IOException {
        String log = log("2026-12-09").toString();
        String map = map().toString();
        assertThat(run("reconcile", VAN, "--log", log, "--map", map)).isEqualTo(Exit.WRONG_INPUT);
        assertThat(err.toString())
                .isEqualToIgnoringNewLines(
                        "The log runs from 2026-12-09 to 2026-12-10; the trip of 14 days from 07-08 is"
                                + " not in it. Name the day of the log that was the trip's first: --from 2026-12-09.\n");
        assertThat(run("reconcile", VAN, "--log", log, "--map", map, "--from", "2026-12-09"))
                .isEqualTo(Exit.WRONG_INPUT);
        assertThat(err.toString()).contains("is not within that");
    }

    @Test
    void aGuessOfTheMapIsWrittenOnceAndLeadsToTheEnd() throws IOException {
        String log = log("2026-07-09").toString();
        Path map = folder.resolve("guess.yaml");
        assertThat(run("reconcile", "--log", log, "--guess-map", map.toString()))
                .isZero();
        assertThat(run("reconcile", "--log", log, "--guess-map", map.toString()))
                .isEqualTo(Exit.WRONG_INPUT);
        assertThat(err.toString()).contains("exists already");
        assertThat(run("reconcile", "--log", log, "--guess-map")).isZero();
        assertThat(out.toString()).isEqualTo(Files.readString(map));
        assertThat(run("reconcile", VAN, "--log", log, "--map", map.toString(), "--out", folder.toString()))
                .as(err.toString())
                .isZero();
        assertThat(out.toString()).contains("The log does not have DC-DC charger power or current.");
    }

    @Test
    void whatIsMissingIsAskedFor() throws IOException {
        String log = log("2026-07-09").toString();
        assertThat(run("reconcile", VAN, "--log", log)).isEqualTo(Exit.WRONG_INPUT);
        assertThat(err.toString()).startsWith("Name the scenario and the map of the log: ampdays reconcile");
        assertThat(run("reconcile", VAN, "--log", folder.resolve("none.csv").toString(), "--map", map().toString()))
                .isEqualTo(Exit.FILE_TROUBLE);
        assertThat(err.toString()).contains("none.csv: there is no such file");
        for (String option : List.of("--option", "--from")) {
            assertThat(run("reconcile", VAN, "--log", log, "--map", map().toString(), option, "nonsense"))
                    .isEqualTo(Exit.WRONG_INPUT);
        }
    }
}
