package ampdays.study;

import ampdays.units.Nearest;
import java.util.Arrays;
import java.util.List;

/** Questions of size that designers ask most: what is searched, and where, if nothing else is said. */
public enum ReadyQuestion {
    LEAST_BANK("least bank", "battery.capacity", "50..2000 Ah step 10 Ah", true, "holds"),
    LEAST_SOLAR("least solar", "solar.power", "100..2000 W step 20 W", true, "holds"),
    LEAST_DRIVING("least driving", ReadyQuestion.DRIVE_HOURS, "0..8 h/day step 0.25 h/day", true, "holds"),
    WARMEST_WEATHER("warmest weather", ReadyQuestion.WEATHER_OFFSET, "-15..15 K step 0.5 K", false, "holds"),
    /** The range is filled in from the length of the trip. */
    LONGEST_PARKED("longest parked", ReadyQuestion.PARKED_DAYS, "", false, "daysToEmpty >= tripDays");

    static final String DRIVE_HOURS = "trip.drive-hours";
    static final String WEATHER_OFFSET = "weather-offset";
    static final String PARKED_DAYS = "trip.parked-days";

    private final String label;
    private final String path;
    private final String range;
    private final boolean smallest;
    private final String goal;

    ReadyQuestion(String label, String path, String range, boolean smallest, String goal) {
        this.label = label;
        this.path = path;
        this.range = range;
        this.smallest = smallest;
        this.goal = goal;
    }

    /** Their names, in the order of a talk with a client. */
    public static List<String> names() {
        return Arrays.stream(values()).map(question -> question.label).toList();
    }

    /**
     * The question of a name.
     *
     * @throws IllegalArgumentException with a sentence for the user
     */
    public static ReadyQuestion of(String name) {
        return Arrays.stream(values())
                .filter(question -> question.label.equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no ready question \"" + name
                        + "\". Questions: " + String.join("; ", names()) + "."
                        + Nearest.of(name, names())
                                .map(near -> " Did you mean " + near + "?")
                                .orElse("")));
    }

    /** What is searched on a trip of some days, as PATH=LO..HI step STEP. */
    public String knob(int tripDays) {
        return path + "=" + (range.isEmpty() ? "0.." + Math.max(1, tripDays - 1) + " step 1" : range);
    }

    public boolean smallest() {
        return smallest;
    }

    public String goal() {
        return goal;
    }
}
