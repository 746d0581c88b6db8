package ampdays.scenario;

import ampdays.units.QuantityException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The generic classes that fill in what a scenario does not say, by section and name. */
public record Presets(Map<String, Map<String, Preset>> bySection) {
    /**
     * One generic class.
     *
     * @param about one sentence that tells it from its neighbours; more may follow
     * @param written what it says, by path: as in a scenario, behind a measure the usual range of the class in square
     *     brackets, {@code 280 A [240 to 320 A] (practice)}
     */
    public record Preset(String name, String about, Map<String, String> written) {
        private static final String TO = " to ";

        public Preset {
            written = Collections.unmodifiableMap(new LinkedHashMap<>(written));
        }

        /** Its values by path. They are read at each call: a scenario asks for those of a few presets, once. */
        public Map<String, Value> values() {
            Map<String, Value> values = new LinkedHashMap<>();
            written.forEach((path, text) -> values.put(path, value(path, text)));
            return values;
        }

        private Value value(String path, String text) {
            int open = text.indexOf('[');
            String plain = open < 0
                    ? text
                    : text.substring(0, open)
                            + text.substring(text.indexOf(']') + 1).strip();
            try {
                return Registry.parameter(path).orElseThrow().read(plain, Origin.preset(name));
            } catch (QuantityException e) {
                throw new IllegalStateException(name + ": " + path + " " + e.getMessage(), e);
            }
        }

        /** Between what the members of the class usually lie, as {@code 240 to 320 A}; empty for words and counts. */
        public String range(String path) {
            String text = written.get(path);
            return text.substring(text.indexOf('[') + 1, Math.max(0, text.indexOf(']')));
        }

        /** The lower end of a range, with its unit. */
        public String low(String path) {
            String high = high(path);
            int unit = high.indexOf(' ');
            return range(path).substring(0, range(path).indexOf(TO)) + (unit < 0 ? "" : high.substring(unit));
        }

        /** The upper end of a range, with its unit. */
        public String high(String path) {
            return range(path).substring(range(path).indexOf(TO) + TO.length());
        }
    }

    public static final Presets NONE = new Presets(Map.of());

    public Presets {
        Map<String, Map<String, Preset>> copy = new LinkedHashMap<>();
        bySection.forEach(
                (section, presets) -> copy.put(section, Collections.unmodifiableMap(new LinkedHashMap<>(presets))));
        bySection = Collections.unmodifiableMap(copy);
    }

    public List<Preset> of(String section) {
        return List.copyOf(bySection.getOrDefault(section, Map.of()).values());
    }

    public Optional<Preset> find(String section, String name) {
        return Optional.ofNullable(bySection.getOrDefault(section, Map.of()).get(name));
    }
}
