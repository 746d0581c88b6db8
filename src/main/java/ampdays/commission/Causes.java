package ampdays.commission;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Likely causes of a deviation, in the order in which they turn up and cost least to look at: joints before parts, settings
 * before machines, and never a bigger breaker. Common practice, no source.
 */
final class Causes {
    private static final Map<Symptom, List<Cause>> TOO_LITTLE = new EnumMap<>(Symptom.class);
    private static final Map<Symptom, List<Cause>> TOO_MUCH = new EnumMap<>(Symptom.class);

    private static final String JOINT_BY_JOINT =
            "Millivolts over each joint and each length of cable at the same current.";

    private Causes() {}

    /** Causes of a reading that is too large, or too small. */
    static List<Cause> of(Symptom symptom, boolean tooMuch) {
        return (tooMuch ? TOO_MUCH : TOO_LITTLE).getOrDefault(symptom, List.of());
    }

    private static void low(Symptom symptom, String text, String test) {
        put(TOO_LITTLE, symptom, new Cause(text, test, Optional.empty()));
    }

    private static void low(Symptom symptom, String text, String test, Symptom witness) {
        put(TOO_LITTLE, symptom, new Cause(text, test, Optional.of(witness)));
    }

    private static void high(Symptom symptom, String text, String test) {
        put(TOO_MUCH, symptom, new Cause(text, test, Optional.empty()));
    }

    private static void high(Symptom symptom, String text, String test, Symptom witness) {
        put(TOO_MUCH, symptom, new Cause(text, test, Optional.of(witness)));
    }

    private static void put(Map<Symptom, List<Cause>> side, Symptom symptom, Cause cause) {
        side.computeIfAbsent(symptom, key -> new ArrayList<>()).add(cause);
    }

    static {
        atRest();
        loads();
        factoryUnit();
        secondAlternator();
        joints();
        bankLimits();
        sunAndShore();
        living();
    }

    private static void atRest() {
        low(
                Symptom.RESTING_VOLTAGE,
                "the state of charge shown is wrong: the monitor was never synchronised at a real full charge",
                "Charge until full, let it rest for an hour, and read voltage and state of charge again.");
        low(
                Symptom.RESTING_VOLTAGE,
                "something still draws",
                "Current at the bank with everything off, clamp zeroed.",
                Symptom.BASE_DRAW);
        low(
                Symptom.RESTING_VOLTAGE,
                "a string or a cell is weak or open",
                "Voltage of each string by itself, and of its cells where the maker shows them.");
        high(
                Symptom.RESTING_VOLTAGE,
                "it was charged within the last hours and has not come to rest",
                "The same voltage again after an hour with everything off.");
        high(
                Symptom.RESTING_VOLTAGE,
                "the state of charge shown is wrong",
                "Charge until full, let it rest for an hour, and read voltage and state of charge again.");
        high(
                Symptom.BASE_DRAW,
                "an appliance was left on, or the inverter idles",
                "Current while fuses are pulled one by one, nothing charging.");
        high(
                Symptom.BASE_DRAW,
                "the clamp was not zeroed, or a shunt counts wrongly",
                "Clamp around no cable, then around the same cable turned over.");
        high(Symptom.INVERTER_IDLE, "something is plugged in", "Current with every socket empty.");
        high(Symptom.INVERTER_IDLE, "its saving mode is off", "Current with the saving mode switched on.");
        low(
                Symptom.INVERTER_IDLE,
                "its saving mode was on, or it was off",
                "Current with a lamp of 40 W on it: an inverter that is on shows that load.");
    }

