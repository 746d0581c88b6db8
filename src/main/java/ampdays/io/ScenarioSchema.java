package ampdays.io;

import ampdays.scenario.Fallback;
import ampdays.scenario.Kind;
import ampdays.scenario.Mark;
import ampdays.scenario.Parameter;
import ampdays.scenario.Registry;
import ampdays.scenario.Section;
import ampdays.scenario.Values;
import ampdays.units.Dimension;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The JSON Schema (draft 7) with which editors complete and check scenario files, from the registry. */
public final class ScenarioSchema {
    private static final String MARK = "(\\s+\\(\\s*(" + String.join("|", Mark.labels()) + ")\\s*([:;,].*)?\\))?$";

    private final StringWriter text = new StringWriter();
    private final JsonGenerator json;

    private ScenarioSchema() throws IOException {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        json = new JsonFactory()
                .createGenerator(text)
                .setPrettyPrinter(
                        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
    }

    public static String json() {
        try {
            ScenarioSchema schema = new ScenarioSchema();
            schema.write();
            return schema.text + "\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write() throws IOException {
        json.writeStartObject();
        json.writeStringField("$schema", "http://json-schema.org/draft-07/schema#");
        json.writeStringField("title", "ampdays scenario");
        json.writeStringField("type", "object");
        json.writeBooleanField("additionalProperties", false);
        json.writeObjectFieldStart("properties");
        for (Section section : Registry.sections()) {
            if (section.name().isEmpty()) {
                keys("");
            } else {
                json.writeFieldName(section.name());
                if (Values.isComponent(section.name())) {
                    orNone(section);
                } else {
                    group(section.name(), section.help());
                }
            }
        }
        described("use", "string", "A shared file in the scenario's folder or below it.");
        named("options", "Named sets of changes on the design, by path.");
        named("sweeps", "Named sweeps: what each varies, by path, and whether together.");
        named("failures", "Named failures: a kind or changes by path, from and until a moment like day 3 14:00.");
        json.writeEndObject();
        json.writeEndObject();
        json.close();
    }

    private void described(String name, String type, String help) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeStringField("type", type);
        json.writeStringField("description", help);
        json.writeEndObject();
    }

    private void named(String name, String help) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeStringField("type", "object");
        json.writeStringField("description", help);
        json.writeObjectFieldStart("additionalProperties");
        json.writeStringField("type", "object");
        json.writeEndObject();
        json.writeEndObject();
    }

    private void orNone(Section section) throws IOException {
        json.writeStartObject();
        json.writeStringField("description", section.help());
        json.writeArrayFieldStart("oneOf");
        json.writeStartObject();
        json.writeStringField("const", Values.NONE);
        json.writeEndObject();
        group(section.name(), section.help());
        json.writeEndArray();
        json.writeEndObject();
    }

    private void group(String path, String help) throws IOException {
        json.writeStartObject();
        json.writeStringField("type", "object");
        if (!help.isEmpty()) {
            json.writeStringField("description", help);
        }
        boolean named = Registry.children(path).contains("*");
        if (named) {
            json.writeFieldName("additionalProperties");
            any(path + ".*");
        } else {
            json.writeBooleanField("additionalProperties", false);
        }
        json.writeObjectFieldStart("properties");
        keys(path);
        json.writeEndObject();
        json.writeEndObject();
    }

    /** Keys below a path; at the top only those that are no section. */
    private void keys(String path) throws IOException {
        for (String key : Registry.children(path)) {
            if (!key.equals("*") && !(path.isEmpty() && Registry.section(key).isPresent())) {
                json.writeFieldName(key);
                any(path.isEmpty() ? key : path + "." + key);
            }
        }
    }

    private void any(String path) throws IOException {
        boolean group = Registry.isGroup(path);
        Parameter parameter = Registry.parameter(path).orElse(null);
        if (parameter != null && group) {
            json.writeStartObject();
            json.writeArrayFieldStart("oneOf");
            value(parameter);
            group(path, "");
            json.writeEndArray();
            json.writeEndObject();
        } else if (parameter != null) {
            value(parameter);
        } else {
            group(path, "");
        }
    }

    private void value(Parameter parameter) throws IOException {
        json.writeStartObject();
        json.writeStringField("description", parameter.help() + defaultText(parameter));
        if (parameter.kind() instanceof Kind.Timetable) {
            json.writeStringField("type", "array");
            json.writeObjectFieldStart("items");
            json.writeStringField("type", "string");
            json.writeStringField("pattern", "^\\d{1,2}:\\d{2} (drive|park|idle|fast idle)\\b");
            json.writeEndObject();
        } else if (parameter.kind() instanceof Kind.Choice choice) {
            choice(choice);
        } else {
            boolean bare = isBareNumber(parameter.kind());
            if (bare) {
                json.writeArrayFieldStart("type");
                json.writeString("string");
                json.writeString("number");
                json.writeEndArray();
            } else {
                json.writeStringField("type", "string");
            }
            String pattern = pattern(parameter.kind());
            if (!pattern.isEmpty()) {
                json.writeStringField("pattern", pattern);
            }
        }
        json.writeEndObject();
    }

    /** The words for completion, and the words with a mark behind them. */
    private void choice(Kind.Choice choice) throws IOException {
        json.writeArrayFieldStart("anyOf");
        json.writeStartObject();
        json.writeArrayFieldStart("enum");
        for (String word : choice.words()) {
            json.writeString(word);
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeStartObject();
        json.writeStringField("type", "string");
        json.writeStringField("pattern", pattern(choice));
        json.writeEndObject();
        json.writeEndArray();
    }

    private static boolean isBareNumber(Kind kind) {
        return kind instanceof Kind.Count
                || kind instanceof Kind.Money
                || (kind instanceof Kind.Measured m && m.dimensions().contains(Dimension.NUMBER));
    }

    private static String defaultText(Parameter parameter) {
        if (parameter.fallback() instanceof Fallback.Fixed fixed) {
            return " Default: " + fixed.text() + ".";
        }
        return parameter.fallback() instanceof Fallback.Derived derived ? " Default: " + derived.rule() + "." : "";
    }

    /** Pattern that every text of this kind matches; empty when any text may. */
    static String pattern(Kind kind) {
        if (kind instanceof Kind.Measured measured) {
            String units = measured.dimensions().stream()
                    .map(Dimension::spellings)
                    .flatMap(List::stream)
                    .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                    .map(ScenarioSchema::escaped)
                    .collect(Collectors.joining("|"));
            String word = measured.word().isEmpty() ? "" : measured.word() + "|";
            return "^(" + word + "[+\\-\u2212]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?\\s*(" + units + "))" + MARK;
        }
        if (kind instanceof Kind.Money) {
            return "^[+\\-\u2212]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?(\\s*[^\\d\\s.,(][^(]*)?" + MARK;
        }
        if (kind instanceof Kind.Choice choice) {
            return "^(" + choice.words().stream().map(ScenarioSchema::escaped).collect(Collectors.joining("|")) + ")"
                    + MARK;
        }
        if (kind instanceof Kind.Count) {
            return "^\\d+" + MARK;
        }
        return kind instanceof Kind.Date ? "^(\\d{4}-)?\\d{2}-\\d{2}$" : "";
    }

    /** A unit as a pattern: spaces in it may be left out. */
    private static String escaped(String unit) {
        return Pattern.compile("[\\\\^$.|?*+()\\[\\]{}]")
                .matcher(unit)
                .replaceAll("\\\\$0")
                .replace(" ", " ?");
    }
}
