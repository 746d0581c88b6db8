package ampdays.io;

import ampdays.audit.Audit;
import ampdays.audit.AuditedDay;
import ampdays.audit.Draw;
import ampdays.audit.Misfit;
import ampdays.audit.Readings;
import ampdays.audit.Untold;
import ampdays.audit.Use;
import ampdays.audit.UsualUse;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Optional;

/** An audit as one JSON document. Its form is told in docs/READINGS.md. */
public final class AuditJson {
    private AuditJson() {}

    /** Writes the document and a line end, and leaves the writer open. */
    public static void write(Writer writer, Readings readings, Audit audit, AuditedDay day) throws IOException {
        try (JsonGenerator json = SummaryJson.generator(writer)) {
            json.writeStartObject();
            json.writeNumberField("schemaVersion", SummaryJson.SCHEMA_VERSION);
            json.writeStringField("title", readings.title());
            json.writeNumberField("readings", readings.rows().size());
            json.writeNumberField("resolutionA", readings.resolutionA());
            json.writeNumberField("voltageV", readings.voltageV());
            json.writeBooleanField("voltageRead", readings.hasVoltage());
            SummaryJson.texts(json, "notes", readings.notes());
            json.writeArrayFieldStart("draws");
            for (Draw draw : audit.draws()) {
                draw(json, draw, readings);
            }
            json.writeEndArray();
            json.writeNumberField("driftA", audit.driftA());
            json.writeNumberField("driftPlusMinusA", audit.driftPlusMinusA());
            json.writeNumberField("scatter", audit.scatter());
            json.writeNumberField("spareReadings", audit.spare());
            json.writeArrayFieldStart("untold");
            for (Untold untold : audit.untold()) {
                json.writeStartObject();
                SummaryJson.texts(json, "names", untold.names());
                json.writeArrayFieldStart("next");
                for (Untold.Next next : untold.next()) {
                    json.writeStartObject();
                    json.writeStringField("switch", next.appliance());
                    json.writeBooleanField("on", next.toOn());
                    json.writeEndObject();
                }
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("contradictions");
            for (Misfit misfit : audit.misfits()) {
                json.writeStartObject();
                lines(json, misfit.lines());
                json.writeNumberField("offA", misfit.offA());
                json.writeBooleanField("leftOut", misfit.leftOut());
                json.writeEndObject();
            }
            json.writeEndArray();
            day(json, day, readings.voltageV());
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static void draw(JsonGenerator json, Draw draw, Readings readings) throws IOException {
        json.writeStartObject();
        SummaryJson.texts(json, "names", draw.names());
        SummaryJson.number(json, "drawA", draw.amps());
        SummaryJson.number(json, "plusMinusA", draw.plusMinusA());
        SummaryJson.number(json, "surgeA", draw.surgeA());
        lines(json, draw.lines());
        Use use = AuditedDay.use(readings, draw);
        SummaryJson.number(json, "hoursPerDay", use.knownHoursPerDay());
        json.writeStringField("when", use.when());
        Optional<UsualUse> usual = AuditedDay.usual(draw);
        SummaryJson.number(
                json, "usualFromHoursPerDay", usual.map(UsualUse::fromHours).orElse(Double.NaN));
        SummaryJson.number(
                json, "usualToHoursPerDay", usual.map(UsualUse::toHours).orElse(Double.NaN));
        json.writeEndObject();
    }

    private static void day(JsonGenerator json, AuditedDay day, double voltageV) throws IOException {
        json.writeObjectFieldStart("day");
        json.writeArrayFieldStart("hourAh");
        for (double ah : day.hourAh()) {
            json.writeNumber(ah);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("hourWh");
        for (double ah : day.hourAh()) {
            json.writeNumber(ah * voltageV);
        }
        json.writeEndArray();
        json.writeNumberField("hoursNotToldAh", day.elsewhereAh());
        SummaryJson.texts(
                json, "counted", day.counted().stream().map(Draw::label).toList());
        SummaryJson.texts(json, "asked", day.asked().stream().map(Draw::label).toList());
        json.writeNumberField("leastAskedAh", day.leastAskedAh());
        json.writeNumberField("mostAskedAh", day.mostAskedAh());
        json.writeEndObject();
    }

    private static void lines(JsonGenerator json, List<Integer> lines) throws IOException {
        json.writeArrayFieldStart("lines");
        for (int line : lines) {
            json.writeNumber(line);
        }
        json.writeEndArray();
    }
}
