package ampdays.scenario;

import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;
import static ampdays.scenario.Mark.STANDARD;

import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;
import java.util.List;

/** The bank and what charges it. */
final class SupplySections {
    /** Nominal voltage of a lithium iron phosphate cell, V. */
    static final double CELL_V = 3.2;

    private SupplySections() {}

    static List<Section> all() {
        return List.of(battery(), SolarSection.section(), factory(), second(), engine(), shore());
    }

    /** Capacity of the bank in Ah, also when it was said as energy. */
    static double capacityAh(Values v) {
        double said = v.number("battery.capacity");
        boolean energy = v.find("battery.capacity")
                .flatMap(Value::dimension)
                .filter(d -> d == Dimension.ENERGY)
                .isPresent();
        return energy ? said / (CELL_V * v.number("battery.cells")) : said;
    }

    private static Section battery() {
        return new SectionBuilder("battery", Presence.REQUIRED, "The house bank, lithium iron phosphate.")
                .presets("lithium iron phosphate 12 V", "lithium iron phosphate 24 V", "lithium iron phosphate 48 V")
                .add(
                        "capacity",
                        new Kind.Measured(List.of(Dimension.CHARGE, Dimension.ENERGY), 1, 100_000, ""),
                        new Fallback.Required(),
                        PRACTICE,
                        "Ah, or kWh at the nominal 3.2 V per cell.")
                .add(
                        "cells",
                        new Kind.Count(1, 32),
                        new Fallback.Fixed("4"),
                        PRACTICE,
                        "Cells in series: 4 is 12 V, 8 is 24 V, 16 is 48 V.")
                .fixed("start", Dimension.SHARE, 0, 1, "100 %", PRACTICE, "State of charge at the start.")
                .derived(
                        "resistance",
                        Dimension.RESISTANCE,
                        1e-5,
                        10,
                        "6 mΩ per 100 Ah block of four cells, from memory",
                        v -> 0.006 * v.number("battery.cells") / 4 * 100 / capacityAh(v),
                        GUESS,
                        "At 25 °C on the scale of minutes, with its electronics.")
                .fixed("charge-rate", Dimension.CHARGE_RATE, 0.02, 10, "0.5 C", PRACTICE, "Charge limit of the cells.")
                .derived(
                        "charge-limit",
                        Dimension.CURRENT,
                        1,
                        100_000,
                        "100 A per 100 Ah",
                        SupplySections::capacityAh,
                        PRACTICE,
                        "Charge limit of the protection.")
                .derived(
                        "discharge-limit",
                        Dimension.CURRENT,
                        1,
                        100_000,
                        "100 A per 100 Ah",
                        SupplySections::capacityAh,
                        PRACTICE,
                        "Discharge limit of the protection.")
                .derived(
                        "absorption",
                        Dimension.VOLTAGE,
                        1,
                        1000,
                        "3.55 V per cell (14.2 V)",
                        v -> 3.55 * v.number("battery.cells"),
                        PRACTICE,
                        "Voltage that charging is held to.")
                .fixed("taper-from", Dimension.SHARE, 0.5, 0.999, "95 %", PRACTICE, "From here charging tapers.")
                .fixed("tail", Dimension.CHARGE_RATE, 0.001, 1, "0.05 C", Mark.DATASHEET, "Current at full.")
                .fixed("coulombic-efficiency", Dimension.SHARE, 0.5, 1, "99.5 %", GUESS, "Charge out over charge in.")
                .fixed("self-discharge", Dimension.SHARE_PER_MONTH, 0, 0.5, "2.5 %/month", GUESS, "From memory.")
                .fixed("electronics", Dimension.CURRENT, 0, 5, "15 mA", GUESS, "Draw of its own electronics.")
                .fixed("cut-out", Dimension.SHARE, 0, 0.9, "5 %", PRACTICE, "State of charge at which loads are cut.")
                .derived(
                        "cut-out-voltage",
                        Dimension.VOLTAGE,
                        0,
                        1000,
                        "2.75 V per cell (11.0 V)",
                        v -> 2.75 * v.number("battery.cells"),
                        PRACTICE,
                        "Voltage at which loads are cut.")
                .fixed(
                        "reconnect",
                        Dimension.SHARE,
                        0,
                        1,
                        "15 %",
                        PRACTICE,
                        "State of charge from which they come back.")
                .derived(
                        "heat-capacity",
                        Dimension.HEAT_CAPACITY,
                        10,
                        1e9,
                        "10 kg per kWh at 1000 J/(kg K), from memory",
                        v -> capacityAh(v) * CELL_V * v.number("battery.cells") * 0.01 * 1000,
                        GUESS,
                        "Heat capacity.")
                .fixed("heat-conductance", Dimension.CONDUCTANCE, 0.01, 1000, "4 W/K", GUESS, "Bank to cabin.")
                .build();
    }

