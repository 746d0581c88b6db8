package ampdays.commission;

/** What kind of reading it is: readings of one kind deviate for the same reasons. */
public enum Symptom {
    CHECK,
    RESTING_VOLTAGE,
    BASE_DRAW,
    INVERTER_IDLE,
    LOAD_CURRENT,
    LOADED_VOLTAGE,
    LOAD_DROP,
    SYSTEM_VOLTAGE,
    CHARGER_INPUT,
    CHARGER_DROP,
    CHARGER_OUTPUT,
    ALTERNATOR_COLD,
    ALTERNATOR_HOT,
    CHARGING_VOLTAGE,
    CABLE_DROP,
    CASE_HEAT,
    JOINT_DROP,
    BREAKER_DROP,
    JOINT_HEAT,
    PEAK_VOLTAGE,
    CUT_OUT,
    SOLAR,
    SHORE,
    COOLER_INPUT,
    AIR_SPLIT,
    PULL_DOWN,
    REFRIGERATOR,
    CARBON_MONOXIDE,
    SETTING
}
