package ampdays.scenario;

import ampdays.units.Dimension;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The values of one design by path; immutable. What is not said comes from the section's preset, then from the
 * parameter's default.
 */
public final class Values {
    /** Written in place of a section or a named load, it takes the component out of the design. */
    public static final String NONE = "none";

    static final String PRESET = ".preset";
    private static final String TRIP_DAYS = "trip.days";

    private final Map<String, Value> said;
    private final Presets presets;
    /** What the presets in force say, by section and path. */
    private final Map<String, Map<String, Value>> fromPresets;
    /** The sections of which anything was said. */
    private final Set<String> sections;
    /** The longest that the trip was before a change of its length, days; 0 without one. */
    private final double longestBefore;
    /** Is told the path of whatever is looked up. */
    private final Consumer<String> reader;

    private Values(
            Map<String, Value> said,
            Presets presets,
            Map<String, Map<String, Value>> fromPresets,
            double longestBefore,
            Consumer<String> reader) {
        this(
                said,
                presets,
                fromPresets,
                said.keySet().stream().map(Values::section).collect(Collectors.toSet()),
                longestBefore,
                reader);
    }

    private Values(
            Map<String, Value> said,
            Presets presets,
            Map<String, Map<String, Value>> fromPresets,
            Set<String> sections,
            double longestBefore,
            Consumer<String> reader) {
        this.said = said;
        this.presets = presets;
        this.fromPresets = fromPresets;
        this.sections = sections;
        this.longestBefore = longestBefore;
        this.reader = reader;
    }

    public static Values empty(Presets presets) {
        return new Values(Map.of(), presets, Map.of(), 0, path -> {});
    }

    /** The same, telling the path of whatever is looked up. */
    Values toldTo(Consumer<String> reader) {
        return new Values(said, presets, fromPresets, sections, longestBefore, reader);
    }

    /** What may be answered otherwise by these values than by others. */
    Unlike unlike(Values other) {
        Unlike unlike = Unlike.of(said, other.said, presets.equals(other.presets));
        return longestBefore == other.longestBefore ? unlike : unlike.and(TRIP_DAYS);
    }

    /** The first word of a path. */
    static String section(String path) {
        int dot = path.indexOf('.');
        return dot < 0 ? path : path.substring(0, dot);
    }

    /** The value in force at a path, if the design has one. */
    public Optional<Value> find(String path) {
        reader.accept(path);
        Value own = said.get(path);
        if (own != null) {
            return Optional.of(own);
        }
        Optional<Parameter> parameter = Registry.parameter(path);
        return parameter.isPresent() && has(parameter.get().section())
                ? unsaid(parameter.get(), path)
                : Optional.empty();
    }

    private Optional<Value> unsaid(Parameter parameter, String path) {
        Value preset = preset(parameter, path);
        if (preset != null) {
            return Optional.of(preset);
        }
        if (parameter.fallback() instanceof Fallback.Derived derived) {
            return Optional.of(derived(parameter, derived));
        }
        return parameter.fallback() instanceof Fallback.Fixed fixed
                ? Optional.of(fixed.value(parameter))
                : Optional.empty();
    }

    private Value preset(Parameter parameter, String path) {
        return fromPresets.getOrDefault(parameter.section(), Map.of()).get(path);
    }

    private Value derived(Parameter parameter, Fallback.Derived derived) {
        double number = derived.from().applyAsDouble(this);
        Dimension dimension = ((Kind.Measured) parameter.kind()).dimensions().get(0);
        return new Value(
                dimension.show(number),
                number,
                Optional.of(dimension),
                Optional.of(parameter.mark()),
                derived.rule(),
                Origin.DEFAULT);
    }

    /** Whether a path has no value because its section names no preset. */
    boolean presetWouldGive(String path) {
        reader.accept(path);
        String section = section(path);
        return !said.containsKey(section + PRESET)
                && presets.of(section).stream().anyMatch(p -> p.written().containsKey(path));
    }

    /** The preset that a value in force comes from, if it is not said in the scenario itself. */
    Optional<Presets.Preset> presetBehind(String path) {
        reader.accept(path);
        Value name = said.get(section(path) + PRESET);
        return name == null || said.containsKey(path)
                ? Optional.empty()
                : presets.find(section(path), name.text())
                        .filter(preset -> preset.written().containsKey(path));
    }

    /** The number in force at a path, in the base unit of its dimension; NaN when there is none. */
    public double number(String path) {
        reader.accept(path);
        Value own = said.get(path);
        if (own != null) {
            return own.number();
        }
        Optional<Parameter> parameter = Registry.parameter(path);
        if (parameter.isEmpty() || !has(parameter.get().section())) {
            return Double.NaN;
        }
        if (parameter.get().fallback() instanceof Fallback.Derived derived && preset(parameter.get(), path) == null) {
            // the text that find would write takes longer than the number
            return derived.from().applyAsDouble(this);
        }
        return unsaid(parameter.get(), path).map(Value::number).orElse(Double.NaN);
    }

