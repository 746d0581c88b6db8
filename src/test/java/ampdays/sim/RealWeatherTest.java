package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import ampdays.io.WeatherReader;
import ampdays.results.Account;
import ampdays.results.RunResult;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Real files, which are not part of the project; without them these tests are skipped. */
class RealWeatherTest {
    private static final Path FOLDER = Path.of("../shared/reference/weather");

    private static RunResult julyFortnight(String file) throws Exception {
        Path path = FOLDER.resolve(file);
        assumeTrue(Files.exists(path), "skipped: no weather file " + path);
        return FullVan.variableSpeed()
                .with("place.latitude", "33.45°")
                .with("place.longitude", "-111.98°")
                .with("place.elevation", "337 m")
                .with("place.zone", "America/Phoenix")
                .with("trip.start", "2025-07-08")
                .with("trip.days", "14")
                .run(SkyCompletion.complete(WeatherReader.read(path)));
    }

    /**
     * The same typical year in two formats. The EPW says 111.98° W, the CSV 111.983° W; but sun and air are those of the
     * scenario's place, and neither file lacks light that its own place would have to supply, so that the two runs agree
     * to the rounding of sums, although the formats print and store what they hold in different ways.
     */
    @Test
    void epwAndTmy3OfTheSameYearGiveTheSameRun() throws Exception {
        RunResult epw = julyFortnight("USA_AZ_Phoenix-Sky.Harbor.Intl.AP.722780_TMY3.epw");
        RunResult tmy3 = julyFortnight("AZ-Phoenix_Sky_Harbor_Intl_Ap.tmy3.csv");
        assertThat(epw.energy().wh(Account.SOLAR)).isPositive();
        for (Account account : Account.values()) {
            double wh = epw.energy().wh(account);
            assertThat(tmy3.energy().wh(account)).as(account.label()).isCloseTo(wh, withinPercentage(1e-7));
        }
        assertThat(tmy3.lowestSoc()).isCloseTo(epw.lowestSoc(), withinPercentage(1e-7));
        assertThat(tmy3.comfortableNights()).isEqualTo(epw.comfortableNights());
    }
}
