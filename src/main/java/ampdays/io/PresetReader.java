package ampdays.io;

import ampdays.scenario.Presets;
import ampdays.scenario.Presets.Preset;
import ampdays.scenario.Registry;
import ampdays.scenario.Section;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Reads the generic classes that the program brings along, a file for each section that takes presets. The files are YAML
 * of two levels and one line for each value, so that lines are all that must be read; a test holds them to it.
 */
public final class PresetReader {
    private static final String FOLDER = "/ampdays/presets/";
    private static final String INDENT = "  ";
    private static final String COLON = ": ";

    private static final Presets PRESETS = read();

    private PresetReader() {}

    public static Presets presets() {
        return PRESETS;
    }

    private static Presets read() {
        Map<String, Map<String, Preset>> sections = new LinkedHashMap<>();
        for (Section section : Registry.sections()) {
            if (section.takesPresets()) {
                Map<String, Preset> presets = new LinkedHashMap<>();
                lines(text(section.name()))
                        .forEach((name, said) -> presets.put(name, preset(section.name(), name, said)));
                sections.put(section.name(), presets);
            }
        }
        return new Presets(sections);
    }

    static String text(String section) {
        try (InputStream in = PresetReader.class.getResourceAsStream(FOLDER + section + ".yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a file says, by name of the preset and key. */
    static Map<String, Map<String, String>> lines(String text) {
        Map<String, Map<String, String>> presets = new LinkedHashMap<>();
        Map<String, String> current = new LinkedHashMap<>();
        for (String line : text.split("\\R", -1)) {
            if (line.startsWith(INDENT)) {
                int colon = line.indexOf(COLON);
                current.put(line.substring(INDENT.length(), colon), line.substring(colon + COLON.length()));
            } else if (!line.isEmpty() && !line.startsWith("#")) {
                current = new LinkedHashMap<>();
                presets.put(line.substring(0, line.length() - 1), current);
            }
        }
        return presets;
    }

    private static Preset preset(String section, String name, Map<String, String> said) {
        Map<String, String> written = new LinkedHashMap<>();
        said.forEach((key, text) -> written.put(section + "." + key, text));
        String about = written.remove(section + ".about");
        return new Preset(name, about, written);
    }
}
