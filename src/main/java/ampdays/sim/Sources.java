package ampdays.sim;

import ampdays.alternator.Alternator;
import ampdays.alternator.EngineState;
import ampdays.alternator.FactoryUnit;
import ampdays.alternator.UnderBonnet;
import ampdays.battery.ShoreChargerSpec;
import ampdays.cabin.Cabin;
import ampdays.pv.SolarController;
import ampdays.pv.SolarSpec;
import ampdays.scenario.Design;
import java.util.Optional;

/** Panels, shore charger and alternators in the loop: what each can give in a step, and what it gave. One run, one thread. */
final class Sources {
    private final RoofPlan roof;
    private final double solarRatedW;
    private final double solarConversion;
    private final double perSolarConversion;
    private final double solarMostA;
    /** Null when the controller tracks, or without panels. */
    private final SolarController pulseWidth;

    private final double shoreGivesW;
    private final double perShoreEfficiency;
    private final UnderBonnet bonnet;
    /** Null without one, like the next. */
    private final Alternator second;

    private final FactoryUnit factory;
    private final Cabin cabin;
    private final Measured measured;
    private final boolean anyMeasured;
    private double fuelLitres;

    /** @param m gets what no step changes */
    Sources(RunPlan plan, RunState state, Minute m) {
        Design design = plan.variant().design();
        Optional<SolarSpec> panels = design.solar();
        Optional<SolarController> controller = panels.map(SolarSpec::controller);
        this.roof = plan.roof();
        this.solarRatedW = panels.map(SolarSpec::ratedW).orElse(0.0);
        this.solarConversion = controller.map(SolarController::conversionShare).orElse(1.0);
        this.perSolarConversion = 1 / solarConversion;
        this.solarMostA = controller.map(SolarController::mostA).orElse(0.0);
        this.pulseWidth = controller.filter(SolarController::pulseWidth).orElse(null);
        Optional<ShoreChargerSpec> shore = design.shore();
        this.shoreGivesW = shore.map(s -> s.inletW() * s.efficiency()).orElse(0.0);
        this.perShoreEfficiency = shore.map(s -> 1 / s.efficiency()).orElse(1.0);
        this.bonnet = state.bonnet;
        this.second = state.second;
        this.factory = state.factory;
        this.cabin = state.cabin;
        this.measured = plan.measured();
        this.anyMeasured = measured != Measured.NONE;
        m.solarCapA = solarMostA;
        m.solarIsCurrent = pulseWidth != null;
        m.shoreCapA = shore.map(ShoreChargerSpec::ratedA).orElse(0.0);
        design.second().ifPresent(alternator -> {
            m.secondSetPointV = alternator.setPointV();
            m.secondCableOhm = alternator.cableOhm();
        });
    }

    double solarRatedW() {
        return solarRatedW;
    }

    double solarConversion() {
        return solarConversion;
    }

    double solarMostA() {
        return solarMostA;
    }

    /** Works out what each can give in the step that begins. */
    void open(Minute m, Scene now) {
        openPanels(m);
        m.shorePossibleW = now.hookUp() ? shoreGivesW : 0;
        openAlternators(m, now.engine());
    }

    /** What the panels can give; through a pulse-width controller at the battery's voltage of the step before. */
    private void openPanels(Minute m) {
        if (anyMeasured && measured.tellsSolar(m.step)) {
            openMeasuredPanels(m, measured.solarW(m.step));
            return;
        }
        double bestW = roof == null ? 0 : roof.possibleWPerW(m.step) * solarRatedW;
        if (pulseWidth == null) {
            m.solarPossibleW = bestW * solarConversion;
            return;
        }
        m.solarHeldA = pulseWidth.heldA(bestW, roof.cellC(m.step), m.busV);
        m.solarCapA = m.solarHeldA < solarMostA ? m.solarHeldA : solarMostA;
        m.solarPossibleW = m.solarHeldA * m.busV;
    }

    private void openMeasuredPanels(Minute m, double watts) {
        m.solarPossibleW = watts;
        if (pulseWidth != null) {
            m.solarHeldA = m.solarPossibleW / m.busV;
            m.solarCapA = m.solarHeldA;
        }
    }

    private void openAlternators(Minute m, EngineState engine) {
        bonnet.step(engine);
        double bonnetC = m.outsideC + bonnet.meanRiseK();
        m.secondPossibleA = 0;
        m.factoryPossibleW = 0;
        m.factoryCapA = 0;
        boolean runs = engine != EngineState.STOPPED;
        if (second != null) {
            second.open(engine, bonnetC);
            m.secondPossibleA = runs ? second.availableA() : 0;
        }
        if (factory != null) {
            factory.open(engine, bonnetC, cabin.airC());
            if (runs) {
                m.factoryPossibleW = factory.possibleW();
                m.factoryCapA = factory.chargerCapA();
            }
        }
    }

    /** Ends the step with what the bus took of each. */
    void settle(Minute m, Scene now) {
        if (m.solarIsCurrent) {
            m.solarPossibleW = m.solarHeldA * m.busV;
        }
        m.solarSourceW = m.solarW * perSolarConversion;
        m.curtailedW = (m.solarPossibleW - m.solarW) * perSolarConversion;
        m.shoreSourceW = m.shoreW * perShoreEfficiency;
        m.secondSourceW = 0;
        m.factorySourceA = 0;
        m.factorySourceW = 0;
        if (now.engineRuns()) {
            settleAlternators(m);
        }
    }

    /** What alternators on a running engine gave, and the fuel it took. */
    private void settleAlternators(Minute m) {
        if (second != null) {
            second.settle(m.secondA);
            double terminalV = m.busV + m.secondA * m.secondCableOhm;
            m.secondSourceW = m.secondA * terminalV;
            fuelLitres += second.fuelLitres(m.secondA, 0, terminalV);
        }
        if (factory != null) {
            factory.settle(m.factoryW);
            m.factorySourceA = factory.inputA();
            m.factorySourceW = factory.inputW();
            fuelLitres += factory.fuelLitres();
        }
    }

    /** Fuel that charging has taken so far, L. */
    double fuelLitres() {
        return fuelLitres;
    }
}
