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
     * Writes a series; the stream stays open.
     *
     * @param title one line for tables
     * @param remarks further lines for the heading: where it comes from, how it was made
     */
    public static void write(OutputStream out, WeatherSeries series, String title, List<String> remarks)
            throws IOException {
        SeriesInfo info = series.info();
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        PlainHeading.write(
                writer,
                title,
                remarks,
                info.latitudeDeg(),
                info.longitudeDeg(),
                info.elevationM(),
                info.utcOffsetHours());
        PlainHeading.write(
                writer,
                "interval",
                info.stepSeconds() % 60 == 0 ? info.stepSeconds() / 60 + " min" : info.stepSeconds() + " s");
        PlainHeading.write(
                writer, "stamp", info.instantShare() == 0 ? "start" : info.instantShare() == 1 ? "end" : "middle");
        FORMAT.printRecord(
                writer, "time", "ghi W/m2", "dni W/m2", "dhi W/m2", "air C", "dew point C", "wind m/s", "pressure Pa");
        DateTimeFormatter form = DateTimeFormatter.ofPattern(
                (info.typicalYear() ? "" : "yyyy-") + "MM-dd HH:mm" + (info.stepSeconds() % 60 == 0 ? "" : ":ss"),
                Locale.ROOT);
        long toStamp = Math.round(info.instantShare() * info.stepSeconds());
        for (int row = 0; row < series.size(); row++) {
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
}