    /**
     * The longest that the trip is said to be, days: the last day that a set of days may name. Where a change made the trip
     * shorter this is its length before.
     */
    double longestTripDays() {
        double now = number(TRIP_DAYS);
        return now > longestBefore ? now : longestBefore;
    }

    /** Capacity of the bank, Ah, also where it was said as energy. */
    public double bankAh() {
        return BatterySection.capacityAh(this);
    }

    /** Whether the bank is one of lead-acid. */
    public boolean isLeadAcid() {
        return BatterySection.isLeadAcid(this);
    }

    /** The text in force at a path; empty when there is none. */
    public String word(String path) {
        return find(path).map(Value::text).orElse("");
    }

    /** Whether the design has a section: a component must be named, everything else has defaults. */
    public boolean has(String section) {
        reader.accept(section);
        return sections.contains(section) || !isComponentSection(section);
    }

    private static boolean isComponentSection(String name) {
        Optional<Section> section = Registry.section(name);
        return section.isPresent() && section.get().presence() == Section.Presence.COMPONENT;
    }

    /** Whether anything was said at a path or below it. */
    public boolean isSaid(String path) {
        reader.accept(path);
        return path.indexOf('.') < 0
                ? sections.contains(path)
                : said.keySet().stream().anyMatch(p -> isAtOrBelow(p, path));
    }

    private static boolean isAtOrBelow(String path, String above) {
        return path.startsWith(above) && (path.length() == above.length() || path.charAt(above.length()) == '.');
    }

    /** The names given by the designer below a path, in the order written. */
    public Collection<String> names(String path) {
        reader.accept(path);
        Set<String> names = new LinkedHashSet<>();
        for (String known : said.keySet()) {
            if (known.startsWith(path + ".")) {
                String rest = known.substring(path.length() + 1);
                names.add(rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest);
            }
        }
        return names;
    }

    /** Where a path was said: itself, or else the nearest section above it. */
    public Optional<Origin> origin(String path) {
        reader.accept(path);
        String at = path;
        while (!at.isEmpty()) {
            String wanted = at;
            Optional<Value> found = said.entrySet().stream()
                    .filter(e -> isAtOrBelow(e.getKey(), wanted))
                    .map(Map.Entry::getValue)
                    .findFirst();
            if (found.isPresent()) {
                return found.map(Value::origin);
            }
            at = at.contains(".") ? at.substring(0, at.lastIndexOf('.')) : "";
        }
        return Optional.empty();
    }

    /** These values with one more; a timetable of all days replaces those by kind, and the other way round. */
    public Values with(String path, Value value) {
        Map<String, Value> changed = new LinkedHashMap<>(said);
        if (path.equals("trip.timetable")) {
            changed.keySet().removeIf(p -> p.startsWith("trip.timetable."));
        } else if (path.startsWith("trip.timetable.")) {
            changed.remove("trip.timetable");
        }
        changed.put(path, value);
        Map<String, Map<String, Value>> presetValues = path.endsWith(PRESET) ? withPreset(path, value) : fromPresets;
        double longest = path.equals(TRIP_DAYS) ? longestTripDays() : longestBefore;
        return said.containsKey(path)
                ? new Values(changed, presets, presetValues, sections, longest, reader)
                : new Values(changed, presets, presetValues, longest, reader);
    }

    /** These values with many changed at once; presets and timetables must not be among them. */
    public Values withNumbers(Map<String, Value> numbers) {
        Map<String, Value> changed = new LinkedHashMap<>(said);
        changed.putAll(numbers);
        return new Values(changed, presets, fromPresets, longestBefore, reader);
    }

    /** The sections in which others, made from these values, change something. */
    Set<String> sectionsChanged(Values to) {
        return pathsChanged(to).map(Values::section).collect(Collectors.toSet());
    }

    /** The paths that others, made from these values, change; what they only say again is no change. */
    Stream<String> pathsChanged(Values to) {
        return Stream.concat(said.keySet().stream(), to.said.keySet().stream())
                .distinct()
                .filter(path -> isChanged(to, path));
    }

    /** What is said for the first time also counts where without it another preset or rule would give something else. */
    private boolean isChanged(Values to, String path) {
        Value now = to.said.get(path);
        if (now == null) {
            return said.containsKey(path);
        }
        return !find(path).map(now::saysTheSame).orElse(false)
                || (!said.containsKey(path)
                        && !Registry.parameter(path)
                                .flatMap(parameter -> to.unsaid(parameter, path))
                                .map(now::saysTheSame)
                                .orElse(false));
    }

