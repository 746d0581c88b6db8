package ampdays.io;

import ampdays.results.Bounded;
import ampdays.results.Chances;
import ampdays.results.Chances.Drawn;
import ampdays.results.Chances.Tenths;
import ampdays.results.Survival;
import ampdays.results.TripOutcome;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;

/** A study of many trips as one JSON document. Its form is told in docs/OUTPUT.md. */
public final class ChancesJson {
    private ChancesJson() {}

    /** Writes the document and a line end, and leaves the writer open. */
    public static void write(Writer writer, Chances chances) throws IOException {
        try (JsonGenerator json = SummaryJson.generator(writer)) {
            SummaryJson.begin(json, chances.scenario(), chances.title());
            json.writeNumberField("trips", chances.trips());
            json.writeNumberField("seed", chances.seed());
            SummaryJson.number(json, "reserve", chances.reserveShare());
            json.writeArrayFieldStart("drawn");
            for (Drawn drawn : chances.drawn()) {
                json.writeStartObject();
                json.writeStringField("name", drawn.name());
                json.writeStringField("spread", drawn.words());
                json.writeStringField("source", drawn.source());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("options");
            for (Chances.Option option : chances.options()) {
                option(json, option);
            }
            json.writeEndArray();
            json.writeStringField("table", ChancesFiles.TABLE);
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static void option(JsonGenerator json, Chances.Option option) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", option.name());
        json.writeStringField("starts", option.starts());
        json.writeStringField("weather", option.weather());
        bounded(json, "neverEmpty", option.neverEmpty());
        bounded(json, "allNightsComfortable", option.comfortable());
        tenths(json, "daysToEmpty", option.days());
        tenths(json, "comfortableNights", option.nights());
        SummaryJson.number(json, "unservedShare", option.unservedShare());
        SummaryJson.number(json, "outlastsBaseDesign", option.betterShare());
        SummaryJson.number(json, "outlastedByBaseDesign", option.worseShare());
        TripOutcome worst = option.worst();
        json.writeObjectFieldStart("worstThreeDays");
        json.writeNumberField("trip", worst.trip());
        json.writeStringField("weather", worst.weather());
        json.writeStringField("from", worst.worst().first().toString());
        SummaryJson.number(json, "askedWh", worst.worst().askedWh());
        SummaryJson.number(json, "cameWh", worst.worst().cameWh());
        json.writeEndObject();
        json.writeArrayFieldStart("notYetEmpty");
        for (Survival.Step step : option.survival().steps()) {
            json.writeStartObject();
            SummaryJson.number(json, "fromDay", step.day());
            SummaryJson.number(json, "share", step.share());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void tenths(JsonGenerator json, String field, Tenths tenths) throws IOException {
        json.writeObjectFieldStart(field);
        bounded(json, "p10", tenths.p10());
        bounded(json, "p50", tenths.p50());
        bounded(json, "p90", tenths.p90());
        json.writeEndObject();
    }

    static void bounded(JsonGenerator json, String field, Bounded bounded) throws IOException {
        json.writeObjectFieldStart(field);
        SummaryJson.number(json, "value", bounded.value());
        SummaryJson.number(json, "low", bounded.low());
        SummaryJson.number(json, "high", bounded.high());
        json.writeEndObject();
    }
}
