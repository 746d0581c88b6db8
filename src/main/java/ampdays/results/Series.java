package ampdays.results;

import java.util.Arrays;

/** A row of numbers that nobody can change. */
public final class Series {
    private final double[] values;

    private Series(double[] values) {
        this.values = values;
    }

    public static Series of(double... values) {
        return new Series(values.clone());
    }

    public int size() {
        return values.length;
    }

    public double get(int i) {
        return values[i];
    }

    public double sum() {
        return Arrays.stream(values).sum();
    }

    public double[] toArray() {
        return values.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Series s && Arrays.equals(values, s.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return Arrays.toString(values);
    }
}
