package ampdays.commission;

/** Why readings with the engine on deviate: alternators, charger, joints, protection. */
final class EngineCauses {
    private final CauseTable table;

    private EngineCauses(CauseTable table) {
        this.table = table;
    }

    static void addTo(CauseTable table) {
        EngineCauses causes = new EngineCauses(table);
        causes.factoryUnit();
        causes.secondAlternator();
        causes.joints();
        causes.bankLimits();
    }

    private void factoryUnit() {
        table.low(
                Symptom.SYSTEM_VOLTAGE,
                "the vehicle's computer has lowered it: the start battery is content",
                "The same voltage with headlights on, and for ten minutes from a start.");
        table.low(Symptom.SYSTEM_VOLTAGE, "the alternator is overloaded at idle", "The same voltage at 1,800 rpm.");
        table.low(Symptom.SYSTEM_VOLTAGE, "a slack belt, or a fault of the alternator", "Belt tension; fault codes.");
        table.high(
                Symptom.SYSTEM_VOLTAGE,
                "the vehicle's computer has raised it: start battery low or cold, or overrun",
                "The same voltage after ten minutes at idle.");
        table.high(Symptom.SYSTEM_VOLTAGE, "a fault of its regulator", "The same voltage at 2,500 rpm; fault codes.");
        table.low(
                Symptom.CHARGER_INPUT,
                "a joint or the return path: loose, painted or on a daisy chain",
                "Millivolts over each joint of the charger's input, plus side and return by themselves.",
                Symptom.CHARGER_DROP);
        table.low(
                Symptom.CHARGER_INPUT,
                "the vehicle's voltage is low",
                "Voltage at the take-off point at the same moment.",
                Symptom.SYSTEM_VOLTAGE);
        table.high(
                Symptom.CHARGER_INPUT,
                "the charger draws less than predicted",
                "Its output current, and its state as it shows it.",
                Symptom.CHARGER_OUTPUT);
        table.high(
                Symptom.CHARGER_DROP,
                "a loose, painted or badly crimped joint, or a long return path",
                CauseTable.JOINT_BY_JOINT);
        table.high(
                Symptom.CHARGER_DROP,
                "the cable is too thin or longer than drawn",
                "Its cross-section and its length there and back, against the drawing.");
        table.low(
                Symptom.CHARGER_OUTPUT,
                "its input is too low: joint, return path or cable",
                "Voltage at its input under load, against the take-off point.",
                Symptom.CHARGER_DROP);
        table.low(
                Symptom.CHARGER_OUTPUT,
                "no run signal, or a limit in its settings",
                "Voltage at its signal terminal; its settings, against the sheet.");
        table.low(
                Symptom.CHARGER_OUTPUT,
                "it is hot and holds itself back",
                "Its output when cold, and its case temperature.");
        table.low(
                Symptom.CHARGER_OUTPUT,
                "the bank takes no more",
                "State of charge and voltage of the bank: near full the current falls.");
        table.high(
                Symptom.CHARGER_OUTPUT,
                "its setting, or its rating, is above the scenario's",
                "Its settings and its label, against the scenario.");
    }

    private void secondAlternator() {
        table.low(
                Symptom.ALTERNATOR_COLD,
                "the belt slips",
                "Black dust, squeal, heat at the pulley; current at the same speed with half the output set.");
        table.low(
                Symptom.ALTERNATOR_COLD,
                "a joint or the sense wire: the regulator sees more voltage than the bank has",
                "Voltage at its terminals and at the bank at the same moment, and at the end of the sense wire.",
                Symptom.CABLE_DROP);
        table.low(
                Symptom.ALTERNATOR_COLD,
                "the regulator holds it back: its cap, its ramp, or the bank's signal",
                "Field in per cent, and the limit that the regulator names.");
        table.low(
                Symptom.ALTERNATOR_COLD,
                "the engine idles slower, or the pulley is larger, than the scenario says",
                "Rotor speed, or both pulleys with a rule; engine speed by diagnosis.");
        table.low(
                Symptom.ALTERNATOR_COLD, "a diode or a phase is out", "Ripple at the terminals with an AC volt range.");
        table.high(
                Symptom.ALTERNATOR_COLD,
                "the regulator's cap is higher than the scenario's",
                "The cap in the regulator's settings, against bank, belt and cable.");
        table.high(
                Symptom.ALTERNATOR_COLD,
                "the clamp also holds another cable",
                "Clamp on the alternator's own cable only, zeroed.");
        table.low(
                Symptom.ALTERNATOR_HOT,
                "a joint: it drops volts and makes heat",
                "Millivolts over each joint of the run at this current, before anything is replaced.",
                Symptom.CABLE_DROP);
        table.low(
                Symptom.ALTERNATOR_HOT,
                "it gave too little when cold already",
                "The cold reading at the same speed, against the sheet.",
                Symptom.ALTERNATOR_COLD);
        table.low(
                Symptom.ALTERNATOR_HOT,
                "it is hotter than predicted: no cool air reaches it",
                "Air temperature at its inlet, and its case, at the end of the soak.",
                Symptom.CASE_HEAT);
        table.low(
                Symptom.ALTERNATOR_HOT,
                "the regulator cuts back too early: its sensor sits in a hot place",
                "The sensor's reading against a thermometer on the case.");
        table.high(
                Symptom.ALTERNATOR_HOT,
                "the regulator does not cut back: sensor loose or not connected",
                "The sensor's reading against a thermometer on the case.",
                Symptom.CASE_HEAT);
        table.high(
                Symptom.ALTERNATOR_HOT,
                "it runs cooler than the scenario assumes",
                "Air temperature at its inlet; write it into the scenario.");
        table.high(
                Symptom.CASE_HEAT,
                "hot air stands around it: a shield or a duct is missing",
                "Air temperature at its inlet, bonnet closed and then open.");
        table.high(
                Symptom.CASE_HEAT,
                "the regulator does not cut back: sensor loose or not connected",
                "The sensor's reading against a thermometer on the case.",
                Symptom.ALTERNATOR_HOT);
        table.high(
                Symptom.CASE_HEAT,
                "the cap is too high for this speed",
                "Case temperature after another soak with the cap lowered by a fifth.");
        table.low(
                Symptom.CASE_HEAT,
                "it carries less current than predicted",
                "Its current at the same moment.",
                Symptom.ALTERNATOR_HOT);
        table.low(
                Symptom.CASE_HEAT,
                "the thermometer does not touch, or sees bare metal",
                "The same spot with matt tape on it.");
        table.high(
                Symptom.CHARGING_VOLTAGE,
                "a joint between alternator and bank, with the sense wire on its far side",
                "Voltage at alternator, sense point and bank posts at the same moment.",
                Symptom.CABLE_DROP);
        table.high(
                Symptom.CHARGING_VOLTAGE,
                "the set point is above the scenario's",
                "Set point in the regulator's settings, against the bank's data sheet.");
        table.high(
                Symptom.CHARGING_VOLTAGE,
                "the bank is fuller than the monitor says",
                "Resting voltage after an hour.",
                Symptom.RESTING_VOLTAGE);
        table.low(
                Symptom.CHARGING_VOLTAGE,
                "less current flows than predicted",
                "Current at the alternator at the same moment.",
                Symptom.ALTERNATOR_COLD);
        table.low(
                Symptom.CHARGING_VOLTAGE,
                "the bank holds less charge than the monitor says",
                "Resting voltage after an hour.",
                Symptom.RESTING_VOLTAGE);
    }

