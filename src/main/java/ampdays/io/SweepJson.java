package ampdays.io;

import ampdays.scenario.Grid;
import ampdays.scenario.Knob;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;

/** What a sweep varies, as a JSON document. Its form is told in docs/OUTPUT.md. */
public final class SweepJson {
    private SweepJson() {}

    /**
     * The document with a line end.
     *
     * @param inputs a fingerprint of everything else that the results come from
     */
    public static String of(String scenario, String title, Grid grid, String inputs) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = SummaryJson.generator(text)) {
            SummaryJson.begin(json, scenario, title);
            json.writeArrayFieldStart("knobs");
            for (Knob knob : grid.knobs()) {
                json.writeStartObject();
                json.writeStringField("path", knob.path());
                json.writeStringField("unit", knob.unit());
                SummaryJson.texts(json, "values", knob.values());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeBooleanField("together", grid.together());
            json.writeNumberField("rows", grid.rows());
            json.writeStringField("table", SweepFiles.TABLE);
            json.writeStringField("inputs", inputs);
            json.writeEndObject();
            json.writeRaw('\n');
        }
        return text.toString();
    }
}
