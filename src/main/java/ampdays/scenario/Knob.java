package ampdays.scenario;

import java.util.List;

/**
 * A scenario value that a study varies.
 *
 * @param path such as {@code battery.capacity}, or {@link #OPTION}
 * @param unit that every value is written in; empty when they have none in common
 * @param values as a designer would write them, in the order of the study
 */
public record Knob(String path, String unit, List<String> values) {
    /** The knob whose values are the names of options. */
    public static final String OPTION = "option";

    public Knob {
        values = List.copyOf(values);
    }

    public boolean isOption() {
        return path.equals(OPTION);
    }

    /** Whether its values are quantities or counts, and not words. */
    public boolean isNumber() {
        return Registry.parameter(path)
                .map(p -> p.kind() instanceof Kind.Measured || p.kind() instanceof Kind.Count)
                .orElse(false);
    }

    /** Of a column of a table. */
    public String heading() {
        return unit.isEmpty() ? path : path + " (" + unit + ")";
    }

    /** A value as it stands below that heading. */
    public String cell(int place) {
        String value = values.get(place);
        return unit.isEmpty()
                ? value
                : value.substring(0, value.length() - unit.length()).strip();
    }
}
