package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.sim.SyntheticYear;
import ampdays.weather.WeatherSeries;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The expected bytes are the program's own output: the profile that ships can be made again from its normals and seed. */
class LowDesertProfileRegressionTest {
    private static final long SEED = 5;
    private static final Path PROFILE = Path.of("weather-profiles", "low-desert-summer.csv");
    private static final Path FRESH = Path.of("target", "low-desert-summer.csv");

    @Test
    void theProfileIsMadeFromItsNormalsAndSeed() throws Exception {
        WeatherSeries year =
                SyntheticYear.make(NormalsReader.read(Path.of("weather-profiles", "low-desert-normals.csv")), SEED);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PlainWeatherWriter.write(
                bytes,
                year,
                "Low desert, an invented summer",
                List.of(
                        "Invented, not measured: made hour by hour from the monthly normals in low-desert-normals.csv",
                        "with the generator of this project (SyntheticYear), seed " + SEED + ", the one of 1 to 20",
                        "whose July comes nearest to the normals."),
                firstHour(LocalDate.of(WeatherSeries.NOMINAL_YEAR, 5, 1)),
                firstHour(LocalDate.of(WeatherSeries.NOMINAL_YEAR, 10, 1)));
        Files.write(FRESH, bytes.toByteArray());
        assertThat(PROFILE).as("a fresh one is in " + FRESH).hasSameBinaryContentAs(FRESH);
    }

    private static int firstHour(LocalDate date) {
        return 24 * (date.getDayOfYear() - 1);
    }
}
