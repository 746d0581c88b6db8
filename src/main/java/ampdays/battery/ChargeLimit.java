package ampdays.battery;

/** Which of the bank's own limits caps its charging. */
public enum ChargeLimit {
    RATE,
    PROTECTION,
    TRIPPED,
    TOO_COLD,
    TOO_HOT,
    NEAR_FULL,
    FULL
}
