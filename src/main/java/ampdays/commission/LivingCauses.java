package ampdays.commission;

/** Why readings with the engine off deviate: bank, loads, sun, hook-up, cooling, refrigerator; and carbon monoxide. */
final class LivingCauses {
    private final CauseTable table;

    private LivingCauses(CauseTable table) {
        this.table = table;
    }

    static void addTo(CauseTable table) {
        LivingCauses causes = new LivingCauses(table);
        causes.atRest();
        causes.loads();
        causes.sunAndShore();
        causes.living();
    }

    private void atRest() {
        table.low(
                Symptom.RESTING_VOLTAGE,
                "the state of charge shown is wrong: the monitor was never synchronised at a real full charge",
                "Charge until full, let it rest for an hour, and read voltage and state of charge again.");
        table.low(
                Symptom.RESTING_VOLTAGE,
                "something still draws",
                "Current at the bank with everything off, clamp zeroed.",
                Symptom.BASE_DRAW);
        table.low(
                Symptom.RESTING_VOLTAGE,
                "a string or a cell is weak or open",
                "Voltage of each string by itself, and of its cells where the maker shows them.");
        table.high(
                Symptom.RESTING_VOLTAGE,
                "it was charged within the last hours and has not come to rest",
                "The same voltage again after an hour with everything off.");
        table.high(
                Symptom.RESTING_VOLTAGE,
                "the state of charge shown is wrong",
                "Charge until full, let it rest for an hour, and read voltage and state of charge again.");
        table.high(
                Symptom.BASE_DRAW,
                "an appliance was left on, or the inverter idles",
                "Current while fuses are pulled one by one, nothing charging.");
        table.high(
                Symptom.BASE_DRAW,
                "the clamp was not zeroed, or a shunt counts wrongly",
                "Clamp around no cable, then around the same cable turned over.");
        table.high(Symptom.INVERTER_IDLE, "something is plugged in", "Current with every socket empty.");
        table.high(Symptom.INVERTER_IDLE, "its saving mode is off", "Current with the saving mode switched on.");
        table.low(
                Symptom.INVERTER_IDLE,
                "its saving mode was on, or it was off",
                "Current with a lamp of 40 W on it: an inverter that is on shows that load.");
    }

    private void loads() {
        table.high(
                Symptom.LOAD_CURRENT,
                "something else is on with it",
                "Current with this load off: it must be the base draw.",
                Symptom.BASE_DRAW);
        table.high(
                Symptom.LOAD_CURRENT,
                "the figure in the scenario is too low for it",
                "Its current on its own lead, against its label.");
        table.high(
                Symptom.LOAD_CURRENT,
                "it works too hard: a clogged filter, a closed vent, a stiff pump",
                "Its current with filter and vents open.");
        table.low(
                Symptom.LOAD_CURRENT,
                "it did not run at full power",
                "Its current once it has run for five minutes at its highest setting.");
        table.low(
                Symptom.LOAD_CURRENT,
                "its voltage is low because of a joint or a thin cable",
                "Voltage at its terminals and at the bank at the same moment.",
                Symptom.LOAD_DROP);
        table.low(
                Symptom.LOAD_CURRENT,
                "the figure in the scenario is too high for it",
                "Its current on its own lead, against its label.");
        table.low(
                Symptom.LOADED_VOLTAGE,
                "a joint on the bank is loose or dirty",
                "Millivolts from post to lug on every joint of the bank at the same current.",
                Symptom.JOINT_DROP);
        table.low(
                Symptom.LOADED_VOLTAGE,
                "the bank holds less charge than the monitor says",
                "Resting voltage after an hour, against the sheet.",
                Symptom.RESTING_VOLTAGE);
        table.low(
                Symptom.LOADED_VOLTAGE,
                "one of several strings carries nothing",
                "Current of each string at the same load.");
        table.high(
                Symptom.LOADED_VOLTAGE,
                "something charges: sun, hook-up or engine",
                "Current at the bank, with panels covered and hook-up out.");
        table.high(Symptom.LOAD_DROP, "a loose, dirty or badly crimped joint", CauseTable.JOINT_BY_JOINT);
        table.high(
                Symptom.LOAD_DROP,
                "a fuse holder, breaker or switch of too much resistance",
                "Millivolts over fuse holder, breaker and switch at the same current.");
        table.high(
                Symptom.LOAD_DROP,
                "the cable is too thin or longer than drawn",
                "Its cross-section and its length there and back, against the drawing.");
    }