    private static void loads() {
        high(
                Symptom.LOAD_CURRENT,
                "something else is on with it",
                "Current with this load off: it must be the base draw.",
                Symptom.BASE_DRAW);
        high(
                Symptom.LOAD_CURRENT,
                "the figure in the scenario is too low for it",
                "Its current on its own lead, against its label.");
        high(
                Symptom.LOAD_CURRENT,
                "it works too hard: a clogged filter, a closed vent, a stiff pump",
                "Its current with filter and vents open.");
        low(
                Symptom.LOAD_CURRENT,
                "it did not run at full power",
                "Its current once it has run for five minutes at its highest setting.");
        low(
                Symptom.LOAD_CURRENT,
                "its voltage is low because of a joint or a thin cable",
                "Voltage at its terminals and at the bank at the same moment.",
                Symptom.LOAD_DROP);
        low(
                Symptom.LOAD_CURRENT,
                "the figure in the scenario is too high for it",
                "Its current on its own lead, against its label.");
        low(
                Symptom.LOADED_VOLTAGE,
                "a joint on the bank is loose or dirty",
                "Millivolts from post to lug on every joint of the bank at the same current.",
                Symptom.JOINT_DROP);
        low(
                Symptom.LOADED_VOLTAGE,
                "the bank holds less charge than the monitor says",
                "Resting voltage after an hour, against the sheet.",
                Symptom.RESTING_VOLTAGE);
        low(
                Symptom.LOADED_VOLTAGE,
                "one of several strings carries nothing",
                "Current of each string at the same load.");
        high(
                Symptom.LOADED_VOLTAGE,
                "something charges: sun, hook-up or engine",
                "Current at the bank, with panels covered and hook-up out.");
        high(Symptom.LOAD_DROP, "a loose, dirty or badly crimped joint", JOINT_BY_JOINT);
        high(
                Symptom.LOAD_DROP,
                "a fuse holder, breaker or switch of too much resistance",
                "Millivolts over fuse holder, breaker and switch at the same current.");
        high(
                Symptom.LOAD_DROP,
                "the cable is too thin or longer than drawn",
                "Its cross-section and its length there and back, against the drawing.");
    }

    private static void factoryUnit() {
        low(
                Symptom.SYSTEM_VOLTAGE,
                "the vehicle's computer has lowered it: the start battery is content",
                "The same voltage with headlights on, and for ten minutes from a start.");
        low(Symptom.SYSTEM_VOLTAGE, "the alternator is overloaded at idle", "The same voltage at 1,800 rpm.");
        low(Symptom.SYSTEM_VOLTAGE, "a slack belt, or a fault of the alternator", "Belt tension; fault codes.");
        high(
                Symptom.SYSTEM_VOLTAGE,
                "the vehicle's computer has raised it: start battery low or cold, or overrun",
                "The same voltage after ten minutes at idle.");
        high(Symptom.SYSTEM_VOLTAGE, "a fault of its regulator", "The same voltage at 2,500 rpm; fault codes.");
        low(
                Symptom.CHARGER_INPUT,
                "a joint or the return path: loose, painted or on a daisy chain",
                "Millivolts over each joint of the charger's input, plus side and return by themselves.",
                Symptom.CHARGER_DROP);
        low(
                Symptom.CHARGER_INPUT,
                "the vehicle's voltage is low",
                "Voltage at the take-off point at the same moment.",
                Symptom.SYSTEM_VOLTAGE);
        high(
                Symptom.CHARGER_INPUT,
                "the charger draws less than predicted",
                "Its output current, and its state as it shows it.",
                Symptom.CHARGER_OUTPUT);
        high(Symptom.CHARGER_DROP, "a loose, painted or badly crimped joint, or a long return path", JOINT_BY_JOINT);
        high(
                Symptom.CHARGER_DROP,
                "the cable is too thin or longer than drawn",
                "Its cross-section and its length there and back, against the drawing.");
        low(
                Symptom.CHARGER_OUTPUT,
                "its input is too low: joint, return path or cable",
                "Voltage at its input under load, against the take-off point.",
                Symptom.CHARGER_DROP);
        low(
                Symptom.CHARGER_OUTPUT,
                "no run signal, or a limit in its settings",
                "Voltage at its signal terminal; its settings, against the sheet.");
        low(
                Symptom.CHARGER_OUTPUT,
                "it is hot and holds itself back",
                "Its output when cold, and its case temperature.");
        low(
                Symptom.CHARGER_OUTPUT,
                "the bank takes no more",
                "State of charge and voltage of the bank: near full the current falls.");
        high(
                Symptom.CHARGER_OUTPUT,
                "its setting, or its rating, is above the scenario's",
                "Its settings and its label, against the scenario.");
    }

