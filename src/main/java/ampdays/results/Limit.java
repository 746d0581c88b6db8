package ampdays.results;

/** What caps the charging path in a minute; the one that caps it is the ruling limit. */
public enum Limit {
    ENGINE_OFF("engine off"),
    START_RAMP("start delay and ramp"),
    ROTOR_SPEED("rotor speed"),
    ALTERNATOR_HEAT("alternator heat"),
    BELT("belt"),
    REGULATOR_CAP("regulator cap"),
    CHARGER_RATING("charger rating"),
    CHARGER_HEAT("charger heat"),
    SHORE_CHARGER("shore charger"),
    /** Keeps sun out, but never rules the charging path: what it lets through comes on top of other sources. */
    SOLAR_CONTROLLER("solar controller"),
    CABLE("cable and voltage"),
    CHARGE_LIMIT("battery charge limit"),
    TOO_COLD("battery too cold"),
    ACCEPTANCE("acceptance near full"),
    FULL("battery full");

    private final String label;

    Limit(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
