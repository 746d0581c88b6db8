package ampdays.scenario;

import static ampdays.scenario.Mark.DATASHEET;
import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;
import static ampdays.scenario.Mark.STANDARD;

import ampdays.battery.BankSpec;
import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;
import java.util.List;

/** The house bank, of either chemistry. */
final class BatterySection {
    static final String LITHIUM = "lithium iron phosphate";
    static final String LEAD_ACID = "lead-acid";

    private BatterySection() {}

    static boolean isLeadAcid(Values v) {
        return v.word("battery.chemistry").equals(LEAD_ACID);
    }

    private static double byChemistry(Values v, double lithium, double leadAcid) {
        return isLeadAcid(v) ? leadAcid : lithium;
    }

    /** Nominal voltage of the bank, V. */
    static double nominalV(Values v) {
        return byChemistry(v, BankSpec.Lithium.CELL_V, BankSpec.LeadAcid.CELL_V) * v.number("battery.cells");
    }

    /** How many times 12 V the bank is: four cells of lithium iron phosphate, six of lead-acid. */
    static double twelveVolts(Values v) {
        return v.number("battery.cells") / byChemistry(v, 4, 6);
    }

    /** Capacity of the bank in Ah, also when it was said as energy. */
    static double capacityAh(Values v) {
        double said = v.number("battery.capacity");
        boolean energy = v.find("battery.capacity")
                .flatMap(Value::dimension)
                .filter(d -> d == Dimension.ENERGY)
                .isPresent();
        return energy ? said / nominalV(v) : said;
    }

    static Section section() {
        SectionBuilder section = new SectionBuilder("battery", Presence.REQUIRED, "The house bank.")
                .presets(
                        "lithium iron phosphate 12 V",
                        "lithium iron phosphate 24 V",
                        "lithium iron phosphate 48 V",
                        "lithium iron phosphate 12 V drop-in",
                        "lead-acid AGM 12 V",
                        "lead-acid AGM 24 V",
                        "lead-acid gel 12 V",
                        "lead-acid flooded 12 V")
                .choice("chemistry", List.of(LITHIUM, LEAD_ACID), PRACTICE, "What its cells are made of.")
                .add(
                        "capacity",
                        new Kind.Measured(List.of(Dimension.CHARGE, Dimension.ENERGY), 1, 100_000, ""),
                        new Fallback.Required(),
                        PRACTICE,
                        "When new: Ah, or kWh at the nominal 3.2 V (lead-acid: 2 V) per cell.")
                .add(
                        "cells",
                        new Kind.Count(1, 32),
                        new Fallback.Fixed("4"),
                        PRACTICE,
                        "Cells in series: 4 is 12 V, 8 is 24 V, 16 is 48 V; of lead-acid 6, 12, 24.")
                .fixed("start", Dimension.SHARE, 0, 1, "100 %", PRACTICE, "State of charge at the start.")
                .fixed(
                        "health",
                        Dimension.SHARE,
                        0.3,
                        1,
                        "100 %",
                        PRACTICE,
                        "Capacity at the start over that when new.")
                .fixed(
                        "health-resistance",
                        Dimension.SHARE,
                        1,
                        10,
                        "100 %",
                        PRACTICE,
                        "Resistance at the start over that when new.")
                .derived(
                        "resistance",
                        Dimension.RESISTANCE,
                        1e-5,
                        10,
                        "per 100 Ah block of 12 V: 6 mΩ, from memory; lead-acid 12.6 mΩ, a published example",
                        v -> byChemistry(v, 0.006, 0.0126) * twelveVolts(v) * 100 / capacityAh(v),
                        GUESS,
                        "When new, at 25 °C on the scale of minutes, with its electronics.");
        return heat(leadAcid(cutOut(protection(strings(charging(section)))))).build();
    }

