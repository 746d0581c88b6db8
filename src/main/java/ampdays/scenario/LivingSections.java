package ampdays.scenario;

import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;

import ampdays.pv.Mounting;
import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;
import java.util.List;
import java.util.Map;

/** The living area and what runs in it. */
final class LivingSections {
    /**
     * Share of sunlight that paint absorbs. Silver and black: R. Levinson et al., Applied Energy 88 (2011) 4343 (shell
     * reflectance 0.58 and 0.05); the others from memory.
     */
    private static final Map<String, Double> ABSORPTANCE =
            Map.of("white", 0.30, "light", 0.45, "silver", 0.42, "medium", 0.65, "dark", 0.80, "black", 0.95);

    private static final List<String> COLOURS = List.of("white", "light", "silver", "medium", "dark", "black");
    private static final List<String> COVERS = List.of("none", "reflective", "insulated");

    private LivingSections() {}

    static List<Section> all() {
        return List.of(
                cabin(),
                CoolingSections.cooling(),
                CoolingSections.dash(),
                CoolingSections.refrigerator(),
                loads(),
                inverter());
    }

    private static Section cabin() {
        SectionBuilder section = new SectionBuilder(
                        "cabin", Presence.REQUIRED, "The living area, its shell and the temperatures wanted in it.")
                .presets(
                        "high-roof van, insulated",
                        "high-roof van, bare",
                        "high-roof van, thick foam",
                        "short low-roof van, insulated",
                        "short high-roof van, insulated",
                        "long high-roof van, insulated",
                        "minibus, glazed",
                        "box body, sandwich panels")
                .required("roof", Dimension.AREA, 1, 60, "Opaque roof.")
                .required("walls", Dimension.AREA, 1, 150, "Opaque side, front and rear walls.")
                .required("floor", Dimension.AREA, 1, 60, "Floor.")
                .required("glass", Dimension.AREA, 0, 40, "Windows, with the cab's if it is open to the living area.")
                .required("volume", Dimension.VOLUME, 1, 150, "Air in the living area.")
                .required("insulation", Dimension.THICKNESS, 0, 0.5, "Foam in roof and walls; 0 mm is bare metal.")
                .fixed(
                        "insulation-conductivity",
                        Dimension.CONDUCTIVITY,
                        0.01,
                        1,
                        "0.035 W/(m K)",
                        PRACTICE,
                        "Conductivity of that foam.")
                .fixed(
                        "bridges",
                        Dimension.TRANSMITTANCE,
                        0,
                        5,
                        "0.3 W/(m² K)",
                        GUESS,
                        "What ribs and frames add to roof and walls.")
                .fixed(
                        "floor-transmittance",
                        Dimension.TRANSMITTANCE,
                        0.05,
                        8,
                        "1.2 W/(m² K)",
                        GUESS,
                        "Floor to outside air.")
                .choice("colour", COLOURS, PRACTICE, "Paint, for the sunlight it absorbs.")
                .derived(
                        "absorptance",
                        Dimension.SHARE,
                        0,
                        1,
                        "by colour: white 30, silver 42, light 45, medium 65, dark 80, black 95 %",
                        v -> ABSORPTANCE.getOrDefault(v.word("cabin.colour"), Double.NaN),
                        PRACTICE,
                        "Share of sunlight the paint absorbs.");
        return temperatures(air(glass(faces(section)))).build();
    }

    private static SectionBuilder faces(SectionBuilder section) {
        return section.add(
                        "heading",
                        new Kind.Measured(List.of(Dimension.HEADING), 0, 360, "any"),
                        new Fallback.Fixed("any"),
                        PRACTICE,
                        "Where the front points while parked, clockwise from north, unless a line of the timetable says "
                                + "heading S; any takes the mean over all headings.")
                .fixed(
                        "walls-sides",
                        Dimension.SHARE,
                        0,
                        1,
                        "80 %",
                        GUESS,
                        "Walls on the two long sides; the rest is half front, half rear.")
                .fixed("glass-front", Dimension.SHARE, 0, 1, "50 %", GUESS, "Glass at the front.")
                .fixed(
                        "glass-sides",
                        Dimension.SHARE,
                        0,
                        1,
                        "40 %",
                        GUESS,
                        "Glass on both sides; the rest is at the rear.");
    }

