package ampdays.io;

import ampdays.results.WiringFinding;
import ampdays.results.WiringResult;
import ampdays.results.WiringRow;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A wiring check as one JSON document. Its form is told in docs/OUTPUT.md. */
public final class WiringJson {
    /** Stands on every output. */
    public static final String NOTICE = "not a code check; have it inspected by a licensed person";

    private WiringJson() {}

    /** Changes that mend a design, and what they leave. */
    public record Mended(Map<String, String> changes, List<WiringFinding> left) {}

    /**
     * Writes the document and a line end, and leaves the writer open.
     *
     * @param mended empty where nobody asked
     */
    public static void write(Writer writer, String scenario, String title, WiringResult result, Optional<Mended> mended)
            throws IOException {
        try (JsonGenerator json = SummaryJson.generator(writer)) {
            SummaryJson.begin(json, scenario, title);
            json.writeStringField("option", result.option());
            json.writeStringField("notice", NOTICE);
            json.writeBooleanField("offered", result.offered());
            json.writeNumberField("systemV", result.systemV());
            json.writeNumberField("faultA", result.faultA());
            json.writeArrayFieldStart("circuits");
            for (WiringRow row : result.rows()) {
                row(json, row);
            }
            json.writeEndArray();
            findings(json, "findings", result.findings(), result);
            SummaryJson.texts(json, "questions", result.questions());
            SummaryJson.texts(json, "leftOut", result.leftOut());
            if (mended.isPresent()) {
                json.writeObjectFieldStart("fix");
                json.writeObjectFieldStart("changes");
                for (Map.Entry<String, String> change : mended.get().changes().entrySet()) {
                    json.writeStringField(change.getKey(), change.getValue());
                }
                json.writeEndObject();
                findings(json, "left", mended.get().left(), result);
                json.writeEndObject();
            }
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static void row(JsonGenerator json, WiringRow row) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", row.circuit());
        json.writeStringField("from", row.from());
        json.writeStringField("to", row.to());
        json.writeStringField("conductor", row.conductor());
        json.writeStringField("inOtherMeasure", row.otherMeasure());
        SummaryJson.number(json, "lengthM", row.lengthM());
        json.writeStringField("return", row.returnByBody() ? "body" : "cable");
        SummaryJson.number(json, "mostA", row.mostA());
        SummaryJson.number(json, "hardestHourA", row.continuousA());
        SummaryJson.number(json, "allowedA", row.allowedA());
        SummaryJson.number(json, "dropV", row.dropV());
        SummaryJson.number(json, "drop", row.dropShare());
        SummaryJson.number(json, "dropLimit", row.dropLimitShare());
        json.writeStringField("air", row.place());
        SummaryJson.number(json, "airC", row.airC());
        SummaryJson.number(json, "conductorC", row.conductorC());
        SummaryJson.number(json, "jointC", row.jointC());
        json.writeStringField("protection", row.protection());
        SummaryJson.number(json, "ratingA", row.ratingA());
        SummaryJson.number(json, "leastHoldA", row.leastHoldA());
        SummaryJson.number(json, "protectionC", row.protectionC());
        SummaryJson.number(json, "faultA", row.faultA());
        SummaryJson.number(json, "interruptA", row.interruptA());
        json.writeEndObject();
    }

    private static void findings(JsonGenerator json, String field, List<WiringFinding> findings, WiringResult result)
            throws IOException {
        json.writeArrayFieldStart(field);
        for (WiringFinding finding : findings) {
            boolean timed = !Double.isNaN(finding.minutes());
            json.writeStartObject();
            json.writeStringField("severity", finding.severity().name().toLowerCase(Locale.ROOT));
            json.writeStringField("where", finding.where());
            json.writeStringField("kind", finding.rule().title());
            json.writeStringField("measured", finding.measured());
            json.writeStringField(
                    "first", timed ? Numbers.localStamp(finding.firstEpochSecond(), result.zone()) : null);
            SummaryJson.number(json, "minutes", finding.minutes());
            SummaryJson.number(json, "worst", finding.worst());
            SummaryJson.number(json, "limit", finding.limit());
            json.writeStringField("unit", finding.unit());
            json.writeStringField("remedy", finding.remedy());
            json.writeStringField("source", finding.rule().source());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
