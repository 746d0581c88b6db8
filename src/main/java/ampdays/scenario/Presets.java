package ampdays.scenario;

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
     * @param values by path
     * @param ranges between what the members of the class usually lie, for those of its values that are measured, as
     *     {@code 240 to 320 A}, by path
     */
    public record Preset(String name, String about, Map<String, Value> values, Map<String, String> ranges) {
        private static final String TO = " to ";

        public Preset {
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
            ranges = Collections.unmodifiableMap(new LinkedHashMap<>(ranges));
        }

        /** The lower end of a range that it has, with its unit. */
        public String low(String path) {
            String high = high(path);
            int unit = high.indexOf(' ');
            return ranges.get(path).substring(0, ranges.get(path).indexOf(TO)) + (unit < 0 ? "" : high.substring(unit));
        }

        /** The upper end of a range that it has, with its unit. */
        public String high(String path) {
            return ranges.get(path).substring(ranges.get(path).indexOf(TO) + TO.length());
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
