package ampdays.commission.bench;

import ampdays.alternator.AlternatorSpec;
import ampdays.alternator.EngineState;
import ampdays.commission.Band;
import ampdays.commission.Conditions;
import ampdays.commission.Item;
import ampdays.commission.Step;
import ampdays.commission.Symptom;
import ampdays.commission.bench.SampledReadings.Pass;
import ampdays.commission.bench.SampledReadings.Stop;
import ampdays.scenario.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Steps with the engine on. Limits without a source are common practice. */
final class EngineSteps {
    private static final String OUTDOORS = "Outdoors, windows shut, roof fan off, nobody asleep.";

    /** Resistance of a good joint and of a good breaker: 50 mV and 150 mV at 100 A; practice. */
    private static final double JOINT_MILLIOHM = 0.5;

    private static final double BREAKER_MILLIOHM = 1.5;

    /** Warmer than the air, and than its twin beside it, K; practice. */
    private static final double LUG_K = 30;

    private static final double TWIN_K = 15;

    /** Voltage that electronics of 12 V stand, V; practice. */
    private static final double PEAK_V = 16;

    private static final double CARBON_MONOXIDE_PPM = 3;

    /** With less current no joint shows what it is worth. */
    private static final double LEAST_TEST_A = 10;

    /** A soak is over when the case warms by less; practice. */
    private static final double SOAKED_K_PER_MIN = 1;

    private final Items items;
    private final Conditions told;
    private final Design design;

    EngineSteps(Items items, Conditions told) {
        this.items = items;
        this.told = told;
        this.design = items.variant().design();
    }

    private String rpm(EngineState state) {
        return String.format(Locale.ROOT, "%,.0f rpm", design.engine().rpm(state));
    }

    private String heldBy(String id) {
        String held = items.nominal().heldBy().getOrDefault(id, "");
        return held.isEmpty() ? "" : "; held by " + held;
    }

    /** For a reading of the charger after the second alternator had its turn. */
    private String alone() {
        return design.second().isPresent() ? ", a minute after the second alternator's field went off" : "";
    }

    Optional<Step> factory() {
        List<Item> list = new ArrayList<>();
        items.predicted(
                        "factory.voltage",
                        Symptom.SYSTEM_VOLTAGE,
                        "Voltage of the vehicle, idle " + rpm(EngineState.IDLE) + ", after 5 min",
                        "take-off point, voltmeter",
                        Pass.BETWEEN,
                        Stop.ABOVE)
                .ifPresent(list::add);
        charger(list, "idle", "idle");
        charger(list, "raised", rpm(EngineState.HIGHWAY));
        return list.isEmpty()
                ? Optional.empty()
                : Optional.of(new Step(
                        "Factory alternator and DC-DC charger, cold",
                        "Start the engine cold; the vehicle's own lights and fans off"
                                + (design.second().isPresent() ? ", the second alternator's field off" : "")
                                + ". First at idle for 5 min, then at " + rpm(EngineState.HIGHWAY) + " for a minute.",
                        OUTDOORS,
                        list));
    }

    private void charger(List<Item> list, String speed, String words) {
        String id = "charger." + speed;
        items.predicted(
                        id + "-output",
                        Symptom.CHARGER_OUTPUT,
                        "Charger's output, " + words,
                        "charger's output cable, clamp",
                        Pass.BETWEEN,
                        Stop.NEVER)
                .ifPresent(list::add);
        items.predicted(
                        id + "-input",
                        Symptom.CHARGER_INPUT,
                        "Charger's input voltage, " + words,
                        "charger's input terminals, voltmeter",
                        Pass.FROM,
                        Stop.NEVER)
                .ifPresent(list::add);
        items.predicted(
                        id + "-drop",
                        Symptom.CHARGER_DROP,
                        "Voltage lost from take-off point to charger, there and back, " + words,
                        "take-off point less charger's input, same moment",
                        Pass.UP_TO,
                        Stop.ABOVE,
                        Double.POSITIVE_INFINITY,
                        id + "-output")
                .ifPresent(list::add);
    }

