package ampdays.scenario;

import ampdays.units.QuantityException;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** What holds when a value is said neither in the scenario nor in a preset. */
public sealed interface Fallback {
    /** Nothing: it must be said. */
    record Required() implements Fallback {}

    /** Nothing: it may be left out. */
    record Absent() implements Fallback {}

    /** A text, read like the designer's; once, since every design of a study asks for it. */
    final class Fixed implements Fallback {
        private final String text;
        private volatile Value value;

        public Fixed(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }

        Value value(Parameter parameter) {
            if (value == null) {
                value = read(parameter);
            }
            return value;
        }

        private Value read(Parameter parameter) {
            try {
                Kind.Reading reading = parameter.kind().read(text);
                return new Value(
                        text, reading.number(), reading.dimension(), Optional.of(parameter.mark()), "", Origin.DEFAULT);
            } catch (QuantityException e) {
                throw new IllegalStateException(parameter.path() + " " + e.getMessage(), e);
            }
        }
    }

    /**
     * Follows from other values.
     *
     * @param rule in words
     */
    record Derived(String rule, ToDoubleFunction<Values> from) implements Fallback {}
}
