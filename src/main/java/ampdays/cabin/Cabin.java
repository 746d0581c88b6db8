package ampdays.cabin;

import ampdays.heat.TwoNodeStep;

/**
 * The cabin during one run: air and mass temperature, humidity. One run, one thread.
 *
 * <p>{@link #open} takes the step's weather and gains; then either {@link #floatFree} or an air conditioner sets the end
 * of the step ({@link #cooledTo}).
 */
public final class Cabin {
    /** Linings and clothes store moisture: the air's own store times this; a guess. */
    private static final double MOISTURE_STORE = 5;

    private static final double AIR_KG_M3 = 1.2;
    private static final double EVAPORATION_J_PER_KG = 2.45e6;

    private final CabinSpec spec;
    private final double stepS;
    private final double densityShare;
    private final double moistureStoreKg;
    final double gainPerW;
    final double solarToAirShare;
    private final Ventilation[] ventilations;
    double airC;
    double massC;
    double humidityRatio;

    private Ventilation now;
    private int nowIndex;
    private double q1W;
    private double q2W;
    private double leakedShare;

    /** What depends on whether the van moves, whether the windows are covered, and which fans run. */
    record Ventilation(double toOutsideWK, double changedShare, double keptShare, TwoNodeStep nodes) {}

    /** @param airflowsM3H every flow of outside air that fans may drive, m³/h; the first is 0 */
    public Cabin(
            CabinSpec spec,
            double[] airflowsM3H,
            double densityShare,
            double startC,
            double startHumidityRatio,
            double stepS) {
        this.spec = spec;
        this.stepS = stepS;
        this.densityShare = densityShare;
        this.moistureStoreKg = spec.volumeM3() * AIR_KG_M3 * densityShare * MOISTURE_STORE;
        this.gainPerW = stepS / (EVAPORATION_J_PER_KG * moistureStoreKg);
        this.solarToAirShare = spec.solarToAirShare();
        this.ventilations = new Ventilation[4 * airflowsM3H.length];
        double parkedPerH = spec.leakM2() > 0 ? 0 : spec.parkedAirChangesPerH();
        for (int flow = 0; flow < airflowsM3H.length; flow++) {
            double fansPerH = airflowsM3H[flow] / spec.volumeM3();
            ventilations[index(flow, false, false)] = ventilation(parkedPerH + fansPerH, false);
            ventilations[index(flow, false, true)] = ventilation(parkedPerH + fansPerH, true);
            ventilations[index(flow, true, false)] = ventilation(spec.drivingAirChangesPerH() + fansPerH, false);
            ventilations[index(flow, true, true)] = ventilation(spec.drivingAirChangesPerH() + fansPerH, true);
        }
        this.now = ventilations[0];
        this.airC = startC;
        this.massC = startC;
        this.humidityRatio = startHumidityRatio;
    }

    private static int index(int flow, boolean moves, boolean covered) {
        return 4 * flow + (moves ? 2 : 0) + (covered ? 1 : 0);
    }

    private Ventilation ventilation(double changesPerH, boolean covered) {
        double airWK = CabinPhysics.airChangesWK(spec.volumeM3(), changesPerH, densityShare);
        double toOutsideWK = CabinPhysics.envelopeWK(spec, covered) + airWK;
        double airKgS = spec.volumeM3() * AIR_KG_M3 * densityShare * changesPerH / 3600;
        double changed = stepS * airKgS / moistureStoreKg;
        return new Ventilation(
                toOutsideWK,
                changed,
                1 / (1 + changed),
                new TwoNodeStep(spec.airJK(), spec.massJK(), toOutsideWK, 0, spec.airToMassWK(), stepS));
    }

    /** What holds in a standing van. */
    Ventilation standing(int flow, boolean covered) {
        return ventilations[index(flow, false, covered)];
    }

    /** Goes on from where another was. */
    public void goOnFrom(Cabin before) {
        airC = before.airC;
        massC = before.massC;
        humidityRatio = before.humidityRatio;
    }

