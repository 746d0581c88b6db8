package ampdays.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Reads values for a builder and collects what is missing, so that all problems are told together. */
final class ProblemList {
    private final Values values;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, List<String>> missingFromPreset = new LinkedHashMap<>();

    ProblemList(Values values) {
        this.values = values;
    }

    double number(String path) {
        double number = values.number(path);
        if (Double.isNaN(number) && values.find(path).isEmpty()) {
            missing(path);
        }
        return number;
    }

    /** A number that may be the word {@code off} (NaN). */
    double numberOrOff(String path) {
        return values.number(path);
    }

    int count(String path) {
        double number = number(path);
        return Double.isNaN(number) ? 0 : (int) number;
    }

    String word(String path) {
        Optional<Value> value = values.find(path);
        if (value.isEmpty()) {
            missing(path);
        }
        return value.map(Value::text).orElse("");
    }

    private void missing(String path) {
        if (values.presetWouldGive(path)) {
            List<String> missing =
                    missingFromPreset.computeIfAbsent(path.substring(0, path.indexOf('.')), s -> new ArrayList<>());
            if (!missing.contains(path)) {
                missing.add(path);
            }
            return;
        }
        Parameter parameter = Registry.parameter(path).orElseThrow();
        boolean measured = parameter.kind() instanceof Kind.Measured;
        add(path, path + " is missing. " + (measured ? parameter.kind().advice() : parameter.help()));
    }

    /** One problem for all that a preset of the section would give. */
    private Problem withoutPreset(String section, List<String> paths) {
        String keys = paths.stream().map(p -> p.substring(section.length() + 1)).collect(Collectors.joining(", "));
        Kind presets = Registry.parameter(section + ".preset").orElseThrow().kind();
        return new Problem(
                paths.size() == 1 ? paths.get(0) : section,
                section + " does not say " + keys + ", and takes no preset. "
                        + presets.advice().replace("Choices", "Presets"));
    }

    void add(String path, String message) {
        problems.add(new Problem(path, message));
    }

    /** Builds a record unless one of its values is missing; a refusal of the record becomes a problem. */
    <T> Optional<T> build(String section, Supplier<T> maker) {
        int before = count();
        try {
            T made = maker.get();
            return count() == before ? Optional.of(made) : Optional.empty();
        } catch (IllegalArgumentException e) {
            if (count() == before) {
                String above = e.getMessage().startsWith(section + ".") ? "" : section + ": ";
                add(section, above + e.getMessage() + ".");
            }
            return Optional.empty();
        }
    }

    /** How many things are wrong so far. */
    int count() {
        return problems.size()
                + missingFromPreset.values().stream().mapToInt(List::size).sum();
    }

    List<Problem> problems() {
        List<Problem> all = new ArrayList<>(problems);
        missingFromPreset.forEach((section, paths) -> all.add(withoutPreset(section, paths)));
        return List.copyOf(all);
    }
}
