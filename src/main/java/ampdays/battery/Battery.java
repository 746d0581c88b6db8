package ampdays.battery;

import ampdays.heat.OneNodeStep;
import java.util.Optional;

/**
 * The house bank during one run: state of charge, temperature, protection. One run, one thread.
 *
 * <p>A step is {@link #open} (what can it give and take now), then, once the bus is solved, {@link #settle}. What is
 * offered and what flowed are plain fields here, so that only these two calls depend on the chemistry.
 */
public abstract sealed class Battery permits LithiumBattery, LeadAcidBattery {
    private static final double HOURS_A_MONTH = 720;
    private static final double RECONNECT_WAIT_S = 600;

    final double stepS;
    /** Current that a step turns into one whole charge, A. */
    final double fullA;

    final double standbyA;
    /** Resistance at 25 °C that the bus sees, links of strings in it, Ω. */
    final double restOhm;

    private final ChargeSteps chargeSteps;
    final double chargeProtectionA;
    final double dischargeProtectionA;

    final double cutOutShare;
    final double cutOutV;
    private final double reconnectBandShare;
    private final BankSpec.Protection protection;
    private final boolean limitsTrip;
    private final boolean heldOpen;
    /** Between these the protection has no reason to open, °C. */
    private final double mildFromC;

    private final double mildToC;
    final OneNodeStep heat;

    double soc;
    double temperatureC;
    /** Part of the charge out of reach at this temperature, 0 to 1. */
    double floorShare;

    /** Whether the protection lets current through both ways. */
    boolean closed;

    /** Between these, while closed, the protection has no reason to open and the charge limit of the cells is known. */
    double calmFromC = Double.POSITIVE_INFINITY;

    double calmToC = Double.NEGATIVE_INFINITY;
    double rateA;
    private boolean chargeStopped;
    private boolean tooHotToCharge;
    private boolean dischargeStopped;
    private boolean chargeTripped;
    private boolean dischargeTripped;
    private double sinceTripS;
    boolean loadsCut;
    double sinceCutS;

    double emfV;
    double chargeOhm;
    double dischargeOhm;
    double chargeMaxA;
    double dischargeMaxA;
    ChargeLimit chargeLimit = ChargeLimit.RATE;

    double storedW;
    double resistanceW;
    double chargeLossW;
    double standbyW;
    private double heatW;

    /**
     * @param chargeSteps charge limits of the cells by temperature, A
     * @param wholeAh charge between empty and full at the start's health, Ah
     */
    Battery(BankSpec spec, ChargeSteps chargeSteps, double wholeAh, double startC, double stepS) {
        this.stepS = stepS;
        this.fullA = wholeAh * 3600 / stepS;
        this.standbyA = spec.electronicsA() + wholeAh * spec.selfDischargePerMonth() / HOURS_A_MONTH;
        double ohm = spec.resistanceOhm() * spec.resistanceHealth();
        int strings = spec.strings().count();
        double linkOhm = spec.strings().linkOhm();
        this.restOhm = ParallelStrings.bankOhm(strings, strings * ohm, linkOhm);
        double evenness = 1 / (strings * spec.strings().nearestShare(ohm));
        this.chargeSteps = chargeSteps.times(evenness);
        this.chargeProtectionA = spec.chargeLimitA() * evenness;
        this.dischargeProtectionA = spec.dischargeLimitA() * evenness;
        this.cutOutShare = spec.cutOut().share();
        this.cutOutV = spec.cutOut().busV();
        this.reconnectBandShare = spec.cutOut().reconnectShare() - cutOutShare;
        this.protection = spec.protection();
        this.limitsTrip = protection.trips();
        this.heldOpen = protection.heldOpen();
        this.mildFromC = Math.max(protection.chargeColdC(), protection.dischargeColdC());
        this.mildToC = Math.min(protection.chargeHotC(), protection.dischargeHotC());
        this.heat = new OneNodeStep(spec.heatJK(), spec.heatWK(), stepS);
        this.soc = spec.startShare();
        this.temperatureC = startC;
        this.loadsCut = soc <= cutOutShare;
        this.chargeTripped = heldOpen;
        this.dischargeTripped = heldOpen;
        this.closed = !heldOpen;
    }

    /**
     * A bank of the chemistry that its specification names.
     *
     * @param startC temperature at the start, °C
     * @param stepS length of the step, s
     */
    public static Battery of(BankSpec spec, double startC, double stepS) {
        return spec.chemistry() instanceof BankSpec.Lithium lithium
                ? new LithiumBattery(spec, lithium, OpenCircuit.LITHIUM_IRON_PHOSPHATE, startC, stepS)
                : new LeadAcidBattery(spec, (BankSpec.LeadAcid) spec.chemistry(), startC, stepS);
    }

