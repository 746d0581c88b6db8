package ampdays.audit;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How long appliances usually run, by words in their names. Common practice, no source: amp-hours a day over amps of a
 * list of loads as designers keep it. Thermostats and inverters have sections of their own in a scenario.
 */
public enum UsualUse {
    REFRIGERATOR("fridge|refrigerator|freezer", "refrigerator"),
    AIR_CONDITIONER("air con.*|a/c|aircon.*|cooling|air-con.*", "cooling"),
    INVERTER("inverter", "inverter"),
    ALWAYS_ON("alarms?|monitors?|sensors?|standby|detectors?", 24, 24, "always"),
    INTERNET("satellite|internet|router|modem", 8, 16, "always"),
    FAN("fans?", 3, 10, "occupied"),
    LIGHTS("lights?|lamps?|lighting|leds?", 2, 4, "18:00-23:00"),
    PUMP("pumps?", 0.2, 0.5, "occupied"),
    LAPTOP("laptops?|computers?|notebooks?", 3, 6, "awake"),
    PHONE("phones?|tablets?", 1, 3, "always"),
    HEATER("heaters?|heating|furnace", 5, 9, "asleep"),
    HOB("hobs?|induction|cooktops?|cooker|stove", 0.2, 0.5, "awake"),
    MICROWAVE("microwaves?", 0.05, 0.15, "awake"),
    KETTLE("kettles?|coffee|toasters?", 0.1, 0.2, "awake"),
    TELEVISION("tv|television|radio|stereo|music", 1, 4, "awake");

    private final Pattern words;
    private final String section;
    private final double fromHours;
    private final double toHours;
    private final String when;

    UsualUse(String words, String section) {
        this(words, section, Double.NaN, Double.NaN, "");
    }

    UsualUse(String words, double fromHours, double toHours, String when) {
        this(words, "", fromHours, toHours, when);
    }

    UsualUse(String words, String section, double fromHours, double toHours, String when) {
        this.words = Pattern.compile("(?:^|.*[^\\p{L}])(?:" + words + ")(?:[^\\p{L}].*|$)");
        this.section = section;
        this.fromHours = fromHours;
        this.toHours = toHours;
        this.when = when;
    }

    /** What fits a name given by the designer, if anything does. */
    public static Optional<UsualUse> of(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(usual -> usual.words.matcher(lower).matches())
                .findFirst();
    }

    /** Whether a scenario simulates it by a section of its own. */
    public boolean hasSection() {
        return !section.isEmpty();
    }

    /** That section; empty when there is none. */
    public String section() {
        return section;
    }

    /** Least usual use, hours a day. */
    public double fromHours() {
        return fromHours;
    }

    /** Most usual use, hours a day. */
    public double toHours() {
        return toHours;
    }

    /** When, as a scenario writes it. */
    public String when() {
        return when;
    }
}
