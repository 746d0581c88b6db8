package ampdays.sim;

import ampdays.alternator.Alternator;
import ampdays.alternator.EngineSpec;
import ampdays.alternator.EngineState;
import ampdays.alternator.FactoryUnit;
import ampdays.results.Limit;
import ampdays.scenario.Design;
import ampdays.scenario.Variant;
import ampdays.sun.AirMass;

/**
 * The alternators of a design on a bench: one engine speed, air of one temperature around them, everything that they can
 * give drawn from them. Steps the same components as a run.
 */
public final class AlternatorBench {
    private static final double STEP_S = 10;
    private static final double MEAN_OVER_S = 300;

    /** Voltage of a lithium iron phosphate cell that takes charge, V; its flat middle. */
    private static final double CELL_V = 3.3;

    private final Design design;
    private final EngineSpec engine;
    private final double densityShare;

    /** The engine's speed. */
    public enum Pace {
        IDLE("idle", EngineState.IDLE),
        FAST_IDLE("fast idle", EngineState.FAST_IDLE),
        CRUISE("cruise", EngineState.HIGHWAY);

        private final String label;
        private final EngineState state;

        Pace(String label, EngineState state) {
            this.label = label;
            this.state = state;
        }

        public String label() {
            return label;
        }
    }

    /**
     * What was read at the end.
     *
     * @param currentA over the last five minutes (less when it ran for less), A
     * @param caseC case of the alternator, °C
     * @param limit what kept it from more
     */
    public record Reading(double currentA, double caseC, Limit limit) {}

    private AlternatorBench(Design design, double densityShare) {
        this.design = design;
        this.engine = design.engine();
        this.densityShare = densityShare;
    }

    /** A bench in the air of the variant's place. */
    public static AlternatorBench of(Variant variant) {
        double pressurePa = AirMass.standardPressurePa(variant.site().elevationM());
        return new AlternatorBench(variant.design(), pressurePa / AirMass.SEA_LEVEL_PA);
    }

    /** Nameplate of the second alternator, A. */
    public double secondRatedA() {
        return design.second().orElseThrow().ratedA();
    }

    /** Nameplate of the factory alternator, A. */
    public double factoryRatedA() {
        return design.factory().orElseThrow().alternator().ratedA();
    }

    /** Rating of the DC-DC charger at its output, A. */
    public double chargerRatedA() {
        return design.factory().orElseThrow().charger().ratedA();
    }

    public boolean hasSecond() {
        return design.second().isPresent();
    }

    public boolean hasFactory() {
        return design.factory().isPresent();
    }

    public double engineRpm(Pace pace) {
        return engine.rpm(pace.state);
    }

    /**
     * Full output of the second alternator.
     *
     * @param airC air around it and its temperature at the start, °C
     * @param soakS time at full output after the regulator's ramp, s; at least 10
     */
    public Reading second(Pace pace, double airC, double soakS) {
        Alternator unit = new Alternator(design.second().orElseThrow(), engine, densityShare, airC, STEP_S);
        Mean mean = new Mean(soakS);
        while (mean.goesOn()) {
            unit.open(pace.state, airC);
            mean.add(unit, unit.availableA());
            unit.settle(unit.availableA());
        }
        return new Reading(mean.value(), unit.caseC(), Ruling.ofAlternator(unit));
    }

    /** What the factory alternator gives beyond the vehicle's own load when all of its output is drawn. */
    public Reading factorySpare(Pace pace, double airC, double soakS) {
        FactoryUnit unit = factory(airC, airC);
        Mean mean = new Mean(soakS);
        while (mean.goesOn()) {
            unit.open(pace.state, airC, airC);
            mean.add(unit.alternator(), unit.spareA());
            unit.alternator().settle(unit.alternator().availableA());
        }
        return new Reading(mean.value(), unit.caseC(), Ruling.ofAlternator(unit.alternator()));
    }

    /**
     * What the DC-DC charger gives to a bank that takes all of it, at 3.3 V per cell, while the alternator carries the
     * vehicle's own load and the charger's input and no more.
     *
     * @param cabinC air in the cabin, °C
     */
    public Reading charger(Pace pace, double airC, double cabinC, double soakS) {
        boolean inEngineBay = design.factory().orElseThrow().charger().inEngineBay();
        FactoryUnit unit = factory(airC, inEngineBay ? airC : cabinC);
        double bankV = CELL_V * design.bank().seriesCells();
        Mean mean = new Mean(soakS);
        boolean atRating = false;
        while (mean.goesOn()) {
            unit.open(pace.state, airC, cabinC);
            double mostW = unit.chargerCapA() * bankV;
            atRating = mostW < unit.possibleW();
            double outputW = atRating ? mostW : unit.possibleW();
            mean.add(unit.alternator(), outputW / bankV);
            unit.settle(outputW);
        }
        return new Reading(mean.value(), unit.caseC(), Ruling.ofFactory(atRating, unit));
    }

    private FactoryUnit factory(double airC, double chargerAirC) {
        return new FactoryUnit(design.factory().orElseThrow(), engine, densityShare, airC, chargerAirC, STEP_S);
    }

    /** The run's length and its mean over the last minutes. */
    private static final class Mean {
        private final double soakS;
        private double fullS;
        private double sumAs;
        private double sumS;

        Mean(double soakS) {
            this.soakS = soakS;
        }

        /** Whether the soak, which begins when the ramp is over, is not over yet. */
        boolean goesOn() {
            return fullS < soakS;
        }

        void add(Alternator unit, double currentA) {
            if (Ruling.ofAlternator(unit) == Limit.START_RAMP) {
                return;
            }
            fullS += STEP_S;
            if (fullS > soakS - MEAN_OVER_S) {
                sumAs += currentA * STEP_S;
                sumS += STEP_S;
            }
        }

        double value() {
            return sumAs / sumS;
        }
    }
}
