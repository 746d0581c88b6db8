package ampdays.io;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/** How numbers and instants are spelt in files: never by the machine's locale. */
final class Numbers {
    private static final long[] POWER_OF_TEN = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

    private Numbers() {}

    /** All digits that tell the value from its neighbours; empty when there is no value. */
    static String full(double value) {
        return Double.isFinite(value) ? Double.toString(value) : "";
    }

    /** Share of one as a percentage, in full. */
    static String percent(double share) {
        return full(100 * share);
    }

    /** A fixed number of decimals, 0 to 6; empty when there is no value. Rounds half up, never prints minus zero. */
    static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return "";
        }
        long scaled = Math.round(value * POWER_OF_TEN[decimals]);
        long whole = Math.abs(scaled) / POWER_OF_TEN[decimals];
        StringBuilder text = new StringBuilder(16);
        if (scaled < 0) {
            text.append('-');
        }
        text.append(whole);
        if (decimals > 0) {
            String fraction = Long.toString(Math.abs(scaled) % POWER_OF_TEN[decimals]);
            text.append('.').append("0".repeat(decimals - fraction.length())).append(fraction);
        }
        return text.toString();
    }

    /** Local date and time with the offset that held then. */
    static String localStamp(long epochSecond, ZoneId zone) {
        return Instant.ofEpochSecond(epochSecond)
                .atZone(zone)
                .toOffsetDateTime()
                .format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }
}
