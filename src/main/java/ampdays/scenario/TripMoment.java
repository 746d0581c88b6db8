package ampdays.scenario;

import ampdays.units.ClockTime;
import ampdays.units.QuantityException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A moment of a trip as written: {@code day 3}, {@code day 3 14:00}.
 *
 * @param day 1 the first
 * @param minuteOfDay local clock time, minutes after midnight, 0 to 1440
 */
public record TripMoment(int day, int minuteOfDay) implements Comparable<TripMoment> {
    private static final Pattern FORM = Pattern.compile("day\\s+(\\d{1,4})(?:[,\\s]\\s*(\\S+))?");

    /** Reads a moment; the exception's message is a predicate after its key. */
    public static TripMoment parse(String text) throws QuantityException {
        Matcher matcher = FORM.matcher(text.strip());
        if (!matcher.matches() || Integer.parseInt(matcher.group(1)) == 0) {
            throw new QuantityException("\"" + text.strip()
                    + "\" is not a moment of the trip. Write its day, with a time where it matters: day 3 14:00.");
        }
        int minute = matcher.group(2) == null ? 0 : ClockTime.parse(matcher.group(2));
        return new TripMoment(Integer.parseInt(matcher.group(1)), minute);
    }

    @Override
    public int compareTo(TripMoment other) {
        return day == other.day ? Integer.compare(minuteOfDay, other.minuteOfDay) : Integer.compare(day, other.day);
    }

    /** As it is written. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "day %d %02d:%02d", day, minuteOfDay / 60, minuteOfDay % 60);
    }
}
