package ampdays.scenario;

import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;
import static ampdays.scenario.Mark.STANDARD;

import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;
import java.util.List;

/** The engine and the alternators on it. */
final class AlternatorSections {
    private AlternatorSections() {}

    static Section factory() {
        SectionBuilder section = new SectionBuilder(
                        "factory-alternator",
                        Presence.COMPONENT,
                        "The vehicle's own alternator, feeding the bank through a DC-DC charger.")
                .presets(
                        "factory 180 A class",
                        "factory 220 A class",
                        "factory 120 A class",
                        "smart 180 A class",
                        "smart 220 A class")
                .required("charger", Dimension.CURRENT, 1, 1000, "Rating of the DC-DC charger at its output.")
                .fixed("charger-efficiency", Dimension.SHARE, 0.5, 1, "95 %", PRACTICE, "Its output over its input.")
                .fixed(
                        "vehicle-idle",
                        Dimension.CURRENT,
                        0,
                        500,
                        "50 A",
                        PRACTICE,
                        "What the vehicle itself takes at idle.")
                .fixed("vehicle-driving", Dimension.CURRENT, 0, 500, "50 A", PRACTICE, "What it takes while driving.")
                .fixed("set-point", Dimension.VOLTAGE, 10, 1000, "14.0 V", PRACTICE, "Voltage the regulator holds.")
                .fixed("cable", Dimension.RESISTANCE, 1e-5, 1, "8 mΩ", GUESS, "Alternator to charger, both ways.");
        smart(section);
        charger(section);
        return alternator(section, "factory-alternator", 100).build();
    }

    private static void smart(SectionBuilder section) {
        section.choice(
                "behaviour",
                List.of("fixed", "smart"),
                PRACTICE,
                "Smart: the vehicle's computer lets its voltage fall once the start battery is content, and raises it on"
                        + " overrun. Told apart after 5 to 10 min of idle: about 14.4 V is fixed, 12.5 to 13.5 V smart.");
        section.fixed(
                "content-after",
                Dimension.DURATION,
                0,
                7200,
                "10 min",
                GUESS,
                "Smart: time after each start until the start battery is content.");
        section.fixed("smart-idle", Dimension.VOLTAGE, 8, 1000, "12.5 V", PRACTICE, "Smart: mean voltage at idle.");
        section.fixed(
                "smart-town",
                Dimension.VOLTAGE,
                8,
                1000,
                "13.0 V",
                GUESS,
                "Smart: mean voltage in town, overrun in it: a fifth of the time at 15 V, else 12.5 V.");
        section.fixed(
                "smart-highway", Dimension.VOLTAGE, 8, 1000, "12.7 V", GUESS, "Smart: mean voltage on the highway.");
    }

    private static void charger(SectionBuilder section) {
        section.fixed(
                "charger-least-input",
                Dimension.VOLTAGE,
                6,
                1000,
                "12.0 V",
                GUESS,
                "Voltage at its input below which it draws no more; a thin cable meets it at a lower current.");
        section.choice("charger-place", List.of("cabin", "engine bay"), PRACTICE, "Whose air cools it.");
        section.derived(
                "charger-heat-capacity",
                Dimension.HEAT_CAPACITY,
                10,
                1e5,
                "50 J/K per ampere of its rating",
                v -> 50 * v.number("factory-alternator.charger"),
                GUESS,
                "Its heat capacity.");
        section.derived(
                "charger-to-air",
                Dimension.CONDUCTANCE,
                0.05,
                200,
                "0.04 W/K per ampere of its rating",
                v -> 0.04 * v.number("factory-alternator.charger"),
                GUESS,
                "From it to the air around it.");
        section.fixed(
                "charger-derate-from",
                Dimension.TEMPERATURE,
                20,
                150,
                "60 °C",
                GUESS,
                "Its own temperature at which it begins to give less.");
        section.fixed("charger-derate-to", Dimension.TEMPERATURE, 30, 200, "85 °C", GUESS, "Where it gives nothing.");
    }

    static Section second() {
        SectionBuilder section = new SectionBuilder(
                        "second-alternator",
                        Presence.COMPONENT,
                        "A second alternator that feeds the house bank directly.")
                .presets("large frame", "medium frame", "small frame")
                .derived(
                        "set-point",
                        Dimension.VOLTAGE,
                        1,
                        1000,
                        "14.2 V per 12 V of the bank; lead-acid 14.4 V",
                        v -> (BatterySection.isLeadAcid(v) ? 14.4 : 14.2) * BatterySection.twelveVolts(v),
                        PRACTICE,
                        "Voltage the regulator holds.")
                .fixed("cable", Dimension.RESISTANCE, 1e-5, 1, "2 mΩ", GUESS, "Alternator to bank, both ways.");
        return alternator(section, "second-alternator", 75).build();
    }

