package ampdays.io;

/** Numbers as loggers write them: with a comma or a point, with thousands apart, with a unit behind, or a dash for none. */
final class LogNumber {
    /** Says that a text is no number. */
    static final double UNREADABLE = Double.POSITIVE_INFINITY;

    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12};
    private static final int MOST_DIGITS = 15;

    private LogNumber() {}

    /**
     * Reads a number.
     *
     * @param unit that may stand behind it
     * @return NaN when the cell says that there is none, {@link #UNREADABLE} when it is something else
     */
    static double read(String text, boolean commaIsDecimal, String unit) {
        return read(text, 0, text.length(), commaIsDecimal, unit);
    }

    /** Reads a number that is a part of a text, from one place to before another. */
    static double read(String text, int from, int end, boolean commaIsDecimal, String unit) {
        int at = from;
        if (at == end) {
            return Double.NaN;
        }
        boolean negative = text.charAt(at) == '-' || text.charAt(at) == '\u2212';
        if (negative || text.charAt(at) == '+') {
            at++;
        }
        long digits = 0;
        int count = 0;
        int decimals = 0;
        boolean afterPoint = false;
        for (; at < end; at++) {
            char c = text.charAt(at);
            if (c >= '0' && c <= '9') {
                if (count < MOST_DIGITS) {
                    digits = digits * 10 + (c - '0');
                    decimals += afterPoint ? 1 : 0;
                    count += digits > 0 ? 1 : 0;
                } else if (!afterPoint) {
                    return UNREADABLE;
                }
            } else if (c == '.' || c == ',') {
                boolean decimal = (c == ',') == commaIsDecimal;
                if (afterPoint || (!decimal && !threeDigitsFollow(text, at + 1, end))) {
                    return UNREADABLE;
                }
                afterPoint |= decimal;
            } else {
                break;
            }
        }
        boolean any = at > from && text.charAt(at - 1) >= '0' && text.charAt(at - 1) <= '9';
        if (!any) {
            return blank(text.substring(from, end)) ? Double.NaN : UNREADABLE;
        }
        double value = decimals < POWERS.length ? digits / POWERS[decimals] : digits / Math.pow(10, decimals);
        if (at < end) {
            String rest = text.substring(at, end).strip();
            if (rest.length() > 1 && (rest.charAt(0) == 'e' || rest.charAt(0) == 'E')) {
                return exponent(text.substring(from, end));
            }
            if (!rest.equals(unit)) {
                return UNREADABLE;
            }
        }
        return negative ? -value : value;
    }

    /** Whether a sign that is not the decimal one parts thousands. */
    private static boolean threeDigitsFollow(CharSequence text, int from, int end) {
        int at = from;
        while (at < end && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at == from + 3;
    }

    private static double exponent(String text) {
        try {
            double value = Double.parseDouble(text.replace(',', '.'));
            return Double.isFinite(value) ? value : UNREADABLE;
        } catch (NumberFormatException e) {
            return UNREADABLE;
        }
    }

    private static boolean blank(String text) {
        return switch (text) {
            case "-",
                    "--",
                    "---",
                    "\u2013",
                    "\u2014",
                    "n/a",
                    "N/A",
                    "NA",
                    "nan",
                    "NaN",
                    "null",
                    "NULL",
                    "none",
                    "None" -> true;
            default -> false;
        };
    }
}
