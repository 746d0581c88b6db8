package ampdays.io;

import ampdays.scenario.Mark;
import ampdays.scenario.Presets.Preset;
import ampdays.scenario.Value;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Map;

/** Presets as one JSON document; its values are texts that a scenario takes as they are. */
public final class PresetsJson {
    /** Rises when a key changes its meaning or goes away; new keys do not raise it. */
    public static final int SCHEMA_VERSION = 1;

    private PresetsJson() {}

    /** Writes the document and a line end, and leaves the writer open. */
    public static void write(Writer writer, Map<String, List<Preset>> byKind) throws IOException {
        try (JsonGenerator json = SummaryJson.generator(writer)) {
            json.writeStartObject();
            json.writeNumberField("schemaVersion", SCHEMA_VERSION);
            json.writeArrayFieldStart("presets");
            for (Map.Entry<String, List<Preset>> kind : byKind.entrySet()) {
                for (Preset preset : kind.getValue()) {
                    preset(json, kind.getKey(), preset);
                }
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static void preset(JsonGenerator json, String kind, Preset preset) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", kind);
        json.writeStringField("name", preset.name());
        json.writeStringField("about", preset.about());
        json.writeObjectFieldStart("values");
        for (Map.Entry<String, Value> entry : preset.values().entrySet()) {
            String path = entry.getKey();
            Value value = entry.getValue();
            json.writeObjectFieldStart(path.substring(kind.length() + 1));
            json.writeStringField("value", value.text());
            if (!preset.range(path).isEmpty()) {
                json.writeStringField("low", preset.low(path));
                json.writeStringField("high", preset.high(path));
            }
            json.writeStringField("mark", value.mark().map(Mark::label).orElse(""));
            json.writeStringField("note", value.note());
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeEndObject();
    }
}