    private void sunAndShore() {
        table.low(
                Symptom.SOLAR,
                "the bank takes no more, or the controller holds its voltage",
                "The controller's state, with a large load on.");
        table.low(Symptom.SOLAR, "a shadow, or dirt", "Power after wiping, and with each panel covered in turn.");
        table.low(
                Symptom.SOLAR,
                "a string is open or reversed",
                "Open-circuit voltage and current of each string at the controller.");
        table.low(
                Symptom.SOLAR,
                "a joint, or thin cable, between panels and controller",
                "Voltage at the panels and at the controller at the same moment.");
        table.high(
                Symptom.SOLAR,
                "more light than was told: cloud edges, or a meter that was not in the plane of the panels",
                "Light in the plane of the panels again, at the same moment as the power.");
        table.high(Symptom.SOLAR, "more panel than the scenario says", "The labels of the panels.");
        table.low(
                Symptom.SHORE,
                "the hook-up's limit in the charger, or a low voltage of the hook-up",
                "Voltage at the charger's inlet under load, and its limit.");
        table.low(
                Symptom.SHORE,
                "the bank takes no more",
                "State of charge and voltage of the bank: near full the current falls.");
        table.high(Symptom.SHORE, "its setting, or its rating, is above the scenario's", "Its settings and its label.");
    }

    private void living() {
        table.high(
                Symptom.COOLER_INPUT,
                "hot air returns to its condenser, or the condenser is dirty",
                "Air temperature at the condenser's inlet, against the air in the shade.");
        table.high(
                Symptom.COOLER_INPUT,
                "the scenario's input is too low for it",
                "Its input on its own lead, against its label.");
        table.low(
                Symptom.COOLER_INPUT,
                "it had reached its setting, or ran in a saving mode",
                "Its current five minutes after a start with the setting at the lowest.");
        table.low(
                Symptom.COOLER_INPUT,
                "it has stepped down because its voltage is low: a joint or thin cable",
                "Voltage at its terminals under load.",
                Symptom.LOADED_VOLTAGE);
        table.low(
                Symptom.COOLER_INPUT,
                "it has lost refrigerant",
                "Air temperature at its inlet and outlet.",
                Symptom.AIR_SPLIT);
        table.low(
                Symptom.AIR_SPLIT,
                "outlet air returns to the inlet, or the filter is wet or clogged",
                "The same two temperatures with the filter out and the shroud closed.");
        table.low(
                Symptom.AIR_SPLIT,
                "it does not run at full power, or has lost refrigerant",
                "Its current at the same moment.",
                Symptom.COOLER_INPUT);
        table.high(
                Symptom.AIR_SPLIT,
                "too little air flows: filter clogged, fan low",
                "The same two temperatures with the fan at its highest and the filter out.");
        table.high(
                Symptom.PULL_DOWN,
                "a door, a vent or a fan is open, or the sun shines in",
                "The same hour again, all shut, in the shade.");
        table.high(
                Symptom.PULL_DOWN,
                "the unit cools less than its rating",
                "Air temperature at its inlet and outlet.",
                Symptom.AIR_SPLIT);
        table.high(
                Symptom.PULL_DOWN,
                "less insulation than in the scenario",
                "Surface temperatures inside, point by point, against the air.");
        table.low(
                Symptom.PULL_DOWN,
                "the cabin was cooler at the start than the air outside",
                "Cabin temperature at the start.");
        table.high(
                Symptom.REFRIGERATOR,
                "its condenser breathes its own warm air",
                "Air temperature at its condenser's inlet, against the cabin.");
        table.high(
                Symptom.REFRIGERATOR,
                "it was filled with warm food, opened often, or set colder",
                "Its energy over another day, closed, with its inside temperature.");
        table.high(Symptom.REFRIGERATOR, "a door seal leaks", "A strip of paper in the closed door, all around.");
        table.low(
                Symptom.REFRIGERATOR,
                "the day was cooler than predicted for, or it was set warmer",
                "Mean cabin temperature of the day and its inside temperature.");
        table.high(
                Symptom.CARBON_MONOXIDE,
                "exhaust enters by an opening: door seals, cable glands, floor, roof fan",
                "The same reading with the roof fan off, then with each opening taped.");
        table.high(
                Symptom.CARBON_MONOXIDE,
                "the exhaust leaks under the floor",
                "The meter under the van along the pipe, from outside.");
    }
}
