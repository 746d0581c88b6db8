package ampdays.scenario;

import ampdays.units.QuantityException;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates and sets of days as people write them. */
final class Days {
    /** Year of a trip whose start names none: it has no 29 February and begins on a Wednesday. */
    static final int YEAR_UNSAID = 2025;

    private static final String DATE = "\\d{4}-\\d{2}-\\d{2}";
    private static final Pattern NUMBERS = Pattern.compile("([1-9]\\d{0,3})(?:\\s*-\\s*([1-9]\\d{0,3}))?");
    private static final Pattern DATES = Pattern.compile("(" + DATE + ")(?:\\s+to\\s+(" + DATE + "))?");
    private static final Pattern WEEKDAYS = Pattern.compile("([A-Za-z]{3,9})(?:\\s*-\\s*([A-Za-z]{3,9}))?");

    private Days() {}

    /** A date such as {@code 2024-07-08}, or {@code 07-08} in the year {@link #YEAR_UNSAID}. */
    static LocalDate date(String text) throws QuantityException {
        try {
            if (text.matches(DATE)) {
                return LocalDate.parse(text);
            }
            if (text.matches("\\d{2}-\\d{2}")) {
                return MonthDay.parse("--" + text).atYear(YEAR_UNSAID);
            }
        } catch (DateTimeException e) {
            throw new QuantityException("\"" + text + "\" is not a day of the calendar.");
        }
        throw new QuantityException(
                "\"" + text + "\" is not a date. Write month and day, like 07-08, or with the year, like 2024-07-08.");
    }

    /**
     * Which days of a trip a text means: {@code 1-5, 8}, {@code 2024-07-08 to 2024-07-10}, {@code Mon-Fri}.
     *
     * @param days how many the trip has, or had before a change made it shorter: the last that may be named
     * @return for the index of a day, 0 the first, whether it is meant
     */
    static IntPredicate set(String text, LocalDate start, int days) throws QuantityException {
        IntPredicate set = day -> false;
        for (String part : text.split(",", -1)) {
            set = set.or(range(part.strip(), start, days));
        }
        return set;
    }

    private static IntPredicate range(String text, LocalDate start, int days) throws QuantityException {
        Matcher numbers = NUMBERS.matcher(text);
        if (numbers.matches()) {
            int first = Integer.parseInt(numbers.group(1));
            int last = numbers.group(2) == null ? first : Integer.parseInt(numbers.group(2));
            if (last < first || last > days) {
                throw new QuantityException(
                        "\"" + text + "\" does not lie within the " + days + " days of the trip, " + "first to last.");
            }
            return day -> day + 1 >= first && day + 1 <= last;
        }
        Matcher dates = DATES.matcher(text);
        if (dates.matches()) {
            LocalDate first = date(dates.group(1));
            LocalDate last = dates.group(2) == null ? first : date(dates.group(2));
            if (last.isBefore(first)) {
                throw new QuantityException("\"" + text + "\" ends before it begins.");
            }
            return day ->
                    !start.plusDays(day).isBefore(first) && !start.plusDays(day).isAfter(last);
        }
        Matcher weekdays = WEEKDAYS.matcher(text);
        if (weekdays.matches()) {
            int first = weekday(weekdays.group(1));
            int last = weekdays.group(2) == null ? first : weekday(weekdays.group(2));
            if (first > 0 && last > 0) {
                int length = Math.floorMod(last - first, 7);
                return day -> Math.floorMod(start.plusDays(day).getDayOfWeek().getValue() - first, 7) <= length;
            }
        }
        throw new QuantityException("\"" + text + "\" names no days. Write day numbers (1-5, 8), dates "
                + "(2024-07-08 to 2024-07-10), weekdays (Mon-Fri) or: others.");
    }

    /** 1 Monday to 7 Sunday; 0 when the text is no weekday. */
    private static int weekday(String text) {
        String wanted = text.toUpperCase(Locale.ROOT);
        List<DayOfWeek> week = List.of(DayOfWeek.values());
        for (DayOfWeek day : week) {
            if (day.name().equals(wanted) || day.name().substring(0, 3).equals(wanted)) {
                return day.getValue();
            }
        }
        return 0;
    }
}
