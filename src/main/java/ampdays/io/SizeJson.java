package ampdays.io;

import ampdays.results.Lifted;
import ampdays.results.RunResult;
import ampdays.results.Sizing;
import ampdays.results.Sizing.Tried;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.Optional;

/** The answer to a question of size, as a JSON document. Its form is told in docs/OUTPUT.md. */
public final class SizeJson {
    private SizeJson() {}

    /**
     * Writes the document and a line end, and leaves the writer open.
     *
     * @param lifted what a better part would bring the design that comes nearest; empty when the goals are reached
     */
    public static void write(Writer writer, String scenario, String title, Sizing sizing, Optional<Lifted> lifted)
            throws IOException {
        try (JsonGenerator json = SummaryJson.generator(writer)) {
            SummaryJson.begin(json, scenario, title);
            json.writeStringField("option", sizing.option());
            json.writeStringField("knob", sizing.path());
            json.writeStringField("range", sizing.range());
            json.writeStringField("wanted", sizing.smallest() ? "smallest" : "largest");
            SummaryJson.texts(json, "goals", sizing.goals());
            json.writeBooleanField("reached", sizing.answer().isPresent());
            value(json, "answer", sizing.answer().map(sizing.tried()::get));
            value(json, "notEnough", sizing.notEnough());
            value(json, "best", Optional.of(sizing.bestTried()));
            SummaryJson.texts(json, "against", sizing.against());
            if (sizing.parkedForGood().isPresent()) {
                RunResult parked = sizing.parkedForGood().get();
                json.writeObjectFieldStart("parkedForGood");
                SummaryJson.number(json, "daysToEmpty", parked.daysToEmpty());
                json.writeBooleanField("holds", parked.holds());
                json.writeNumberField("comfortableNights", parked.comfortableNights());
                json.writeEndObject();
            }
            json.writeArrayFieldStart("tried");
            for (Tried tried : sizing.tried()) {
                json.writeStartObject();
                json.writeStringField("value", tried.value());
                json.writeBooleanField("reached", tried.reached());
                SummaryJson.texts(json, "measured", tried.measured());
                json.writeStringField("problem", tried.problem());
                json.writeEndObject();
            }
            json.writeEndArray();
            if (lifted.isPresent()) {
                SummaryJson.lifted(json, lifted.get());
            }
            json.writeStringField("table", SweepFiles.TABLE);
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static void value(JsonGenerator json, String field, Optional<Tried> tried) throws IOException {
        if (tried.isPresent()) {
            json.writeStringField(field, tried.get().value());
        } else {
            json.writeNullField(field);
        }
    }
}
