package ampdays.battery;

/** A bank for tests: 100 Ah, 12 V, half full, 25 °C, with nothing that hides what is tested; a test changes one thing. */
final class Bank {
    private static final double BODY_WK = 1e-6;

    private final boolean leadAcid;
    private double capacityAh = 100;
    private int cells;
    private double ohm = 0.006;
    private double health = 1;
    private double chargeLimitA = 1000;
    private double dischargeLimitA = 1000;
    private double absorptionV = 14.4;
    private double tailC = 0.02;
    private double selfDischarge;
    private double startShare = 0.5;
    private double startC = 25;
    private double stepS = 60;
    private double heatWK = BODY_WK;
    private double efficiency = 1;
    private ChargeSteps steps;
    private double coldShare = 1;
    private boolean trips;
    private BankSpec.Strings strings = new BankSpec.Strings(1, 0);
    private OpenCircuit openCircuit = OpenCircuit.LITHIUM_IRON_PHOSPHATE;

    private Bank(boolean leadAcid) {
        this.leadAcid = leadAcid;
        this.cells = leadAcid ? 6 : 4;
    }

    static Bank lithium() {
        return new Bank(false);
    }

    static Bank leadAcid() {
        return new Bank(true);
    }

    Bank capacityAh(double value) {
        capacityAh = value;
        return this;
    }

    Bank straightCells(int count, double emptyV, double fullV) {
        cells = count;
        openCircuit = OpenCircuit.straight(emptyV / count, fullV / count);
        return this;
    }

    Bank ohm(double value) {
        ohm = value;
        return this;
    }

    Bank health(double value) {
        health = value;
        return this;
    }

    Bank chargeLimitA(double value) {
        chargeLimitA = value;
        return this;
    }

    Bank dischargeLimitA(double value) {
        dischargeLimitA = value;
        return this;
    }

    Bank absorptionV(double value) {
        absorptionV = value;
        return this;
    }

    Bank selfDischarge(double value) {
        selfDischarge = value;
        return this;
    }

    Bank startShare(double value) {
        startShare = value;
        return this;
    }

    Bank startC(double value) {
        startC = value;
        return this;
    }

    Bank stepS(double value) {
        stepS = value;
        return this;
    }

    Bank efficiency(double value) {
        efficiency = value;
        return this;
    }

    Bank steps(ChargeSteps value) {
        steps = value;
        return this;
    }

    Bank coldShare(double value) {
        coldShare = value;
        return this;
    }

    Bank heatWK(double value) {
        heatWK = value;
        return this;
    }

    Bank followsTheCabin() {
        heatWK = 1e9;
        return this;
    }

    Bank trips() {
        trips = true;
        return this;
    }

    Bank strings(int count, double linkOhm) {
        strings = new BankSpec.Strings(count, linkOhm);
        return this;
    }

    LithiumBattery battery() {
        ChargeSteps limits = steps == null ? ChargeSteps.PUBLISHED.times(0.5 * capacityAh) : steps;
        BankSpec.Lithium lithium = new BankSpec.Lithium(limits, 0.999, efficiency, coldShare);
        return new LithiumBattery(spec(lithium), lithium, openCircuit, startC, stepS);
    }

    LeadAcidBattery leadAcidBattery() {
        ChargeSteps limits = steps == null ? ChargeSteps.ANY_TEMPERATURE.times(0.2 * capacityAh) : steps;
        BankSpec.LeadAcid lead = new BankSpec.LeadAcid(20, 0.3, 1, limits, 13.8, -0.018);
        return new LeadAcidBattery(spec(lead), lead, startC, stepS);
    }

    private BankSpec spec(BankSpec.Chemistry chemistry) {
        return new BankSpec(
                capacityAh,
                cells,
                ohm,
                health,
                1,
                chargeLimitA,
                dischargeLimitA,
                absorptionV,
                tailC,
                selfDischarge,
                0,
                startShare,
                10_000,
                heatWK,
                new BankSpec.CutOut(0, 0, 0),
                new BankSpec.Protection(leadAcid ? -20 : 0, leadAcid ? 50 : 60, -20, 60, 3, trips, 120, false),
                strings,
                chemistry);
    }
}