    private static SectionBuilder alternator(SectionBuilder section, String name, int capPercent) {
        section.required("rated", Dimension.CURRENT, 10, 2000, "Nameplate: cold, at 6,000 rotor rpm (ISO 8854).")
                .fixed(
                        "cut-in",
                        Dimension.ROTATION,
                        100,
                        5000,
                        "1100 rpm",
                        GUESS,
                        "Rotor speed of the first amp, cold.")
                .fixed(
                        "curve",
                        Dimension.ROTATION,
                        50,
                        10_000,
                        "1400 rpm",
                        GUESS,
                        "How far above that the output reaches 63 % of its end value.")
                .add(
                        "curve-points",
                        new Kind.SpeedPoints(),
                        new Fallback.Absent(),
                        PRACTICE,
                        "The unit's own cold curve (25 °C) by rotor speed, in place of the formula.")
                .add(
                        "hot-points",
                        new Kind.SpeedPoints(),
                        new Fallback.Absent(),
                        PRACTICE,
                        "Its hot curve, beside `curve-points`.")
                .fixed(
                        "hot-winding",
                        Dimension.TEMPERATURE,
                        40,
                        250,
                        "130 °C",
                        GUESS,
                        "Winding temperature of the hot curve.")
                .fixed("pulley", Dimension.NUMBER, 0.5, 6, "2.8", PRACTICE, "Rotor turns per engine turn.")
                .derived(
                        "cap",
                        Dimension.CURRENT,
                        1,
                        2000,
                        capPercent + " % of the rated current",
                        v -> capPercent / 100.0 * v.number(name + ".rated"),
                        PRACTICE,
                        "Current the regulator allows.")
                .add(
                        "cap-points",
                        new Kind.SpeedPoints(),
                        new Fallback.Absent(),
                        PRACTICE,
                        "What it allows by rotor speed, besides; straight between the points.")
                .fixed(
                        "start-delay",
                        Dimension.DURATION,
                        0,
                        600,
                        "30 s",
                        PRACTICE,
                        "From engine start to the first amp.")
                .fixed("ramp", Dimension.DURATION, 0, 600, "15 s", PRACTICE, "From there to full current.");
        return heat(section);
    }

    private static SectionBuilder heat(SectionBuilder section) {
        return section.fixed(
                        "cut-back-from",
                        Dimension.TEMPERATURE,
                        40,
                        200,
                        "105 °C",
                        PRACTICE,
                        "Case temperature at which the regulator begins to cut back.")
                .fixed("cut-back-to", Dimension.TEMPERATURE, 40, 250, "120 °C", PRACTICE, "Where nothing is left.")
                .fixed("belt", Dimension.POWER, 500, 50_000, "6 kW", PRACTICE, "Shaft power the belt carries.")
                .fixed(
                        "belt-speed",
                        Dimension.ROTATION,
                        500,
                        12_000,
                        "3500 rpm",
                        GUESS,
                        "Rotor speed below which it falls.")
                .fixed(
                        "efficiency",
                        Dimension.SHARE,
                        0.3,
                        0.9,
                        "67 %",
                        STANDARD,
                        "At half the rated current; the baseline of (EU) 2017/785.")
                .fixed(
                        "winding-capacity",
                        Dimension.HEAT_CAPACITY,
                        100,
                        1e5,
                        "3 kJ/K",
                        GUESS,
                        "Windings and rectifier.")
                .fixed("case-capacity", Dimension.HEAT_CAPACITY, 100, 1e5, "4 kJ/K", GUESS, "The case.")
                .fixed("winding-to-case", Dimension.CONDUCTANCE, 0.1, 200, "12 W/K", GUESS, "Between them.")
                .fixed("winding-to-air", Dimension.CONDUCTANCE, 0.1, 200, "18 W/K", GUESS, "At 6,000 rotor rpm.")
                .fixed("case-to-air", Dimension.CONDUCTANCE, 0.1, 200, "13 W/K", GUESS, "At 6,000 rotor rpm.");
    }

    static Section engine() {
        SectionBuilder section = new SectionBuilder(
                        "engine", Presence.DEFAULTED, "The engine that turns the alternators, and the air around them.")
                .choice(
                        "fuel",
                        List.of("diesel", "petrol", "petrol turbo", "LPG", "LPG turbo"),
                        PRACTICE,
                        "What it burns.")
                .fixed("idle", Dimension.ROTATION, 300, 3000, "750 rpm", PRACTICE, "Speed at idle.")
                .fixed("fast-idle", Dimension.ROTATION, 300, 4000, "1200 rpm", PRACTICE, "Speed at fast idle.")
                .fixed("town", Dimension.ROTATION, 300, 6000, "1500 rpm", PRACTICE, "Mean speed in town.")
                .fixed("highway", Dimension.ROTATION, 300, 8000, "2200 rpm", PRACTICE, "Mean speed on the highway.")
                .fixed("idle-fuel", Dimension.FUEL_RATE, 0, 20, "0.9 L/h", PRACTICE, "Burnt at idle without charging.")
                .derived(
                        "fast-idle-fuel",
                        Dimension.FUEL_RATE,
                        0,
                        40,
                        "the fuel at idle, in proportion to the speed",
                        v -> v.number("engine.idle-fuel") * v.number("engine.fast-idle") / v.number("engine.idle"),
                        GUESS,
                        "Burnt at fast idle without charging.");
        rise(section, "idle-rise", "40 K", "Air under the bonnet above outside air, hot, at idle.");
        rise(section, "fast-idle-rise", "40 K", "The same at fast idle.");
        rise(section, "town-rise", "30 K", "The same in town.");
        rise(section, "highway-rise", "20 K", "The same on the highway.");
        section.fixed("rise-time", Dimension.DURATION, 30, 7200, "8 min", GUESS, "Time constant of that air.");
        rise(
                section,
                "soak-rise",
                "45 K",
                "What still air around a stopped hot engine strives for; in practice 10 to 20 K more than on the road.");
        return section.fixed(
                        "soak-time",
                        Dimension.DURATION,
                        10,
                        3600,
                        "3 min",
                        GUESS,
                        "Time constant of that air after a stop.")
                .fixed("cool-time", Dimension.DURATION, 60, 86_400, "60 min", GUESS, "The stopped engine's cooling.")
                .build();
    }

    private static void rise(SectionBuilder section, String key, String text, String what) {
        section.fixed(key, Dimension.TEMPERATURE_DIFFERENCE, 0, 100, text, GUESS, what);
    }
}
