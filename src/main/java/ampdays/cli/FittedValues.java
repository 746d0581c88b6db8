package ampdays.cli;

import ampdays.results.Reconciliation.Fitted;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/** Values that a log tells, as an option of the scenario. */
final class FittedValues {
    private FittedValues() {}

    /** A number in the unit of a value's key. */
    static String show(Fitted value, double base) {
        return value.in().show(base);
    }

    /** The half interval, to two digits. */
    static String plusMinus(Fitted value) {
        return show(
                value,
                new BigDecimal(value.plusMinus()).round(new MathContext(2)).doubleValue());
    }

    /** Text that a scenario takes in as one of its options, each value marked as measured. */
    static String option(List<Fitted> fitted, String log) {
        StringBuilder text = new StringBuilder("options:\n  as logged:\n");
        for (Fitted value : fitted) {
            text.append("    ")
                    .append(value.path())
                    .append(": ")
                    .append(show(value, value.value()))
                    .append(" (measured: \u00b1 ")
                    .append(plusMinus(value))
                    .append(" by ")
                    .append(log.replaceAll("[()\n]", " "))
                    .append(")\n");
        }
        return text.toString();
    }
}
