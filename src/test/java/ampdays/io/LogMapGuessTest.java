package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import ampdays.log.LogMap;
import ampdays.log.Signal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Guesses of maps; invented logs, no outside source. */
class LogMapGuessTest {
    @TempDir
    private Path folder;

    private String guess(String log) throws IOException, InputException {
        return LogMapGuess.of(Files.write(folder.resolve("log.csv"), log.getBytes(StandardCharsets.UTF_8)));
    }

    /** Semicolons, decimal commas, discharge as plus, a counter that begins anew. */
    @Test
    void readsNamesUnitsDirectionsAndCounters() throws IOException, InputException {
        StringBuilder log = new StringBuilder(
                "Zeit;Battery V [V];Battery A [A];SoC [%];PV yield [kWh];Outside temp [°C];Alternator current (A);State\n");
        for (int i = 0; i < 60; i++) {
            double amps = i % 7;
            log.append(String.format(
                            Locale.ROOT,
                            "%02d.07.2026 %02d:30:00;%.2f;%.1f;%d;%.2f;%d;%d;bulk\n",
                            8 + i / 24,
                            i % 24,
                            13.3 - 0.01 * amps,
                            amps,
                            90 - i,
                            0.1 * (i % 24),
                            20 + i % 10,
                            i % 3)
                    .replace('.', ',')
                    .replaceAll("(\\d\\d),07,2026", "$1.07.2026"));
        }
        String guess = guess(log.toString());
        assertThat(guess)
                .contains("  form: day month year")
                .contains("bank voltage: {column: \"Battery V [V]\", unit: \"V\"}    # confidence high: name and unit")
                .contains(
                        "bank current: {column: \"Battery A [A]\", unit: \"A\", plus: discharge}    # confidence high")
                .contains("state of charge: {column: \"SoC [%]\", unit: \"%\"}    # confidence high")
                .contains("solar energy: {column: \"PV yield [kWh]\", unit: \"kWh\", counter: daily}")
                .contains("outside temperature: {column: \"Outside temp [°C]\", unit: \"°C\"}")
                .contains("second alternator current: {column: \"Alternator current (A)\", unit: \"A\"}")
                .contains("# column \"State\": no numbers");
        Path map = Files.writeString(folder.resolve("map.yaml"), guess);
        LogMap read = LogMapReader.read(map, ZoneId.of("UTC"));
        assertThat(read.columns()).hasSize(6);
        assertThat(LogReader.read(folder.resolve("log.csv"), read).signals()).contains(Signal.SOLAR_ENERGY);
    }

    /** A weekday before the date is passed over, as it is in reading; a row gone wrong does not stop the guess. */
    @Test
    void aWeekdayStandsBeforeTheDate() throws IOException, InputException {
        StringBuilder log = new StringBuilder("Time,V,A\n");
        for (int i = 0; i < 20; i++) {
            log.append(String.format(Locale.ROOT, "Wed 2026-07-08 14:%02d,13.%d,%d\n", i, i % 4, i));
        }
        log.append("2026-1099999999999-25 14:20,13.2,5\n");
        assertThat(guess(log.toString())).contains("  form: year month day");
    }

    /** Lines may end in a carriage return alone, in a large file too. */
    @Test
    void aLargeFileOfCarriageReturnsIsNoEmptyFile() throws IOException, InputException {
        assertThat(guess("timestamp,voltage,current\r" + "1783504800,13200,1500\r".repeat(15_000)))
                .contains("  form: epoch seconds");
    }

    /** No units in the names: told by the size of the values, and said so. */
    @Test
    void unitsAreToldByTheSizeOfValuesWhereNamesHaveNone() throws IOException, InputException {
        String guess = guess("timestamp,voltage,current\n1783504800,13200,1500\n1783504860,13190,1400\n");
        assertThat(guess)
                .contains("  form: epoch seconds")
                .contains("bank voltage: {column: \"voltage\", unit: \"mV\"}    # confidence medium")
                .contains("plus: charge}    # confidence medium");
    }

    @Test
    void devicesInRowsBecomeDevicesInTheMap() throws IOException, InputException {
        String guess = guess("time,device,V,A\n" + "2026-07-20 10:00:00,house battery,13.2,4\n"
                + "2026-07-20 10:00:00,chassis,12.6,0\n".repeat(1)
                + "2026-07-20 10:01:00,house battery,13.3,5\n2026-07-20 10:01:00,chassis,12.6,0\n"
                + "2026-07-20 10:02:00,house battery,13.2,4\n2026-07-20 10:02:00,chassis,12.6,0\n");
        assertThat(guess)
                .contains("device: \"device\"")
                .contains("bank voltage: {column: \"V\", device: \"house battery\", unit: \"V\"}")
                .contains("bank current: {column: \"A\", device: \"house battery\", unit: \"A\", plus: charge}")
                .contains("# column \"V\" of \"chassis\": not understood");
    }

    @Test
    void dateAndTimeMayStandApartAndNamesMayLack() throws IOException, InputException {
        assertThat(guess("2026-07-20,10:00:00,13.2\n2026-07-20,10:01:00,13.2\n"))
                .contains("  column: \"2\"")
                .contains("  date: \"1\"")
                .contains("header: no");
    }

    @Test
    void aFileWithoutTimesIsNoLog() {
        InputException refused = catchThrowableOfType(InputException.class, () -> guess("a,b\n1,2\n3,4\n"));
        assertThat(refused.getMessage())
                .isEqualTo("log.csv:1: no column looks like a time. A log needs date and time in each row, such as"
                        + " 2026-07-08 14:05:00.");
    }
}
