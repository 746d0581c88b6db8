package ampdays.results;

/** Every quantity that can be recorded minute by minute, described once: headings, axes and labels read it. */
public enum Channel {
    STATE_OF_CHARGE("state of charge", "SoC", "%", 2),
    BUS_VOLTAGE("bus voltage", "V", "V", 3),
    BANK_CURRENT("bank current", "I", "A", 2),
    BANK_TEMPERATURE("bank temperature", "Tb", "°C", 1),
    SOLAR_POSSIBLE("solar possible", "Psp", "W", 1),
    SOLAR("solar", "Ps", "W", 1),
    SHORE("shore", "Ph", "W", 1),
    FACTORY_ALTERNATOR("factory alternator", "Pf", "W", 1),
    SECOND_ALTERNATOR("second alternator", "P2", "W", 1),
    LOADS("loads", "Pl", "W", 1),
    COOLING("cooling", "Pc", "W", 1),
    REFRIGERATOR("refrigerator", "Pr", "W", 1),
    LOSSES("losses", "Pv", "W", 1),
    UNSERVED("unserved", "Pu", "W", 1),
    CURTAILED("curtailed", "Pk", "W", 1),
    OUTSIDE_AIR("outside air", "To", "°C", 1),
    CABIN_AIR("cabin air", "Ta", "°C", 2),
    CABIN_MASS("cabin mass", "Tm", "°C", 2),
    SECOND_CASE("second alternator case", "Tc", "°C", 1),
    FACTORY_CASE("factory alternator case", "Tf", "°C", 1),
    SECOND_WINDING("second alternator winding", "Tcw", "°C", 1),
    FACTORY_WINDING("factory alternator winding", "Tfw", "°C", 1),
    SECOND_CURRENT("second alternator current", "I2", "A", 1),
    FACTORY_CURRENT("factory alternator current", "If", "A", 1),
    RULING_LIMIT("ruling limit", "lim", "", 0),
    VEHICLE("vehicle", "veh", "", 0),
    PEOPLE("people", "ppl", "", 0);

    private final String label;
    private final String symbol;
    private final String unit;
    private final int decimals;

    Channel(String label, String symbol, String unit, int decimals) {
        this.label = label;
        this.symbol = symbol;
        this.unit = unit;
        this.decimals = decimals;
    }

    public String label() {
        return label;
    }

    public String symbol() {
        return symbol;
    }

    /** Unit as printed; empty when the value is the place of a word in its enumeration. */
    public String unit() {
        return unit;
    }

    public int decimals() {
        return decimals;
    }
}
