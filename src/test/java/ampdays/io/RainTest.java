package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Rain in the weather formats. What a field means: EPW, liquid precipitation depth, mm, 999 missing (field descriptions of
 * the manual that {@code EpwReader} cites); TMY3, Lprecip depth, mm, −9900 missing (Wilcox and Marion 2008). The files are
 * invented; what is expected of them is read off them.
 */
class RainTest {
    private static final int HOUR_S = 3600;

    @TempDir
    private Path folder;

    @Test
    void plainColumn() throws IOException, InputException {
        WeatherSeries series = read(plain(List.of("0", "2.5", "4", "0", "0", "0", "0", "0", "0")));
        assertThat(rainMm(series, 0, 9)).isEqualTo(6.5);
        assertThat(rainMm(series, 2, 9)).isEqualTo(4);
        assertThat(series.notes()).isEmpty();
    }

    /** A few rows without a value count as dry, with a note; mostly without is as if the column were not there. */
    @Test
    void missingRain() throws IOException, InputException {
        WeatherSeries some = read(plain(List.of("1", "", "2", "0", "", "0", "0", "0", "0")));
        assertThat(rainMm(some, 0, 9)).isEqualTo(3);
        assertThat(some.notes()).containsExactly("rain was missing in 2 of 9 rows, which count as dry");
        assertThat(rainMm(read(plain(List.of("1", "", "2", "", "", "", "", "", "0"))), 0, 9))
                .isNaN();
        assertThat(rainMm(read(right("right-weather.csv")), 0, 9)).isNaN();
    }

    @Test
    void fieldOfEpw() throws IOException, InputException {
        String dry = right("right-weather.epw");
        assertThat(rainMm(read(dry), 0, 9)).isZero();
        assertThat(rainMm(read(dry.replaceFirst("0\\.200,0\\.0,1\\.0", "0.200,7.5,1.0")), 0, 1))
                .isCloseTo(7.5, within(1e-12));
        assertThat(rainMm(read(dry.replace("0.200,0.0,1.0", "0.200,999.0,99.0")), 0, 9))
                .isNaN();
        assertThat(rainMm(read(dry.replace(",0.1000,0,88,0.200,0.0,1.0", "")), 0, 9))
                .isNaN();
    }

    @Test
    void columnOfTmy3() throws IOException, InputException {
        StringBuilder file = new StringBuilder();
        int line = 0;
        for (String row : right("right-weather-tmy3.csv").split("\n", -1)) {
            line++;
            String more = line == 1 || row.isEmpty() ? "" : line == 2 ? ",Lprecip depth (mm)" : line == 5 ? ",8" : ",0";
            file.append(row).append(more).append('\n');
        }
        assertThat(rainMm(read(file.toString()), 0, 9)).isEqualTo(8);
        assertThat(rainMm(read(file.toString()), 2, 3)).isEqualTo(8);
        assertThat(rainMm(read(file.toString().replace(",8\n", ",-9900\n")), 0, 9))
                .isZero();
    }

    private static double rainMm(WeatherSeries series, int fromHour, int toHour) {
        long begin = series.info().startEpochSecond();
        return series.rainMm(begin + (long) fromHour * HOUR_S, begin + (long) toHour * HOUR_S);
    }

    private String plain(List<String> rain) throws IOException {
        StringBuilder file = new StringBuilder();
        int row = 0;
        for (String line : right("right-weather.csv").split("\n", -1)) {
            if (line.startsWith("time")) {
                line += ",rain mm";
            } else if (line.startsWith("2005")) {
                line += "," + rain.get(row++);
            }
            file.append(line).append('\n');
        }
        return file.toString();
    }

    private static String right(String name) throws IOException {
        try (var stream = RainTest.class.getResourceAsStream("/ampdays/" + name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private WeatherSeries read(String content) throws IOException, InputException {
        Path file = folder.resolve("weather.csv");
        Files.writeString(file, content, StandardCharsets.UTF_8);
        return WeatherReader.read(file);
    }
}
