package ampdays.commission;

import ampdays.units.Dimension;
import ampdays.units.Quantity;
import ampdays.units.QuantityException;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is told of the light on the panels.
 *
 * @param kind what was read, or supposed
 * @param wm2 what the meter or forecast says, W/m²; NaN when nothing was read
 * @param at by the clock of the place; empty when it is not told
 */
public record Sunlight(Kind kind, double wm2, Optional<LocalDateTime> at) {
    public static final double MOST_WM2 = 1400;

    /** Nobody told anything. */
    public static final Sunlight NOT_TOLD = new Sunlight(Kind.NOT_TOLD, Double.NaN, Optional.empty());

    private static final int FIRST_YEAR = 1950;
    private static final int LAST_YEAR = 2100;
    private static final DateTimeFormatter CLOCK =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    private static final Pattern LEVEL = Pattern.compile("(.*?)\\s+horizontal");

    /** What was read. */
    public enum Kind {
        NOT_TOLD,
        /** Read in the plane of the panels. */
        IN_PLANE,
        /** Read with a level meter, or forecast: sun and sky on the horizontal. */
        HORIZONTAL,
        /** Nothing was read: the sky is supposed to be without a cloud. */
        CLEAR_SKY
    }

    public static Sunlight inPlane(double wm2) {
        return new Sunlight(Kind.IN_PLANE, wm2, Optional.empty());
    }

    /**
     * Reads what was written.
     *
     * @param sun such as {@code 800 W/m²} or {@code 850 W/m² horizontal}
     * @param at such as {@code 2026-07-14 13:00}
     * @throws QuantityException with the name of what is wrong
     */
    public static Sunlight parse(Optional<String> sun, Optional<String> at) throws QuantityException {
        Optional<LocalDateTime> time = at.isEmpty() ? Optional.empty() : Optional.of(time(at.get()));
        if (sun.isEmpty()) {
            return time.isEmpty() ? NOT_TOLD : new Sunlight(Kind.CLEAR_SKY, Double.NaN, time);
        }
        Matcher level = LEVEL.matcher(sun.get().strip());
        boolean horizontal = level.matches();
        double wm2 = light(sun.get(), horizontal ? level.group(1) : sun.get());
        if (horizontal && time.isEmpty()) {
            throw new QuantityException("sun \"" + sun.get() + "\" depends on the sun's height. Tell the time too (at),"
                    + " such as 2026-07-14 13:00.");
        }
        return new Sunlight(horizontal ? Kind.HORIZONTAL : Kind.IN_PLANE, wm2, time);
    }

    private static double light(String written, String quantity) throws QuantityException {
        try {
            // as the sheet's heading says it, so that what is read back is the same day
            double told = Quantity.parse(quantity, Dimension.IRRADIANCE).value();
            double wm2 = Quantity.parse(Dimension.IRRADIANCE.show(told), Dimension.IRRADIANCE)
                    .value();
            if (wm2 >= 0 && wm2 <= MOST_WM2) {
                return wm2;
            }
        } catch (QuantityException e) {
            throw new QuantityException("sun " + e.getMessage());
        }
        throw new QuantityException("sun \"" + written + "\" is out of range. It must lie from "
                + Dimension.IRRADIANCE.show(0) + " to " + Dimension.IRRADIANCE.show(MOST_WM2) + ".");
    }

    private static LocalDateTime time(String written) throws QuantityException {
        try {
            LocalDateTime time = LocalDateTime.parse(written.strip().replace('T', ' '), CLOCK);
            if (time.getYear() >= FIRST_YEAR && time.getYear() <= LAST_YEAR) {
                return time;
            }
        } catch (DateTimeException e) {
            throw new QuantityException(
                    "at \"" + written + "\" is not a date and a time of day. Write it like: \"2026-07-14 13:00\".");
        }
        throw new QuantityException("at \"" + written + "\" is out of range. Its year must lie from " + FIRST_YEAR
                + " to " + LAST_YEAR + ".");
    }

    public boolean isTold() {
        return kind != Kind.NOT_TOLD;
    }

    /** The light as it was written; empty when none was read. */
    public Optional<String> spelledLight() {
        return Double.isNaN(wm2)
                ? Optional.empty()
                : Optional.of(Dimension.IRRADIANCE.show(wm2) + (kind == Kind.HORIZONTAL ? " horizontal" : ""));
    }

    /** The time as it was written; empty when it was not told. */
    public Optional<String> spelledTime() {
        return at.map(CLOCK::format);
    }

    /** In words; empty when nothing was told. */
    public String words() {
        String time = spelledTime().map(t -> " at " + t).orElse("");
        return switch (kind) {
            case NOT_TOLD -> "";
            case IN_PLANE -> "light on the panels " + Dimension.IRRADIANCE.show(wm2) + time;
            case HORIZONTAL -> "light on the horizontal " + Dimension.IRRADIANCE.show(wm2) + time;
            case CLEAR_SKY -> "a sky without a cloud" + time;
        };
    }
}
