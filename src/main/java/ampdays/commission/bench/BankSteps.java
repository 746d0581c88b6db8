package ampdays.commission.bench;

import ampdays.battery.BankSpec;
import ampdays.commission.Band;
import ampdays.commission.Conditions;
import ampdays.commission.Item;
import ampdays.commission.Step;
import ampdays.commission.Symptom;
import ampdays.commission.bench.SampledReadings.Pass;
import ampdays.commission.bench.SampledReadings.Stop;
import ampdays.load.LoadSpec;
import ampdays.scenario.Design;
import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Steps of the bank and what hangs on it. Limits without a source are common practice. */
final class BankSteps {
    /** Drop between bank and appliance, share of the nominal voltage: 3 % for what matters, 10 % for anything. */
    private static final double GOOD_DROP = 0.03;

    private static final double WORST_DROP = 0.10;

    private final Items items;
    private final Conditions told;
    private final Design design;
    private final double twelves;

    BankSteps(Items items, Conditions told) {
        this.items = items;
        this.told = told;
        this.design = items.variant().design();
        this.twelves = twelves(design.bank());
    }

    /** How many times 12 V the bank is. */
    static double twelves(BankSpec bank) {
        return bank.seriesCells() / (isLeadAcid(bank) ? 6.0 : 4.0);
    }

    static boolean isLeadAcid(BankSpec bank) {
        return bank.chemistry() instanceof BankSpec.LeadAcid;
    }

    Step look() {
        List<Item> list = new ArrayList<>();
        if (design.second().isPresent()) {
            list.add(Items.question(
                    "look.belt",
                    "Belt in line and tight, pulleys true, bracket bolts marked at their torque, clear of everything?",
                    "second alternator, by eye and straightedge",
                    true));
        }
        list.add(Items.question(
                "look.cables",
                "Cables fixed and nowhere chafed, a fuse or breaker at the bank's end of each, covers on posts?",
                "every cable from the bank, by eye and hand",
                true));
        list.add(Items.question(
                "look.joints",
                "Every lug tightened to the maker's torque and marked, lug against lug or bar with no washer between?",
                "every joint of the large cables",
                true));
        if (isLeadAcid(design.bank())) {
            list.add(Items.question(
                    "look.gas",
                    "Gas of the bank led outside, nothing that sparks in its box?",
                    "box of the bank, by eye and hand",
                    true));
        }
        list.add(Items.question(
                "look.codes", "No fault codes, and a photograph of the list?", "the vehicle's diagnosis", false));
        list.add(Items.question(
                "look.alarms", "Smoke and carbon monoxide alarms in date and tested?", "living area", true));
        return new Step(
                "Look before anything runs",
                "Engine off, hook-up out, panels covered or switched off. Write down the meters you use.",
                "",
                list);
    }

    Step rest() {
        return new Step(
                "At rest",
                "Everything off that can be switched off, nothing charging, "
                        + (isLeadAcid(design.bank()) ? "at least four hours" : "an hour")
                        + " after the last charge. State of charge "
                        + Dimension.SHARE.show(told.socShare()) + ".",
                "",
                present(List.of(
                        items.predicted(
                                "rest.voltage",
                                Symptom.RESTING_VOLTAGE,
                                "Resting voltage",
                                "bank posts, voltmeter",
                                Pass.BETWEEN,
                                Stop.BOTH),
                        items.predicted(
                                "rest.current",
                                Symptom.BASE_DRAW,
                                "Base draw",
                                "bank minus, shunt or zeroed clamp",
                                Pass.UP_TO,
                                Stop.NEVER))));
    }