    private static SectionBuilder charging(SectionBuilder section) {
        return section.derived(
                        "charge-rate",
                        Dimension.CHARGE_RATE,
                        0.02,
                        10,
                        "0.5 C; lead-acid 0.2 C",
                        v -> byChemistry(v, 0.5, 0.2),
                        PRACTICE,
                        "Charge limit of the cells.")
                .add(
                        "charge-limits",
                        new Kind.ChargeLimits(),
                        new Fallback.Absent(),
                        DATASHEET,
                        "The pack's own charge limits by temperature, in A or C, in place of published steps scaled to its"
                                + " charge-rate: 0 °C 20 A, 10 °C 100 A, 45 °C 0 A. Each holds from its temperature on; below"
                                + " the first nothing is taken.")
                .derived(
                        "absorption",
                        Dimension.VOLTAGE,
                        1,
                        1000,
                        "14.2 V per 12 V of the bank; lead-acid 14.4 V at 25 °C",
                        v -> byChemistry(v, 14.2, 14.4) * twelveVolts(v),
                        PRACTICE,
                        "Voltage that charging is held to.")
                .fixed(
                        "taper-from",
                        Dimension.SHARE,
                        0.5,
                        0.999,
                        "95 %",
                        PRACTICE,
                        "From here charging tapers; lithium.")
                .derived(
                        "tail",
                        Dimension.CHARGE_RATE,
                        0.001,
                        1,
                        "0.05 C; lead-acid 0.02 C",
                        v -> byChemistry(v, 0.05, 0.02),
                        DATASHEET,
                        "Current at full.")
                .fixed(
                        "coulombic-efficiency",
                        Dimension.SHARE,
                        0.5,
                        1,
                        "99.5 %",
                        GUESS,
                        "Charge out over charge in; lithium.")
                .derived(
                        "self-discharge",
                        Dimension.SHARE_PER_MONTH,
                        0,
                        0.5,
                        "2.5 %/month; lead-acid 3 %/month",
                        v -> byChemistry(v, 0.025, 0.03),
                        GUESS,
                        "From memory.")
                .derived(
                        "electronics",
                        Dimension.CURRENT,
                        0,
                        5,
                        "15 mA; lead-acid none",
                        v -> byChemistry(v, 0.015, 0),
                        GUESS,
                        "Draw of its own electronics.")
                .fixed(
                        "cold-capacity",
                        Dimension.SHARE,
                        0,
                        1,
                        "80 %",
                        DATASHEET,
                        "Share of the charge within reach at 0 °C, all at 25 °C, a straight line between and below; lithium.");
    }

    private static SectionBuilder strings(SectionBuilder section) {
        return section.add(
                        "strings",
                        new Kind.Count(1, 16),
                        new Fallback.Fixed("1"),
                        PRACTICE,
                        "Equal strings side by side; capacity, resistance and limits are those of the whole bank.")
                .fixed(
                        "link",
                        Dimension.RESISTANCE,
                        0,
                        0.1,
                        "0.3 mΩ",
                        GUESS,
                        "Plus and minus link between neighbouring strings together; the van hangs on the first string.");
    }

    private static SectionBuilder protection(SectionBuilder section) {
        return section.derived(
                        "charge-limit",
                        Dimension.CURRENT,
                        1,
                        100_000,
                        "100 A per 100 Ah",
                        BatterySection::capacityAh,
                        PRACTICE,
                        "Charge limit of the protection.")
                .derived(
                        "discharge-limit",
                        Dimension.CURRENT,
                        1,
                        100_000,
                        "100 A per 100 Ah",
                        BatterySection::capacityAh,
                        PRACTICE,
                        "Discharge limit of the protection.")
                .choice(
                        "over-current",
                        List.of("held", "trips"),
                        PRACTICE,
                        "Whether sources and loads are held to these two limits, or going beyond opens the protection.")
                .fixed("trip-wait", Dimension.DURATION, 0, 86_400, "1 min", PRACTICE, "How long it then stays open.")
                .choice(
                        "protection",
                        List.of("working", "open"),
                        PRACTICE,
                        "working; or open: the bank gives and takes nothing until somebody resets it (for failures).")
                .derived(
                        "charge-cold",
                        Dimension.TEMPERATURE,
                        -60,
                        30,
                        "0 °C; lead-acid -20 °C",
                        v -> byChemistry(v, 0, -20),
                        DATASHEET,
                        "Below this no charging.")
                .derived(
                        "charge-hot",
                        Dimension.TEMPERATURE,
                        20,
                        90,
                        "60 °C; lead-acid 50 °C",
                        v -> byChemistry(v, 60, 50),
                        DATASHEET,
                        "Above this no charging.")
                .derived(
                        "discharge-cold",
                        Dimension.TEMPERATURE,
                        -60,
                        30,
                        "-20 °C; lead-acid -40 °C",
                        v -> byChemistry(v, -20, -40),
                        PRACTICE,
                        "Below this no discharging; cells are specified to -35 °C.")
                .fixed("discharge-hot", Dimension.TEMPERATURE, 20, 90, "60 °C", DATASHEET, "Above this no discharging.")
                .fixed(
                        "protection-band",
                        Dimension.TEMPERATURE_DIFFERENCE,
                        0,
                        10,
                        "3 K",
                        PRACTICE,
                        "How far the temperature must come back before the protection closes again.");
    }

