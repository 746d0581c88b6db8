package ampdays.sim;

import ampdays.io.InputException;
import ampdays.io.WeatherReader;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Assumptions;

/** Weather files that came from outside: they lie beside the project where a developer has them, and are never part of it. */
final class RealWeather {
    static final String PHOENIX_EPW = "USA_AZ_Phoenix-Sky.Harbor.Intl.AP.722780_TMY3.epw";
    static final String PHOENIX_TMY3 = "AZ-Phoenix_Sky_Harbor_Intl_Ap.tmy3.csv";

    private static final Path FOLDER = Path.of("../shared/reference/weather");

    private RealWeather() {}

    /** Reads a file, or skips the test that asks for it. */
    static WeatherSeries read(String name) throws IOException, InputException {
        Path file = FOLDER.resolve(name);
        Assumptions.assumeTrue(Files.exists(file), () -> "skipped: there is no " + file);
        return WeatherReader.read(file);
    }

    /** The same rows with all stamps later, as if the zone or the meaning of the stamps had been mistaken. */
    static WeatherSeries later(WeatherSeries series, int seconds) {
        SeriesInfo was = series.info();
        SeriesInfo info = new SeriesInfo(
                was.source(),
                was.latitudeDeg(),
                was.longitudeDeg(),
                was.elevationM(),
                was.utcOffsetHours(),
                was.startEpochSecond() + seconds,
                was.stepSeconds(),
                was.typicalYear(),
                was.instantShare(),
                was.notes());
        double[][] columns = new double[7][series.size()];
        Arrays.setAll(columns[0], series::ghiWm2);
        Arrays.setAll(columns[1], series::dniWm2);
        Arrays.setAll(columns[2], series::dhiWm2);
        Arrays.setAll(columns[3], series::airC);
        Arrays.setAll(columns[4], series::dewPointC);
        Arrays.setAll(columns[5], series::windMs);
        Arrays.setAll(columns[6], series::pressurePa);
        return WeatherSeries.of(
                info, columns[0], columns[1], columns[2], columns[3], columns[4], columns[5], columns[6]);
    }
}
