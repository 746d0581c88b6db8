package ampdays.alternator;

import ampdays.heat.OneNodeStep;

/**
 * The factory alternator with what hangs on it, during one run: the vehicle's own load first, then the DC-DC charger
 * behind its cable. One run, one thread.
 *
 * <p>A step is {@link #open} (what the charger could give, and why no more), then {@link #settle} with what it gave. The
 * charger is one heat node in the air of its place, heated by its own loss; its temperature at the start of a step holds
 * back its rating of that step.
 */
public final class FactoryUnit {
    private final FactorySpec spec;
    private final ChargerSpec charger;
    final Alternator alternator;
    final OneNodeStep chargerNode;
    private final double cableOhm;
    private final double lossPerOutput;
    final boolean inEngineBay;

    double chargerC;
    private boolean running;
    private double chargerAirC;
    private double systemV;
    private double vehicleA;
    private double possibleW;
    private double ratingShare;
    private boolean cableRules;
    private double inputA;
    private double carriedA;

    /**
     * @param airDensityShare air density over that at sea level
     * @param startC temperature of the alternator at the start, °C
     * @param chargerStartC temperature of the charger at the start, °C
     * @param stepS length of a step, s
     */
    public FactoryUnit(
            FactorySpec spec,
            EngineSpec engine,
            double airDensityShare,
            double startC,
            double chargerStartC,
            double stepS) {
        this(spec, new TurningAlternator(spec.alternator(), engine, airDensityShare, stepS), startC, chargerStartC);
    }

    /**
     * @param turning its alternator on the engine
     * @param startC temperature of the alternator at the start, °C
     * @param chargerStartC temperature of the charger at the start, °C
     */
    public FactoryUnit(FactorySpec spec, TurningAlternator turning, double startC, double chargerStartC) {
        this.spec = spec;
        this.charger = spec.charger();
        this.alternator = new Alternator(turning, startC);
        this.chargerNode = new OneNodeStep(charger.heatJK(), charger.toAirWK(), turning.stepS);
        this.cableOhm = spec.alternator().cableOhm();
        this.lossPerOutput = 1 / charger.efficiency() - 1;
        this.inEngineBay = charger.inEngineBay();
        this.chargerC = chargerStartC;
        stop();
    }

    /** Goes on from where another was. */
    public void goOnFrom(FactoryUnit before) {
        alternator.goOnFrom(before.alternator);
        chargerC = before.chargerC;
    }

    /**
     * Begins a step.
     *
     * @param underBonnetC air around the alternator, °C
     * @param cabinC air in the cabin, °C
     */
    public void open(EngineState state, double underBonnetC, double cabinC) {
        double airC = inEngineBay ? underBonnetC : cabinC;
        if (state == EngineState.STOPPED) {
            if (running) {
                stop();
            }
            alternator.open(EngineState.STOPPED, underBonnetC);
            chargerC = chargerNode.nextC(chargerC, airC, 0);
        } else {
            running = true;
            chargerAirC = airC;
            turn(state, underBonnetC);
        }
    }

    private void stop() {
        running = false;
        systemV = spec.voltage().setPointV();
        vehicleA = 0;
        ratingShare = 1;
        possibleW = 0;
        cableRules = false;
        inputA = 0;
        carriedA = 0;
    }

    private void turn(EngineState state, double underBonnetC) {
        systemV = spec.voltage().at(state, alternator.runningS());
        alternator.open(state, underBonnetC);
        vehicleA = spec.vehicleA(state);
        ratingShare = AlternatorPhysics.cutBackShare(chargerC, charger.derateFromC(), charger.derateToC());
        double spareA = spareA();
        double mostA = alternator.rampShare() * DcDcCharger.mostInputA(systemV, charger.leastInputV(), cableOhm);
        cableRules = mostA < spareA;
        possibleW = DcDcCharger.outputW(cableRules ? mostA : spareA, systemV, cableOhm, charger.efficiency());
    }

    /**
     * Ends the step; one with the engine off has ended when it began.
     *
     * @param outputW what the charger gave, W
     */
    public void settle(double outputW) {
        if (!running) {
            return;
        }
        inputA = outputW > 0 ? DcDcCharger.inputA(outputW, systemV, cableOhm, charger.efficiency()) : 0;
        carriedA = alternator.availableA() - spareA();
        alternator.settle(carriedA + inputA);
        chargerC = chargerNode.nextC(chargerC, chargerAirC, outputW * lossPerOutput);
    }

    /** Fuel that charging cost in the last step, litres. */
    public double fuelLitres() {
        return alternator.fuelLitres(carriedA + inputA, carriedA, systemV);
    }

    /** What the alternator could give beyond the vehicle's own load, A. */
    public double spareA() {
        return alternator.spareA(vehicleA);
    }

    /** What the charger could put out if its rating allowed, W. */
    public double possibleW() {
        return possibleW;
    }

    /** What its rating leaves at its temperature, A at the output; after a start it ramps with the alternator. */
    public double chargerCapA() {
        return ratingShare * alternator.rampShare() * charger.ratedA();
    }

    /** Whether heat holds the charger's rating back. */
    public boolean chargerIsHot() {
        return ratingShare < 1;
    }

    /** Whether the voltage at the charger's input, not the alternator, holds its input back. */
    public boolean cableRules() {
        return cableRules;
    }

    /** Current that went into the charger's cable in the last step, A. */
    public double inputA() {
        return inputA;
    }

    /** Current that the alternator gave in the last step, the vehicle's own load included, A. */
    public double outputA() {
        return carriedA + inputA;
    }

    /** Power that went into the charger's cable in the last step, W. */
    public double inputW() {
        return inputA * systemV;
    }

    /** Voltage at the take-off point, V. */
    public double systemV() {
        return systemV;
    }

    public Alternator alternator() {
        return alternator;
    }

    public double caseC() {
        return alternator.caseC();
    }

    public double chargerC() {
        return chargerC;
    }
}
