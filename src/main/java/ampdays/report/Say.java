package ampdays.report;

import ampdays.results.Fate;
import ampdays.results.RunResult;
import ampdays.study.Verdict;
import ampdays.units.Dimension;
import ampdays.units.UnitSystem;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers and names as they are printed, the same everywhere in the document. */
record Say(UnitSystem units) {
    /** What stands where there is nothing to say. */
    static final String NONE = "–";

    private static final DateTimeFormatter SHORT_DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final double LEAST_WH = 5;
    private static final double HALF_A_DECIMAL = 0.005;
    private static final Pattern AMOUNT = Pattern.compile(
            "(?:(\\d+(?:\\.\\d+)?) to )?(\\d+(?:\\.\\d+)?) (K|kg|mm|m² K/W)(?![\\p{L}\\d²³/])(?! \\(\\d+ in\\))");
    private static final Map<String, Dimension> DIMENSIONS = Map.of(
            "K", Dimension.TEMPERATURE_DIFFERENCE,
            "kg", Dimension.MASS,
            "mm", Dimension.THICKNESS,
            "m² K/W", Dimension.THERMAL_RESISTANCE);

    static String day(LocalDate date) {
        return date.format(DAY);
    }

    /** The day of a moment. */
    static String day(RunResult run, long epochSecond) {
        return Instant.ofEpochSecond(epochSecond).atZone(run.zone()).format(SHORT_DAY);
    }

    static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }

    /** Two significant digits with the word. */
    static String days(double days) {
        String number = Verdict.twoDigits(days);
        return number + (number.equals("1.0") ? " day" : " days");
    }

    /** How long the bank lasts, as a table says it. */
    static String lasts(RunResult run) {
        if (run.holds()) {
            return "holds";
        }
        return Double.isNaN(run.daysToEmpty())
                ? "over " + days(run.tripDays()) + (run.fate() == Fate.FALLS ? ", falling" : "")
                : days(run.daysToEmpty());
    }

    static String nights(RunResult run) {
        return run.nights() == 0 ? NONE : run.comfortableNights() + " of " + run.nights();
    }

    static String percent(double share) {
        return number("%.0f %%", 100 * share);
    }

    static String kwhADay(RunResult run, double wh) {
        return Math.abs(wh) / run.tripDays() < LEAST_WH
                ? NONE
                : number("%.2f", wh / 1000 / run.tripDays()).replace('-', '\u2212');
    }

    static String hours(double hours) {
        return hours > 0 ? Verdict.twoDigits(hours) + " h" : NONE;
    }

    String fuel(double litres) {
        return litres > 0 ? units.liquid(litres) : NONE;
    }

    String celsius(double degrees) {
        return Double.isNaN(degrees) ? NONE : units.temperature(degrees);
    }

    String length(double metres) {
        return units.show(Dimension.LENGTH, metres, 2);
    }

    /** A sentence of others with its temperatures, masses and sizes, as all of them, in the units of the document. */
    String sentence(String text) {
        if (units == UnitSystem.METRIC) {
            return text;
        }
        return AMOUNT.matcher(units.temperatures(text))
                .replaceAll(found -> Matcher.quoteReplacement(amount(found.group(1), found.group(2), found.group(3))));
    }

    /** An amount, or two with their unit once. */
    private String amount(String low, String high, String unit) {
        Dimension dimension = DIMENSIONS.get(unit);
        double base = base(high, unit);
        return low == null ? units.show(dimension, base, 2) : units.range(dimension, base(low, unit), base, 2);
    }

    private static double base(String number, String unit) {
        return unit.equals("mm") ? Double.parseDouble(number) / 1000 : Double.parseDouble(number);
    }

    String mass(double kilograms) {
        return units.mass(kilograms);
    }

    /** With cents where there are any; 0.1 kWh eight times is a whole number, though not to the last bit. */
    static String money(double sum, String currency) {
        return number(isWhole(sum) ? "%,.0f " : "%,.2f ", sum) + currency;
    }

    /** How many, with two decimals where they are not whole. */
    static String count(double count) {
        return number(isWhole(count) ? "%.0f" : "%.2f", count);
    }

    private static boolean isWhole(double number) {
        return Math.abs(number - Math.rint(number)) < HALF_A_DECIMAL;
    }

    static String quoted(String name) {
        return "“" + name + "”";
    }
}