    private void joints() {
        table.high(
                Symptom.CABLE_DROP,
                "a loose or dirty joint, a bad crimp, paint under a lug",
                CauseTable.JOINT_BY_JOINT,
                Symptom.JOINT_DROP);
        table.high(
                Symptom.CABLE_DROP,
                "the return path through engine strap and body",
                "Millivolts from the alternator's case to the bank's minus post.");
        table.high(
                Symptom.CABLE_DROP,
                "the breaker or fuse",
                "Millivolts over breaker and fuse at the same current.",
                Symptom.BREAKER_DROP);
        table.high(
                Symptom.CABLE_DROP,
                "the cable is too thin or longer than drawn",
                "Its cross-section and its length there and back, against the drawing.");
        table.high(
                Symptom.JOINT_DROP,
                "a loose nut, a washer under the lug, dirt or paint between the faces",
                "The same millivolts after cleaning and tightening to the maker's torque.");
        table.high(Symptom.JOINT_DROP, "a bad crimp", "Millivolts from the cable's copper to its lug.");
        table.high(
                Symptom.BREAKER_DROP,
                "its terminals are not tight",
                "Millivolts from cable lug to breaker stud on each side, after tightening to the maker's torque.",
                Symptom.JOINT_DROP);
        table.high(
                Symptom.BREAKER_DROP,
                "its contacts are worn, or it is of a poor make",
                "Millivolts from stud to stud with tight terminals: what is left is its contacts.");
        table.high(
                Symptom.JOINT_HEAT,
                "a joint that is not tight or not clean",
                "Millivolts over this joint and over its twin at the same current.",
                Symptom.JOINT_DROP);
        table.high(
                Symptom.JOINT_HEAT,
                "heat from beside it: exhaust, engine, a neighbour in the same box",
                "Air temperature one hand away from it.");
        table.high(
                Symptom.JOINT_HEAT,
                "the cable is too thin for this current and place. A bigger breaker would not cool it",
                "Temperature of the cable half a metre away from the joint.");
    }

    private void bankLimits() {
        table.high(
                Symptom.PEAK_VOLTAGE,
                "the bank opens before the field goes off",
                "Order of the two on one record: warning line and bank current.");
        table.high(
                Symptom.PEAK_VOLTAGE,
                "the warning line does not reach the regulator",
                "Voltage of the warning line at the regulator while the maker's procedure is run.",
                Symptom.CHECK);
        table.high(
                Symptom.CUT_OUT,
                "a joint: the appliance that cuts sees less than the bank has",
                "Voltage at the appliance that cuts and at the bank at the same moment.",
                Symptom.LOAD_DROP);
        table.high(Symptom.CUT_OUT, "another setting than in the scenario", "The setting, in bank and in monitor.");
        table.low(Symptom.CUT_OUT, "another setting than in the scenario", "The setting, in bank and in monitor.");
        table.low(
                Symptom.CUT_OUT,
                "what should cut does not: by-passed, or wired before it",
                "Voltage after the cut-out switch once it is open.");
        table.low(
                Symptom.SETTING,
                "typed wrongly, or for another bank",
                "The setting once more, against the data sheet.");
        table.high(
                Symptom.SETTING,
                "typed wrongly, or for another bank",
                "The setting once more, against the data sheet.");
    }
}