    /**
     * Goes on from where another was: the state of charge as a share, temperature, protection. A protection that somebody
     * must reset opens now, or closes if it was that which held it. Ageing is counted from here.
     */
    public final void goOnFrom(Battery before) {
        soc = before.soc;
        temperatureC = before.temperatureC;
        floorShare = before.floorShare;
        chargeStopped = before.chargeStopped;
        tooHotToCharge = before.tooHotToCharge;
        dischargeStopped = before.dischargeStopped;
        boolean reset = before.heldOpen && !heldOpen;
        chargeTripped = heldOpen || (before.chargeTripped && !reset);
        dischargeTripped = heldOpen || (before.dischargeTripped && !reset);
        closed = !(chargeStopped || dischargeStopped || chargeTripped || dischargeTripped);
        sinceTripS = before.sinceTripS;
        loadsCut = before.loadsCut;
        sinceCutS = before.sinceCutS;
        chargeMaxA = before.chargeMaxA;
        takeCharge(before);
    }

    /** Takes over where the charge is within the cells. */
    abstract void takeCharge(Battery before);

    /** Works out what the bank can give and take in the step that begins. */
    public abstract void open();

    /**
     * Takes the step's current.
     *
     * @param currentA into the bank, A, within what {@link #open} offered
     * @param busV bus voltage, V
     * @param cabinC air around the bank, °C
     */
    public abstract void settle(double currentA, double busV, double cabinC);

    /** How far the cells have aged; empty where no model of it is built in. */
    public abstract Optional<Ageing> ageing();

    /**
     * Lets the protection open and close by temperature and time; then {@link #offer} may be called.
     *
     * @return charge limit of the cells at this temperature, A
     */
    final double openProtection() {
        if (!closed || temperatureC < calmFromC || temperatureC >= calmToC) {
            if (!closed || temperatureC < mildFromC || temperatureC > mildToC) {
                moveProtection();
            }
            findStep();
        }
        return rateA;
    }

    private void findStep() {
        int step = chargeSteps.at(temperatureC);
        rateA = chargeSteps.limit(step);
        calmFromC = Math.max(mildFromC, chargeSteps.fromC(step));
        calmToC = Math.min(mildToC, chargeSteps.fromC(step + 1));
    }

    private void moveProtection() {
        double bandK = protection.bandK();
        double coldC = chargeStopped && !tooHotToCharge ? protection.chargeColdC() + bandK : protection.chargeColdC();
        double hotC = chargeStopped && tooHotToCharge ? protection.chargeHotC() - bandK : protection.chargeHotC();
        tooHotToCharge = temperatureC > hotC;
        chargeStopped = tooHotToCharge || temperatureC < coldC;
        double bandNowK = dischargeStopped ? bandK : 0;
        dischargeStopped = temperatureC < protection.dischargeColdC() + bandNowK
                || temperatureC > protection.dischargeHotC() - bandNowK;
        if (chargeTripped || dischargeTripped) {
            boolean open = heldOpen || sinceTripS < protection.tripWaitS();
            chargeTripped = chargeTripped && open;
            dischargeTripped = dischargeTripped && open;
            sinceTripS += stepS;
        }
        closed = !(chargeStopped || dischargeStopped || chargeTripped || dischargeTripped);
    }

    /**
     * Offers what neither protection nor temperature forbids.
     *
     * @param rateA limit of the cells at this temperature, A
     * @param nearA limit near full: taper, absorption, acceptance, A
     * @param roomA current that leaves no room in this step, A
     * @param leftA current that leaves nothing in this step, A
     */
    final void offer(double rateA, double nearA, double roomA, double leftA) {
        ChargeLimit limit;
        if (rateA > 0 && (closed || !chargingStopped())) {
            boolean byProtection = chargeProtectionA <= rateA;
            double limitA = byProtection ? chargeProtectionA : rateA;
            limit = byProtection ? ChargeLimit.PROTECTION : ChargeLimit.RATE;
            if (nearA < limitA) {
                limit = ChargeLimit.NEAR_FULL;
                limitA = nearA;
            }
            if (roomA < limitA) {
                limit = ChargeLimit.FULL;
                limitA = roomA;
            }
            chargeMaxA = limitA > 0 ? limitA : 0;
        } else {
            limit = whyRefused(rateA);
            chargeMaxA = 0;
        }
        if (chargeLimit != limit) {
            chargeLimit = limit;
        }
        double mostA = dischargeProtectionA < leftA ? dischargeProtectionA : leftA;
        if (mostA * 2 * dischargeOhm > emfV) {
            mostA = emfV / (2 * dischargeOhm);
        }
        dischargeMaxA = mostA > 0 && (closed || !dischargingStopped()) ? mostA : 0;
    }

