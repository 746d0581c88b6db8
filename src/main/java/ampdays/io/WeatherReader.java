package ampdays.io;

import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
        if (Files.isDirectory(path)) {
            throw new FileSystemException(path.toString(), null, "this is a folder, not a weather file");
        }
        WeatherText text = WeatherText.of(String.valueOf(path.getFileName()), Files.readAllBytes(path));
        if (text.size() == 0) {
            throw text.problem(0, 0, "the file is empty.");
        }
        if (!text.isPlain()) {
            throw text.problem(
                    0,
                    0,
                    "the file is not plain text. Save it as CSV in UTF-8; unpack an archive, export a spreadsheet.");
        }
        refuseOtherSeparators(text);
        if (text.line(1).toUpperCase(Locale.ROOT).startsWith("LOCATION,")) {
            return EpwReader.read(text);
        }
        if (Tmy3Reader.recognises(text)) {
            return Tmy3Reader.read(text);
        }
        if (PlainWeatherReader.recognises(text)) {
            return PlainWeatherReader.read(text);
        }
        String begin = text.line(1).length() > 40 ? text.line(1).substring(0, 40) + "…" : text.line(1);
        throw text.problem(
                1,
                1,
                "the file begins with \"" + begin
                        + "\", which is no weather file that is understood. Accepted are EPW (begins with LOCATION,), TMY3"
                        + " as CSV (column names in the second line) and plain CSV (begins with lines such as"
                        + " \"# latitude: 33.4\"); see docs/WEATHER.md.");
    }

    /** Spreadsheets of many countries write semicolons between cells, and then a comma in numbers. */
    private static void refuseOtherSeparators(WeatherText text) throws InputException {
        int line = 1;
        while (text.line(line).startsWith("#")) {
            line++;
        }
        String first = text.line(line);
        for (String separator : List.of(";", "\t")) {
            int at = first.indexOf(separator);
            if (at >= 0 && first.indexOf(',') < 0) {
                throw text.problem(
                        line,
                        at + 1,
                        "the cells are separated by " + (separator.equals(";") ? "semicolons" : "tabs")
                                + ". Separate them by commas, and write numbers with a point.");
            }
        }
    }
}
