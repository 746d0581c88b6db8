package ampdays.results;

import ampdays.units.Dimension;
import java.util.List;

/**
 * What a log says of a promise.
 *
 * @param promisedLeftWh energy that the bank was to hold at its lowest in the days compared, Wh; less what a run leaves
 *     unserved in them
 * @param explainedLeftWh the same with every cause as logged, Wh
 * @param loggedLeftWh what the log itself has, by its state of charge and the size of bank that was found, Wh; NaN without a
 *     state of charge
 * @param shares of the gap between the first two, in the order of the causes
 * @param fitted values that the log tells
 * @param untold what it does not tell, in plain words
 * @param days from the start of the trip to the end of the comparison: until the bank is first empty, as promised or as
 *     logged, since a log does not tell what an empty bank was asked for
 * @param curves for a chart
 */
public record Reconciliation(
        double promisedLeftWh,
        double explainedLeftWh,
        double loggedLeftWh,
        List<Share> shares,
        List<Fitted> fitted,
        List<String> untold,
        double days,
        Curves curves) {
    public Reconciliation {
        shares = List.copyOf(shares);
        fitted = List.copyOf(fitted);
        untold = List.copyOf(untold);
    }

    /**
     * Means of each hour from the start of the trip; NaN where they are not told.
     *
     * @param promisedSoc state of charge as promised, with the log's first as start, 0 to 1
     * @param explainedSoc with every cause as logged
     * @param loggedSoc by the meter
     * @param promisedUseW what was to be used, W
     * @param promisedSunW what the panels were to give
     * @param promisedAlternatorW what the alternators were to give
     */
    public record Curves(
            Series promisedSoc,
            Series explainedSoc,
            Series loggedSoc,
            Series promisedUseW,
            Series loggedUseW,
            Series promisedSunW,
            Series loggedSunW,
            Series promisedAlternatorW,
            Series loggedAlternatorW) {}

    /** What takes the bank lower than promised. */
    public enum Cause {
        USE("use"),
        DRIVING("driving"),
        SUN("weather and shade"),
        SETTINGS("settings"),
        CABLE("cable and joints"),
        HEAT("heat limits and output"),
        BANK("bank: size and resistance");

        private final String label;

        Cause(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** Energy that a cause took from what is left at the lowest point, Wh; below zero where it helped. */
    public record Share(Cause cause, double wh) {}

    /**
     * A value of the scenario by the log.
     *
     * @param path in the scenario
     * @param label in plain words
     * @param promised what the scenario has, in base units
     * @param value what the log tells
     * @param plusMinus half of the 95 % interval, with one percent for the scale of a meter in it, or half a kelvin
     * @param in what it is shown
     */
    public record Fitted(
            String path, String label, Cause cause, double promised, double value, double plusMinus, Dimension in) {}

    public double gapWh() {
        return promisedLeftWh - explainedLeftWh;
    }

    /** What the causes do not explain, Wh; NaN without a state of charge in the log. */
    public double unexplainedWh() {
        return explainedLeftWh - loggedLeftWh;
    }
}