    private static Section factory() {
        SectionBuilder section = new SectionBuilder(
                        "factory-alternator",
                        Presence.COMPONENT,
                        "The vehicle's own alternator, feeding the bank through a DC-DC charger.")
                .presets("factory 180 A class", "factory 220 A class")
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
        return alternator(section, "factory-alternator", 100).build();
    }

    private static Section second() {
        SectionBuilder section = new SectionBuilder(
                        "second-alternator",
                        Presence.COMPONENT,
                        "A second alternator that feeds the house bank directly.")
                .presets("large frame", "medium frame")
                .derived(
                        "set-point",
                        Dimension.VOLTAGE,
                        1,
                        1000,
                        "3.55 V per cell of the bank (14.2 V)",
                        v -> 3.55 * v.number("battery.cells"),
                        PRACTICE,
                        "Voltage the regulator holds.")
                .fixed("cable", Dimension.RESISTANCE, 1e-5, 1, "2 mΩ", GUESS, "Alternator to bank, both ways.");
        return alternator(section, "second-alternator", 75).build();
    }

    private static SectionBuilder alternator(SectionBuilder section, String name, int capPercent) {
        return section.required("rated", Dimension.CURRENT, 10, 2000, "Nameplate: cold, at 6,000 rotor rpm (ISO 8854).")
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
                .fixed(
                        "start-delay",
                        Dimension.DURATION,
                        0,
                        600,
                        "30 s",
                        PRACTICE,
                        "From engine start to the first amp.")
                .fixed("ramp", Dimension.DURATION, 0, 600, "15 s", PRACTICE, "From there to full current.")
                .fixed(
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

    private static Section engine() {
        return new SectionBuilder("engine", Presence.DEFAULTED, "The engine that turns the alternators.")
                .choice("fuel", List.of("diesel", "petrol", "petrol turbo"), PRACTICE, "What it burns.")
                .fixed("idle", Dimension.ROTATION, 300, 3000, "750 rpm", PRACTICE, "Speed at idle.")
                .fixed("town", Dimension.ROTATION, 300, 6000, "1500 rpm", PRACTICE, "Mean speed in town.")
                .fixed("highway", Dimension.ROTATION, 300, 8000, "2200 rpm", PRACTICE, "Mean speed on the highway.")
                .fixed("idle-fuel", Dimension.FUEL_RATE, 0, 20, "0.9 L/h", PRACTICE, "Burnt at idle without charging.")
                .fixed(
                        "idle-rise",
                        Dimension.TEMPERATURE_DIFFERENCE,
                        0,
                        100,
                        "40 K",
                        GUESS,
                        "Air under the bonnet above outside air, hot, at idle.")
                .fixed("town-rise", Dimension.TEMPERATURE_DIFFERENCE, 0, 100, "30 K", GUESS, "The same in town.")
                .fixed(
                        "highway-rise",
                        Dimension.TEMPERATURE_DIFFERENCE,
                        0,
                        100,
                        "20 K",
                        GUESS,
                        "The same on the highway.")
                .fixed("rise-time", Dimension.DURATION, 30, 7200, "8 min", GUESS, "Time constant of that air.")
                .build();
    }

    private static Section shore() {
        return new SectionBuilder(
                        "shore-charger",
                        Presence.COMPONENT,
                        "A charger fed from the hook-up, where the timetable has one.")
                .presets("50 A class")
                .required("rated", Dimension.CURRENT, 1, 1000, "Output current at most.")
                .fixed("efficiency", Dimension.SHARE, 0.3, 1, "90 %", PRACTICE, "Output over input.")
                .fixed("hook-up", Dimension.POWER, 50, 50_000, "1440 W", PRACTICE, "What the hook-up allows.")
                .build();
    }
}
