package ampdays.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Reads values for a builder and collects what is missing, so that all problems are told together. */
final class ProblemList {
    private final Values values;
    private final List<Problem> problems = new ArrayList<>();

    ProblemList(Values values) {
        this.values = values;
    }

    double number(String path) {
        Optional<Value> value = values.find(path);
        if (value.isEmpty()) {
            missing(path);
        }
        return value.map(Value::number).orElse(Double.NaN);
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
        add(path, path + " is missing." + remedy(path));
    }

    private String remedy(String path) {
        String section = path.contains(".") ? path.substring(0, path.indexOf('.')) : "";
        Optional<Parameter> preset = Registry.parameter(section + ".preset");
        if (preset.isPresent()
                && !values.isSaid(section + ".preset")
                && preset.get().kind() instanceof Kind.Choice c) {
            return " Write it, or take a preset: " + String.join("; ", c.words()) + ".";
        }
        return " It has no default.";
    }

    void add(String path, String message) {
        problems.add(new Problem(path, message));
    }

    /** Builds a record unless one of its values is missing; a refusal of the record becomes a problem. */
    <T> Optional<T> build(String section, Supplier<T> maker) {
        int before = problems.size();
        try {
            T made = maker.get();
            return problems.size() == before ? Optional.of(made) : Optional.empty();
        } catch (IllegalArgumentException e) {
            if (problems.size() == before) {
                add(section, section + ": " + e.getMessage() + ".");
            }
            return Optional.empty();
        }
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }
}
