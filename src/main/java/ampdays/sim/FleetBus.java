package ampdays.sim;

/**
 * The buses of several vans side by side while only panels give: what {@link Bus} does then, and what flows to loads and as
 * heat, one number of each van in every array, to the last bit the same.
 */
final class FleetBus {
    private final int vans;
    private final double[] noCap;

    /** Of the panels: rating, what of it reaches the bus, the controller's limit. */
    private final double[] solarRatedW;

    private final double[] solarConversion;
    private final double[] perSolarConversion;
    private final double[] solarCapA;

    /** The loads' patterns in force. */
    private final double[] askedA;

    private final double[] loadW;
    private final double[] outletW;
    private final double[] inverterAskedW;
    private final double[] heatShareOfA;
    private final double[] loadHeatW;

    final double[] coolingW;
    final double[] refrigeratorW;
    private final double[] askedW;
    private final double[] possibleW;
    private final double[] fullV;
    private final double[] roomW;
    private final double[] solarAtFullW;
    final double[] busV;
    final double[] bankA;
    final double[] solarW;

    /** 1 where the bank takes all that the panels can give, 0 where its limit rules. */
    final double[] takesAll;

    final double[] sourceW;
    final double[] curtailedW;
    final double[] loadsW;
    final double[] inverterLossW;
    final double[] indoorW;

    /** Above 0 where the panels' controller is not at its limit. */
    final double[] margin;

    FleetBus(int vans) {
        this.vans = vans;
        noCap = new double[vans];
        solarRatedW = new double[vans];
        solarConversion = new double[vans];
        perSolarConversion = new double[vans];
        solarCapA = new double[vans];
        askedA = new double[vans];
        loadW = new double[vans];
        outletW = new double[vans];
        inverterAskedW = new double[vans];
        heatShareOfA = new double[vans];
        loadHeatW = new double[vans];
        coolingW = new double[vans];
        refrigeratorW = new double[vans];
        askedW = new double[vans];
        possibleW = new double[vans];
        fullV = new double[vans];
        roomW = new double[vans];
        solarAtFullW = new double[vans];
        busV = new double[vans];
        bankA = new double[vans];
        solarW = new double[vans];
        takesAll = new double[vans];
        sourceW = new double[vans];
        curtailedW = new double[vans];
        loadsW = new double[vans];
        inverterLossW = new double[vans];
        indoorW = new double[vans];
        margin = new double[vans];
    }

    /** Takes a van's panels over. */
    void load(int van, Sources sources) {
        solarRatedW[van] = sources.solarRatedW();
        solarConversion[van] = sources.solarConversion();
        perSolarConversion[van] = 1 / sources.solarConversion();
        solarCapA[van] = sources.solarMostA();
        noCap[van] = sources.solarRatedW() > 0 ? 0 : 1;
    }

    /** Sets which loads run in a van. */
    void run(int van, LoadPlan.Pattern pattern) {
        askedA[van] = pattern.busA();
        loadW[van] = pattern.busW();
        outletW[van] = pattern.outletW();
        inverterAskedW[van] = pattern.inverterW();
        heatShareOfA[van] = pattern.heatShareOfA();
        loadHeatW[van] = pattern.heatW();
    }

    /**
     * Shares a step's power.
     *
     * @param possibleWPerW what a rated watt of panel could give
     * @param coolingAskedW asked for by the air conditioners
     * @param refrigeratorAskedW and by the refrigerators
     * @param emfV open-circuit voltages of the banks
     * @param ohm their resistances
     * @param chargeMaxA what they take
     */
    void solve(
            double possibleWPerW,
            double[] coolingAskedW,
            double[] refrigeratorAskedW,
            double[] emfV,
            double[] ohm,
            double[] chargeMaxA) {
        ask(possibleWPerW, coolingAskedW, refrigeratorAskedW);
        takeAll(emfV, ohm);
        if (possibleWPerW > 0) {
            fill(emfV, ohm, chargeMaxA);
            for (int i = 0; i < vans; i++) {
                if (possibleW[i] > 0 && !(solarAtFullW[i] < roomW[i])) {
                    takesAll[i] = 0;
                    busV[i] = fullV[i];
                    bankA[i] = chargeMaxA[i];
                    solarW[i] = solarAtFullW[i] < roomW[i] ? solarAtFullW[i] : roomW[i];
                }
            }
        }
    }

    private void ask(double possibleWPerW, double[] coolingAskedW, double[] refrigeratorAskedW) {
        for (int i = 0; i < vans; i++) {
            coolingW[i] = coolingAskedW[i];
            refrigeratorW[i] = refrigeratorAskedW[i];
            askedW[i] = loadW[i] + inverterAskedW[i] + coolingW[i] + refrigeratorW[i];
            possibleW[i] = possibleWPerW * solarRatedW[i] * solarConversion[i];
        }
    }

    /** When the bank takes all that the panels can give, or makes up for what they lack. */
    private void takeAll(double[] emfV, double[] ohm) {
        for (int i = 0; i < vans; i++) {
            double powerW = -askedW[i] + possibleW[i];
            double b = emfV[i] + ohm[i] * -askedA[i];
            double root = b * b + 4 * ohm[i] * powerW;
            busV[i] = (b + Math.sqrt(root)) / 2;
            bankA[i] = -askedA[i] + powerW / busV[i];
            solarW[i] = possibleW[i];
            takesAll[i] = 1;
            margin[i] = (solarCapA[i] + noCap[i]) * busV[i] - possibleW[i];
        }
    }

    /** What the panels could give at the voltage of the banks' limits, and what there is room for. */
    private void fill(double[] emfV, double[] ohm, double[] chargeMaxA) {
        for (int i = 0; i < vans; i++) {
            fullV[i] = emfV[i] + ohm[i] * chargeMaxA[i];
            roomW[i] = fullV[i] * (chargeMaxA[i] + askedA[i]) + askedW[i];
            solarAtFullW[i] = Math.min(possibleW[i], solarCapA[i] * fullV[i]);
        }
    }

    /** Ends the step: what the panels gave, what the loads got. */
    void settle() {
        for (int i = 0; i < vans; i++) {
            sourceW[i] = solarW[i] * perSolarConversion[i];
            curtailedW[i] = (possibleW[i] - solarW[i]) * perSolarConversion[i];
            loadsW[i] = askedA[i] * busV[i] + loadW[i] + outletW[i];
            inverterLossW[i] = inverterAskedW[i] - outletW[i];
        }
    }

    /** Heat that loads, converters and banks gave off indoors. */
    void warm(double[] bankHeatW) {
        for (int i = 0; i < vans; i++) {
            indoorW[i] = askedA[i] * busV[i] * heatShareOfA[i]
                    + loadHeatW[i]
                    + (inverterLossW[i] + refrigeratorW[i])
                    + (sourceW[i] - solarW[i])
                    + bankHeatW[i];
        }
    }
}