    Optional<Step> secondCold() {
        return design.second().map(spec -> {
            List<Item> list = new ArrayList<>();
            cold(list, "second.idle", "idle " + rpm(EngineState.IDLE) + ", after 5 min");
            cold(list, "second.fast-idle", "fast idle " + rpm(EngineState.FAST_IDLE));
            items.predicted(
                            "second.voltage",
                            Symptom.CHARGING_VOLTAGE,
                            "Voltage of the bank at fast idle",
                            "bank posts, voltmeter",
                            Pass.BETWEEN,
                            Stop.ABOVE)
                    .ifPresent(list::add);
            cold(list, "second.raised", "raised speed " + rpm(EngineState.HIGHWAY));
            list.add(Items.question(
                    "second.belt", "No squeal, no black dust, pulley no warmer than the case?", "belt", true));
            return new Step(
                    "Second alternator, cold",
                    (design.factory().isPresent()
                                    ? "DC-DC charger off, second alternator's field on: idle"
                                    : "Start the engine cold: idle")
                            + " for 5 min, then a minute at each speed. Its current comes after "
                            + String.format(Locale.ROOT, "%.0f s", spec.startDelayS()) + " and rises over "
                            + String.format(Locale.ROOT, "%.0f s", spec.rampS()) + ".",
                    OUTDOORS,
                    list);
        });
    }

    private void cold(List<Item> list, String id, String words) {
        items.predicted(
                        id,
                        Symptom.ALTERNATOR_COLD,
                        "Current, " + words + heldBy(id),
                        "alternator's own cable, clamp",
                        Pass.BETWEEN,
                        Stop.ABOVE)
                .ifPresent(list::add);
    }

    /** A lead-acid bank has nothing that opens, and so nothing that must warn. */
    Optional<Step> warningPath() {
        return design.second()
                .filter(spec -> !BankSteps.isLeadAcid(design.bank()))
                .map(spec -> {
                    double twelves = BankSteps.twelves(design.bank());
                    double limitV = PEAK_V * twelves;
                    return new Step(
                            "Protection warning path",
                            "At idle and small current, by the bank maker's procedure that takes the permission to charge away.",
                            "Never by pulling a cable or opening a breaker or switch: that is the very surge this path prevents.",
                            List.of(
                                    Items.question(
                                            "warning.field",
                                            "Does the field go off before the bank opens?",
                                            "regulator and bank, one record",
                                            true),
                                    Items.limited(
                                            "warning.peak",
                                            Symptom.PEAK_VOLTAGE,
                                            "Highest voltage while the field goes off",
                                            "alternator's terminal, peak hold",
                                            "V",
                                            spec.setPointV(),
                                            new Band(
                                                    Double.NEGATIVE_INFINITY,
                                                    Math.min(limitV, spec.setPointV() + 0.8 * twelves),
                                                    Double.NEGATIVE_INFINITY,
                                                    limitV),
                                            ""),
                                    Items.question(
                                            "warning.back",
                                            "Does charging come back by itself, with its ramp, once permission is given?",
                                            "alternator's own cable, clamp",
                                            false)));
                });
    }

    Optional<Step> hotSoak() {
        List<Item> list = new ArrayList<>();
        items.predicted(
                        "hot.current",
                        Symptom.ALTERNATOR_HOT,
                        "Second alternator's current at the end" + heldBy("hot.current"),
                        "alternator's own cable, clamp",
                        Pass.BETWEEN,
                        Stop.ABOVE)
                .ifPresent(list::add);
        caseHeat("hot.case", "Case of the second alternator at the end").ifPresent(list::add);
        if (!list.isEmpty()) {
            list.add(Items.limited(
                    "hot.rate",
                    Symptom.CASE_HEAT,
                    "How much the case warmed in the last minute; soak on until it passes",
                    "the same spot, a minute apart",
                    "K/min",
                    items.nominal().values().get("hot.rate"),
                    Band.atMost(SOAKED_K_PER_MIN, Double.POSITIVE_INFINITY),
                    ""));
        }
        items.predicted(
                        "hot.charger",
                        Symptom.CHARGER_OUTPUT,
                        "DC-DC charger's output" + alone(),
                        "charger's output cable, clamp",
                        Pass.BETWEEN,
                        Stop.NEVER)
                .ifPresent(list::add);
        return list.isEmpty()
                ? Optional.empty()
                : Optional.of(new Step(
                        "Hot soak at fast idle",
                        "Bonnet closed, engine air conditioning on, " + rpm(EngineState.FAST_IDLE)
                                + " for 30 min; air under the bonnet "
                                + Conditions.inBothUnits(told.underBonnetC()) + ".",
                        OUTDOORS + " Somebody stays at the switch; a smell or smoke ends it.",
                        list));
    }

