package ampdays.results;

import ampdays.units.Dimension;
import ampdays.units.Nearest;
import ampdays.units.Quantity;
import ampdays.units.QuantityException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A number that every run comes to, by the names that it has in the files of results.
 *
 * @param name as in {@code summary.json}
 * @param heading as in the tables, without its unit
 * @param dimension what it measures
 * @param unit that its values are in; shares are kept as parts of one and shown in %
 * @param value of a run; infinite where the run has none because nothing went so far, such as days to a reserve that was
 *     never reached; not a number where it cannot be told
 */
public record Metric(String name, String heading, Dimension dimension, String unit, ToDoubleFunction<RunResult> value) {
    /** The metric that is yes or no, as 1 or 0. */
    public static final String HOLDS = "holds";

    /** The metric of how long the bank lasts; infinite where it was never empty within the trip. */
    public static final String DAYS_TO_EMPTY = "daysToEmpty";

    private static final MathContext FOUR_DIGITS = new MathContext(4);

    /** All metrics of designs that have these loads, coolers and the like. */
    public static List<Metric> all(Collection<String> uses) {
        List<Metric> all = new ArrayList<>();
        all.add(days(DAYS_TO_EMPTY, "days to empty", r -> orNever(r.daysToEmpty())));
        all.add(number(HOLDS, "holds", r -> r.holds() ? 1 : 0));
        all.add(share("trendPerDay", "trend", RunResult::trendPerDay));
        all.add(days("tripDays", "trip", RunResult::tripDays));
        all.add(share("reserve", "reserve", RunResult::reserveShare));
        all.add(share("lowestSoc", "lowest state of charge", RunResult::lowestSoc));
        all.add(number("comfortableNights", "comfortable nights", RunResult::comfortableNights));
        all.add(number("nights", "nights", RunResult::nights));
        all.add(energy("energyWh.served", "served", r -> r.energy().servedWh()));
        all.add(energy("energyWh.losses", "losses", r -> r.energy().lossesWh()));
        for (Account account : Account.values()) {
            String name = account.kind() == Account.Kind.LOSS ? "lossesWh." + account.label() : jsonName(account);
            all.add(energy(name, account.label(), r -> r.energy().wh(account)));
        }
        all.add(new Metric("fuelLitres", "fuel for charging", Dimension.VOLUME, "l", RunResult::fuelLitres));
        all.add(hours("engineChargingHours", "engine run only to charge", RunResult::engineChargingHours));
        all.add(new Metric(
                "alternatorPeakCaseC",
                "hottest alternator case",
                Dimension.TEMPERATURE,
                "°C",
                r -> Double.isNaN(r.alternatorPeakCaseC()) ? Double.NEGATIVE_INFINITY : r.alternatorPeakCaseC()));
        all.add(number("cycles", "cycles", RunResult::cycles));
        all.add(share(
                "ageing.tripLoss",
                "capacity lost on the trip, to rank",
                r -> r.ageing().tripLoss()));
        all.add(share(
                "ageing.yearLoss",
                "capacity lost in a year, to rank",
                r -> r.ageing().yearLoss()));
        all.add(share("ageing.yearLossByUse", "of which by use", r -> r.ageing().yearLossByUse()));
        all.add(share(
                "ageing.yearResistanceGrowth",
                "resistance grown in a year, to rank",
                r -> r.ageing().yearResistanceGrowth()));
        all.add(energy("ledgerResidualWh", "closing error of the ledger", RunResult::ledgerResidualWh));
        for (Limit limit : Limit.values()) {
            all.add(hours(
                    "limitHours." + limit.label(),
                    "limited by " + limit.label(),
                    r -> r.limitHours().getOrDefault(limit, 0.0)));
            all.add(energy(
                    "curtailedWh." + limit.label(),
                    "curtailed by " + limit.label(),
                    r -> r.curtailedWhByCause().getOrDefault(limit, 0.0)));
        }
        for (String use : uses) {
            all.add(energy(
                    "servedWh." + use,
                    "served to " + use,
                    r -> r.servedWhByUse().getOrDefault(use, 0.0)));
            all.add(energy(
                    "unservedWh." + use,
                    "unserved to " + use,
                    r -> r.unservedWhByUse().getOrDefault(use, 0.0)));
        }
        return List.copyOf(all);
    }

