package ampdays.cooling;

import ampdays.cooling.CoolingCurves.Biquadratic;
import ampdays.heat.OnOffCooling;
import ampdays.heat.TwoNodeStep;

/**
 * An air conditioner during one run. Each step it is told the cabin's heat flows and sets the cabin's two temperatures
 * at the end of the step; how much current it took and how much moisture it drew out can be read afterwards. One run,
 * one thread.
 */
public final class Cooler {
    private static final double RATED_WET_BULB_C = 19.44;
    private static final int BISECTIONS = 20;

    private final CoolerSpec spec;
    private final boolean variableSpeed;
    private final double perCop;
    private final Biquadratic capacity;
    private final Biquadratic input;
    private final OnOffCooling onOff;
    private boolean lowVoltage;
    private double surplusToC = Double.NaN;
    private double surplusW;
    private double surplusInputW;
    private double startW;

    private double node1C;
    private double node2C;
    private double inputW;
    private double sensibleW;
    private double latentW;

    public Cooler(CoolerSpec spec) {
        this.spec = spec;
        this.variableSpeed = spec.variableSpeed();
        this.perCop = 1 / spec.ratedCop();
        this.capacity = spec.curves().capacity();
        this.input = spec.curves().input();
        this.onOff = new OnOffCooling(spec.leastRunS(), spec.leastRestS(), spec.coldStartS());
    }

    /** Goes on from where another was. */
    public void goOnFrom(Cooler before) {
        lowVoltage = before.lowVoltage;
        surplusInputW = before.surplusInputW;
        onOff.goOnFrom(before.onOff);
    }

    /**
     * A step in which it is off; the cabin floats.
     *
     * @param stepS length of the step, s
     */
    public void off(double stepS) {
        onOff.rest(stepS);
        inputW = 0;
        sensibleW = 0;
        latentW = 0;
        surplusInputW = 0;
        startW = 0;
        surplusToC = Double.NaN;
    }

    /** Stops it as a voltage below the cut-out does. */
    public void trip() {
        lowVoltage = true;
    }

    /** Whether a voltage below the cut-out keeps it stopped. */
    public boolean stopped() {
        return lowVoltage;
    }

    /**
     * Whether the bus voltage of the step before lets it run, with hysteresis between cut-out and restart.
     *
     * @param busV bus voltage, V
     */
    public boolean mayRun(double busV) {
        lowVoltage = lowVoltage ? busV < spec.restartV() : busV < spec.cutOutV();
        return !lowVoltage;
    }

    /**
     * Input at full capacity at the rated indoor wet bulb, W: what it would ask for if it had power.
     *
     * @param outdoorC outdoor air, °C
     */
    public double fullInputW(double outdoorC) {
        double y = CoolerPhysics.heldOutdoorC(outdoorC);
        return spec.ratedCapacityW()
                * spec.curves().capacityFactor(RATED_WET_BULB_C, y)
                * spec.curves().inputFactor(RATED_WET_BULB_C, y)
                / spec.ratedCop();
    }

    /**
     * Allows the next step to cool further than its set temperature, with no more input than would be lost otherwise. A
     * fixed-speed unit does so only when that covers its full input.
     *
     * @param toC temperature wanted then, °C
     * @param atMostW input that would be lost otherwise, W
     */
    public void allowSurplus(double toC, double atMostW) {
        surplusToC = toC;
        surplusW = atMostW;
    }

    /**
     * Whether a unit of variable speed has nothing to do in a step, because the air ends it no warmer than wanted anyway.
     *
     * @param nodes the cabin's exact step
     * @param from1C air at the start, °C
     * @param from2C mass at the start, °C
     * @param q1W heat into the air node, W
     * @param q2W heat into the mass node, W
     * @param setC temperature wanted, °C
     */
    public boolean idles(TwoNodeStep nodes, double from1C, double from2C, double q1W, double q2W, double setC) {
        if (!variableSpeed || surplusToC < setC) {
            return false;
        }
        return free1C(nodes, from1C, from2C, q1W, q2W) <= setC;
    }

    /** Air at the end of the step without cooling, °C. */
    private static double free1C(TwoNodeStep nodes, double from1C, double from2C, double q1W, double q2W) {
        double rest1C = nodes.rest1C(q1W, q2W);
        return rest1C + nodes.after1K(from1C - rest1C, from2C - nodes.rest2C(q1W, q2W));
    }