    private ChargeLimit whyRefused(double rateA) {
        if (!chargeStopped && rateA > 0) {
            return ChargeLimit.TRIPPED;
        }
        boolean hot = chargeStopped ? tooHotToCharge : temperatureC > 25;
        return hot ? ChargeLimit.TOO_HOT : ChargeLimit.TOO_COLD;
    }

    /**
     * Opens the protection if this step would go beyond its limit of current and that is how it is set.
     *
     * @param tooMuchIn whether sources could give more than the bank takes
     * @param tooMuchOut whether uses want more than the bank gives
     * @return whether it opened now, so that the step must be shared anew
     */
    public final boolean trips(boolean tooMuchIn, boolean tooMuchOut) {
        if (!limitsTrip) {
            return false;
        }
        if (tooMuchIn && chargeLimit == ChargeLimit.PROTECTION) {
            chargeTripped = true;
            chargeLimit = ChargeLimit.TRIPPED;
            chargeMaxA = 0;
        } else if (tooMuchOut && protectionHoldsDischarge() && dischargeMaxA > 0) {
            dischargeTripped = true;
            dischargeMaxA = 0;
        } else {
            return false;
        }
        closed = false;
        sinceTripS = stepS;
        return true;
    }

    /** Warms or cools the bank by the heat of the step, and cuts loads off or lets them come back. */
    final void settleHeatAndLoads(double busV, double cabinC) {
        heatW = resistanceW + chargeLossW + standbyW;
        temperatureC = heat.nextC(temperatureC, cabinC, heatW);
        double emptyShare = cutOutShare > floorShare ? cutOutShare : floorShare;
        if (loadsCut) {
            sinceCutS += stepS;
            double backShare = emptyShare + reconnectBandShare;
            loadsCut = soc < (backShare < 1 ? backShare : 1) || sinceCutS < RECONNECT_WAIT_S;
        } else if (soc <= emptyShare || !(busV >= cutOutV)) {
            loadsCut = true;
            sinceCutS = 0;
        }
    }

    public final double soc() {
        return soc;
    }

    public final double temperatureC() {
        return temperatureC;
    }

    /** Part of the charge that this temperature puts out of reach, share of the whole. */
    public final double outOfReachShare() {
        return floorShare;
    }

    /** Whether the loads are cut off until the bank has recovered. */
    public final boolean loadsCut() {
        return loadsCut;
    }

    /** Whether the protection lets current through both ways. */
    public final boolean closed() {
        return closed;
    }

    /** Whether the protection refuses all charging. */
    public final boolean chargingStopped() {
        return chargeStopped || chargeTripped;
    }

    /** Whether the protection gives nothing. */
    public final boolean dischargingStopped() {
        return dischargeStopped || dischargeTripped;
    }

    /** Whether the protection's limit of current, not the charge left, bounds what the bank gives. */
    public final boolean protectionHoldsDischarge() {
        return dischargeMaxA == dischargeProtectionA;
    }

    /** Open-circuit voltage that a current of this step starts from, V. */
    public final double emfV() {
        return emfV;
    }

    /** Resistance that a charging current sees, half a step's drift of the open-circuit voltage in it, Ω. */
    public final double chargeOhm() {
        return chargeOhm;
    }

    /** The same for a discharging current. */
    public final double dischargeOhm() {
        return dischargeOhm;
    }

    public final double chargeMaxA() {
        return chargeMaxA;
    }

    public final double dischargeMaxA() {
        return dischargeMaxA;
    }

    public final ChargeLimit chargeLimit() {
        return chargeLimit;
    }

    /** Change of store in the last step, W. */
    public final double storedW() {
        return storedW;
    }

    /** Lost in its resistance in the last step, W. */
    public final double resistanceW() {
        return resistanceW;
    }

    /** Lost to charge efficiency in the last step, W. */
    public final double chargeLossW() {
        return chargeLossW;
    }

    /** Lost to self-discharge and electronics in the last step, W. */
    public final double standbyW() {
        return standbyW;
    }

    /** Heat given off in the last step, W. */
    public final double heatW() {
        return heatW;
    }
}
