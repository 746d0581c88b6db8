package ampdays.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * A unit as people write it; base value = (number + offset) · factor.
 *
 * @param symbol the spelling shown in messages and tables
 * @param spellings other spellings that are read as well
 */
record Unit(String symbol, double factor, double offset, List<String> spellings) {
    static Unit of(String symbol, double factor, String... spellings) {
        return new Unit(symbol, factor, 0, List.of(spellings));
    }

    boolean isWritten(String text) {
        String compact = compact(text);
        return compact(symbol).equals(compact)
                || spellings.stream().anyMatch(s -> compact(s).equals(compact));
    }

    /** Divides by hundred rather than multiplying by 0.01, so that 70 % is the number 0.7. */
    double toBase(double number) {
        double parts = 1 / factor;
        return parts > 1 && parts == Math.rint(parts) ? (number + offset) / parts : (number + offset) * factor;
    }

    double fromBase(double base) {
        return (base / factor) - offset;
    }

    /** A value in base units as text in this unit. */
    String show(double base, int digits) {
        double number = fromBase(base);
        if (Double.isNaN(number) || Double.isInfinite(number)) {
            return "none";
        }
        BigDecimal rounded = new BigDecimal(number).round(new MathContext(digits));
        return write(rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString());
    }

    /** A number with this unit behind it. */
    String write(String number) {
        boolean close = symbol.isEmpty() || symbol.matches("°[SW]?");
        return number + (close ? "" : " ") + symbol;
    }

    private static String compact(String text) {
        return text.replace(" ", "").replace("·", "");
    }
}
