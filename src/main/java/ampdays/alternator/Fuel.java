package ampdays.alternator;

/**
 * Fuel for effective power, litres per mechanical kWh: Commission Implementing Decision (EU) 2017/785, annex, as
 * carried on in (EU) 2020/728. Reference: AlternatorPhysicsTest.
 */
public enum Fuel {
    PETROL(0.264),
    PETROL_TURBO(0.280),
    DIESEL(0.220),
    LPG(0.342),
    LPG_TURBO(0.363);

    private final double litresPerKWh;

    Fuel(double litresPerKWh) {
        this.litresPerKWh = litresPerKWh;
    }

    public double litresPerKWh() {
        return litresPerKWh;
    }
}
