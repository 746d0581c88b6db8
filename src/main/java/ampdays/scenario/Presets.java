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
     * @param about one sentence
     * @param values by path
     */
    public record Preset(String name, String about, Map<String, Value> values) {
        public Preset {
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
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