    Optional<Step> inverter() {
        List<Item> list = present(List.of(items.predicted(
                "inverter.idle",
                Symptom.INVERTER_IDLE,
                "Current with the inverter on and nothing on it",
                "bank minus",
                Pass.BETWEEN,
                Stop.NEVER)));
        return list.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Step("Inverter without load", "Sockets empty, saving mode off. Wait a minute.", "", list));
    }

    /** Each load of 5 A or more by itself. */
    List<Step> loads() {
        List<Step> steps = new ArrayList<>();
        for (int place : VanReadings.largeLoads(design)) {
            LoadSpec load = design.loads().get(place);
            String id = VanReadings.loadId(place);
            List<Item> list = new ArrayList<>(present(List.of(
                    items.predicted(
                            id + ".current",
                            Symptom.LOAD_CURRENT,
                            "Current, base draw in it",
                            "bank minus",
                            Pass.BETWEEN,
                            Stop.ABOVE),
                    items.predicted(
                            id + ".voltage",
                            Symptom.LOADED_VOLTAGE,
                            "Voltage of the bank under this load",
                            "bank posts, voltmeter",
                            Pass.BETWEEN,
                            Stop.BELOW))));
            if (!list.isEmpty()) {
                list.add(drop(id, load.onInverter() ? "inverter's input" : "appliance"));
                steps.add(new Step(
                        "Alone: " + load.name(),
                        "Only this on"
                                + (load.onInverter() ? ", with the inverter it hangs on" : "")
                                + ", at its highest setting. Read after a minute.",
                        "",
                        list));
            }
        }
        return steps;
    }

    /** The two-way drop of a run by the limits of practice. */
    Item drop(String id, String end) {
        double nominalV = 12.8 * twelves;
        return Items.limited(
                id + ".drop",
                Symptom.LOAD_DROP,
                "Voltage lost on the way, there and back",
                "bank posts less " + end + ", same moment",
                "V",
                Double.NaN,
                Band.atMost(GOOD_DROP * nominalV, WORST_DROP * nominalV),
                "");
    }

    Step lowVoltage() {
        double cutV = design.bank().cutOut().busV();
        double off = 0.1 * twelves;
        List<Item> list = new ArrayList<>();
        list.add(Items.question("low.alarm", "Does the alarm come before the loads go off?", "living area", false));
        if (cutV > 0) {
            list.add(Items.limited(
                    "low.voltage",
                    Symptom.CUT_OUT,
                    "Voltage at which the loads go off",
                    "bank posts, voltmeter",
                    "V",
                    cutV,
                    Band.within(cutV - off, cutV + off),
                    ""));
        }
        list.add(Items.question(
                "low.essential", "Do alarms and what must stay on stay on after that?", "living area", true));
        list.add(Items.question("low.engine", "Does the engine still start?", "vehicle", true));
        return new Step(
                "Low-voltage path",
                "Lower the bank under load, or lower the setting's limit to meet it, as the maker says, until the alarm and"
                        + " then the cut-out come. Put the setting back afterwards.",
                "",
                list);
    }

    Step meter() {
        BankSpec bank = design.bank();
        double capacityAh = bank.capacityAh();
        double tailA = bank.tailC() * capacityAh;
        double fullV = bank.absorptionV();
        return new Step(
                "Meter set-up",
                "Read the settings of the monitor back.",
                "",
                List.of(
                        Items.limited(
                                "meter.capacity",
                                Symptom.SETTING,
                                "Capacity",
                                "monitor's settings",
                                "Ah",
                                capacityAh,
                                Band.within(0.98 * capacityAh, 1.02 * capacityAh),
                                ""),
                        Items.limited(
                                "meter.charged-voltage",
                                Symptom.SETTING,
                                "Voltage that counts as full: 0.1 to 0.3 V per 12 V under the charge voltage",
                                "monitor's settings",
                                "V",
                                fullV - 0.2 * twelves,
                                Band.within(fullV - 0.3 * twelves, fullV - 0.1 * twelves),
                                ""),
                        Items.limited(
                                "meter.tail",
                                Symptom.SETTING,
                                "Current that counts as full",
                                "monitor's settings",
                                "A",
                                tailA,
                                Band.within(0.5 * tailA, 1.5 * tailA),
                                ""),
                        Items.question("meter.zero", "Current shown as 0 with the bank's cable off?", "monitor", false),
                        Items.question(
                                "meter.synchronised",
                                "Set to 100 % at a real full charge, and no earlier?",
                                "monitor",
                                false)));
    }

    Step handOver() {
        return new Step(
                "Hand-over",
                "With the client, at the van.",
                "",
                List.of(
                        Items.question("hand.labels", "Breakers, fuses and shut-offs labelled?", "van", false),
                        Items.question(
                                "hand.papers",
                                "Diagram, fuse list, order of shutting off, card of limits, this sheet handed over?",
                                "folder in the van",
                                false),
                        Items.question("hand.spares", "Spare fuses of every size in the van?", "van", false),
                        Items.question(
                                "hand.inspection",
                                "Inspected by a licensed person? (This sheet is not a code check.)",
                                "signature",
                                false)));
    }

    static List<Item> present(List<Optional<Item>> maybe) {
        return maybe.stream().flatMap(Optional::stream).toList();
    }
}
