package ampdays.battery;

import ampdays.heat.OneNodeSteps;

/**
 * Lithium banks of several vans side by side, while the protection of each lets current through both ways and no bound of
 * temperature is crossed: what {@link LithiumBattery} does then, one number of each van in every array, to the last bit the
 * same. A step is {@link #open} and {@link #settle}, which leave the state as it was; {@link #commit} makes it the next one.
 */
public final class Banks {
    /** A bank that is asked for more than so much of what it can give takes the step by itself, which tells what it gives. */
    private static final double SURE_SHARE = 0.999;

    /** So does one whose voltage falls below so much of that without current; at half of it no bank gives more. */
    private static final double SURE_VOLT_SHARE = 0.75;

    private final int vans;
    private final OpenCircuitCells cells;
    private final OneNodeSteps heat;
    private final double[] fullA;
    private final double[] standbyA;
    private final double[] standbyShare;
    private final double[] sharePerA;
    private final double[] efficiency;
    private final double[] perEfficiency;
    private final double[] driftOhmPerV;
    private final double[] seriesCells;
    private final double[] limitA;
    private final double[] taperA;
    private final double[] taperFromShare;
    private final double[] taperOver;
    private final double[] absorptionV;
    private final double[] giveA;
    private final double[] outOfReachPerK;
    private final double[] cutOutShare;
    private final double[] cutOutV;
    private final double[] calmFromC;
    private final double[] calmToC;
    private final double[] restOhm;
    private double[] soc;
    private double[] temperatureC;
    private double[] nextSoc;
    private double[] nextTemperatureC;
    private final double[] dischargeSumA;
    private final double[] dischargeSumA2;
    private final double[] emfV;
    private final double[] driftOhm;
    private final double[] ohmicOhm;
    private final double[] ohm;
    private final double[] floorShare;
    private final double[] nearA;
    private final double[] roomA;
    private final double[] chargeMaxA;
    private final double[] surelyGivesA;
    private final double[] keptA;
    private final double[] drained;
    private final double[] storedW;
    private final double[] resistanceW;
    private final double[] chargeLossW;
    private final double[] standbyW;
    private final double[] heatW;
    private final double[] margin;

    public Banks(int vans) {
        this.vans = vans;
        this.cells = new OpenCircuitCells(vans);
        this.heat = new OneNodeSteps(vans);
        fullA = new double[vans];
        standbyA = new double[vans];
        standbyShare = new double[vans];
        sharePerA = new double[vans];
        efficiency = new double[vans];
        perEfficiency = new double[vans];
        driftOhmPerV = new double[vans];
        seriesCells = new double[vans];
        limitA = new double[vans];
        taperA = new double[vans];
        taperFromShare = new double[vans];
        taperOver = new double[vans];
        absorptionV = new double[vans];
        giveA = new double[vans];
        outOfReachPerK = new double[vans];
        cutOutShare = new double[vans];
        cutOutV = new double[vans];
        calmFromC = new double[vans];
        calmToC = new double[vans];
        restOhm = new double[vans];
        soc = new double[vans];
        temperatureC = new double[vans];
        nextSoc = new double[vans];
        nextTemperatureC = new double[vans];
        dischargeSumA = new double[vans];
        dischargeSumA2 = new double[vans];
        emfV = new double[vans];
        driftOhm = new double[vans];
        ohmicOhm = new double[vans];
        ohm = new double[vans];
        floorShare = new double[vans];
        nearA = new double[vans];
        roomA = new double[vans];
        chargeMaxA = new double[vans];
        surelyGivesA = new double[vans];
        keptA = new double[vans];
        drained = new double[vans];
        storedW = new double[vans];
        resistanceW = new double[vans];
        chargeLossW = new double[vans];
        standbyW = new double[vans];
        heatW = new double[vans];
        margin = new double[vans];
    }

    /** Whether a kind of bank can be among them: one whose protection opens by too much current takes each step by itself. */
    public static boolean may(BankSpec spec) {
        return spec.chemistry() instanceof BankSpec.Lithium
                && !spec.protection().trips();
    }

    /** Whether a bank can be among them in the step that comes. */
    public static boolean calm(Battery bank) {
        return bank instanceof LithiumBattery
                && bank.closed
                && !bank.loadsCut
                && bank.rateA > 0
                && bank.temperatureC >= bank.calmFromC
                && bank.temperatureC < bank.calmToC;
    }

