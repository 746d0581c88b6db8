package ampdays.scenario;

/**
 * The parts of a design that a scenario prices and weighs: bank, panels, chargers, second alternator, foam and insulated
 * covers. All of each counts, also what the base design has. Test: {@code PartsTest}.
 *
 * @param price in the scenario's currency
 * @param massKg with fittings
 * @param panelM2 roof that the panels cover
 */
public record Parts(double price, double massKg, double panelM2) {
    private static final double FOAM_STEP_M = 0.025;

    /** The parts of a design. */
    public static Parts of(Values v) {
        double bankKWh = BatterySection.capacityAh(v) * BatterySection.nominalV(v) / 1000;
        double solarW = amount(v, "solar", "power");
        double chargersA = amount(v, "factory-alternator", "charger") + amount(v, "shore-charger", "rated");
        double secondA = amount(v, "second-alternator", "rated");
        double foamSteps = v.number("cabin.insulation") / FOAM_STEP_M;
        double covers = v.word("cabin.covers").equals("insulated") ? 1 : 0;
        double price = bankKWh * v.number(PriceSection.BATTERY)
                + solarW / 100 * v.number(PriceSection.SOLAR)
                + chargersA * v.number(PriceSection.CHARGER)
                + secondA * v.number(PriceSection.SECOND_ALTERNATOR)
                + foamSteps * v.number(PriceSection.INSULATION)
                + covers * v.number(PriceSection.COVERS);
        double massKg = bankKWh * v.number(MassSection.BATTERY)
                + solarW / 100 * v.number(MassSection.SOLAR)
                + chargersA * v.number(MassSection.CHARGER)
                + secondA * v.number(MassSection.SECOND_ALTERNATOR)
                + foamSteps * v.number(MassSection.INSULATION)
                + covers * v.number(MassSection.COVERS);
        double panelM2 = solarW == 0 ? 0 : solarW / (1000 * v.number("solar.panel-efficiency"));
        return new Parts(price, massKg, panelM2);
    }

    private static double amount(Values v, String section, String key) {
        double number = v.has(section) ? v.number(section + "." + key) : 0;
        return Double.isNaN(number) ? 0 : number;
    }

    /** The word behind prices. */
    public static String currency(Values v) {
        return v.word(PriceSection.CURRENCY);
    }

    /**
     * What a scenario allows them.
     *
     * @param budget in its currency; not a number without a limit, like the payload
     * @param payloadKg mass of the parts
     * @param roofM2 roof of the van
     */
    public record Limits(double budget, double payloadKg, double roofM2) {
        public static Limits of(Values v) {
            return new Limits(v.number(PriceSection.BUDGET), v.number(MassSection.PAYLOAD), v.number("cabin.roof"));
        }
    }
}
