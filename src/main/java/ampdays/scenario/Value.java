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
    public static Value word(String text, Origin origin) {
        return new Value(text, Double.NaN, Optional.empty(), Optional.empty(), "", origin);
    }

    /** The same with another number, in the base unit of its dimension. */
    Value changed(double to) {
        return new Value(dimension.orElseThrow().show(to), to, dimension, mark, note, origin);
    }
}
