package ampdays.scenario;

import ampdays.units.Dimension;
import java.util.Optional;

/**
 * One value of a design.
 *
 * @param text as it was written, without mark and note
 * @param number in the base unit of its dimension; NaN when it is no number
 * @param dimension of the number; empty when it is a word
 * @param mark where the value comes from, if that was said
 * @param note what was said about it, may be empty
 * @param origin where it was said
 */
public record Value(
        String text, double number, Optional<Dimension> dimension, Optional<Mark> mark, String note, Origin origin) {
    /** What the conversion of units may leave, as a part of a number. */
    private static final double ROUNDING = 1e-12;

    public static Value word(String text, Origin origin) {
        return new Value(text, Double.NaN, Optional.empty(), Optional.empty(), "", origin);
    }

    /** Whether another means the same, wherever and with whatever mark it was said: 1.5 in is 38.1 mm. */
    boolean saysTheSame(Value other) {
        return dimension.equals(other.dimension)
                && (dimension.isPresent()
                        ? Math.abs(number - other.number) <= ROUNDING * Math.abs(number)
                        : text.equals(other.text));
    }

    /** The same with another number, in the base unit of its dimension. */
    Value changed(double to) {
        return new Value(dimension.orElseThrow().show(to), to, dimension, mark, note, origin);
    }
}