    private static SectionBuilder glass(SectionBuilder section) {
        return section.choice("covers", COVERS, PRACTICE, "What covers the windows.")
                .choice(
                        "covers-used",
                        List.of("parked", "asleep and away", "always"),
                        PRACTICE,
                        "When covers are on where the timetable does not say covered or uncovered: while the van stands; while "
                                + "it stands and nobody in it is awake; or driving too, as behind a curtain.")
                .fixed(
                        "glass-transmittance",
                        Dimension.TRANSMITTANCE,
                        0.5,
                        8,
                        "5.8 W/(m² K)",
                        PRACTICE,
                        "Windows without covers; single glass.")
                .fixed(
                        "glass-solar",
                        Dimension.SHARE,
                        0,
                        1,
                        "65 %",
                        PRACTICE,
                        "Light on the uncovered windows that becomes heat indoors; clear 75 to 85, tinted 50 to 60 %.")
                .derived(
                        "covers-resistance",
                        Dimension.THERMAL_RESISTANCE,
                        0,
                        5,
                        "by covers: none 0, reflective 0.15, insulated 0.5 m² K/W",
                        v -> byCovers(v, 0, 0.15, 0.5),
                        GUESS,
                        "Thermal resistance the covers add.")
                .derived(
                        "covers-pass",
                        Dimension.SHARE,
                        0,
                        1,
                        "by covers: none 100, reflective 25, insulated 20 %",
                        v -> byCovers(v, 1, 0.25, 0.20),
                        GUESS,
                        "Share of the windows' solar heat that gets past the covers.");
    }

    private static double byCovers(Values v, double none, double reflective, double insulated) {
        return switch (v.word("cabin.covers")) {
            case "none" -> none;
            case "reflective" -> reflective;
            case "insulated" -> insulated;
            default -> Double.NaN;
        };
    }

    private static SectionBuilder air(SectionBuilder section) {
        return section.fixed(
                        "solar-to-air",
                        Dimension.SHARE,
                        0,
                        1,
                        "30 %",
                        GUESS,
                        "Share of that heat that warms air and linings first.")
                .fixed("air-changes", Dimension.AIR_CHANGES, 0, 60, "0.5 1/h", PRACTICE, "Parked and closed.")
                .fixed("air-changes-driving", Dimension.AIR_CHANGES, 0, 60, "5 1/h", GUESS, "While driving.")
                .fixed(
                        "leak-area",
                        Dimension.AREA,
                        0,
                        1,
                        "0 cm²",
                        PRACTICE,
                        "Area of all gaps; above 0 wind and warmth drive the air through a parked van in place of air-changes.")
                .add(
                        "airing",
                        new Kind.Measured(List.of(Dimension.TEMPERATURE), -20, 45, "off"),
                        new Fallback.Fixed("20 °C"),
                        PRACTICE,
                        "Loads with an airflow run only while outside is cooler than the cabin and the cabin warmer than this; "
                                + "off: at all their times.")
                .fixed(
                        "air-capacity",
                        Dimension.HEAT_CAPACITY,
                        1e3,
                        1e7,
                        "60 kJ/K",
                        GUESS,
                        "Heat capacity of the air with its linings.")
                .fixed(
                        "mass-capacity",
                        Dimension.HEAT_CAPACITY,
                        1e3,
                        1e8,
                        "600 kJ/K",
                        GUESS,
                        "Heat capacity of furniture and structure.")
                .fixed("air-to-mass", Dimension.CONDUCTANCE, 1, 10_000, "150 W/K", GUESS, "Between the two.")
                .derived(
                        "panel-heat",
                        Dimension.SHARE,
                        0,
                        1,
                        "by solar gap: no panels 0, wide open 15, 25 mm 30, bonded 75 %, straight between",
                        LivingSections::panelHeat,
                        GUESS,
                        "How much of the panels' warmth above outside air the roof beneath them feels.");
    }

