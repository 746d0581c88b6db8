package ampdays.io;

import ampdays.results.Matters;
import ampdays.results.WholeFile;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/** The files of a study of what matters. What stands in them is told in docs/OUTPUT.md. */
public final class MattersFiles {
    /** A row for each input. */
    public static final String TABLE = "matters.csv";

    /** The same with the shares of variance. */
    public static final String DOCUMENT = "matters.json";

    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    private MattersFiles() {}

    /** Writes both files. */
    public static void write(Path folder, Matters matters) throws IOException {
        WholeFile.writeText(folder.resolve(TABLE), text -> table(text, matters));
        WholeFile.writeText(folder.resolve(DOCUMENT), text -> writeJson(text, matters));
    }

    private static void table(Writer text, Matters matters) throws IOException {
        String unit = matters.unit();
        FORMAT.printRecord(
                text,
                "input",
                "source",
                "low end",
                "usual",
                "high end",
                ResultFiles.heading(matters.answer() + " at low end", unit),
                ResultFiles.heading(matters.answer() + " at high end", unit),
                "comfortable nights at low end",
                "comfortable nights at high end");
        for (Matters.Input input : matters.inputs()) {
            List<String> row = List.of(
                    input.name(),
                    input.source(),
                    input.low(),
                    input.usual(),
                    input.high(),
                    Numbers.full(input.answerAtLow()),
                    Numbers.full(input.answerAtHigh()),
                    Integer.toString(input.nightsAtLow()),
                    Integer.toString(input.nightsAtHigh()));
            FORMAT.printRecord(text, row.toArray());
        }
    }

    /** Writes the document and a line end, and leaves the writer open. */
    public static void writeJson(Writer writer, Matters matters) throws IOException {
        try (JsonGenerator json = SummaryJson.generator(writer)) {
            SummaryJson.begin(json, matters.scenario(), matters.title());
            json.writeStringField("option", matters.option());
            json.writeStringField("answer", matters.answer());
            json.writeStringField("unit", matters.unit());
            SummaryJson.number(json, "usual", matters.usual());
            SummaryJson.number(json, "endsAt", matters.cap());
            json.writeNumberField("usualComfortableNights", matters.usualNights());
            json.writeArrayFieldStart("inputs");
            for (Matters.Input input : matters.inputs()) {
                input(json, input);
            }
            json.writeEndArray();
            json.writeNumberField("samples", matters.samples());
            json.writeNumberField("seed", matters.seed());
            json.writeArrayFieldStart("varianceShares");
            for (Matters.Share share : matters.shares()) {
                json.writeStartObject();
                json.writeStringField("name", share.name());
                ChancesJson.bounded(json, "alone", share.first());
                ChancesJson.bounded(json, "inAll", share.total());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static void input(JsonGenerator json, Matters.Input input) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", input.name());
        json.writeStringField("source", input.source());
        json.writeStringField("low", input.low());
        json.writeStringField("usual", input.usual());
        json.writeStringField("high", input.high());
        SummaryJson.number(json, "answerAtLow", input.answerAtLow());
        SummaryJson.number(json, "answerAtHigh", input.answerAtHigh());
        json.writeNumberField("comfortableNightsAtLow", input.nightsAtLow());
        json.writeNumberField("comfortableNightsAtHigh", input.nightsAtHigh());
        json.writeEndObject();
    }
}
