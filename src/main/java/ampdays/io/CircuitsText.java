package ampdays.io;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.StringJoiner;

/** Circuits, and changes of them, as a scenario says them. */
public final class CircuitsText {
    private static final String SECTION = "circuits.";

    private CircuitsText() {}

    /**
     * A section {@code circuits}.
     *
     * @param texts path to text; every path is {@code circuits.NAME.key}
     */
    public static String section(Map<String, String> texts) {
        Map<String, StringJoiner> circuits = new LinkedHashMap<>();
        texts.forEach((path, text) -> {
            int dot = path.lastIndexOf('.');
            String name = path.substring(SECTION.length(), dot);
            circuits.computeIfAbsent(name, n -> new StringJoiner("\n    ", "    ", "\n"))
                    .add(path.substring(dot + 1) + ": " + text);
        });
        StringBuilder yaml = new StringBuilder("circuits:\n");
        circuits.forEach((name, keys) ->
                yaml.append("  ").append(YamlKey.of(name)).append(":\n").append(keys));
        return yaml.toString();
    }

    /** An option that makes changes by their paths. */
    public static String option(String name, Map<String, String> changes) {
        StringBuilder yaml =
                new StringBuilder("options:\n  ").append(YamlKey.of(name)).append(":\n");
        changes.forEach((path, text) -> yaml.append("    ")
                .append(YamlKey.of(path))
                .append(": ")
                .append(text)
                .append('\n'));
        return yaml.toString();
    }
}
