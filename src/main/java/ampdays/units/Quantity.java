package ampdays.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its dimension.
 *
 * @param value in the base unit of the dimension
 */
public record Quantity(double value, Dimension dimension) {
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("([+\\-\u2212]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)(?![\\d,])\\s*(.*)");
    private static final Pattern COMMA = Pattern.compile("([+\\-\u2212]?\\d+),(\\d[\\d,.]*)\\s*(.*)");

    /** What stands for 12 V where charge and energy, or current and power, are offered side by side in a message. */
    private static final double NOMINAL_V = 12.8;

    private static final int SHARE_DIGITS = 6;

    /**
     * Reads a quantity as a person writes it.
     *
     * @param text such as {@code 5.1 kWh}
     * @param accepted the dimensions it may have, the usual one first
     * @throws QuantityException when it is something else; the message says what is accepted
     */
    public static Quantity parse(String text, Dimension... accepted) throws QuantityException {
        String trimmed = text.strip();
        Matcher comma = COMMA.matcher(trimmed);
        if (comma.matches()) {
            throw new QuantityException(quoted(trimmed) + commaRepair(comma));
        }
        Matcher matcher = NUMBER_AND_UNIT.matcher(trimmed);
        if (!matcher.matches()) {
            throw new QuantityException(quoted(trimmed) + " is not a number"
                    + (accepted[0] == Dimension.NUMBER ? "" : " with a unit") + ". " + advice(accepted));
        }
        double number = Double.parseDouble(matcher.group(1).replace('\u2212', '-'));
        String spelling = matcher.group(2).strip();
        if (Double.isInfinite(number)) {
            throw new QuantityException(quoted(trimmed) + " is too large for a number.");
        }
        for (Dimension dimension : accepted) {
            Optional<Unit> unit = Units.written(dimension, spelling);
            if (unit.isPresent()) {
                return new Quantity(unit.get().toBase(number), dimension);
            }
        }
        throw new QuantityException(quoted(trimmed) + unitRepair(matcher.group(1), number, spelling, accepted));
    }

    /** The unit in which a text is written; empty when it is no quantity of this dimension. */
    static Optional<Unit> unit(String text, Dimension dimension) {
        Matcher matcher = NUMBER_AND_UNIT.matcher(text.strip());
        return matcher.matches() ? Units.written(dimension, matcher.group(2).strip()) : Optional.empty();
    }

    private static String commaRepair(Matcher comma) {
        String whole = comma.group(1);
        String rest = comma.group(2);
        String unit = comma.group(3).isEmpty() ? "" : " " + comma.group(3);
        String asPoint = whole + "." + rest + unit;
        if (!rest.matches("\\d{3}(,\\d{3})*(\\.\\d+)?")) {
            return " has a comma in its number; the decimal sign is a point. Write " + asPoint + ".";
        }
        String asThousands = whole + rest.replace(",", "") + unit;
        return " has a comma in its number, which people read in two ways. Write " + asThousands
                + (rest.length() == 3 ? ", or " + asPoint : "") + ".";
    }

    private static String unitRepair(String written, double number, String spelling, Dimension... accepted) {
        if (accepted[0] == Dimension.NUMBER) {
            return " has a unit, but this is a plain number. Write " + written + ".";
        }
        if (spelling.isEmpty()) {
            return " has no unit. Write " + forms(written, number, accepted) + ".";
        }
        Optional<Dimension> meant = Units.dimensionOf(spelling);
        if (meant.isPresent()) {
            return " is " + meant.get().title() + ". " + advice(accepted);
        }
        List<String> symbols = new ArrayList<>();
        for (Dimension dimension : accepted) {
            symbols.addAll(dimension.symbols());
        }
        return " has the unit \"" + spelling + "\", which is not known here. Units: " + String.join(", ", symbols) + "."
                + Nearest.of(spelling, symbols)
                        .map(s -> " Did you mean " + s + "?")
                        .orElse("");
    }

    /** The same number in the usual unit, a share below one as the part of one that it is; and, beside it, in another: {@code 400 Ah, or 5.1 kWh}. */
    private static String forms(String written, double number, Dimension... accepted) {
        Unit shown = Units.shown(accepted[0]);
        if (accepted[0] == Dimension.SHARE && number != 0 && Math.abs(number) < 1) {
            return shown.show(number, SHARE_DIGITS);
        }
        double base = shown.toBase(number);
        Optional<String> other = accepted.length > 1
                ? Optional.of(inOther(base * NOMINAL_V, accepted[1]))
                : Units.beside(accepted[0]).map(unit -> unit.show(base, 2));
        return shown.write(written) + other.map(form -> ", or " + form).orElse("");
    }

    private static String inOther(double base, Dimension dimension) {
        Unit shown = Units.shown(dimension);
        Unit larger = Units.beside(dimension).orElse(shown);
        return (base < larger.factor() ? shown : larger).show(base, 2);
    }

    /** What may be written, such as {@code Write a power such as 500 W, or 0.5 kW.} */
    public static String advice(Dimension... accepted) {
        return "Write " + titles(accepted) + " such as " + example(accepted) + ".";
    }

    private static String example(Dimension... accepted) {
        double number = switch (accepted[0]) {
            case TEMPERATURE -> 24;
            case POWER, ENERGY -> 500;
            case SHARE -> 80;
            case NUMBER -> 2.6;
            default -> 10;
        };
        String written = number == Math.rint(number) ? Integer.toString((int) number) : Double.toString(number);
        return accepted[0] == Dimension.NUMBER ? written : forms(written, number, accepted);
    }

    private static String titles(Dimension... accepted) {
        List<String> titles = new ArrayList<>();
        for (Dimension dimension : accepted) {
            titles.add(dimension.title());
        }
        return String.join(" or ", titles);
    }

    private static String quoted(String text) {
        return "\"" + text + "\"";
    }
}
