package ampdays.io;

import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;

/** Writes a series as our plain CSV: light in whole W/m², the rest to a tenth. */
public final class PlainWeatherWriter {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    private PlainWeatherWriter() {}

    /**
     * Writes rows of a series; the stream stays open.
     *
     * @param title one line for tables
     * @param remarks further lines for the heading: where it comes from, how it was made
     * @param fromRow first row written
     * @param toRow row after the last
     */
    public static void write(
            OutputStream out, WeatherSeries series, String title, List<String> remarks, int fromRow, int toRow)
            throws IOException {
        SeriesInfo info = series.info();
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        heading(writer, "title", title);
        for (String remark : remarks) {
            writer.write("# " + remark + "\n");
        }
        heading(writer, "latitude", WeatherRows.plain(info.latitudeDeg()));
        heading(writer, "longitude", WeatherRows.plain(info.longitudeDeg()));
        heading(writer, "elevation", WeatherRows.plain(info.elevationM()) + " m");
        heading(writer, "utc-offset", WeatherRows.plain(info.utcOffsetHours()));
        heading(
                writer,
                "interval",
                info.stepSeconds() % 60 == 0 ? info.stepSeconds() / 60 + " min" : info.stepSeconds() + " s");
        heading(writer, "stamp", info.instantShare() == 0 ? "start" : info.instantShare() == 1 ? "end" : "middle");
        FORMAT.printRecord(
                writer, "time", "ghi W/m2", "dni W/m2", "dhi W/m2", "air C", "dew point C", "wind m/s", "pressure Pa");
        DateTimeFormatter form = DateTimeFormatter.ofPattern(
                (info.typicalYear() ? "" : "yyyy-") + "MM-dd HH:mm" + (info.stepSeconds() % 60 == 0 ? "" : ":ss"),
                Locale.ROOT);
        long toStamp = Math.round(info.instantShare() * info.stepSeconds());
        for (int row = fromRow; row < toRow; row++) {
            FORMAT.printRecord(
                    writer,
                    form.format(series.localStart(row).plusSeconds(toStamp)),
                    Numbers.fixed(series.ghiWm2(row), 0),
                    Numbers.fixed(series.dniWm2(row), 0),
                    Numbers.fixed(series.dhiWm2(row), 0),
                    Numbers.fixed(series.airC(row), 1),
                    Numbers.fixed(series.dewPointC(row), 1),
                    Numbers.fixed(series.windMs(row), 1),
                    Numbers.fixed(series.pressurePa(row), 0));
        }
        writer.flush();
    }

    private static void heading(Writer writer, String key, String value) throws IOException {
        writer.write("# " + key + ": " + value + "\n");
    }
}
