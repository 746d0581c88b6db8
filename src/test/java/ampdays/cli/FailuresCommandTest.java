package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.HeatAfterLoss;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Failures as a user meets them. What is compared are identities of the program with itself: no outside source. */
class FailuresCommandTest extends CommandRun {
    private static final String DEMO = "scenarios/desert-survey.yaml";

    @TempDir
    private Path folder;

    @Test
    void theDemoGetsOneOfEachKind() throws IOException {
        String[] args = {"failures", DEMO, "--quick", "--option", "second alternator", "--out"};
        Path first = folder.resolve("first");
        assertThat(run(args[0], args[1], args[2], args[3], args[4], args[5], first.toString()))
                .as(err.toString())
                .isZero();
        String screen = out.toString();
        assertThat(screen.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(120));
        assertThat(screen)
                .contains("Without any failure this design holds.")
                .contains("string lost (the bank is one string)")
                .contains("What makes it good was not looked for.")
                .contains("not a code check");
        assertThat(screen.replaceAll("\\s+", " ")).contains(HeatAfterLoss.CAUTION);

        List<Map<String, String>> rows = rows(first.resolve("failures.csv"));
        assertThat(rows).hasSize(12);
        assertThat(rows.get(1).get("failure")).isEqualTo("second alternator dies");
        assertThat(rows.get(1).get("survived")).isEqualTo("no");
        assertThat(rows.get(1).get("to reserve without it (h)")).isEmpty();
        assertThat(Double.parseDouble(rows.get(1).get("to reserve (h)"))).isPositive();
        assertThat(rows)
                .filteredOn(row -> row.get("applies").startsWith("no: "))
                .hasSize(3);
        assertThat(Files.readString(first.resolve("cabin-after-loss-of-cooling.svg")))
                .contains("minutes after");
        assertThat(first.resolve("charge-after-failures.png")).isNotEmptyFile();

        Path second = folder.resolve("second");
        out.getBuffer().setLength(0);
        assertThat(run(args[0], args[1], args[2], args[3], args[4], args[5], second.toString(), "--json"))
                .isZero();
        for (String file : List.of("failures.csv", "failures.json", "charge-after-failures.svg")) {
            assertThat(second.resolve(file)).hasSameBinaryContentAs(first.resolve(file));
        }
        assertThat(out.toString()).isEqualTo(Files.readString(first.resolve("failures.json")));
    }

    @Test
    void aFileMayHaveItsOwn() throws IOException {
        Path van = folder.resolve("van.yaml");
        Files.copy(Path.of("weather-profiles/low-desert-summer.csv"), folder.resolve("weather.csv"));
        String demo = Files.readString(Path.of(DEMO))
                .replace("../weather-profiles/low-desert-summer.csv", "weather.csv")
                .replace("days: 14", "days: 4")
                .replace("1-5, 8-12 ", "1-2 ");
        Files.writeString(
                van,
                demo + "\nfailures:\n"
                        + "  second alternator off: {second-alternator: none, from: day 2 09:00}\n"
                        + "  fan left on: {loads.roof fan.when: always, from: day 1, until: day 3}\n"
                        + "  hotter: {kind: heat wave, from: day 3}\n");
        assertThat(run("failures", van.toString(), "--quick", "--out", folder.toString()))
                .as(err.toString())
                .isZero();
        List<Map<String, String>> rows = rows(folder.resolve("failures.csv"));
        assertThat(rows)
                .extracting(row -> row.get("failure"))
                .containsExactly("fan left on", "hotter", "second alternator off");
        assertThat(rows)
                .extracting(row -> row.get("applies"))
                .containsExactly("yes", "yes", "no: there is no second-alternator");
        assertThat(rows.get(0).get("what")).isEqualTo("loads.roof fan.when always");
        assertThat(rows.get(0).get("begins")).isEqualTo("2025-07-08T00:00:00-07:00");
        assertThat(rows.get(0).get("ends")).isEqualTo("2025-07-10T00:00:00-07:00");
    }

    @Test
    void anUnknownOptionIsRefused() {
        assertThat(run("failures", DEMO, "--option", "nothing")).isEqualTo(2);
        assertThat(err.toString()).contains("There is no option \"nothing\"").doesNotContain("\tat ");
    }

    @Test
    void whatCannotBeWrittenIsSaid() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        assertThat(run("failures", DEMO, "--quick", "--out", file.toString())).isEqualTo(4);
        assertThat(err.toString()).startsWith("Cannot write ").doesNotContain("\tat ");
    }
}
