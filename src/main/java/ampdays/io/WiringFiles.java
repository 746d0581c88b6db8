package ampdays.io;

import ampdays.results.WholeFile;
import ampdays.results.WiringResult;
import ampdays.results.WiringRow;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;

/** The files of a wiring check in one folder. What stands in them is told in docs/OUTPUT.md. */
public final class WiringFiles {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    private static final List<String> HEADINGS = List.of(
            "circuit",
            "from",
            "to",
            "conductor",
            "in the other measure",
            "length one way (m)",
            "return",
            "most current (A)",
            "hardest hour (A)",
            "conductor carries in its warmest air (A)",
            "drop (V)",
            "drop (%)",
            "drop allowed (%)",
            "air",
            "warmest air (°C)",
            "warmest conductor (°C)",
            "warmest joint (°C)",
            "protection",
            "rating (A)",
            "least hold (A)",
            "warmest protection (°C)",
            "short circuit (A)",
            "interrupts (A)",
            "notice");

    private WiringFiles() {}

    /** Writes {@code wiring.csv}, a row per circuit, and {@code wiring.json}. */
    public static void write(
            Path folder, String scenario, String title, WiringResult result, Optional<WiringJson.Mended> mended)
            throws IOException {
        WholeFile.writeText(folder.resolve("wiring.csv"), table -> {
            FORMAT.printRecord(table, HEADINGS.toArray());
            for (WiringRow row : result.rows()) {
                FORMAT.printRecord(table, cells(row).toArray());
            }
        });
        WholeFile.writeText(
                folder.resolve("wiring.json"), writer -> WiringJson.write(writer, scenario, title, result, mended));
    }

    private static List<String> cells(WiringRow row) {
        return List.of(
                row.circuit(),
                row.from(),
                row.to(),
                row.conductor(),
                row.otherMeasure(),
                Numbers.full(row.lengthM()),
                row.returnByBody() ? "body" : "cable",
                Numbers.fixed(row.mostA(), 2),
                Numbers.fixed(row.continuousA(), 2),
                Numbers.fixed(row.allowedA(), 1),
                Numbers.fixed(row.dropV(), 4),
                Numbers.fixed(100 * row.dropShare(), 2),
                Numbers.fixed(100 * row.dropLimitShare(), 1),
                row.place(),
                Numbers.fixed(row.airC(), 1),
                Numbers.fixed(row.conductorC(), 1),
                Numbers.fixed(row.jointC(), 1),
                row.protection(),
                Numbers.fixed(row.ratingA(), 1),
                Numbers.fixed(row.leastHoldA(), 1),
                Numbers.fixed(row.protectionC(), 1),
                Numbers.fixed(row.faultA(), 0),
                Numbers.fixed(row.interruptA(), 0),
                WiringJson.NOTICE);
    }
}