    private static void secondAlternator() {
        low(
                Symptom.ALTERNATOR_COLD,
                "the belt slips",
                "Black dust, squeal, heat at the pulley; current at the same speed with half the output set.");
        low(
                Symptom.ALTERNATOR_COLD,
                "a joint or the sense wire: the regulator sees more voltage than the bank has",
                "Voltage at its terminals and at the bank at the same moment, and at the end of the sense wire.",
                Symptom.CABLE_DROP);
        low(
                Symptom.ALTERNATOR_COLD,
                "the regulator holds it back: its cap, its ramp, or the bank's signal",
                "Field in per cent, and the limit that the regulator names.");
        low(
                Symptom.ALTERNATOR_COLD,
                "the engine idles slower, or the pulley is larger, than the scenario says",
                "Rotor speed, or both pulleys with a rule; engine speed by diagnosis.");
        low(Symptom.ALTERNATOR_COLD, "a diode or a phase is out", "Ripple at the terminals with an AC volt range.");
        high(
                Symptom.ALTERNATOR_COLD,
                "the regulator's cap is higher than the scenario's",
                "The cap in the regulator's settings, against bank, belt and cable.");
        high(
                Symptom.ALTERNATOR_COLD,
                "the clamp also holds another cable",
                "Clamp on the alternator's own cable only, zeroed.");
        low(
                Symptom.ALTERNATOR_HOT,
                "a joint: it drops volts and makes heat",
                "Millivolts over each joint of the run at this current, before anything is replaced.",
                Symptom.CABLE_DROP);
        low(
                Symptom.ALTERNATOR_HOT,
                "it gave too little when cold already",
                "The cold reading at the same speed, against the sheet.",
                Symptom.ALTERNATOR_COLD);
        low(
                Symptom.ALTERNATOR_HOT,
                "it is hotter than predicted: no cool air reaches it",
                "Air temperature at its inlet, and its case, at the end of the soak.",
                Symptom.CASE_HEAT);
        low(
                Symptom.ALTERNATOR_HOT,
                "the regulator cuts back too early: its sensor sits in a hot place",
                "The sensor's reading against a thermometer on the case.");
        high(
                Symptom.ALTERNATOR_HOT,
                "the regulator does not cut back: sensor loose or not connected",
                "The sensor's reading against a thermometer on the case.",
                Symptom.CASE_HEAT);
        high(
                Symptom.ALTERNATOR_HOT,
                "it runs cooler than the scenario assumes",
                "Air temperature at its inlet; write it into the scenario.");
        high(
                Symptom.CASE_HEAT,
                "hot air stands around it: a shield or a duct is missing",
                "Air temperature at its inlet, bonnet closed and then open.");
        high(
                Symptom.CASE_HEAT,
                "the regulator does not cut back: sensor loose or not connected",
                "The sensor's reading against a thermometer on the case.",
                Symptom.ALTERNATOR_HOT);
        high(
                Symptom.CASE_HEAT,
                "the cap is too high for this speed",
                "Case temperature after another soak with the cap lowered by a fifth.");
        low(
                Symptom.CASE_HEAT,
                "it carries less current than predicted",
                "Its current at the same moment.",
                Symptom.ALTERNATOR_HOT);
        low(
                Symptom.CASE_HEAT,
                "the thermometer does not touch, or sees bare metal",
                "The same spot with matt tape on it.");
        high(
                Symptom.CHARGING_VOLTAGE,
                "a joint between alternator and bank, with the sense wire on its far side",
                "Voltage at alternator, sense point and bank posts at the same moment.",
                Symptom.CABLE_DROP);
        high(
                Symptom.CHARGING_VOLTAGE,
                "the set point is above the scenario's",
                "Set point in the regulator's settings, against the bank's data sheet.");
        high(
                Symptom.CHARGING_VOLTAGE,
                "the bank is fuller than the monitor says",
                "Resting voltage after an hour.",
                Symptom.RESTING_VOLTAGE);
        low(
                Symptom.CHARGING_VOLTAGE,
                "less current flows than predicted",
                "Current at the alternator at the same moment.",
                Symptom.ALTERNATOR_COLD);
        low(
                Symptom.CHARGING_VOLTAGE,
                "the bank holds less charge than the monitor says",
                "Resting voltage after an hour.",
                Symptom.RESTING_VOLTAGE);
    }

