package ampdays.trip;

/** Where the people are and what they do. */
public enum People {
    /** In the living area, up. */
    AWAKE,
    /** In the living area, asleep. */
    ASLEEP,
    /** In the seats, riding. */
    ABOARD,
    /** Not in the vehicle. */
    AWAY
}
