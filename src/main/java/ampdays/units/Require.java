package ampdays.units;

import java.util.Locale;

/** Range checks of specification records: a plain sentence instead of a wrong result. */
public final class Require {
    private Require() {}

    /** Returns the value, or refuses it when it is not a number from {@code low} to {@code high}. */
    public static double within(String name, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s is %s, but must lie from %s to %s", name, value, low, high));
        }
        return value;
    }

    /** Returns the value, or refuses it when it is not a finite number above zero. */
    public static double positive(String name, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s is %s, but must be a number above zero", name, value));
        }
        return value;
    }

    /** Returns the value, or refuses it when it is not a finite number from zero. */
    public static double notNegative(String name, double value) {
        return within(name, value, 0, Double.MAX_VALUE);
    }

    /** Returns the value as a share of one. */
    public static double share(String name, double value) {
        return within(name, value, 0, 1);
    }
}
