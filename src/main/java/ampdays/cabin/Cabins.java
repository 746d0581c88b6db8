package ampdays.cabin;

import ampdays.heat.TwoNodeSteps;

/**
 * The cabins of several standing vans of one make side by side: what {@link Cabin} does without gaps in the envelope, one
 * number of each van in every array, to the last bit the same. A step is {@link #open}, {@link #end} and {@link #moisten},
 * which leave the state as it was; {@link #commit} makes it the next one.
 */
public final class Cabins {
    private final int vans;
    private final double gainPerW;
    private final double solarToAirShare;
    private final TwoNodeSteps nodes;
    private final double[] toOutsideWK;
    private final double[] changedShare;
    private final double[] keptShare;
    private final double[] wattPerK;
    private double[] airC;
    private double[] massC;
    private double[] humidityRatio;
    private double[] nextAirC;
    private double[] nextMassC;
    private double[] nextHumidityRatio;
    private final double[] peopleW;
    private final double[] moistureW;
    private final double[] q1W;
    private final double[] rest1C;
    private final double[] rest2C;
    private double q2W;

    /** @param one of the cabins */
    public Cabins(int vans, Cabin one) {
        this.vans = vans;
        this.gainPerW = one.gainPerW;
        this.solarToAirShare = one.solarToAirShare;
        this.nodes = new TwoNodeSteps(vans);
        toOutsideWK = new double[vans];
        changedShare = new double[vans];
        keptShare = new double[vans];
        wattPerK = new double[vans];
        airC = new double[vans];
        massC = new double[vans];
        humidityRatio = new double[vans];
        nextAirC = new double[vans];
        nextMassC = new double[vans];
        nextHumidityRatio = new double[vans];
        peopleW = new double[vans];
        moistureW = new double[vans];
        q1W = new double[vans];
        rest1C = new double[vans];
        rest2C = new double[vans];
    }

    /** Takes a van's state over. */
    public void load(int van, Cabin cabin) {
        airC[van] = cabin.airC;
        massC[van] = cabin.massC;
        humidityRatio[van] = cabin.humidityRatio;
    }

    /** Gives a van its state back. */
    public void store(int van, Cabin cabin) {
        cabin.airC = airC[van];
        cabin.massC = massC[van];
        cabin.humidityRatio = humidityRatio[van];
    }

    /** Sets which of the fans' air flows holds in a van, and whether its windows are covered. */
    public void ventilate(int van, Cabin cabin, int flow, boolean covered) {
        Cabin.Ventilation now = cabin.standing(flow, covered);
        toOutsideWK[van] = now.toOutsideWK();
        changedShare[van] = now.changedShare();
        keptShare[van] = now.keptShare();
        wattPerK[van] = 1 / now.nodes().first1KPerW();
        nodes.set(van, now.nodes());
    }

    /**
     * Begins a step; afterwards {@link #nextAirC} is the air at its end without cooling.
     *
     * @param people aboard each
     * @param outsideC outside air, °C
     * @param faceGainW what sun and sky on opaque faces bring beyond outside air, W
     * @param glassGainW light through the glass that becomes heat, W
     * @param applianceW heat that appliances gave off in the step before, W
     */
    public void open(
            int people, boolean asleep, double outsideC, double faceGainW, double glassGainW, double[] applianceW) {
        PeopleHeat.of(people, asleep, airC, peopleW, moistureW);
        double glassToAirW = solarToAirShare * glassGainW;
        q2W = (1 - solarToAirShare) * glassGainW;
        for (int i = 0; i < vans; i++) {
            q1W[i] = toOutsideWK[i] * outsideC + faceGainW + glassToAirW + (peopleW[i] + applianceW[i]);
        }
        nodes.rest(q1W, q2W, rest1C, rest2C);
        nodes.first(airC, massC, rest1C, rest2C, nextAirC);
    }

    /** Ends the step with so much cooling of the air, W. */
    public void end(double[] coolingW) {
        for (int i = 0; i < vans; i++) {
            q1W[i] -= coolingW[i];
        }
        nodes.rest(q1W, q2W, rest1C, rest2C);
        nodes.first(airC, massC, rest1C, rest2C, nextAirC);
        endMass();
    }

    /** Ends the step without cooling. */
    public void endMass() {
        nodes.second(airC, massC, rest1C, rest2C, nextMassC);
    }

    /**
     * Moisture balance of the step, implicit in the air change.
     *
     * @param outsideRatio humidity ratio outside, kg/kg
     * @param coilW latent heat taken out by the coil, W
     */
    public void moisten(double outsideRatio, double[] coilW) {
        for (int i = 0; i < vans; i++) {
            double gain = (moistureW[i] - coilW[i]) * gainPerW;
            double next = (humidityRatio[i] + changedShare[i] * outsideRatio + gain) * keptShare[i];
            nextHumidityRatio[i] = Math.max(next, 0);
        }
    }

    /** Makes the end of the step the start of the next. */
    public void commit() {
        double[] before = airC;
        airC = nextAirC;
        nextAirC = before;
        before = massC;
        massC = nextMassC;
        nextMassC = before;
        before = humidityRatio;
        humidityRatio = nextHumidityRatio;
        nextHumidityRatio = before;
    }

    /** Air at the start of the step, °C. */
    public double[] airC() {
        return airC;
    }

    /** Humidity ratio at the start of the step, kg/kg. */
    public double[] humidityRatio() {
        return humidityRatio;
    }

    /** Air at its end, °C. */
    public double[] nextAirC() {
        return nextAirC;
    }

    /** Cooling that makes the air end the step a kelvin cooler, W/K. */
    public double[] wattPerK() {
        return wattPerK;
    }
}
