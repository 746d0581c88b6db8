package ampdays.units;

import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** Temperatures in degrees Fahrenheit, and their words. */
public final class DegreesFahrenheit {
    private static final String NUMBER = "(-?\\d+(?:\\.\\d+)?)";
    private static final Pattern CELSIUS = Pattern.compile(NUMBER + "(?:( to |–)" + NUMBER + ")? °C");

    private DegreesFahrenheit() {}

    /** A temperature given in °C. */
    public static double of(double celsius) {
        return celsius * 9 / 5 + 32;
    }

    /** Whole degrees of temperatures in °C, with their unit once: {@code 59 to 77 °F}. */
    public static String whole(double... celsius) {
        return DoubleStream.of(celsius).mapToObj(DegreesFahrenheit::number).collect(Collectors.joining(" to ")) + " °F";
    }

    /** A text with its temperatures in whole degrees Fahrenheit: {@code air of 15 to 25 °C} as {@code air of 59 to 77 °F}. */
    public static String inPlace(String text) {
        return replaced(text, found -> found);
    }

    /** A text with whole degrees Fahrenheit in brackets behind its temperatures: {@code air of 15 to 25 °C (59 to 77 °F)}. */
    public static String beside(String text) {
        return replaced(text, other -> "$0 (" + other + ")");
    }

    /** With {@code $0} for what was found. */
    private static String replaced(String text, UnaryOperator<String> words) {
        return CELSIUS.matcher(text).replaceAll(found -> words.apply(Matcher.quoteReplacement(other(found))));
    }

    private static String other(MatchResult found) {
        return number(found.group(1)) + (found.group(2) == null ? "" : found.group(2) + number(found.group(3))) + " °F";
    }

    private static String number(String celsius) {
        return number(Double.parseDouble(celsius));
    }

    private static String number(double celsius) {
        return Long.toString(Math.round(of(celsius)));
    }
}
