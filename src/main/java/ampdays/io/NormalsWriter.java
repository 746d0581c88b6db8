package ampdays.io;

import ampdays.weather.MonthlyNormals;
import ampdays.weather.MonthlyNormals.DaySpread;
import ampdays.weather.MonthlyNormals.Month;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/** Writes monthly normals as {@link NormalsReader} reads them. */
public final class NormalsWriter {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    private NormalsWriter() {}

    /**
     * Writes a file; the stream stays open. Spreads are written when every month has them.
     *
     * @param remarks further lines for the heading: where it comes from
     */
    public static void write(OutputStream out, MonthlyNormals normals, List<String> remarks) throws IOException {
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        PlainHeading.write(
                writer,
                normals.title(),
                remarks,
                normals.latitudeDeg(),
                normals.longitudeDeg(),
                normals.elevationM(),
                normals.utcOffsetHours());
        boolean spreads = normals.months().stream().allMatch(m -> m.spread().isPresent());
        List<String> names = new ArrayList<>(NormalsReader.MEANS);
        names.addAll(spreads ? NormalsReader.SPREADS : List.of());
        FORMAT.printRecord(writer, names.toArray());
        for (int m = 0; m < 12; m++) {
            Month month = normals.months().get(m);
            List<String> cells = new ArrayList<>(List.of(
                    Integer.toString(m + 1),
                    Numbers.fixed(month.ghiKwhM2(), 2),
                    Numbers.fixed(month.maxC(), 1),
                    Numbers.fixed(month.minC(), 1),
                    Numbers.fixed(month.windMs(), 2),
                    Numbers.fixed(month.dewPointC(), 1)));
            if (spreads) {
                DaySpread spread = month.spread().orElseThrow();
                cells.addAll(List.of(
                        Numbers.fixed(spread.clearness(), 3),
                        Numbers.fixed(spread.maxK(), 1),
                        Numbers.fixed(spread.minK(), 1),
                        Numbers.fixed(spread.dewPointK(), 1)));
            }
            FORMAT.printRecord(writer, cells.toArray());
        }
        writer.flush();
    }
}
