package ampdays.load;

/** When a load may run, told by what the people and the vehicle do. */
public enum Occasion {
    ALWAYS,
    AWAKE,
    ASLEEP,
    ABOARD,
    AWAY,
    /** Somebody is in the vehicle: awake, asleep or aboard. */
    OCCUPIED,
    ENGINE,
    PARKED
}