    /** Takes over a bank that is calm. */
    public void load(int van, Battery of) {
        LithiumBattery bank = (LithiumBattery) of;
        cells.load(van, bank.openCircuit);
        heat.set(van, bank.heat);
        fullA[van] = bank.fullA;
        standbyA[van] = bank.standbyA;
        standbyShare[van] = bank.standbyShare;
        sharePerA[van] = bank.sharePerA;
        efficiency[van] = bank.efficiency;
        perEfficiency[van] = bank.perEfficiency;
        driftOhmPerV[van] = bank.driftOhmPerV;
        seriesCells[van] = bank.seriesCells;
        limitA[van] = Math.min(bank.rateA, bank.chargeProtectionA);
        boolean tapers = bank.taperFromShare < 1 && limitA[van] > bank.tailA;
        taperA[van] = tapers ? bank.tailA - limitA[van] : 0;
        taperFromShare[van] = bank.taperFromShare;
        taperOver[van] = tapers ? 1 - bank.taperFromShare : 1;
        absorptionV[van] = bank.absorptionV;
        giveA[van] = bank.dischargeProtectionA;
        outOfReachPerK[van] = bank.outOfReachPerK;
        cutOutShare[van] = bank.cutOutShare;
        cutOutV[van] = bank.cutOutV;
        calmFromC[van] = bank.calmFromC;
        calmToC[van] = bank.calmToC;
        restOhm[van] = bank.restOhm;
        soc[van] = bank.soc;
        temperatureC[van] = bank.temperatureC;
        dischargeSumA[van] = bank.ageing.dischargeSumA;
        dischargeSumA2[van] = bank.ageing.dischargeSumA2;
    }

    /**
     * Gives a bank its state back.
     *
     * @param steps since it was taken over
     * @param ofHour steps since the last whole hour of the run
     */
    public void store(int van, Battery of, int steps, int ofHour) {
        LithiumBattery bank = (LithiumBattery) of;
        bank.soc = soc[van];
        bank.temperatureC = temperatureC[van];
        bank.sinceCutS += steps * bank.stepS;
        bank.ageing.dischargeSumA = dischargeSumA[van];
        bank.ageing.dischargeSumA2 = dischargeSumA2[van];
        bank.ageing.steps = ofHour;
    }

    /** Ages a bank after {@link #commit} of the step that ends an hour; the temperature is that at the step's start. */
    public void endHour(int van, Battery of, int stepsAnHour) {
        Ageing ageing = ((LithiumBattery) of).ageing;
        ageing.steps = stepsAnHour;
        ageing.dischargeSumA = dischargeSumA[van];
        ageing.dischargeSumA2 = dischargeSumA2[van];
        ageing.endHour(nextTemperatureC[van], soc[van]);
        dischargeSumA[van] = 0;
        dischargeSumA2[van] = 0;
    }

    /** Works out what each can give and take in the step that begins. */
    public void open() {
        cells.read(soc, temperatureC);
        resist();
        take();
        give();
    }

    private void resist() {
        double[] cellV = cells.cellV();
        double[] slopeV = cells.slopeV();
        double[] factor = cells.resistanceFactor();
        for (int i = 0; i < vans; i++) {
            emfV[i] = seriesCells[i] * cellV[i];
            driftOhm[i] = slopeV[i] * driftOhmPerV[i];
            ohmicOhm[i] = restOhm[i] * factor[i];
            ohm[i] = ohmicOhm[i] + driftOhm[i];
            floorShare[i] = Math.max(LithiumBattery.WHOLE_FROM_C - temperatureC[i], 0) * outOfReachPerK[i];
        }
    }

    private void take() {
        for (int i = 0; i < vans; i++) {
            double taper = Math.max(soc[i] - taperFromShare[i], 0) / taperOver[i];
            nearA[i] = Math.min(limitA[i] + taperA[i] * taper, (absorptionV[i] - emfV[i]) / ohm[i]);
            roomA[i] = ((1 - soc[i]) * fullA[i] + standbyA[i]) * perEfficiency[i];
            chargeMaxA[i] = Math.max(Math.min(nearA[i], roomA[i]), 0);
        }
    }

