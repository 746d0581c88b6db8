package ampdays.cooling;

import ampdays.cooling.CoolingCurves.Biquadratic;

/**
 * Air conditioners of variable speed and of one kind in several vans side by side, while each has the voltage that it
 * needs: what {@link Cooler#step} does without surplus, one number of each van in every array, to the last bit the same.
 */
public final class Coolers {
    private final int vans;
    private final CoolerSpec spec;
    private final MoistAir moistAir;
    private final double[] wetBulbC;
    private final double[] capacityW;
    private final double[] fullInputW;
    private final double[] sensibleShare;
    private final double[] load;
    private final double[] coolingW;
    private final double[] inputW;
    private final double[] latentW;

    public Coolers(int vans, CoolerSpec spec, MoistAir moistAir) {
        this.vans = vans;
        this.spec = spec;
        this.moistAir = moistAir;
        wetBulbC = new double[vans];
        capacityW = new double[vans];
        fullInputW = new double[vans];
        sensibleShare = new double[vans];
        load = new double[vans];
        coolingW = new double[vans];
        inputW = new double[vans];
        latentW = new double[vans];
    }

    /** Whether a kind of unit can be among them. */
    public static boolean may(CoolerSpec spec) {
        return spec.variableSpeed() && !spec.onInverter();
    }

    /** Voltage from which each runs as it likes, V. */
    public static double leastV(CoolerSpec spec) {
        return Math.max(spec.stepDownV(), spec.cutOutV());
    }

    /**
     * Cools for one step.
     *
     * @param airC at its start, °C
     * @param humidityRatio at its start, kg/kg
     * @param freeC air at its end without cooling, °C
     * @param wattPerK cooling that makes the air end the step a kelvin cooler, W/K
     * @param setC temperature wanted, °C
     */
    public void step(
            double[] airC, double[] humidityRatio, double[] freeC, double[] wattPerK, double setC, double outdoorC) {
        for (int i = 0; i < vans; i++) {
            wetBulbC[i] = moistAir.wetBulbC(airC[i], humidityRatio[i]);
        }
        full(airC, outdoorC);
        share(freeC, wattPerK, setC);
        input();
    }

    private void full(double[] airC, double outdoorC) {
        double y = CoolerPhysics.heldOutdoorC(outdoorC);
        Biquadratic capacity = spec.curves().capacity();
        Biquadratic input = spec.curves().input();
        double ratedW = spec.ratedCapacityW();
        double perCop = 1 / spec.ratedCop();
        for (int i = 0; i < vans; i++) {
            double x = Math.min(Math.max(wetBulbC[i], CoolerPhysics.LEAST_WET_BULB_C), CoolerPhysics.MOST_WET_BULB_C);
            capacityW[i] = ratedW * capacity.at(x, y);
            fullInputW[i] = capacityW[i] * input.at(x, y) * perCop;
            sensibleShare[i] = Math.min(Math.max(0.75 + 0.05 * (airC[i] - wetBulbC[i] - 7.22), 0.5), 1);
        }
    }

    private void share(double[] freeC, double[] wattPerK, double setC) {
        for (int i = 0; i < vans; i++) {
            double mostW = capacityW[i] * sensibleShare[i];
            load[i] = Math.min(Math.max((freeC[i] - setC) * wattPerK[i] / mostW, 0), 1);
            coolingW[i] = load[i] * mostW;
            latentW[i] = capacityW[i] * (1 - sensibleShare[i]) * load[i];
        }
    }

    private void input() {
        double turnDown = spec.turnDownShare();
        double blend = spec.partLoadBlend();
        double cyclingLoss = spec.cyclingLoss();
        for (int i = 0; i < vans; i++) {
            double runs = Math.min(load[i] / turnDown, 1);
            double partLoadFactor = 1 - cyclingLoss * (1 - runs);
            double x = Math.max(load[i], turnDown);
            inputW[i] = fullInputW[i] * (CoolerPhysics.blendedInput(x, blend) * runs / partLoadFactor);
        }
    }

    /** Mean cooling of the air, W. */
    public double[] coolingW() {
        return coolingW;
    }

    /** Mean electrical input, W. */
    public double[] inputW() {
        return inputW;
    }

    /** Mean cooling that took moisture out, W. */
    public double[] latentW() {
        return latentW;
    }
}