    /**
     * The metric of a name, of a heading, or of a heading with its unit in brackets.
     *
     * @throws IllegalArgumentException with a sentence for the user
     */
    public static Metric find(String text, List<Metric> all) {
        String plain = text.replaceFirst("\\s*\\([^()]*\\)$", "");
        return all.stream()
                .filter(m -> m.name.equals(text) || m.heading.equals(plain))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no metric \"" + text + "\"."
                        + nearest(text, all)
                                .map(near -> " Did you mean " + near + "?")
                                .orElse(
                                        " Metrics are daysToEmpty, holds, lowestSoc, comfortableNights, fuelLitres and the"
                                                + " others of summary.json (docs/OUTPUT.md).")));
    }

    private static Optional<String> nearest(String text, List<Metric> all) {
        Optional<String> name = Nearest.of(text, all.stream().map(Metric::name).toList());
        return name.isPresent()
                ? name
                : Nearest.of(text, all.stream().map(Metric::heading).toList());
    }

    /**
     * Reads an amount of this metric; where the name tells the unit, a plain number will do.
     *
     * @throws QuantityException with a message that follows the name
     */
    public double amount(String text) throws QuantityException {
        String plain = text.endsWith(unit)
                ? text.substring(0, text.length() - unit.length()).strip()
                : text;
        if (dimension == Dimension.SHARE || !plain.matches("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)")) {
            return Quantity.parse(text, dimension).value() / inBase();
        }
        return Double.parseDouble(plain);
    }

    /** What one of this metric's unit is in the base unit. */
    private double inBase() throws QuantityException {
        return dimension == Dimension.SHARE
                ? 1
                : Quantity.parse("1 " + unit, dimension).value();
    }

    /** A value with its unit, to four digits. */
    public String show(double amount) {
        if (name.equals(HOLDS)) {
            return amount == 1 ? "yes" : "no";
        }
        if (!Double.isFinite(amount)) {
            return amount > 0 ? "never" : "none";
        }
        BigDecimal rounded = new BigDecimal(dimension == Dimension.SHARE ? 100 * amount : amount).round(FOUR_DIGITS);
        String digits =
                rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
        return unit.isEmpty() ? digits : digits + " " + unit;
    }

    private static double orNever(double days) {
        return Double.isNaN(days) ? Double.POSITIVE_INFINITY : days;
    }

    private static String jsonName(Account account) {
        String[] words = account.label().split(" ", -1);
        StringBuilder name = new StringBuilder("energyWh.").append(words[0]);
        for (int i = 1; i < words.length; i++) {
            name.append(Character.toUpperCase(words[i].charAt(0))).append(words[i].substring(1));
        }
        return account == Account.STORED ? "energyWh.stored" : name.toString();
    }

    private static Metric days(String name, String heading, ToDoubleFunction<RunResult> value) {
        return new Metric(name, heading, Dimension.DURATION, "days", value);
    }

    private static Metric hours(String name, String heading, ToDoubleFunction<RunResult> value) {
        return new Metric(name, heading, Dimension.DURATION, "h", value);
    }

    private static Metric energy(String name, String heading, ToDoubleFunction<RunResult> value) {
        return new Metric(name, heading, Dimension.ENERGY, "Wh", value);
    }

    private static Metric share(String name, String heading, ToDoubleFunction<RunResult> value) {
        return new Metric(name, heading, Dimension.SHARE, "%", value);
    }

    private static Metric number(String name, String heading, ToDoubleFunction<RunResult> value) {
        return new Metric(name, heading, Dimension.NUMBER, "", value);
    }
}