    private void give() {
        for (int i = 0; i < vans; i++) {
            double leftA = (soc[i] - floorShare[i]) * fullA[i] - standbyA[i];
            surelyGivesA[i] = SURE_SHARE * Math.min(Math.min(giveA[i], leftA), emfV[i] / (2 * ohm[i]));
        }
    }

    /**
     * What the step's currents lead to.
     *
     * @param currentA into each bank, A
     * @param busV bus voltages, V
     * @param cabinC air around each, °C
     */
    public void settle(double[] currentA, double[] busV, double[] cabinC) {
        charge(currentA);
        lose(currentA);
        heat.next(temperatureC, cabinC, heatW, nextTemperatureC);
        judge(currentA, busV);
    }

    private void charge(double[] currentA) {
        for (int i = 0; i < vans; i++) {
            keptA[i] = Math.max(currentA[i], 0) * efficiency[i] + Math.min(currentA[i], 0);
            double charged = soc[i] + keptA[i] * sharePerA[i];
            drained[i] = Math.max(Math.min(standbyShare[i], charged), 0);
            nextSoc[i] = Math.min(Math.max(charged - drained[i], 0), 1);
        }
    }

    private void lose(double[] currentA) {
        for (int i = 0; i < vans; i++) {
            double midV = emfV[i] + driftOhm[i] * currentA[i];
            double standbyNowA = drained[i] * fullA[i];
            storedW[i] = midV * (keptA[i] - standbyNowA);
            resistanceW[i] = ohmicOhm[i] * currentA[i] * currentA[i];
            chargeLossW[i] = midV * (currentA[i] - keptA[i]);
            standbyW[i] = midV * standbyNowA;
            heatW[i] = resistanceW[i] + chargeLossW[i] + standbyW[i];
        }
    }

    private void judge(double[] currentA, double[] busV) {
        for (int i = 0; i < vans; i++) {
            double aboveCutOut = Math.min(nextSoc[i] - Math.max(cutOutShare[i], floorShare[i]), busV[i] - cutOutV[i]);
            double mild = Math.min(aboveCutOut, busV[i] - SURE_VOLT_SHARE * emfV[i]);
            margin[i] = Math.min(mild, currentA[i] + surelyGivesA[i]);
        }
    }

    /** Makes the end of the step the start of the next. */
    public void commit(double[] currentA) {
        for (int i = 0; i < vans; i++) {
            double outA = Math.min(currentA[i], 0);
            dischargeSumA[i] -= outA;
            dischargeSumA2[i] += outA * outA;
        }
        double[] before = soc;
        soc = nextSoc;
        nextSoc = before;
        before = temperatureC;
        temperatureC = nextTemperatureC;
        nextTemperatureC = before;
    }

    /** How far each bank is within the temperatures that it was taken over for, K; to be asked after {@link #commit}. */
    public double[] mildK() {
        for (int i = 0; i < vans; i++) {
            margin[i] = Math.min(temperatureC[i] - calmFromC[i], calmToC[i] - temperatureC[i]);
        }
        return margin;
    }

    /** Which limit of {@link #chargeMaxA} rules in the step that was opened last. */
    public ChargeLimit chargeLimit(int van) {
        if (roomA[van] < nearA[van]) {
            return ChargeLimit.FULL;
        }
        return nearA[van] < limitA[van] ? ChargeLimit.NEAR_FULL : ChargeLimit.RATE;
    }

    /** Open-circuit voltages that currents of this step start from, V. */
    public double[] emfV() {
        return emfV;
    }

    /** Resistances that currents of this step see, Ω. */
    public double[] ohm() {
        return ohm;
    }

    public double[] chargeMaxA() {
        return chargeMaxA;
    }

    /** Part of each charge that the temperature puts out of reach. */
    public double[] floorShare() {
        return floorShare;
    }

    /** State of charge; after {@link #commit}, at the end of the step. */
    public double[] soc() {
        return soc;
    }

    /** Above 0 where the step ends well away from every limit of discharge, of charge left and of voltage. */
    public double[] margin() {
        return margin;
    }

    public double[] storedW() {
        return storedW;
    }

    public double[] resistanceW() {
        return resistanceW;
    }

    public double[] chargeLossW() {
        return chargeLossW;
    }

    public double[] standbyW() {
        return standbyW;
    }

    public double[] heatW() {
        return heatW;
    }
}
