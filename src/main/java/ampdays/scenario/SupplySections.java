package ampdays.scenario;

import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;

import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;
import java.util.List;

/** The bank and what charges it. */
final class SupplySections {
    /** Nominal voltage of a lithium iron phosphate cell, V. */
    static final double CELL_V = 3.2;

    private SupplySections() {}

    static List<Section> all() {
        return List.of(
                battery(),
                SolarSection.section(),
                AlternatorSections.factory(),
                AlternatorSections.second(),
                AlternatorSections.engine(),
                shore());
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
