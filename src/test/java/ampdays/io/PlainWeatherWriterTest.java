package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.weather.WeatherSeries;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainWeatherWriterTest {
    @TempDir
    private Path folder;

    /** Identity: a file of the documented form, read and written, is the same file, whatever its stamps and interval. */
    @ParameterizedTest
    @CsvSource({
        "60 min, start, 2026-07-08 23:00, 2026-07-09 00:00",
        "60 min, end, 07-08 23:00, 07-09 00:00",
        "15 min, middle, 2026-12-31 23:52, 2027-01-01 00:07",
        "10 s, end, 2026-12-31 23:59:50, 2027-01-01 00:00:00",
        "10 s, middle, 07-08 23:59:55, 07-09 00:00:05"
    })
    void whatIsReadIsWrittenAgain(String interval, String stamp, String first, String second) throws Exception {
        String text = """
                # title: Somewhere
                # made for a test
                # latitude: 33.4
                # longitude: -112
                # elevation: -80 m
                # utc-offset: 5.5
                # interval: %s
                # stamp: %s
                time,ghi W/m2,dni W/m2,dhi W/m2,air C,dew point C,wind m/s,pressure Pa
                %s,700,800,90,-1.5,-2.5,3.5,101300
                %s,,600,80,-1.0,-2.0,0.0,101310
                """.formatted(interval, stamp, first, second);
        Path file = Files.writeString(folder.resolve("a.csv"), text, StandardCharsets.UTF_8);
        WeatherSeries series = WeatherReader.read(file);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PlainWeatherWriter.write(bytes, series, "Somewhere", List.of("made for a test"));
        assertThat(bytes.toString(StandardCharsets.UTF_8)).isEqualTo(text);
    }
}
