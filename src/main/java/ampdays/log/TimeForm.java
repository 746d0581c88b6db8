package ampdays.log;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The order in which a time is written. */
public enum TimeForm {
    YEAR_FIRST("year month day"),
    DAY_FIRST("day month year"),
    MONTH_FIRST("month day year"),
    EPOCH_SECONDS("epoch seconds"),
    EPOCH_MILLISECONDS("epoch milliseconds");

    /** Says that a text is not a time of this form. */
    public static final long NONE = Long.MIN_VALUE;

    private static final int MOST_PARTS = 7;
    private static final int[] DAYS = {31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    private final String label;

    TimeForm(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    public static Optional<TimeForm> of(String label) {
        return Arrays.stream(values()).filter(f -> f.label.equals(label)).findFirst();
    }

    public static List<String> labels() {
        return Arrays.stream(values()).map(TimeForm::label).toList();
    }

    boolean isEpoch() {
        return this == EPOCH_SECONDS || this == EPOCH_MILLISECONDS;
    }

    /**
     * Reads a time. Whatever stands between the numbers is passed over; a year of two digits is of this century; AM and PM
     * are read; an offset such as Z or +02:00 at the end is kept.
     *
     * @param into two places: epoch second, counted as if the local time were UTC; and the offset in seconds, or {@link
     *     #NONE} when there is none
     * @return whether the text is a time of this form
     */
    public boolean read(String text, long[] into) {
        if (isEpoch()) {
            return epoch(text, into);
        }
        int[] parts = new int[MOST_PARTS];
        int count = 0;
        int at = 0;
        int end = text.length();
        int afterNumbers = 0;
        while (at < end && count < MOST_PARTS) {
            char c = text.charAt(at);
            if (c < '0' || c > '9') {
                if (count >= 5 && (c == '+' || c == '-' || c == 'Z' || c == '\u2212')) {
                    break;
                }
                at++;
                continue;
            }
            int number = 0;
            int digits = 0;
            while (at < end && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
                number = digits < 9 ? number * 10 + text.charAt(at) - '0' : number;
                digits++;
                at++;
            }
            parts[count++] = number;
            afterNumbers = at;
            if (count == 6 && at < end && (text.charAt(at) == '.' || text.charAt(at) == ',')) {
                do {
                    at++;
                } while (at < end && text.charAt(at) >= '0' && text.charAt(at) <= '9');
                afterNumbers = at;
                break;
            }
            if (count == 6) {
                break;
            }
        }
        if (count < 5) {
            return false;
        }
        return read(parts, text.substring(afterNumbers).strip(), into);
    }

    private boolean read(int[] parts, String rest, long[] into) {
        int year = this == YEAR_FIRST ? parts[0] : parts[2];
        int month = this == MONTH_FIRST ? parts[0] : parts[1];
        int day = this == YEAR_FIRST ? parts[2] : this == DAY_FIRST ? parts[0] : parts[1];
        int hour = parts[3];
        String after = rest;
        if (after.length() >= 2 && (after.charAt(1) == 'M' || after.charAt(1) == 'm')) {
            boolean afternoon = after.charAt(0) == 'P' || after.charAt(0) == 'p';
            if (hour < 1 || hour > 12) {
                return false;
            }
            hour = hour % 12 + (afternoon ? 12 : 0);
            after = after.substring(2).strip();
        }
        year += year < 100 ? 2000 : 0;
        boolean sound = year >= 1970
                && year < 2200
                && month >= 1
                && month <= 12
                && day >= 1
                && day <= DAYS[month - 1]
                && hour < 24
                && parts[4] < 60
                && parts[5] < 61;
        if (!sound) {
            return false;
        }
        into[0] = daysSince1970(year, month, day) * 86_400 + hour * 3600L + parts[4] * 60L + parts[5];
        into[1] = offset(after);
        return into[1] != NONE || after.isEmpty();
    }

    /** Days from 1970-01-01 of the Gregorian calendar, counted in years that begin in March so that leap days come last. */
    private static long daysSince1970(int year, int month, int day) {
        long y = month <= 2 ? year - 1L : year;
        long era = Math.floorDiv(y, 400L);
        long ofEra = y - era * 400;
        long ofYear = (153L * (month + (month > 2 ? -3 : 9)) + 2) / 5 + day - 1;
        return era * 146_097 + ofEra * 365 + ofEra / 4 - ofEra / 100 + ofYear - 719_468;
    }

    /** Seconds of an offset such as Z, +2, +02:00 or -0700. */
    private static long offset(String text) {
        if (text.equals("Z") || text.equals("UTC")) {
            return 0;
        }
        if (text.length() < 2 || "+-\u2212".indexOf(text.charAt(0)) < 0) {
            return NONE;
        }
        int digits = 0;
        int number = 0;
        for (int i = 1; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                number = number * 10 + c - '0';
                digits++;
            } else if (c != ':') {
                return NONE;
            }
        }
        long seconds = digits <= 2 ? number * 3600L : number / 100 * 3600L + number % 100 * 60L;
        return digits > 4 || seconds > 18 * 3600 ? NONE : text.charAt(0) == '+' ? seconds : -seconds;
    }

    private boolean epoch(String text, long[] into) {
        long whole = 0;
        int i = 0;
        while (i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9' && i < 16) {
            whole = whole * 10 + text.charAt(i) - '0';
            i++;
        }
        boolean point = i < text.length() && (text.charAt(i) == '.' || text.charAt(i) == ',');
        if (i == 0 || (i < text.length() && !point)) {
            return false;
        }
        into[0] = this == EPOCH_SECONDS ? whole : whole / 1000;
        into[1] = 0;
        return true;
    }
}
