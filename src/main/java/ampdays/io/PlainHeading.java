package ampdays.io;

import java.io.IOException;
import java.io.Writer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The '#' lines at the top of our plain files: {@code # key: value}, or free text, which is passed over. */
final class PlainHeading {
    private static final Pattern LINE = Pattern.compile("#\\s*([A-Za-z-]+)\\s*:\\s*(.*)");
    private static final Pattern OFFSET = Pattern.compile("([+-]?)(\\d{1,2})(?:\\.(\\d+)|:([0-5]\\d))?");
    private static final Set<String> KEYS =
            Set.of("title", "latitude", "longitude", "elevation", "utc-offset", "interval", "stamp");

    private final CsvText text;
    private final Set<String> keys;
    private final Map<String, Entry> entries = new HashMap<>();
    private int lines;

    /** A value and where it stands. */
    record Entry(int line, int column, String value) {}

    private PlainHeading(CsvText text, Set<String> keys) {
        this.text = text;
        this.keys = keys;
    }

    static PlainHeading of(CsvText text) {
        return of(text, KEYS);
    }

    static PlainHeading of(CsvText text, Set<String> keys) {
        PlainHeading heading = new PlainHeading(text, keys);
        int line = 1;
        while (line <= text.size()
                && (text.line(line).startsWith("#") || text.line(line).isBlank())) {
            heading.read(line);
            line++;
        }
        heading.lines = line - 1;
        return heading;
    }

    /** Writes what all plain files begin with. */
    static void write(
            Writer out,
            String title,
            List<String> remarks,
            double latitudeDeg,
            double longitudeDeg,
            double elevationM,
            double utcOffsetHours)
            throws IOException {
        write(out, "title", title);
        for (String remark : remarks) {
            out.write("# " + remark + "\n");
        }
        write(out, "latitude", WeatherRows.plain(latitudeDeg));
        write(out, "longitude", WeatherRows.plain(longitudeDeg));
        write(out, "elevation", WeatherRows.plain(elevationM) + " m");
        write(out, "utc-offset", WeatherRows.plain(utcOffsetHours));
    }

    /** Writes one heading line. */
    static void write(Writer out, String key, String value) throws IOException {
        out.write("# " + key + ": " + value + "\n");
    }

    private void read(int line) {
        Matcher matcher = LINE.matcher(text.line(line));
        if (!matcher.matches()) {
            return;
        }
        String key = matcher.group(1).toLowerCase(Locale.ROOT);
        Entry entry = new Entry(line, matcher.start(2) + 1, matcher.group(2).strip());
        if (keys.contains(key) && entries.putIfAbsent(key, entry) != null) {
            text.add(line, 1, "the heading says \"" + key + "\" twice.");
        }
    }

    /** Number of heading lines. */
    int lines() {
        return lines;
    }

    /** The value of a key, or null after noting that it is missing. */
    Entry entry(String key, String meaning) {
        Entry entry = entries.get(key);
        if (entry == null) {
            text.add(0, 0, "the heading lacks a line \"# " + key + ": …\" (" + meaning + ").");
        }
        return entry;
    }

    /** The value of a key that may be missing. */
    Optional<Entry> optional(String key) {
        return Optional.ofNullable(entries.get(key));
    }

    double latitudeDeg() {
        return number("latitude", -90, 90, "degrees, north positive");
    }

    double longitudeDeg() {
        return number("longitude", -180, 180, "degrees, east positive");
    }

    double elevationM() {
        return number("elevation", -500, 9000, "metres");
    }

    private double number(String key, double least, double most, String meaning) {
        Entry entry = entry(key, meaning);
        if (entry == null) {
            return Double.NaN;
        }
        try {
            double value = Double.parseDouble(entry.value.replaceFirst("\\s*(m|°)$", ""));
            if (value >= least && value <= most) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below, with its place
        }
        text.add(
                entry.line,
                entry.column,
                key + " is \"" + entry.value + "\"; expected is a number of " + meaning + ", "
                        + WeatherRows.plain(least) + " to " + WeatherRows.plain(most) + ".");
        return Double.NaN;
    }

    double utcOffsetHours() {
        Entry entry = entry("utc-offset", "hours of local standard time from UTC, such as -7 or +5:30");
        if (entry == null) {
            return Double.NaN;
        }
        Matcher offset = OFFSET.matcher(entry.value);
        if (offset.matches()) {
            double hours = Integer.parseInt(offset.group(2));
            hours += offset.group(3) != null ? Double.parseDouble("0." + offset.group(3)) : 0;
            hours += offset.group(4) != null ? Integer.parseInt(offset.group(4)) / 60.0 : 0;
            hours = offset.group(1).equals("-") ? -hours : hours;
            if (hours >= -12 && hours <= 14) {
                return hours;
            }
        }
        text.add(
                entry.line,
                entry.column,
                "utc-offset is \"" + entry.value + "\"; expected are hours from -12 to +14, such as -7, 5.5 or +5:30.");
        return Double.NaN;
    }
}
