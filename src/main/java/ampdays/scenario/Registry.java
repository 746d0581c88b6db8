package ampdays.scenario;

import ampdays.units.Nearest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every parameter that a scenario may set, each declared once, in the order of the reference page. */
public final class Registry {
    private static final List<Section> SECTIONS = Stream.of(
                    TripSections.all(),
                    LivingSections.all(),
                    SupplySections.all(),
                    List.of(CircuitSection.section()),
                    List.of(
                            PriceSection.section(),
                            MassSection.section(),
                            ChancesSection.section(),
                            ToleranceSection.section()))
            .flatMap(List::stream)
            .toList();

    private static final Map<String, Parameter> BY_PATH = byPath();

    private static final List<List<String>> KEYS_OF_PATHS =
            BY_PATH.keySet().stream().map(Registry::keys).toList();

    private static final Map<String, Section> BY_NAME =
            SECTIONS.stream().collect(Collectors.toUnmodifiableMap(Section::name, s -> s));

    private Registry() {}

    private static Map<String, Parameter> byPath() {
        Map<String, Parameter> map = new LinkedHashMap<>();
        for (Section section : SECTIONS) {
            for (Parameter parameter : section.parameters()) {
                if (map.put(parameter.path(), parameter) != null) {
                    throw new IllegalStateException(parameter.path() + " is declared twice");
                }
            }
        }
        return Collections.unmodifiableMap(map);
    }

    private static List<String> keys(String path) {
        return path.isEmpty() ? List.of() : List.of(path.split("\\.", -1));
    }

    public static List<Section> sections() {
        return SECTIONS;
    }

    public static Optional<Section> section(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }

    /** Whether a path lies in a section that describes the van as a run sees it. */
    static boolean isVan(String path) {
        return section(Values.section(path)).map(Section::isVan).orElse(false);
    }

    /** The parameter at a path, in which a name given by the designer may stand for the {@code *}. */
    public static Optional<Parameter> parameter(String path) {
        Parameter exact = BY_PATH.get(path);
        if (exact != null) {
            return Optional.of(exact);
        }
        String[] parts = path.split("\\.", -1);
        for (int i = 1; i < parts.length; i++) {
            if (!parts[i].isBlank()) {
                String[] named = parts.clone();
                named[i] = "*";
                Parameter found = BY_PATH.get(String.join(".", named));
                if (found != null) {
                    return Optional.of(found);
                }
            }
        }
        return Optional.empty();
    }

    /** Whether more keys may follow below this path. */
    public static boolean isGroup(String path) {
        return path.isEmpty() || !children(path).isEmpty();
    }

    /** Keys that may follow a path; {@code *} stands for a free name. */
    public static List<String> children(String path) {
        List<String> children = new ArrayList<>();
        List<String> prefix = keys(path);
        boolean named = !BY_PATH.containsKey(path);
        for (List<String> known : KEYS_OF_PATHS) {
            boolean below = known.size() > prefix.size();
            for (int i = 0; below && i < prefix.size(); i++) {
                below = known.get(i).equals(prefix.get(i))
                        || (i > 0 && named && known.get(i).equals("*"));
            }
            if (below && !children.contains(known.get(prefix.size()))) {
                children.add(known.get(prefix.size()));
            }
        }
        return children;
    }

    /** What to say of a key that no parameter has, by its path, where keys stand below their sections. */
    public static String unknownPath(String path) {
        return unknown(path, "");
    }

    /** The same where a path has to be written whole. */
    public static String unknownWholePath(String path) {
        int dot = path.lastIndexOf('.');
        return unknown(path, path.substring(0, dot + 1));
    }

    private static String unknown(String path, String before) {
        int dot = path.lastIndexOf('.');
        String above = dot < 0 ? "" : path.substring(0, dot);
        List<String> known = new ArrayList<>(children(above));
        known.remove("*");
        if (dot < 0) {
            known.addAll(List.of("use", "options", "sweeps", "failures"));
        }
        if (known.isEmpty() && dot > 0) {
            return before.isEmpty() ? unknownPath(above) : unknownWholePath(above);
        }
        String key = path.substring(dot + 1);
        return path + " is not known."
                + Nearest.of(key, known)
                        .map(w -> " Did you mean " + before + w + "?")
                        .orElse(" Known here: " + String.join(", ", known) + ".");
    }
}
