package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The load audit as a user meets it: what the screen doubts and asks, and the files. Lists are invented. */
class AuditCommandTest extends CommandRun {
    @TempDir
    private Path folder;

    private String audit(String... rows) throws IOException {
        return audited("step,current A\n" + String.join("\n", rows));
    }

    private String dischargeAsPlus(String... rows) throws IOException {
        return audited("# sign: discharge plus\nstep,current A\n" + String.join("\n", rows));
    }

    private String audited(String list) throws IOException {
        Path file = folder.resolve("readings.csv");
        Files.write(file, list.getBytes(StandardCharsets.UTF_8));
        out.getBuffer().setLength(0);
        assertThat(run("audit", file.toString())).as(err.toString()).isZero();
        return out.toString().replaceAll("\\s+", " ");
    }

    /** By hand: 1.7 A stands where 7.1 A would agree with the rest. */
    @Test
    void aRowThatContradictsTheOthersIsNamed() throws IOException {
        assertThat(audit(
                        "all off,1.0",
                        "fan on,4.0",
                        "light on,1.7",
                        "light off,4.0",
                        "light on,7.1",
                        "fan off,4.1",
                        "fan on,7.0"))
                .contains("Discharge is taken as plus by what switching did to the reading (# sign: says it).")
                .contains(
                        "Line 4 contradicts the others: 5.4 A less than they let expect. It is left out. Read it again.");
    }

    @Test
    void twoRowsOfOneStateThatDifferAreBothNamed() throws IOException {
        assertThat(audit("all off,1.0", "fan on,4.0", "light on,6.0", "light off,14.0"))
                .contains(
                        "One of the lines 3, 5 is wrong by about 10.0 A; the readings do not tell which. Read them again.");
    }

    /** By logic: nothing gives current by being switched on, and with everything off the bank only gives. */
    @Test
    void drawsThatCannotBeAreNamed() throws IOException {
        assertThat(dischargeAsPlus("all off,2.0", "fan on,5.0", "heater on,3.0", "heater off,5.0"))
                .contains(
                        "heater would give current, -2.00 A, which cannot be (line 5). Something else changed with it; read"
                                + " it again.")
                .contains("# heater: would give current, -2.00 A ± 0.19 A, which cannot be; read it again");
        assertThat(dischargeAsPlus("all off,-9.0", "fan on,-6.0", "fan off,-9.0"))
                .contains("of no draw is it told how long it runs")
                .contains("base draw would give current, -9.0")
                .contains("something charges the bank. Stop it; read again.");
    }

    @Test
    void whatWasOnlyEverOnTogetherIsNamedWithTheNextReading() throws IOException {
        assertThat(audit("all off,1.0", "fan on; gadget on,5.0", "all off,1.0"))
                .contains("Cannot be told apart: fan, gadget. Next reading, from where the last one stood: fan on.")
                .contains("To ask: how long a day, and when? (columns use and when)")
                .contains("no usual range is known");
    }

    @Test
    void tablesAreWrittenForSpreadsheetsAndProgramsAndNeverOver() throws IOException {
        Path readings = folder.resolve("example.csv");
        Path tables = folder.resolve("tables");
        assertThat(run("audit", "--example", readings.toString())).isZero();
        assertThat(run("audit", readings.toString(), "--tables", tables.toString()))
                .isZero();
        List<String> draws = Files.readAllLines(tables.resolve("draws.csv"));
        assertThat(draws).hasSize(7);
        assertThat(draws.get(0)).startsWith("appliance,draw A,plus or minus A,power W,at start A,use h/day,when,");
        assertThat(draws.get(5)).startsWith("water pump,5.300,").contains(",0.200,07:00-21:00,0.20,0.50,");
        List<String> hours = Files.readAllLines(tables.resolve("hours.csv"));
        assertThat(hours).hasSize(26).contains("22:00,0.600,7.9");
        // the roof fan of 2.5 A for 4 h while people sleep
        assertThat(hours.get(25)).startsWith("hours not told,10.000,");
        out.getBuffer().setLength(0);
        assertThat(run("audit", readings.toString(), "--json")).isZero();
        assertThat(tables.resolve("audit.json")).hasContent(out.toString());
        Files.delete(tables.resolve("draws.csv"));
        assertThat(run("audit", readings.toString(), "--tables", tables.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("hours.csv exists already.");
        Path other = folder.resolve("other");
        assertThat(run(
                        "audit",
                        readings.toString(),
                        "--tables",
                        other.toString(),
                        "--out",
                        other.resolve("draws.csv").toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("draws.csv is the place of one of the results.");
        assertThat(other).doesNotExist();
        assertThat(tables.resolve("draws.csv")).doesNotExist();
    }
}
