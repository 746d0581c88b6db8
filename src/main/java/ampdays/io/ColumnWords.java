package ampdays.io;

import ampdays.log.Signal;
import ampdays.units.Dimension;
import ampdays.units.Quantity;
import ampdays.units.QuantityException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the name of a log's column says, with its values. The words are common usage, no source. */
final class ColumnWords {
    private static final Pattern UNIT = Pattern.compile(".*[\\[(/]\\s*([^\\])(\\[]+?)\\s*[\\])]?\\s*|.*[ _]([^ _]+)");
    private static final double USUAL_SHARE = 0.95;

    private ColumnWords() {}

    /**
     * A likely meaning.
     *
     * @param confidence high, medium or low
     */
    record Meaning(Signal signal, String unit, String confidence, String reason) {}

    /** Words in a name, the dimensions that may go with them, and what they then mean; the first that fits is taken. */
    private record Rule(Pattern words, Signal signal) {
        static Rule of(String words, Signal signal) {
            return new Rule(Pattern.compile("(?:^|.*[^a-z])(?:" + words + ")(?:[^a-z].*|$)"), signal);
        }
    }

    private static final String SUN = "solar|sun|pv|panels?|yield";
    private static final String SECOND = "alternator|second alternator|alt";
    private static final String CHARGER = "dc-?dc|dcdc|charger|b2b";
    private static final String IN = ".*(in|charged|charge|into)";
    private static final String OUT = ".*(out|discharged|discharge|consumed|drawn)";

    private static final List<Rule> RULES = List.of(
            Rule.of("soc|state of charge|charge state|state_of_charge", Signal.STATE_OF_CHARGE),
            Rule.of(SUN, Signal.SOLAR_ENERGY),
            Rule.of(SUN, Signal.SOLAR_POWER),
            Rule.of("shore|mains|hook-?up", Signal.SHORE_POWER),
            Rule.of(CHARGER, Signal.CHARGER_CURRENT),
            Rule.of(CHARGER, Signal.CHARGER_POWER),
            Rule.of(SECOND, Signal.SECOND_CURRENT),
            Rule.of(SECOND, Signal.SECOND_POWER),
            Rule.of(SECOND, Signal.SECOND_TEMPERATURE),
            Rule.of("air con.*|aircon.*|a/c|ac unit|cooling|cooler", Signal.COOLING_POWER),
            Rule.of("fridge|refrigerator|freezer", Signal.REFRIGERATOR_POWER),
            Rule.of("loads?|consumption|use|consumers?", Signal.USE_POWER),
            Rule.of("cabin|inside|indoors?|room|interior", Signal.CABIN_TEMPERATURE),
            Rule.of("outside|ambient|outdoors?|exterior", Signal.OUTSIDE_TEMPERATURE),
            Rule.of(OUT, Signal.CHARGE_OUT),
            Rule.of(OUT, Signal.ENERGY_OUT),
            Rule.of(IN, Signal.CHARGE_IN),
            Rule.of(IN, Signal.ENERGY_IN),
            Rule.of("battery|bank|house|temperature|temp", Signal.BANK_TEMPERATURE),
            Rule.of("voltage|volts?|v|u|battery|bank|house", Signal.BANK_VOLTAGE),
            Rule.of("current|amps?|a|i|battery|bank|house", Signal.BANK_CURRENT),
            Rule.of("power|watts?|w|p|battery|bank|house", Signal.BANK_POWER));

    static Optional<Meaning> meaning(String written, double... values) {
        String name = written.strip().toLowerCase(Locale.ROOT).replace('_', ' ');
        for (Rule rule : RULES) {
            if (!rule.words().matcher(name).matches() || isOther(rule.signal(), name)) {
                continue;
            }
            Dimension dimension = rule.signal().dimension();
            Optional<String> unit = unitOf(written, dimension);
            boolean told = unit.isPresent();
            if (!told && unitOfAny(written)) {
                continue;
            }
            String fitting = unit.orElseGet(() -> fitting(rule.signal(), values));
            if (fitting.isEmpty() || (!told && !impliesDimension(rule.signal(), name))) {
                continue;
            }
            boolean fits = inRange(rule.signal(), fitting, values);
            String confidence = told && fits ? "high" : fits ? "medium" : "low";
            String reason = (told ? "name and unit" : "name; the unit by the size of the values")
                    + (fits ? "" : ", but the values do not fit");
            return Optional.of(new Meaning(rule.signal(), fitting, confidence, reason));
        }
        return Optional.empty();
    }

    /** Voltages and currents of other things than the bank. */
    private static boolean isOther(Signal signal, String name) {
        boolean ofBank = signal == Signal.BANK_VOLTAGE
                || signal == Signal.BANK_CURRENT
                || signal == Signal.BANK_POWER
                || signal == Signal.BANK_TEMPERATURE;
        return ofBank
                && name.matches(
                        ".*\\b(solar|sun|pv|panel|shore|mains|alternator|alt|charger|chassis|starter|load)\\b.*");
    }

    private static boolean impliesDimension(Signal signal, String name) {
        return switch (signal.dimension()) {
            case VOLTAGE -> name.matches(".*(volt|\\bu\\b|\\bv\\b).*");
            case CURRENT -> name.matches(".*(current|amp|\\bi\\b|\\ba\\b).*");
            case POWER -> name.matches(".*(power|watt|\\bp\\b|\\bw\\b|load|consumption).*");
            case TEMPERATURE -> name.matches(".*temp.*");
            case ENERGY -> name.matches(".*(energy|yield).*");
            case CHARGE -> name.matches(".*\\bah\\b.*");
            default -> true;
        };
    }

    private static Optional<String> unitOf(String written, Dimension dimension) {
        Matcher matcher = UNIT.matcher(written);
        String spelt = matcher.matches() ? Optional.ofNullable(matcher.group(1)).orElse(matcher.group(2)) : written;
        return dimension.spellings().stream()
                .filter(s -> s.equals(spelt.strip()))
                .findFirst();
    }

    private static boolean unitOfAny(String written) {
        return Arrays.stream(Dimension.values())
                .filter(d -> List.of(
                                Dimension.POWER,
                                Dimension.ENERGY,
                                Dimension.CHARGE,
                                Dimension.CURRENT,
                                Dimension.VOLTAGE,
                                Dimension.TEMPERATURE,
                                Dimension.SHARE)
                        .contains(d))
                .anyMatch(d -> unitOf(written, d).isPresent());
    }

    /** The first unit in which the values are in the signal's range. */
    private static String fitting(Signal signal, double... values) {
        return signal.dimension().symbols().stream()
                .filter(unit -> inRange(signal, unit, values))
                .findFirst()
                .orElse("");
    }

    private static boolean inRange(Signal signal, String unit, double... values) {
        try {
            double zero = Quantity.parse("0 " + unit, signal.dimension()).value();
            double one = Quantity.parse("1 " + unit, signal.dimension()).value();
            long within = Arrays.stream(values)
                    .map(v -> zero + v * (one - zero))
                    .filter(v -> v >= signal.least() && v <= signal.most())
                    .count();
            return within >= USUAL_SHARE * values.length;
        } catch (QuantityException e) {
            return false;
        }
    }
}