    private static SectionBuilder cutOut(SectionBuilder section) {
        return section.derived(
                        "cut-out",
                        Dimension.SHARE,
                        0,
                        0.9,
                        "5 %; lead-acid 20 %",
                        v -> byChemistry(v, 0.05, 0.20),
                        PRACTICE,
                        "State of charge at which loads are cut.")
                .derived(
                        "cut-out-voltage",
                        Dimension.VOLTAGE,
                        0,
                        1000,
                        "11.0 V per 12 V of the bank; lead-acid 10.5 V",
                        v -> byChemistry(v, 11.0, 10.5) * twelveVolts(v),
                        PRACTICE,
                        "Voltage at which loads are cut.")
                .derived(
                        "reconnect",
                        Dimension.SHARE,
                        0,
                        1,
                        "15 %; lead-acid 40 %",
                        v -> byChemistry(v, 0.15, 0.40),
                        PRACTICE,
                        "State of charge from which they come back.")
                .fixed(
                        "shed-band",
                        Dimension.SHARE,
                        0,
                        0.5,
                        "5 %",
                        PRACTICE,
                        "How far the state of charge must rise above a load's shed-below before that load comes back.");
    }

    private static SectionBuilder leadAcid(SectionBuilder section) {
        return section.fixed(
                        "rated-time",
                        Dimension.DURATION,
                        3600,
                        360_000,
                        "20 h",
                        STANDARD,
                        "Time in which its capacity is drawn; lead-acid.")
                .fixed(
                        "at-hand",
                        Dimension.SHARE,
                        0.05,
                        0.95,
                        "30 %",
                        GUESS,
                        "Share of the charge in the well at hand (c of the two-well model); lead-acid.")
                .fixed(
                        "well-rate",
                        Dimension.CHARGE_RATE,
                        0.01,
                        20,
                        "1 1/h",
                        GUESS,
                        "How fast the two wells level (k of the closed form, 0.5 to 2); lead-acid.")
                .derived(
                        "float",
                        Dimension.VOLTAGE,
                        1,
                        1000,
                        "13.8 V per 12 V of the bank",
                        v -> 13.8 * twelveVolts(v),
                        PRACTICE,
                        "Voltage it is held at once full, at 25 °C; lead-acid.")
                .fixed(
                        "compensation",
                        Dimension.VOLTAGE_PER_KELVIN,
                        -0.01,
                        0,
                        "-3 mV/K",
                        PRACTICE,
                        "Change of absorption and float voltage per cell; some makers -4 to -5; lead-acid.");
    }

    private static SectionBuilder heat(SectionBuilder section) {
        return section.derived(
                        "heat-capacity",
                        Dimension.HEAT_CAPACITY,
                        10,
                        1e9,
                        "per kWh 10 kg at 1000 J/(kg K); lead-acid 28 kg at 900 J/(kg K); from memory",
                        v -> capacityAh(v) * nominalV(v) * byChemistry(v, 0.01 * 1000, 0.028 * 900),
                        GUESS,
                        "Heat capacity.")
                .fixed("heat-conductance", Dimension.CONDUCTANCE, 0.01, 1000, "4 W/K", GUESS, "Bank to cabin.");
    }
}