    private static void joints() {
        high(
                Symptom.CABLE_DROP,
                "a loose or dirty joint, a bad crimp, paint under a lug",
                JOINT_BY_JOINT,
                Symptom.JOINT_DROP);
        high(
                Symptom.CABLE_DROP,
                "the return path through engine strap and body",
                "Millivolts from the alternator's case to the bank's minus post.");
        high(
                Symptom.CABLE_DROP,
                "the breaker or fuse",
                "Millivolts over breaker and fuse at the same current.",
                Symptom.BREAKER_DROP);
        high(
                Symptom.CABLE_DROP,
                "the cable is too thin or longer than drawn",
                "Its cross-section and its length there and back, against the drawing.");
        high(
                Symptom.JOINT_DROP,
                "a loose nut, a washer under the lug, dirt or paint between the faces",
                "The same millivolts after cleaning and tightening to the maker's torque.");
        high(Symptom.JOINT_DROP, "a bad crimp", "Millivolts from the cable's copper to its lug.");
        high(
                Symptom.BREAKER_DROP,
                "its terminals are not tight",
                "Millivolts from cable lug to breaker stud on each side, after tightening to the maker's torque.",
                Symptom.JOINT_DROP);
        high(
                Symptom.BREAKER_DROP,
                "its contacts are worn, or it is of a poor make",
                "Millivolts from stud to stud with tight terminals: what is left is its contacts.");
        high(
                Symptom.JOINT_HEAT,
                "a joint that is not tight or not clean",
                "Millivolts over this joint and over its twin at the same current.",
                Symptom.JOINT_DROP);
        high(
                Symptom.JOINT_HEAT,
                "heat from beside it: exhaust, engine, a neighbour in the same box",
                "Air temperature one hand away from it.");
        high(
                Symptom.JOINT_HEAT,
                "the cable is too thin for this current and place. A bigger breaker would not cool it",
                "Temperature of the cable half a metre away from the joint.");
    }

    private static void bankLimits() {
        high(
                Symptom.PEAK_VOLTAGE,
                "the bank opens before the field goes off",
                "Order of the two on one record: warning line and bank current.");
        high(
                Symptom.PEAK_VOLTAGE,
                "the warning line does not reach the regulator",
                "Voltage of the warning line at the regulator while the maker's procedure is run.",
                Symptom.CHECK);
        high(
                Symptom.CUT_OUT,
                "a joint: the appliance that cuts sees less than the bank has",
                "Voltage at the appliance that cuts and at the bank at the same moment.",
                Symptom.LOAD_DROP);
        high(Symptom.CUT_OUT, "another setting than in the scenario", "The setting, in bank and in monitor.");
        low(Symptom.CUT_OUT, "another setting than in the scenario", "The setting, in bank and in monitor.");
        low(
                Symptom.CUT_OUT,
                "what should cut does not: by-passed, or wired before it",
                "Voltage after the cut-out switch once it is open.");
        low(Symptom.SETTING, "typed wrongly, or for another bank", "The setting once more, against the data sheet.");
        high(Symptom.SETTING, "typed wrongly, or for another bank", "The setting once more, against the data sheet.");
    }