    private Optional<Item> caseHeat(String id, String what) {
        double stopC = design.second().map(AlternatorSpec::cutBackToC).orElse(Double.POSITIVE_INFINITY);
        return items.predicted(
                id,
                Symptom.CASE_HEAT,
                what,
                "drive-end case, thermocouple or matt tape and infrared",
                Pass.UP_TO,
                Stop.ABOVE,
                stopC,
                "");
    }

    /** At the current of the hot soak, while it still flows. */
    Optional<Step> joints() {
        double amps = items.nominal().values().getOrDefault("hot.current", 0.0);
        if (amps < LEAST_TEST_A) {
            return Optional.empty();
        }
        List<Item> list = new ArrayList<>();
        items.predicted(
                        "hot.cable",
                        Symptom.CABLE_DROP,
                        "Lost from alternator to bank, there and back",
                        "alternator's terminal and case less bank posts",
                        Pass.UP_TO,
                        Stop.ABOVE,
                        Double.POSITIVE_INFINITY,
                        "hot.current")
                .ifPresent(list::add);
        list.add(resistance(
                "joint.worst",
                Symptom.JOINT_DROP,
                "The worst single joint",
                "lug to lug or bar",
                JOINT_MILLIOHM * amps));
        list.add(resistance("joint.breaker", Symptom.BREAKER_DROP, "Breaker", "stud to stud", BREAKER_MILLIOHM * amps));
        list.add(warmth("joint.lug", "The warmest lug, above the air beside it", LUG_K));
        list.add(warmth("joint.twin", "The warmest lug, above its twin on the other pole or string", TWIN_K));
        list.add(warmth("joint.breaker-body", "Body of the breaker, above the air beside it", LUG_K));
        return Optional.of(new Step(
                "Joints and breaker under load",
                "Straight after the soak, the current still flowing. Judged at the current you read: half the current may"
                        + " drop half as much.",
                "Insulated probes; a lug may burn. A hot joint is made anew, never given a bigger breaker.",
                list));
    }

    private static Item resistance(String id, Symptom symptom, String what, String where, double goodMv) {
        return Items.limited(
                id, symptom, what, where, "mV", Double.NaN, Band.atMost(goodMv, 2 * goodMv), "hot.current");
    }

    private static Item warmth(String id, String what, double goodK) {
        return Items.limited(
                id,
                Symptom.JOINT_HEAT,
                what,
                "infrared on matt tape, or thermocouple",
                "K",
                Double.NaN,
                Band.atMost(goodK, 2 * goodK),
                "");
    }

    Optional<Step> carbonMonoxide() {
        if (design.second().isEmpty() && design.factory().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Step(
                "Carbon monoxide",
                "Engine at idle for 15 min, wind from behind the van; vents and roof fan in every position, one after the"
                        + " other. The air outside, read first, comes off.",
                "A meter in the hand, and out at the first alarm. Nobody lies down in there.",
                List.of(Items.limited(
                        "co.pillow",
                        Symptom.CARBON_MONOXIDE,
                        "Highest reading at the pillow above the air outside",
                        "pillow, meter of 1 ppm",
                        "ppm",
                        0,
                        Band.atMost(CARBON_MONOXIDE_PPM, CARBON_MONOXIDE_PPM),
                        ""))));
    }

    Optional<Step> road() {
        List<Item> list = new ArrayList<>();
        items.predicted(
                        "road.current",
                        Symptom.ALTERNATOR_HOT,
                        "Second alternator's current at the end" + heldBy("road.current"),
                        "recorder on its own cable; a passenger reads it",
                        Pass.BETWEEN,
                        Stop.ABOVE)
                .ifPresent(list::add);
        caseHeat("road.case", "Case of the second alternator at the end").ifPresent(list::add);
        items.predicted(
                        "road.charger",
                        Symptom.CHARGER_OUTPUT,
                        "DC-DC charger's output at the end" + alone(),
                        "recorder on its output; a passenger reads it",
                        Pass.BETWEEN,
                        Stop.NEVER)
                .ifPresent(list::add);
        if (list.isEmpty()) {
            return Optional.empty();
        }
        list.add(Items.question("road.codes", "No new fault codes?", "the vehicle's diagnosis", true));
        return Optional.of(new Step(
                "Road run",
                String.format(
                        Locale.ROOT,
                        "Straight after: %.0f min at about %s%s. Read at the end.",
                        items.nominal().roadMinutes(),
                        rpm(EngineState.HIGHWAY),
                        design.second().isPresent() && design.factory().isPresent() ? ", DC-DC charger off" : ""),
                "The driver drives; nobody reads a meter at the wheel.",
                list));
    }
}
