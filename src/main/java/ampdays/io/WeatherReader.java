package ampdays.io;

import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/** Reads a weather file, whichever of the known formats it is in. */
public final class WeatherReader {
    private WeatherReader() {}

    /**
     * Reads EPW, TMY3 as CSV, or the plain CSV of {@code docs/WEATHER.md}, told apart by their first lines.
     *
     * @throws IOException when the file cannot be read
     * @throws InputException when it can, but is not a usable weather file
     */
    public static WeatherSeries read(Path path) throws IOException, InputException {
        CsvText text = CsvText.read(path);
        if (text.line(1).toUpperCase(Locale.ROOT).startsWith("LOCATION,")) {
            return EpwReader.read(text);
        }
        if (Tmy3Reader.recognises(text)) {
            return Tmy3Reader.read(text);
        }
        if (PlainWeatherReader.recognises(text)) {
            return PlainWeatherReader.read(text);
        }
        throw text.problem(
                1,
                1,
                "the file begins with \"" + text.beginning()
                        + "\", which is no weather file that is understood. Accepted are EPW (begins with LOCATION,), TMY3"
                        + " as CSV (column names in the second line) and plain CSV (begins with lines such as"
                        + " \"# latitude: 33.4\"); see docs/WEATHER.md.");
    }
}
