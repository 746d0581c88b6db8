package ampdays.scenario;

import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;

import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;
import java.util.List;

/** The panels on the roof and their controller. */
final class SolarSection {
    private static final String PULSE_WIDTH = "pulse-width";

    /** Best voltage of a 36-cell panel, which goes with a bank of 12 V, V. */
    private static final double STRING_V = 18;

    private SolarSection() {}

    static boolean isPulseWidth(Values v) {
        return v.word("solar.controller-type").equals(PULSE_WIDTH);
    }

    /** Best voltage of a string; without panels that of usual ones, V. */
    static double stringV(Values v) {
        return v.has("solar") ? v.number("solar.string-voltage") : usualStringV(v);
    }

    private static double usualStringV(Values v) {
        return STRING_V * BatterySection.twelveVolts(v);
    }

    static Section section() {
        SectionBuilder section = new SectionBuilder(
                        "solar", Presence.COMPONENT, "Panels on the roof, with their controller.")
                .presets(
                        "framed panels",
                        "heterojunction panels",
                        "older multicrystalline panels",
                        "bonded panels",
                        "panels on a rack")
                .required("power", Dimension.POWER, 1, 20_000, "At standard test conditions, all panels.");
        shading(dirt(panels(section)));
        return controller(section).build();
    }

    private static SectionBuilder panels(SectionBuilder section) {
        return section.choice(
                        "mounting",
                        List.of("feet with gap", "bonded", "open rack"),
                        PRACTICE,
                        "How the panels sit; decides the gap.")
                .derived(
                        "gap",
                        Dimension.LENGTH,
                        0,
                        1,
                        "by mounting: bonded 0, feet with gap 25.4, open rack 102 mm",
                        v -> gapM(v.word("solar.mounting")),
                        PRACTICE,
                        "Air between panels and roof; decides how hot they get, and the roof beneath.")
                .fixed(
                        "temperature-coefficient",
                        Dimension.TEMPERATURE_COEFFICIENT,
                        -0.01,
                        0,
                        "-0.35 %/K",
                        PRACTICE,
                        "Change of power with cell temperature.")
                .fixed(
                        "low-light",
                        Dimension.SHARE,
                        0,
                        0.05,
                        "0.5 %",
                        PRACTICE,
                        "Power missing at 200 W/m², as a share of the rated power; measured 0.3 to 0.6, old panels 2.5 %.")
                .fixed(
                        "panel-efficiency",
                        Dimension.SHARE,
                        0.03,
                        0.5,
                        "20 %",
                        PRACTICE,
                        "Power per area; tells how much roof they cover.")
                .fixed("tilt", Dimension.ANGLE, 0, 90, "0°", PRACTICE, "While parked; flat while driving.")
                .fixed("azimuth", Dimension.HEADING, 0, 360, "180°", PRACTICE, "Tilted towards, clockwise from north.");
    }

    private static double gapM(String mounting) {
        return switch (mounting) {
            case "open rack" -> 0.102;
            case "bonded" -> 0;
            default -> 0.0254;
        };
    }

    private static SectionBuilder dirt(SectionBuilder section) {
        return section.fixed(
                        "dirt",
                        Dimension.SHARE,
                        0,
                        0.9,
                        "4 %",
                        PRACTICE,
                        "Lost to dirt, at the start where it grows; desert trips 3 to 10 %.")
                .fixed(
                        "dirt-a-day",
                        Dimension.SHARE,
                        0,
                        0.1,
                        "0 %",
                        PRACTICE,
                        "Grows by this on dry days, back to 0 by more than 6 mm of rain; needs rain in the weather file. "
                                + "Country 0.1, desert 0.3 %.")
                .fixed("dirt-most", Dimension.SHARE, 0, 0.9, "30 %", PRACTICE, "It does not grow beyond.")
                .add(
                        "dirt-damp-days",
                        new Kind.Count(1, 60),
                        new Fallback.Fixed("14"),
                        PRACTICE,
                        "Days from a cleaning rain on that stay without dust.")
                .fixed("mismatch", Dimension.SHARE, 0, 0.9, "2 %", PRACTICE, "Lost to mismatch and tolerance.")
                .fixed("wiring", Dimension.SHARE, 0, 0.9, "2 %", PRACTICE, "Lost between panels and controller.");
    }

    private static SectionBuilder shading(SectionBuilder section) {
        return section.fixed(
                        "furniture",
                        Dimension.SHARE,
                        0,
                        0.9,
                        "0 %",
                        PRACTICE,
                        "Cells in the shadow of vents, rack or air conditioner with the sun 45° high.")
                .add("panels", new Kind.Count(1, 100), new Fallback.Fixed("2"), PRACTICE, "How many there are.")
                .add("groups", new Kind.Count(1, 20), new Fallback.Fixed("3"), PRACTICE, "Bypass groups in a panel.")
                .add(
                        "strings",
                        new Kind.Count(1, 100),
                        new Fallback.Fixed("1"),
                        PRACTICE,
                        "Strings side by side; the panels of a string are in series.")
                .add(
                        "patches",
                        new Kind.Count(1, 20),
                        new Fallback.Fixed("1"),
                        GUESS,
                        "Patches of a tree's shade across a bypass group; 1 for even shade.");
    }

    private static SectionBuilder controller(SectionBuilder section) {
        return section.choice(
                        "controller-type",
                        List.of("tracking", PULSE_WIDTH),
                        PRACTICE,
                        "Finds the panels' best point, or holds them at the battery's voltage.")
                .derived(
                        "tracking",
                        Dimension.SHARE,
                        0.3,
                        1,
                        "99 %; pulse-width 100 %",
                        v -> isPulseWidth(v) ? 1 : 0.99,
                        PRACTICE,
                        "How well the controller finds the best point.")
                .derived(
                        "conversion",
                        Dimension.SHARE,
                        0.3,
                        1,
                        "96 %; pulse-width 98 %",
                        v -> isPulseWidth(v) ? 0.98 : 0.96,
                        PRACTICE,
                        "Output over input of the controller.")
                .derived(
                        "string-voltage",
                        Dimension.VOLTAGE,
                        1,
                        1000,
                        "18 V per 12 V of the bank",
                        SolarSection::usualStringV,
                        PRACTICE,
                        "Best voltage of a string at 25 °C; a pulse-width controller needs it above the battery's, hot.")
                .derived(
                        "controller",
                        Dimension.CURRENT,
                        0,
                        5000,
                        "enough for the rated power at the bank's nominal voltage",
                        v -> v.number("solar.power") / BatterySection.nominalV(v),
                        PRACTICE,
                        "Output current of the controller at most; 0 A is one that is switched off.");
    }
}
