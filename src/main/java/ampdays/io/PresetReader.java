package ampdays.io;

import ampdays.io.ScenarioWalk.Entry;
import ampdays.scenario.Presets;
import ampdays.scenario.Presets.Preset;
import ampdays.scenario.Registry;
import ampdays.scenario.Section;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads the generic classes that the program brings along, a file for each section that takes presets. */
public final class PresetReader {
    private static final String FOLDER = "/ampdays/presets/";

    private static final Presets PRESETS = read();

    private PresetReader() {}

    public static Presets presets() {
        return PRESETS;
    }

    private static Presets read() {
        Map<String, Map<String, Preset>> sections = new LinkedHashMap<>();
        for (Section section : Registry.sections()) {
            if (section.takesPresets()) {
                sections.put(section.name(), section(section.name()));
            }
        }
        return new Presets(sections);
    }

    private static Map<String, Preset> section(String section) {
        String file = section + ".yaml";
        List<InputProblem> problems = new ArrayList<>();
        MappingNode root = YamlText.map(file, text(file), problems)
                .orElseThrow(() -> new IllegalStateException(problems.toString()));
        ScenarioWalk walk = new ScenarioWalk(file, problems);
        Map<String, Preset> presets = new LinkedHashMap<>();
        walk.entries(root).forEach((name, entry) -> presets.put(name, preset(walk, section, name, entry)));
        if (!problems.isEmpty()) {
            throw new IllegalStateException(problems.toString());
        }
        return presets;
    }

    private static String text(String file) {
        try (InputStream in = PresetReader.class.getResourceAsStream(FOLDER + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Preset preset(ScenarioWalk walk, String section, String name, Entry preset) {
        if (!(preset.value() instanceof MappingNode map)) {
            throw new IllegalStateException(name + " is not a map");
        }
        Map<String, String> written = new LinkedHashMap<>();
        String about = "";
        for (Map.Entry<String, Entry> entry : walk.entries(map).entrySet()) {
            String text = entry.getValue().value() instanceof ScalarNode scalar ? YamlText.text(scalar) : "";
            if (entry.getKey().equals("about")) {
                about = text;
            } else {
                written.put(section + "." + entry.getKey(), text);
            }
        }
        return new Preset(name, about, written);
    }
}
