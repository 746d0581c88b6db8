package ampdays.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Local clock times as people write them. */
public final class ClockTime {
    private static final Pattern TIME = Pattern.compile("(\\d{1,2}):(\\d{2})");

    private ClockTime() {}

    /**
     * Minutes after midnight of a 24-hour time such as {@code 06:30}; {@code 24:00} is 1440.
     *
     * @throws QuantityException when it is no such time
     */
    public static int parse(String text) throws QuantityException {
        Matcher matcher = TIME.matcher(text.strip());
        if (matcher.matches()) {
            int hours = Integer.parseInt(matcher.group(1));
            int minutes = Integer.parseInt(matcher.group(2));
            if (minutes < 60 && hours * 60 + minutes <= 1440) {
                return hours * 60 + minutes;
            }
        }
        throw new QuantityException("\"" + text.strip()
                + "\" is not a time of day. Write hours and minutes from 00:00 to 24:00, like 06:30.");
    }
}
