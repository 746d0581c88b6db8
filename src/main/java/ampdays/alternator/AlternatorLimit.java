package ampdays.alternator;

/** What keeps an alternator from giving more current. */
public enum AlternatorLimit {
    ROTOR_SPEED,
    BELT,
    REGULATOR_CAP,
    HEAT,
    START_RAMP
}
