package ampdays.io;

import ampdays.io.ScenarioWalk.Entry;
import ampdays.scenario.Origin;
import ampdays.scenario.Presets;
import ampdays.scenario.Presets.Preset;
import ampdays.scenario.Registry;
import ampdays.scenario.Value;
import ampdays.units.QuantityException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads the generic classes that the program brings along. */
public final class PresetReader {
    private static final String RESOURCE = "/ampdays/presets/presets.yaml";

    private static final Presets PRESETS = read();

    private PresetReader() {}

    public static Presets presets() {
        return PRESETS;
    }

    private static Presets read() {
        List<InputProblem> problems = new ArrayList<>();
        MappingNode root = YamlText.map("presets.yaml", text(), problems)
                .orElseThrow(() -> new IllegalStateException(problems.toString()));
        ScenarioWalk walk = new ScenarioWalk("presets.yaml", problems);
        Map<String, Map<String, Preset>> sections = new LinkedHashMap<>();
        walk.entries(root).forEach((section, presets) -> {
            Map<String, Preset> named = new LinkedHashMap<>();
            walk.entries(map(presets))
                    .forEach((name, values) -> named.put(name, preset(walk, section, name, map(values))));
            sections.put(section, named);
        });
        if (!problems.isEmpty()) {
            throw new IllegalStateException(problems.toString());
        }
        return new Presets(sections);
    }

    private static String text() {
        try (InputStream in = PresetReader.class.getResourceAsStream(RESOURCE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Preset preset(ScenarioWalk walk, String section, String name, MappingNode map) {
        Map<String, Value> values = new LinkedHashMap<>();
        String about = "";
        for (Map.Entry<String, Entry> entry : walk.entries(map).entrySet()) {
            Node node = entry.getValue().value();
            String text = node instanceof ScalarNode scalar ? YamlText.text(scalar) : "";
            if (entry.getKey().equals("about")) {
                about = text;
                continue;
            }
            String path = section + "." + entry.getKey();
            try {
                values.put(
                        path,
                        Registry.parameter(path)
                                .orElseThrow(() -> new IllegalStateException(path + " is not known"))
                                .read(text, Origin.preset(name)));
            } catch (QuantityException e) {
                throw new IllegalStateException(path + " " + e.getMessage(), e);
            }
        }
        return new Preset(name, about, values);
    }

    private static MappingNode map(Entry entry) {
        if (entry.value() instanceof MappingNode map) {
            return map;
        }
        throw new IllegalStateException(YamlText.text(entry.key()) + " is not a map");
    }
}