    /**
     * Begins a step.
     *
     * @param flow which of the fans' air flows holds
     * @param covered whether the windows are covered
     * @param outsideC outside air, °C
     * @param faceGainW what sun and sky on opaque faces bring beyond outside air, W
     * @param glassGainW light through the glass that becomes heat, W
     * @param indoorHeatW people and appliances, W
     */
    public void open(
            int flow,
            boolean moves,
            boolean covered,
            double outsideC,
            double faceGainW,
            double glassGainW,
            double indoorHeatW) {
        int index = index(flow, moves, covered);
        if (index != nowIndex) {
            nowIndex = index;
            now = ventilations[index];
        }
        q1W = now.toOutsideWK * outsideC + faceGainW + solarToAirShare * glassGainW + indoorHeatW;
        q2W = (1 - solarToAirShare) * glassGainW;
        leakedShare = 0;
    }

    /**
     * Lets air through the gaps of a standing van, by the temperatures at the start of the step.
     *
     * @param windMs wind at 10 m, m/s
     */
    public void leak(double outsideC, double windMs) {
        double flowM3S = CabinPhysics.leakM3S(spec.leakM2(), airC - outsideC, windMs);
        q1W += flowM3S * CabinPhysics.AIR_J_M3K * densityShare * (outsideC - airC);
        leakedShare = stepS * flowM3S * AIR_KG_M3 * densityShare / moistureStoreKg;
    }

    /** Takes heat out of the air node in this step, W. */
    public void drawOff(double heatW) {
        q1W -= heatW;
    }

    /**
     * Heat that must leave the air node for the air to end the step at a temperature, W; 0 when it ends below it anyway.
     *
     * @param wantedC that temperature, °C
     */
    public double excessW(double wantedC) {
        double rest1C = now.nodes.rest1C(q1W, q2W);
        double rest2C = now.nodes.rest2C(q1W, q2W);
        double endC = rest1C + now.nodes.after1K(airC - rest1C, massC - rest2C);
        return endC > wantedC ? (endC - wantedC) / now.nodes.first1KPerW() : 0;
    }

    /** Ends the step without cooling. */
    public void floatFree() {
        double rest1C = now.nodes.rest1C(q1W, q2W);
        double rest2C = now.nodes.rest2C(q1W, q2W);
        double d1K = airC - rest1C;
        double d2K = massC - rest2C;
        airC = rest1C + now.nodes.after1K(d1K, d2K);
        massC = rest2C + now.nodes.after2K(d1K, d2K);
    }

    /** Ends the step at temperatures that an air conditioner has worked out, °C. */
    public void cooledTo(double airAtEndC, double massAtEndC) {
        airC = airAtEndC;
        massC = massAtEndC;
    }

    /**
     * Moisture balance of the step, implicit in the air change.
     *
     * @param outsideRatio humidity ratio outside, kg/kg
     * @param peopleW latent heat of the people, W
     * @param coilW latent heat taken out by the coil, W
     */
    public void moisten(double outsideRatio, double peopleW, double coilW) {
        double gain = (peopleW - coilW) * gainPerW;
        double next = leakedShare > 0
                ? (humidityRatio + (now.changedShare + leakedShare) * outsideRatio + gain)
                        / (1 + now.changedShare + leakedShare)
                : (humidityRatio + now.changedShare * outsideRatio + gain) * now.keptShare;
        humidityRatio = next > 0 ? next : 0;
    }

    public double airC() {
        return airC;
    }

    public double massC() {
        return massC;
    }

    public double humidityRatio() {
        return humidityRatio;
    }

    /** The exact step that holds now. */
    public TwoNodeStep nodes() {
        return now.nodes;
    }

    /** Heat into the air node in this step without cooling, conductance times outside air included, W. */
    public double q1W() {
        return q1W;
    }

    /** Heat into the mass node in this step, W. */
    public double q2W() {
        return q2W;
    }
}
