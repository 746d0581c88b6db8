package ampdays.commission;

import ampdays.units.DegreesFahrenheit;
import ampdays.units.Dimension;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * One line of a sheet: a reading to take, or a question to answer with yes or no.
 *
 * @param id such as {@code rest.voltage}; tells the line when the sheet comes back
 * @param symptom what a deviation points to
 * @param what is read, or the question
 * @param where to put the meter
 * @param dimension of the reading; empty for a question, and for parts per million
 * @param unit that the sheet counts in; empty for a question
 * @param decimals of what is printed
 * @param predicted reading of the van as designed, in that unit; NaN where only a limit holds
 * @param scalesWith id of the current that a drop is in proportion to; empty for none
 */
public record Item(
        String id,
        Symptom symptom,
        String what,
        String where,
        Optional<Dimension> dimension,
        String unit,
        int decimals,
        double predicted,
        Band band,
        String scalesWith) {
    private static final int DECIMALS_BEYOND = 3;

    public boolean isQuestion() {
        return unit.isEmpty();
    }

    /** The same line with another band. */
    public Item judgedBy(Band other) {
        return new Item(id, symptom, what, where, dimension, unit, decimals, predicted, other, scalesWith);
    }

    /** A number as the sheet prints it, without its unit; empty for none. */
    public String number(double value) {
        if (!Double.isFinite(value)) {
            return "";
        }
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }

    /** A number with its unit; an answer; empty for none. Temperatures stand in both units. */
    public String show(double value) {
        if (isQuestion()) {
            return value == 1 ? "yes" : "no";
        }
        if (!Double.isFinite(value)) {
            return "";
        }
        return number(value) + " " + unit + inFahrenheit(value);
    }

    /** A reading as it was typed, but for the last digits that changing units leaves. */
    public String typed(double reading) {
        return new BigDecimal(reading)
                .setScale(decimals + DECIMALS_BEYOND, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A reading as it was typed, with its unit; an answer. */
    public String showTyped(double reading) {
        return isQuestion() ? show(reading) : typed(reading) + " " + unit + inFahrenheit(reading);
    }

    /** What passes, in words and with the unit. */
    public String passText() {
        return isQuestion() ? "yes" : range(band.passFrom(), band.passTo(), "at least", "at most", "to");
    }

    /** What stops the job; empty when nothing does. */
    public String stopText() {
        if (isQuestion()) {
            return band.stopBelow() == 1 ? "no" : "";
        }
        return range(band.stopBelow(), band.stopAbove(), "below", "above", "or above");
    }

    private String range(double low, double high, String onlyLow, String onlyHigh, String between) {
        boolean hasLow = Double.isFinite(low);
        boolean hasHigh = Double.isFinite(high);
        if (hasLow && hasHigh) {
            String first = between.equals("to") ? "" : "below ";
            return first + number(low) + " " + between + " " + number(high) + " " + unit + inFahrenheit(low, high);
        }
        return hasLow ? onlyLow + " " + show(low) : hasHigh ? onlyHigh + " " + show(high) : "";
    }

    /** Temperatures in the other unit, in brackets; empty for everything else. */
    private String inFahrenheit(double... celsius) {
        return unit.equals("°C") ? " (" + DegreesFahrenheit.whole(celsius) + ")" : "";
    }
}
