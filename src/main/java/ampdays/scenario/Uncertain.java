package ampdays.scenario;

import ampdays.units.Dimension;

/**
 * Something about a design, or the people in it, that is only known to lie within a spread.
 *
 * @param name as it stands in tables; of an input its path
 * @param dimension of low, usual and high, which are in its base unit
 * @param low one end of the spread
 * @param usual what the design says
 * @param high the other end; the same as low where nothing is uncertain
 * @param source where the spread comes from: a mark, or "your figure"
 * @param change makes a design in which it has a given value
 */
public record Uncertain(
        String name, Dimension dimension, double low, double usual, double high, String source, Change change) {
    /** Source of what is no input but a habit or a wear of all the trip. */
    public static final String HABIT = "habit";

    /** Makes a design in which something has a value. */
    @FunctionalInterface
    public interface Change {
        Draft apply(Draft draft, double value);
    }

    public boolean isSpread() {
        return low < high;
    }

    /** The value at a place in the spread, 0 its low and 1 its high end. */
    public double at(double place) {
        return low + place * (high - low);
    }

    /** A draft in which it has a value. */
    public Draft apply(Draft draft, double value) {
        return change.apply(draft, value);
    }
}
