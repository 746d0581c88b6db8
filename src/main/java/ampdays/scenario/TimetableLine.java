package ampdays.scenario;

import ampdays.trip.People;
import ampdays.trip.Vehicle;
import ampdays.trip.Windows;
import ampdays.units.ClockTime;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One line of a timetable as written: {@code 18:05 park part-shade hook-up, awake}.
 *
 * @param shade the word for the light: {@code sun}, {@code part-shade} or {@code shade}
 * @param headingDeg where the front points, degrees clockwise from north; NaN when the line does not say
 */
public record TimetableLine(
        int minuteOfDay,
        Vehicle vehicle,
        String shade,
        boolean hookUp,
        People people,
        double headingDeg,
        Windows windows) {
    static final String SUN = "sun";
    static final String PART_SHADE = "part-shade";
    static final String SHADE = "shade";

    private static final String FAST_IDLE = "fast idle";
    private static final String HOOK_UP = "hook-up";
    private static final String HEADING = "heading";
    private static final String COVERED = "covered";
    private static final String UNCOVERED = "uncovered";
    private static final List<String> COMPASS = List.of("N", "NE", "E", "SE", "S", "SW", "W", "NW");
    private static final String FORM = " Write a line like: 07:10 park sun, away.";
    private static final List<String> VERBS = List.of("drive", "park", "idle", FAST_IDLE);
    private static final List<String> ROADS = List.of("town", "highway");
    private static final List<String> LIGHTS = List.of(SUN, "open", PART_SHADE, SHADE);

    /** Reads one line; the exception's message is a predicate after the path of the timetable. */
    public static TimetableLine parse(String text) throws QuantityException {
        String line = text.strip();
        int space = line.indexOf(' ');
        if (space < 0) {
            throw new QuantityException("line \"" + line + "\" does not say what happens." + FORM);
        }
        int minute = ClockTime.parse(line.substring(0, space));
        if (minute == 1440) {
            throw new QuantityException(
                    "line \"" + line + "\" begins at the end of the day. Write 00:00 in the next day.");
        }
        String[] parts = line.substring(space).split(",", -1);
        if (parts.length > 2) {
            throw new QuantityException("line \"" + line + "\" has more than two parts." + FORM);
        }
        List<String> words = new ArrayList<>(Arrays.asList(parts[0].strip().split("\\s+")));
        if (words.size() > 1 && (words.get(0) + " " + words.get(1)).equals(FAST_IDLE)) {
            words.remove(0);
            words.set(0, FAST_IDLE);
        }
        String verb = choose(line, words.remove(0), VERBS);
        Vehicle vehicle = switch (verb) {
            case "park" -> Vehicle.PARKED;
            case "idle" -> Vehicle.IDLING;
            case FAST_IDLE -> Vehicle.FAST_IDLING;
            default -> road(line, words);
        };
        double headingDeg = headingDeg(line, words, vehicle);
        Windows windows = windows(words);
        boolean hookUp = words.remove(HOOK_UP);
        if (hookUp && vehicle != Vehicle.PARKED) {
            throw new QuantityException("line \"" + line + "\" has a hook-up, which only a parked van can have.");
        }
        String shade = SUN;
        if (!words.isEmpty()) {
            String word = vehicle.moves() ? choose(line, words.get(0), List.of()) : choose(line, words.get(0), LIGHTS);
            shade = word.equals("open") ? SUN : word;
        }
        if (words.size() > 1) {
            leftOver(line, words.get(1), vehicle);
        }
        return new TimetableLine(minute, vehicle, shade, hookUp, people(line, parts, vehicle), headingDeg, windows);
    }

    private static void leftOver(String line, String word, Vehicle vehicle) throws QuantityException {
        List<String> known = vehicle == Vehicle.PARKED
                ? List.of(HOOK_UP, HEADING, COVERED, UNCOVERED)
                : List.of(HEADING, COVERED, UNCOVERED);
        if (known.contains(word)) {
            throw new QuantityException("line \"" + line + "\" has the word \"" + word + "\" once too often.");
        }
        choose(line, word, known);
    }

    private static double headingDeg(String line, List<String> words, Vehicle vehicle) throws QuantityException {
        int at = words.indexOf(HEADING);
        if (at < 0) {
            return Double.NaN;
        }
        if (vehicle.moves()) {
            throw new QuantityException("line \"" + line + "\" has a heading, which only a standing van can have.");
        }
        words.remove(at);
        String where = at < words.size() ? words.remove(at) : "";
        int compass = COMPASS.indexOf(where);
        if (compass >= 0) {
            return 360.0 / COMPASS.size() * compass;
        }
        if (!where.matches("\\d{1,3}°?")) {
            throw new QuantityException("line \"" + line + "\" does not say which way the front points. Write heading "
                    + "and one of " + String.join(", ", COMPASS) + ", or degrees like 180°.");
        }
        int deg = Integer.parseInt(where.replace("°", ""));
        if (deg > 360) {
            throw new QuantityException("line \"" + line + "\" has a heading beyond 360°.");
        }
        return deg;
    }

    private static Windows windows(List<String> words) {
        if (words.remove(COVERED)) {
            return Windows.COVERED;
        }
        return words.remove(UNCOVERED) ? Windows.UNCOVERED : Windows.BY_RULE;
    }

    private static Vehicle road(String line, List<String> words) throws QuantityException {
        if (words.isEmpty()) {
            throw new QuantityException("line \"" + line + "\" does not say where. Write drive town or drive highway.");
        }
        return choose(line, words.remove(0), ROADS).equals("town") ? Vehicle.TOWN : Vehicle.HIGHWAY;
    }

    private static People people(String line, String[] parts, Vehicle vehicle) throws QuantityException {
        List<String> known = Arrays.stream(People.values())
                .map(p -> p.name().toLowerCase(Locale.ROOT))
                .toList();
        if (parts.length == 2) {
            return People.valueOf(choose(line, parts[1].strip(), known).toUpperCase(Locale.ROOT));
        }
        if (vehicle.moves()) {
            return People.ABOARD;
        }
        throw new QuantityException("line \"" + line + "\" does not say what the people do. Add a comma and one of "
                + String.join(", ", known) + ".");
    }

    private static String choose(String line, String word, List<String> known) throws QuantityException {
        if (known.contains(word)) {
            return word;
        }
        throw new QuantityException("line \"" + line + "\" has the word \"" + word + "\". "
                + (known.isEmpty() ? "Nothing more is expected there." : "Expected: " + String.join(", ", known) + ".")
                + Kind.didYouMean(word, known));
    }

    /** Reads the lines of one kind of day. */
    public static List<TimetableLine> parseAll(String text) throws QuantityException {
        List<TimetableLine> lines = new ArrayList<>();
        for (String line : text.split("\n", -1)) {
            Optional<TimetableLine> before =
                    lines.isEmpty() ? Optional.empty() : Optional.of(lines.get(lines.size() - 1));
            lines.add(parseAfter(before, line));
        }
        return lines;
    }

    /** Reads a line that must begin later than the one before it. */
    public static TimetableLine parseAfter(Optional<TimetableLine> before, String text) throws QuantityException {
        TimetableLine line = parse(text);
        if (before.isPresent() && line.minuteOfDay <= before.get().minuteOfDay) {
            throw new QuantityException("line \"" + text.strip() + "\" is not later than the line before it. "
                    + "Times rise from line to line; what goes past midnight belongs to the next day.");
        }
        return line;
    }
}
