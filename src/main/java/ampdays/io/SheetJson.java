package ampdays.io;

import ampdays.commission.Band;
import ampdays.commission.Conditions;
import ampdays.commission.Item;
import ampdays.commission.Judgement;
import ampdays.commission.Judgement.Suspect;
import ampdays.commission.Outcome;
import ampdays.commission.Sheet;
import ampdays.commission.Step;
import ampdays.commission.Sunlight;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/** A commissioning sheet, and what its readings say, as JSON documents. Their form is told in docs/OUTPUT.md. */
public final class SheetJson {
    private SheetJson() {}

    /** Writes the sheet and a line end, and leaves the writer open. */
    public static void write(Writer writer, Sheet sheet) throws IOException {
        try (JsonGenerator json = SummaryJson.generator(writer)) {
            json.writeStartObject();
            head(json, sheet);
            SummaryJson.texts(json, "cautions", Sheet.CAUTIONS);
            json.writeArrayFieldStart("steps");
            for (Step step : sheet.steps()) {
                json.writeStartObject();
                json.writeStringField("title", step.title());
                json.writeStringField("how", step.how());
                json.writeStringField("caution", step.caution());
                json.writeArrayFieldStart("items");
                for (Item item : step.items()) {
                    json.writeStartObject();
                    item(json, item, item.band());
                    text(json, "scalesWith", item.scalesWith());
                    json.writeEndObject();
                }
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
            SummaryJson.texts(json, "notes", sheet.notes());
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    /** Writes what the readings say and a line end, and leaves the writer open. */
    public static void write(Writer writer, Sheet sheet, List<Judgement> judgements) throws IOException {
        try (JsonGenerator json = SummaryJson.generator(writer)) {
            json.writeStartObject();
            head(json, sheet);
            json.writeBooleanField(
                    "stopStands", judgements.stream().anyMatch(judgement -> judgement.outcome() == Outcome.STOP));
            json.writeArrayFieldStart("readings");
            for (Judgement judgement : judgements) {
                judgement(json, judgement);
            }
            json.writeEndArray();
            SummaryJson.texts(
                    json,
                    "notRead",
                    Judgement.notRead(sheet, judgements).map(Item::id).toList());
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static void head(JsonGenerator json, Sheet sheet) throws IOException {
        json.writeNumberField("schemaVersion", SummaryJson.SCHEMA_VERSION);
        json.writeStringField("title", sheet.title());
        json.writeStringField("option", sheet.option());
        json.writeStringField("notice", WiringJson.NOTICE);
        Conditions told = sheet.conditions();
        json.writeObjectFieldStart("conditions");
        json.writeNumberField("ambientC", told.ambientC());
        json.writeNumberField("underBonnetC", told.underBonnetC());
        json.writeNumberField("soc", told.socShare());
        Sunlight sun = told.sun();
        text(
                json,
                "sun",
                sun.isTold() ? sun.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ') : "");
        if (Double.isFinite(sun.wm2())) {
            json.writeNumberField("sunWm2", sun.wm2());
        } else {
            json.writeNullField("sunWm2");
        }
        text(json, "at", sun.spelledTime().orElse(""));
        json.writeEndObject();
    }

    private static void judgement(JsonGenerator json, Judgement judgement) throws IOException {
        Item item = judgement.item();
        json.writeStartObject();
        item(json, item, judgement.band());
        if (item.isQuestion()) {
            json.writeStringField("reading", item.show(judgement.reading()));
        } else {
            json.writeNumberField("reading", new BigDecimal(item.typed(judgement.reading())));
        }
        json.writeStringField("outcome", judgement.outcome().label());
        json.writeArrayFieldStart("causes");
        for (Suspect suspect : judgement.causes()) {
            json.writeStartObject();
            json.writeStringField("cause", suspect.cause().text());
            json.writeStringField("support", suspect.support().name().toLowerCase(Locale.ROOT));
            json.writeStringField("test", suspect.cause().test());
            json.writeEndObject();
        }
        json.writeEndArray();
        text(json, "next", judgement.next());
        json.writeEndObject();
    }

    /** What is read, and the band by which it is judged; words for a question, numbers as they are printed for a reading. */
    private static void item(JsonGenerator json, Item item, Band band) throws IOException {
        json.writeStringField("id", item.id());
        json.writeStringField("what", item.what());
        json.writeStringField("where", item.where());
        text(json, "unit", item.unit());
        if (item.isQuestion()) {
            json.writeStringField("pass", item.passText());
            text(json, "stop", item.stopText());
            return;
        }
        number(json, "predicted", item, item.predicted());
        number(json, "passFrom", item, band.passFrom());
        number(json, "passTo", item, band.passTo());
        number(json, "stopBelow", item, band.stopBelow());
        number(json, "stopAbove", item, band.stopAbove());
    }

    private static void number(JsonGenerator json, String field, Item item, double value) throws IOException {
        String printed = item.number(value);
        if (printed.isEmpty()) {
            json.writeNullField(field);
        } else {
            json.writeNumberField(field, new BigDecimal(printed));
        }
    }

    private static void text(JsonGenerator json, String field, String text) throws IOException {
        if (text.isEmpty()) {
            json.writeNullField(field);
        } else {
            json.writeStringField(field, text);
        }
    }
}
