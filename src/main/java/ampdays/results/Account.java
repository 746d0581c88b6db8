package ampdays.results;

/**
 * The accounts of the energy ledger. Sources are counted as energy leaves them (panels, hook-up, alternators), uses as
 * energy arrives, and everything between is a loss by name:
 * sources = uses + losses + change of store, every minute.
 */
public enum Account {
    SOLAR(Kind.SOURCE, "solar"),
    SHORE(Kind.SOURCE, "shore"),
    FACTORY_ALTERNATOR(Kind.SOURCE, "factory alternator"),
    SECOND_ALTERNATOR(Kind.SOURCE, "second alternator"),
    LOADS(Kind.USE, "loads"),
    COOLING(Kind.USE, "cooling"),
    REFRIGERATOR(Kind.USE, "refrigerator"),
    SOLAR_CONTROLLER(Kind.LOSS, "solar controller"),
    SHORE_CHARGER(Kind.LOSS, "shore charger"),
    FACTORY_CHARGER(Kind.LOSS, "DC-DC charger and its cable"),
    ALTERNATOR_CABLE(Kind.LOSS, "second alternator cable"),
    INVERTER(Kind.LOSS, "inverter"),
    BANK_RESISTANCE(Kind.LOSS, "bank resistance"),
    BANK_CHARGE(Kind.LOSS, "bank charge efficiency"),
    BANK_STANDBY(Kind.LOSS, "bank self-discharge and electronics"),
    STORED(Kind.STORE, "change of store"),
    /** Asked for and not delivered. */
    UNSERVED(Kind.MEMO, "unserved"),
    /** What the panels could have given and nothing could take. */
    CURTAILED(Kind.MEMO, "curtailed"),
    /** Throughput: the sum of all flows that the closing error is measured against. */
    THROUGHPUT(Kind.MEMO, "throughput");

    /** What an account is on the two sides of the ledger. */
    public enum Kind {
        SOURCE,
        USE,
        LOSS,
        STORE,
        MEMO
    }

    private final Kind kind;
    private final String label;

    Account(Kind kind, String label) {
        this.kind = kind;
        this.label = label;
    }

    public Kind kind() {
        return kind;
    }

    public String label() {
        return label;
    }
}
