package ampdays.scenario;

import java.util.function.ToDoubleFunction;

/** What holds when a value is said neither in the scenario nor in a preset. */
public sealed interface Fallback {
    /** Nothing: it must be said. */
    record Required() implements Fallback {}

    /** Nothing: it may be left out. */
    record Absent() implements Fallback {}

    /** A text, read like the designer's. */
    record Fixed(String text) implements Fallback {}

    /**
     * Follows from other values.
     *
     * @param rule in words
     */
    record Derived(String rule, ToDoubleFunction<Values> from) implements Fallback {}
}