    private static void sunAndShore() {
        low(
                Symptom.SOLAR,
                "the bank takes no more, or the controller holds its voltage",
                "The controller's state, with a large load on.");
        low(Symptom.SOLAR, "a shadow, or dirt", "Power after wiping, and with each panel covered in turn.");
        low(
                Symptom.SOLAR,
                "a string is open or reversed",
                "Open-circuit voltage and current of each string at the controller.");
        low(
                Symptom.SOLAR,
                "a joint, or thin cable, between panels and controller",
                "Voltage at the panels and at the controller at the same moment.");
        high(
                Symptom.SOLAR,
                "more light than was told: cloud edges, or a meter that was not in the plane of the panels",
                "Light in the plane of the panels again, at the same moment as the power.");
        high(Symptom.SOLAR, "more panel than the scenario says", "The labels of the panels.");
        low(
                Symptom.SHORE,
                "the hook-up's limit in the charger, or a low voltage of the hook-up",
                "Voltage at the charger's inlet under load, and its limit.");
        low(
                Symptom.SHORE,
                "the bank takes no more",
                "State of charge and voltage of the bank: near full the current falls.");
        high(Symptom.SHORE, "its setting, or its rating, is above the scenario's", "Its settings and its label.");
    }

    private static void living() {
        high(
                Symptom.COOLER_INPUT,
                "hot air returns to its condenser, or the condenser is dirty",
                "Air temperature at the condenser's inlet, against the air in the shade.");
        high(
                Symptom.COOLER_INPUT,
                "the scenario's input is too low for it",
                "Its input on its own lead, against its label.");
        low(
                Symptom.COOLER_INPUT,
                "it had reached its setting, or ran in a saving mode",
                "Its current five minutes after a start with the setting at the lowest.");
        low(
                Symptom.COOLER_INPUT,
                "it has stepped down because its voltage is low: a joint or thin cable",
                "Voltage at its terminals under load.",
                Symptom.LOADED_VOLTAGE);
        low(
                Symptom.COOLER_INPUT,
                "it has lost refrigerant",
                "Air temperature at its inlet and outlet.",
                Symptom.AIR_SPLIT);
        low(
                Symptom.AIR_SPLIT,
                "outlet air returns to the inlet, or the filter is wet or clogged",
                "The same two temperatures with the filter out and the shroud closed.");
        low(
                Symptom.AIR_SPLIT,
                "it does not run at full power, or has lost refrigerant",
                "Its current at the same moment.",
                Symptom.COOLER_INPUT);
        high(
                Symptom.AIR_SPLIT,
                "too little air flows: filter clogged, fan low",
                "The same two temperatures with the fan at its highest and the filter out.");
        high(
                Symptom.PULL_DOWN,
                "a door, a vent or a fan is open, or the sun shines in",
                "The same hour again, all shut, in the shade.");
        high(
                Symptom.PULL_DOWN,
                "the unit cools less than its rating",
                "Air temperature at its inlet and outlet.",
                Symptom.AIR_SPLIT);
        high(
                Symptom.PULL_DOWN,
                "less insulation than in the scenario",
                "Surface temperatures inside, point by point, against the air.");
        low(
                Symptom.PULL_DOWN,
                "the cabin was cooler at the start than the air outside",
                "Cabin temperature at the start.");
        high(
                Symptom.REFRIGERATOR,
                "its condenser breathes its own warm air",
                "Air temperature at its condenser's inlet, against the cabin.");
        high(
                Symptom.REFRIGERATOR,
                "it was filled with warm food, opened often, or set colder",
                "Its energy over another day, closed, with its inside temperature.");
        high(Symptom.REFRIGERATOR, "a door seal leaks", "A strip of paper in the closed door, all around.");
        low(
                Symptom.REFRIGERATOR,
                "the day was cooler than predicted for, or it was set warmer",
                "Mean cabin temperature of the day and its inside temperature.");
        high(
                Symptom.CARBON_MONOXIDE,
                "exhaust enters by an opening: door seals, cable glands, floor, roof fan",
                "The same reading with the roof fan off, then with each opening taped.");
        high(
                Symptom.CARBON_MONOXIDE,
                "the exhaust leaks under the floor",
                "The meter under the van along the pipe, from outside.");
    }
}
