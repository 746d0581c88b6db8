package ampdays.results;

/** What a circuit is measured against, with the source by name. Codes are named only: they are not reproduced here. */
public enum WiringRule {
    AMPACITY("conductor overloaded", "33 CFR 183.425 table 5, corrected for air and bundle"),
    DROP("voltage drop", "ABYC E-11 and ISO 13297 (3 % and 10 %)"),
    UNPROTECTED("no fuse or breaker", "33 CFR 183.455"),
    WRONG_END("protection at the wrong end", "33 CFR 183.455, ABYC E-11"),
    TOO_SMALL("protection small for its continuous current", "NEC 210.19 and 215.2 (125 %)"),
    TOO_LARGE("protection large for its conductor", "33 CFR 183.455 and 183.425"),
    NO_SIZE("no size fits", "NEC 215.2 against 33 CFR 183.425"),
    HOLD("protection may open", "makers' temperature curves of breakers and fuses"),
    INTERRUPT("short circuit beyond the interrupt rating", "ABYC E-11"),
    WITHSTAND("conductor does not stand a short", "IEC 60364-4-43"),
    JOINT("hot joint", "common practice, 30 K; insulation rating"),
    DISTANCE("protection far from its source", "33 CFR 183.455, ABYC E-11"),
    ENGINE_GROUND("return through engine strap and body", "common practice; a supplier's bulletin"),
    FIELD_OFF("may be opened while it charges", "ISO 16750-2 (load dump); common practice"),
    CHARGE_LIMIT("alternator beyond the bank's charge limit", "the bank's limits in the scenario"),
    SIMULATED_CABLE("simulated with another cable", "the scenario itself");

    private final String title;
    private final String source;

    WiringRule(String title, String source) {
        this.title = title;
        this.source = source;
    }

    public String title() {
        return title;
    }

    public String source() {
        return source;
    }
}
