package ampdays.scenario;

import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;

import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;
import java.util.List;

/** What cools: the air conditioner on the house bank, the vehicle's own, the refrigerator. */
final class CoolingSections {
    private CoolingSections() {}

    static Section cooling() {
        return new SectionBuilder("cooling", Presence.COMPONENT, "An air conditioner on the house bank.")
                .presets(
                        "variable-speed roof unit",
                        "fixed-speed roof unit",
                        "variable-speed split unit",
                        "mains roof unit",
                        "mains roof unit, variable speed",
                        "under-bench unit")
                .required("capacity", Dimension.POWER, 100, 20_000, "Total cooling at 35 °C outdoors.")
                .required("cop", Dimension.NUMBER, 0.5, 10, "Cooling over input there (EER / 3.412).")
                .choice(
                        "curves",
                        List.of("window", "packaged", "split"),
                        PRACTICE,
                        "Published curves against temperature: from 28 to 40 °C the full input grows by 13, 17 or 32 %.")
                .choice("speed", List.of("variable", "fixed"), PRACTICE, "Whether the compressor changes speed.")
                .fixed("turn-down", Dimension.SHARE, 0.05, 1, "30 %", PRACTICE, "Lowest steady share of full capacity.")
                .fixed(
                        "part-load",
                        Dimension.SHARE,
                        0,
                        1,
                        "50 %",
                        GUESS,
                        "Where its part-load input lies between the best (0 %) and the worst (100 %) published curve.")
                .fixed("cycling-loss", Dimension.SHARE, 0, 0.5, "25 %", PRACTICE, "Degradation by cycling below it.")
                .fixed(
                        "band",
                        Dimension.TEMPERATURE_DIFFERENCE,
                        0.1,
                        10,
                        "2 K",
                        PRACTICE,
                        "Thermostat band, fixed speed.")
                .fixed("least-run", Dimension.DURATION, 0, 3600, "3 min", PRACTICE, "Shortest run, fixed speed.")
                .fixed("least-rest", Dimension.DURATION, 0, 3600, "3 min", PRACTICE, "Shortest rest, fixed speed.")
                .fixed(
                        "cold-start",
                        Dimension.DURATION,
                        0,
                        600,
                        "30 s",
                        GUESS,
                        "Without cooling after a start, fixed speed.")
                .derived(
                        "step-down-voltage",
                        Dimension.VOLTAGE,
                        0,
                        1000,
                        "11.8 V per 12 V of the bank",
                        v -> 11.8 * BatterySection.twelveVolts(v),
                        GUESS,
                        "Below this it runs at its step-down.")
                .fixed("step-down", Dimension.SHARE, 0, 1, "50 %", GUESS, "Share of full capacity it is held to then.")
                .derived(
                        "cut-out-voltage",
                        Dimension.VOLTAGE,
                        0,
                        1000,
                        "10.8 V per 12 V of the bank",
                        v -> 10.8 * BatterySection.twelveVolts(v),
                        PRACTICE,
                        "Below this it stops.")
                .derived(
                        "restart-voltage",
                        Dimension.VOLTAGE,
                        0,
                        1000,
                        "12.6 V per 12 V of the bank; lead-acid 12.2 V",
                        v -> (BatterySection.isLeadAcid(v) ? 12.2 : 12.6) * BatterySection.twelveVolts(v),
                        PRACTICE,
                        "From this it may start again.")
                .choice(
                        "on",
                        List.of("bank", "inverter"),
                        PRACTICE,
                        "Where it hangs; a household unit needs the inverter.")
                .derived(
                        "start-surge",
                        Dimension.NUMBER,
                        1,
                        20,
                        "4 for a fixed-speed unit on the inverter, else 1 (soft start)",
                        v -> v.word("cooling.on").equals("inverter")
                                        && v.word("cooling.speed").equals("fixed")
                                ? 4
                                : 1,
                        PRACTICE,
                        "Input over full input in the first half second of a run, fixed speed.")
                .add(
                        "pre-cool.to",
                        new Kind.Measured(List.of(Dimension.TEMPERATURE), 5, 45, "off"),
                        new Fallback.Fixed("off"),
                        PRACTICE,
                        "Cools down to this while energy is cheap, so that furniture and structure carry the cold on.")
                .add(
                        "pre-cool.when",
                        new Kind.PreCool(),
                        new Fallback.Fixed("surplus sun"),
                        PRACTICE,
                        "surplus sun (only with sun that the bank no longer takes), driving, clock times 14:00-17:00, or "
                                + "several of them: surplus sun, driving.")
                .shed()
                .build();
    }

    static Section dash() {
        return new SectionBuilder(
                        "dash-cooling",
                        Presence.COMPONENT,
                        "The vehicle's own air conditioner, as far as it cools the living area while driving. It takes fuel and "
                                + "nothing from the house bank.")
                .fixed("to", Dimension.TEMPERATURE, 5, 45, "22 °C", PRACTICE, "Air temperature it is set to.")
                .fixed("capacity", Dimension.POWER, 100, 20_000, "2 kW", GUESS, "Cooling that reaches the living area.")
                .fixed("cop", Dimension.NUMBER, 0.5, 10, "2", GUESS, "Cooling over the shaft power of its compressor.")
                .build();
    }

    static Section refrigerator() {
        return new SectionBuilder("refrigerator", Presence.COMPONENT, "A compressor refrigerator.")
                .presets(
                        "90 L compressor",
                        "50 L compressor",
                        "30 L compact",
                        "80 L chest",
                        "130 L upright",
                        "40 L chest freezer")
                .required("leak", Dimension.CONDUCTANCE, 0.05, 20, "Heat leak of the box.")
                .required("compressor", Dimension.POWER, 5, 1000, "Input while the compressor runs.")
                .fixed("inside", Dimension.TEMPERATURE, -25, 15, "4 °C", PRACTICE, "Temperature kept inside.")
                .fixed("band", Dimension.TEMPERATURE_DIFFERENCE, 0.1, 10, "2 K", PRACTICE, "Thermostat band.")
                .required("heat-capacity", Dimension.HEAT_CAPACITY, 1e3, 1e7, "Box with its content.")
                .fixed("standing", Dimension.POWER, 0, 100, "3 W", PRACTICE, "Electronics and fan, always.")
                .fixed("carnot", Dimension.SHARE, 0.05, 1, "35 %", PRACTICE, "Share of the ideal performance.")
                .fixed(
                        "approach",
                        Dimension.TEMPERATURE_DIFFERENCE,
                        0.5,
                        40,
                        "12 K",
                        PRACTICE,
                        "How far evaporator and condenser stand off their air.")
                .choice("box", List.of("vented", "closed"), PRACTICE, "Whether its niche has vents below and above.")
                .derived(
                        "condenser-rise",
                        Dimension.TEMPERATURE_DIFFERENCE,
                        0,
                        40,
                        "by box: vented 3, closed 12 K",
                        v -> v.word("refrigerator.box").equals("closed") ? 12 : 3,
                        GUESS,
                        "Air at the condenser above the cabin's.")
                .fixed(
                        "daily-use",
                        Dimension.ENERGY,
                        0,
                        5000,
                        "150 Wh",
                        GUESS,
                        "Heat that doors and warm food bring in, a day.")
                .fixed(
                        "shopping",
                        Dimension.ENERGY,
                        0,
                        2000,
                        "0 Wh",
                        GUESS,
                        "Heat of warm food put in after each drive in town, over three hours; 60 Wh are 3 kg at 20 K.")
                .shed()
                .build();
    }
}