    /**
     * Cools the cabin for one step.
     *
     * @param nodes the cabin's exact step
     * @param from1C air at the start, °C
     * @param from2C mass at the start, °C
     * @param q1W heat into the air node without cooling, conductance times outside air included, W
     * @param q2W heat into the mass node, W
     * @param setC temperature wanted, °C; infinite when only surplus may be used
     * @param wetBulbC indoor wet bulb, °C
     * @param outdoorC outdoor air, °C
     * @param busV bus voltage of the step before, V
     */
    public void step(
            TwoNodeStep nodes,
            double from1C,
            double from2C,
            double q1W,
            double q2W,
            double setC,
            double wetBulbC,
            double outdoorC,
            double busV) {
        double x = CoolerPhysics.heldWetBulbC(wetBulbC);
        double y = CoolerPhysics.heldOutdoorC(outdoorC);
        double capacityW = spec.ratedCapacityW() * capacity.at(x, y);
        double fullInputW = capacityW * input.at(x, y) * perCop;
        double sensibleShare = CoolerPhysics.sensibleShare(from1C, wetBulbC);
        double mostShare = busV < spec.stepDownV() ? spec.stepDownShare() : 1;
        boolean surplus = surplusToC < setC;
        double load;
        if (variableSpeed) {
            double mostSensibleW = capacityW * sensibleShare;
            double free1C = free1C(nodes, from1C, from2C, q1W, q2W);
            double wattPerK = 1 / nodes.first1KPerW();
            load = held((free1C - setC) * wattPerK / mostSensibleW, mostShare);
            inputW = fullInputW * partLoadInput(load);
            surplusInputW = 0;
            if (surplus) {
                double most = surplusShare((inputW + surplusW) / fullInputW, mostShare);
                double further = held((free1C - surplusToC) * wattPerK / mostSensibleW, most);
                if (further > load) {
                    load = further;
                    surplusInputW = fullInputW * partLoadInput(load) - inputW;
                    inputW += surplusInputW;
                }
            }
            endAt(nodes, from1C, from2C, q1W - load * mostSensibleW, q2W);
        } else {
            boolean further = surplus && surplusW >= fullInputW;
            double aimC = further ? surplusToC : setC;
            onOff.step(
                    nodes,
                    from1C,
                    from2C,
                    q1W,
                    q2W,
                    capacityW * sensibleShare * mostShare,
                    aimC - spec.bandK() / 2,
                    aimC + spec.bandK() / 2);
            node1C = onOff.node1C();
            node2C = onOff.node2C();
            load = mostShare * onOff.coolS() / nodes.stepS();
            inputW = fullInputW * mostShare * onOff.runS() / nodes.stepS();
            surplusInputW = further ? inputW : 0;
            startW = onOff.starts() > 0 && spec.startFactor() > 1 ? fullInputW * spec.startFactor() : 0;
        }
        surplusToC = Double.NaN;
        sensibleW = capacityW * sensibleShare * load;
        latentW = capacityW * (1 - sensibleShare) * load;
    }

    private static double held(double share, double mostShare) {
        return share < 0 ? 0 : share > mostShare ? mostShare : share;
    }

    private double partLoadInput(double load) {
        return CoolerPhysics.partLoadInput(load, spec.partLoadBlend(), spec.turnDownShare(), spec.cyclingLoss());
    }

    /** Largest share of capacity whose input is not above a share of the full input, by bisection. */
    private double surplusShare(double inputShare, double mostShare) {
        double low = 0;
        double high = mostShare;
        if (partLoadInput(high) <= inputShare) {
            return high;
        }
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (low + high) / 2;
            if (partLoadInput(middle) <= inputShare) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private void endAt(TwoNodeStep nodes, double from1C, double from2C, double q1W, double q2W) {
        double rest1C = nodes.rest1C(q1W, q2W);
        double rest2C = nodes.rest2C(q1W, q2W);
        double d1K = from1C - rest1C;
        double d2K = from2C - rest2C;
        node1C = rest1C + nodes.after1K(d1K, d2K);
        node2C = rest2C + nodes.after2K(d1K, d2K);
    }

    /** Air at the end of the step, °C. */
    public double node1C() {
        return node1C;
    }

    /** Mass at the end of the step, °C. */
    public double node2C() {
        return node2C;
    }

    /** Mean electrical input of the step, W. */
    public double inputW() {
        return inputW;
    }

    /** The part of it that used surplus beyond the set temperature, W. */
    public double surplusInputW() {
        return surplusInputW;
    }

    /** Input in the first half second of a run begun in the last step, W; 0 without one or with a soft start. */
    public double startW() {
        return startW;
    }

    /** Mean cooling of the air, W. */
    public double sensibleW() {
        return sensibleW;
    }

    /** Mean cooling that took moisture out, W. */
    public double latentW() {
        return latentW;
    }
}