    private static double panelHeat(Values v) {
        return v.has("solar") ? Mounting.roofShare(v.number("solar.gap")) : 0;
    }

    private static SectionBuilder temperatures(SectionBuilder section) {
        Kind temperatureOrOff = new Kind.Measured(List.of(Dimension.TEMPERATURE), 5, 45, "off");
        section.add("people", new Kind.Count(0, 20), new Fallback.Fixed("2"), GUESS, "How many live in it.");
        for (String state : List.of("asleep", "awake", "aboard", "away")) {
            section.add(
                    "set." + state,
                    temperatureOrOff,
                    new Fallback.Fixed("off"),
                    PRACTICE,
                    "Temperature wanted while people are " + state + ", or off.");
        }
        return section.fixed(
                        "comfort.low",
                        Dimension.TEMPERATURE,
                        -10,
                        40,
                        "15 °C",
                        PRACTICE,
                        "A night is comfortable from here.")
                .derived(
                        "comfort.high",
                        Dimension.TEMPERATURE,
                        0,
                        50,
                        "1.5 K above the set temperature asleep; 26 °C if that is off",
                        v -> Double.isNaN(v.number("cabin.set.asleep")) ? 26 : v.number("cabin.set.asleep") + 1.5,
                        PRACTICE,
                        "A night is comfortable up to here.");
    }

    private static Section loads() {
        return SectionBuilder.named(
                        "loads",
                        Presence.COMPONENT,
                        "Appliances, each under the name you give it; the names appear in tables and charts.")
                .add(
                        "draw",
                        new Kind.Measured(List.of(Dimension.CURRENT, Dimension.POWER), 0, 2000, ""),
                        new Fallback.Required(),
                        PRACTICE,
                        "Amps from the bank, or watts.")
                .add(
                        "when",
                        new Kind.When(),
                        new Fallback.Fixed("always"),
                        PRACTICE,
                        "always, awake, asleep, aboard, away, occupied, engine or parked; clock times 19:00-22:30; or both: "
                                + "awake, 19:00-22:30.")
                .add(
                        "use",
                        SectionBuilder.measured(Dimension.USE_PER_DAY, 0, 24),
                        new Fallback.Absent(),
                        PRACTICE,
                        "Hours a day, spread over the times it may run; all of them if not said.")
                .choice("on", List.of("bank", "inverter"), PRACTICE, "Where it hangs; on the inverter it takes watts.")
                .fixed("heat", Dimension.SHARE, 0, 1, "100 %", GUESS, "Share that ends as heat in the cabin.")
                .fixed(
                        "airflow",
                        Dimension.AIR_FLOW,
                        0,
                        5000,
                        "0 m³/h",
                        PRACTICE,
                        "Outside air that a fan moves through the cabin, when cabin.airing lets it.")
                .shed()
                .build();
    }

    private static Section inverter() {
        return new SectionBuilder("inverter", Presence.COMPONENT, "The inverter for household current.")
                .presets("2,000 W class", "1,000 W class", "3,000 W class")
                .required("rated", Dimension.POWER, 50, 50_000, "Continuous output.")
                .derived(
                        "idle",
                        Dimension.POWER,
                        0,
                        500,
                        "1 % of the rated output",
                        v -> 0.01 * v.number("inverter.rated"),
                        PRACTICE,
                        "Input without load.")
                .fixed("linear-loss", Dimension.SHARE, 0, 0.5, "5 %", PRACTICE, "Share of the output lost.")
                .fixed(
                        "square-loss",
                        Dimension.SHARE,
                        0,
                        0.5,
                        "6 %",
                        PRACTICE,
                        "Further share lost at the rated output.")
                .derived(
                        "surge",
                        Dimension.POWER,
                        50,
                        100_000,
                        "twice the rated output",
                        v -> 2 * v.number("inverter.rated"),
                        PRACTICE,
                        "What it carries for some hundred milliseconds.")
                .choice(
                        "running",
                        List.of("always", "in use"),
                        PRACTICE,
                        "Whether it idles all day or only for its loads.")
                .build();
    }
}
