package ampdays.alternator;

/** What the engine does, as far as alternators and the air around them feel it. */
public enum EngineState {
    STOPPED,
    IDLE,
    FAST_IDLE,
    TOWN,
    HIGHWAY
}
