package ampdays.battery;

import ampdays.heat.OneNodeStep;

/**
 * The house bank during one run: state of charge, temperature, protection. One run, one thread.
 *
 * <p>A step is {@link #open} (what can it give and take now), then, once the bus is solved, {@link #settle}.
 */
public final class Battery {
    private static final double HOURS_A_MONTH = 720;
    private static final double CHARGE_AGAIN_C = 3;
    private static final double RECONNECT_WAIT_S = 600;

    private final BankSpec spec;
    private final double stepS;

    /** Current that fills the empty bank in one step, A. */
    private final double fullA;

    private final double driftOhmPerV;
    private final double perEfficiency;
    private final double standbyA;
    private final double standbyShare;
    private final OneNodeStep heat;
    private double soc;
    private double temperatureC;
    private boolean tooCold;
    private boolean loadsCut;
    private double sinceCutS;

    private double emfV;
    private double ohmicOhm;
    private double driftOhm;
    private double chargeMaxA;
    private double dischargeMaxA;
    private ChargeLimit chargeLimit = ChargeLimit.RATE;

    private double storedW;
    private double resistanceW;
    private double chargeLossW;
    private double standbyW;

    public Battery(BankSpec spec, double startC, double stepS) {
        this.spec = spec;
        this.stepS = stepS;
        this.fullA = spec.capacityAh() * 3600 / stepS;
        this.standbyA = spec.electronicsA() + spec.capacityAh() * spec.selfDischargePerMonth() / HOURS_A_MONTH;
        this.driftOhmPerV = spec.seriesCells() * 0.5 / fullA;
        this.perEfficiency = 1 / spec.coulombicEfficiency();
        this.standbyShare = standbyA / fullA;
        this.heat = new OneNodeStep(spec.heatJK(), spec.heatWK(), stepS);
        this.soc = spec.startShare();
        this.temperatureC = startC;
        this.loadsCut = soc <= spec.cutOutShare();
    }

    /** Works out what the bank can give and take in the step that begins. */
    public void open() {
        emfV = spec.seriesCells() * OpenCircuit.cellV(soc, temperatureC);
        ohmicOhm = spec.resistanceOhm() * BankPhysics.resistanceFactor(temperatureC);
        driftOhm = OpenCircuit.slopeV(soc, temperatureC) * driftOhmPerV;
        tooCold = tooCold ? temperatureC < CHARGE_AGAIN_C : temperatureC < 0;
        openCharging();
        double leftA = soc * fullA - standbyA;
        dischargeMaxA = leftA < spec.dischargeLimitA() ? leftA : spec.dischargeLimitA();
        double halfOhm = 2 * (ohmicOhm + driftOhm);
        if (dischargeMaxA * halfOhm > emfV) {
            dischargeMaxA = emfV / halfOhm;
        }
        dischargeMaxA = dischargeMaxA > 0 ? dischargeMaxA : 0;
    }

    private void openCharging() {
        double share = tooCold ? 0 : BankPhysics.chargeShare(temperatureC);
        double rateA = spec.chargeC() * spec.capacityAh() * share;
        rateA = rateA < spec.chargeLimitA() ? rateA : spec.chargeLimitA();
        ChargeLimit limit = share > 0 ? ChargeLimit.RATE : tooCold ? ChargeLimit.TOO_COLD : ChargeLimit.TOO_HOT;
        double nearA = BankPhysics.taperA(soc, rateA, spec.tailC() * spec.capacityAh(), spec.taperFromShare());
        double aboveV = spec.absorptionV() - emfV;
        double busOhm = ohmicOhm + driftOhm;
        if (nearA * busOhm > aboveV) {
            nearA = aboveV > 0 ? aboveV / busOhm : 0;
        }
        if (nearA < rateA) {
            limit = ChargeLimit.NEAR_FULL;
        }
        double roomA = ((1 - soc) * fullA + standbyA) * perEfficiency;
        if (roomA < nearA) {
            limit = ChargeLimit.FULL;
            nearA = roomA;
        }
        if (chargeLimit != limit) {
            chargeLimit = limit;
        }
        chargeMaxA = nearA;
    }

    /**
     * Takes the step's current.
     *
     * @param currentA into the bank, A, within what {@link #open} offered
     * @param busV bus voltage, V
     * @param cabinC air around the bank, °C
     */
    public void settle(double currentA, double busV, double cabinC) {
        double midV = emfV + driftOhm * currentA;
        double keptA = currentA > 0 ? currentA * spec.coulombicEfficiency() : currentA;
        double charged = soc + keptA / fullA;
        double drained = standbyShare < charged ? standbyShare : charged > 0 ? charged : 0;
        double next = charged - drained;
        soc = next < 0 ? 0 : next > 1 ? 1 : next;

        double standbyNowA = drained * fullA;
        storedW = midV * (keptA - standbyNowA);
        resistanceW = ohmicOhm * currentA * currentA;
        chargeLossW = midV * (currentA - keptA);
        standbyW = midV * standbyNowA;
        temperatureC = heat.nextC(temperatureC, cabinC, heatW());

        sinceCutS += stepS;
        if (loadsCut) {
            loadsCut = soc < spec.reconnectShare() || sinceCutS < RECONNECT_WAIT_S;
        } else if (soc <= spec.cutOutShare() || !(busV >= spec.cutOutV())) {
            loadsCut = true;
            sinceCutS = 0;
        }
    }

    public double soc() {
        return soc;
    }

    public double temperatureC() {
        return temperatureC;
    }

    /** Whether the loads are cut off until the bank has recovered. */
    public boolean loadsCut() {
        return loadsCut;
    }

    /** Open-circuit voltage at the start of the step, V. */
    public double emfV() {
        return emfV;
    }

    /** Resistance that the bus sees, half a step's drift of the open-circuit voltage in it, Ω. */
    public double busOhm() {
        return ohmicOhm + driftOhm;
    }

    public double chargeMaxA() {
        return chargeMaxA;
    }

    public double dischargeMaxA() {
        return dischargeMaxA;
    }

    public ChargeLimit chargeLimit() {
        return chargeLimit;
    }

    /** Change of store in the last step, W. */
    public double storedW() {
        return storedW;
    }

    /** Lost in its resistance in the last step, W. */
    public double resistanceW() {
        return resistanceW;
    }

    /** Lost to charge efficiency in the last step, W. */
    public double chargeLossW() {
        return chargeLossW;
    }

    /** Lost to self-discharge and electronics in the last step, W. */
    public double standbyW() {
        return standbyW;
    }

    /** Heat given off in the last step, W. */
    public double heatW() {
        return resistanceW + chargeLossW + standbyW;
    }
}