    /** These values with what is otherwise in a section of one design than in that of another. */
    Values withChanges(String section, Values was, Values is) {
        Map<String, Value> changed = new LinkedHashMap<>(said);
        was.pathsChanged(is).filter(path -> section(path).equals(section)).forEach(path -> {
            changed.remove(path);
            if (is.said.containsKey(path)) {
                changed.put(path, is.said.get(path));
            }
        });
        Map<String, Map<String, Value>> presetValues = new LinkedHashMap<>(fromPresets);
        if (was.isChanged(is, section + PRESET)) {
            presetValues.remove(section);
            Optional.ofNullable(is.fromPresets.get(section)).ifPresent(given -> presetValues.put(section, given));
        }
        double longest =
                section.equals(section(TRIP_DAYS)) ? Math.max(longestTripDays(), is.longestTripDays()) : longestBefore;
        return new Values(changed, presets, presetValues, longest, reader);
    }

    private Map<String, Map<String, Value>> withPreset(String path, Value name) {
        Map<String, Map<String, Value>> changed = new LinkedHashMap<>(fromPresets);
        String section = section(path);
        changed.put(
                section,
                presets.find(section, name.text()).map(Presets.Preset::values).orElse(Map.of()));
        return changed;
    }

    /**
     * These values with one set from a text, as in an option.
     *
     * @throws IllegalArgumentException with a sentence for the user when the path is unknown or the text does not fit
     */
    public Values with(String path, String text) {
        if (text.strip().equals(NONE) && isComponent(path)) {
            return without(path);
        }
        Parameter parameter = Registry.parameter(path).orElseThrow(() -> unknown(path));
        try {
            return with(path, parameter.read(text, new Origin("change", 0, 0)));
        } catch (QuantityException e) {
            throw new IllegalArgumentException(path + " " + e.getMessage(), e);
        }
    }

    /** These values with one number set, in the base unit of the parameter's usual dimension. */
    public Values with(String path, double base) {
        Parameter parameter = Registry.parameter(path).orElseThrow(() -> unknown(path));
        if (parameter.kind() instanceof Kind.Count) {
            return with(path, Long.toString(Math.round(base)));
        }
        if (!(parameter.kind() instanceof Kind.Measured measured)) {
            throw new IllegalArgumentException(path + " is not a number");
        }
        if (!(base >= measured.low() && base <= measured.high())) {
            throw new IllegalArgumentException(path + " must lie " + measured.range() + ".");
        }
        Dimension dimension = measured.dimensions().get(0);
        return with(
                path,
                new Value(
                        dimension.show(base),
                        base,
                        Optional.of(dimension),
                        Optional.empty(),
                        "",
                        new Origin("change", 0, 0)));
    }

    /** These values without a component, a load or a value of the designer's own. */
    public Values without(String path) {
        Map<String, Value> changed = new LinkedHashMap<>(said);
        changed.keySet().removeIf(p -> isAtOrBelow(p, path));
        Map<String, Map<String, Value>> left = new LinkedHashMap<>(fromPresets);
        left.keySet().removeIf(section -> isAtOrBelow(section + PRESET, path));
        return new Values(changed, presets, left, longestBefore, reader);
    }

    /** Whether a path names a component, a load or a circuit that a design may do without. */
    public static boolean isComponent(String path) {
        return isComponentSection(path) || path.matches("(loads|circuits)\\.[^.]+");
    }

    private static IllegalArgumentException unknown(String path) {
        return new IllegalArgumentException(Registry.unknownWholePath(path));
    }

    /** One line of the list of all values in force. */
    public record Listed(String path, Value value) {}

    /** Every value in force, in the order of the reference page, with where it came from. */
    public List<Listed> listing() {
        List<Listed> list = new ArrayList<>();
        for (Section section : Registry.sections()) {
            if (section.name().isEmpty() || has(section.name())) {
                section.parameters().stream()
                        .map(Parameter::path)
                        .flatMap(p -> spelledOut(p).stream())
                        .forEach(p -> find(p).ifPresent(v -> list.add(new Listed(p, v))));
            }
        }
        return list;
    }

    private List<String> spelledOut(String path) {
        int star = path.indexOf('*');
        if (star < 0) {
            return List.of(path);
        }
        String above = path.substring(0, star - 1);
        String below = path.substring(star + 1);
        return names(above).stream()
                .map(name -> above + "." + name + below)
                .filter(p ->
                        Registry.parameter(p).map(Parameter::path).orElse("").equals(path))
                .toList();
    }
}
