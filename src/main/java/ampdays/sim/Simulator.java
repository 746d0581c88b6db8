package ampdays.sim;

import ampdays.alternator.Alternator;
import ampdays.alternator.DcDcCharger;
import ampdays.alternator.FactorySpec;
import ampdays.battery.Battery;
import ampdays.battery.ShoreChargerSpec;
import ampdays.cabin.CabinSpec;
import ampdays.cabin.PeopleHeat;
import ampdays.pv.SolarController;
import ampdays.pv.SolarSpec;
import ampdays.results.MinuteLog;
import ampdays.results.RunResult;
import ampdays.results.SocCurve;
import ampdays.scenario.Design;
import ampdays.trip.People;
import ampdays.trip.Stretch;
import ampdays.trip.Vehicle;
import ampdays.weather.MinuteWeather;

/**
 * Steps one option through its trip. The order of calls in {@link #step} is the order of cause and effect:
 * timetable, sky, cabin and cooling, refrigerator, loads, what each source can give, what the bank takes, sharing, heats
 * for the next step, ledger, ruling limit, recorder.
 *
 * <p>Cost contract: no allocation in a step ({@code SimulatorAllocationTest} measures it) and about 100 ns per step with
 * every component on (benchmark {@code SimulatorBenchmark}; figures in docs/SPEED.md). Memory beyond the plan does not
 * grow with the trip but for one row of totals a day.
 */
public final class Simulator {
    private final RunPlan plan;
    private final Recorder recorder;
    private final TripClock clock;
    private final MinuteWeather weather;
    private final Design design;
    private final CabinSpec cabinSpec;
    private final RunState state;
    private final Minute m = new Minute();
    private final LoadPlan.Pattern[] patterns;
    private final double solarRatedW;
    private final double solarConversion;
    private final double solarMostA;
    /** Null when the controller tracks, or without panels. */
    private final SolarController pulseWidth;

    private final FactorySpec factorySpec;
    private final ShoreChargerSpec shoreSpec;
    private final Totals totals;
    private double applianceHeatW;

    private Simulator(RunPlan plan, Recorder recorder) {
        this.plan = plan;
        this.recorder = recorder;
        this.clock = plan.clock();
        this.weather = plan.sky().weather();
        this.design = plan.variant().design();
        this.cabinSpec = design.cabin();
        this.state = new RunState(plan);
        this.patterns = plan.loads().patterns();
        this.solarRatedW = design.solar().map(SolarSpec::ratedW).orElse(0.0);
        this.solarConversion =
                design.solar().map(s -> s.controller().conversionShare()).orElse(1.0);
        this.solarMostA = design.solar().map(s -> s.controller().mostA()).orElse(0.0);
        this.pulseWidth = design.solar()
                .map(SolarSpec::controller)
                .filter(SolarController::pulseWidth)
                .orElse(null);
        this.factorySpec = design.factory().orElse(null);
        this.shoreSpec = design.shore().orElse(null);
        this.totals = new Totals(plan, state);
        m.solarCapA = solarMostA;
        m.solarIsCurrent = pulseWidth != null;
        m.shoreCapA = shoreSpec == null ? 0 : shoreSpec.ratedA();
        design.second().ifPresent(second -> {
            m.secondSetPointV = second.setPointV();
            m.secondCableOhm = second.cableOhm();
        });
        state.bank.open();
        m.busV = state.bank.emfV();
    }

    /** Runs an option and keeps its totals only. */
    public static RunResult run(RunPlan plan) {
        return run(plan, Recorder.NONE);
    }

    /** Result of an option with the curve of its state of charge. */
    public record WithCurve(RunResult result, SocCurve curve) {}

    /** Runs an option and keeps its totals and the curve of its state of charge. */
    public static WithCurve runWithCurve(RunPlan plan) {
        SocCurveRecorder curve = new SocCurveRecorder(plan.clock());
        return new WithCurve(run(plan, curve), curve.curve());
    }

    /** Runs an option and records every channel of the steps from {@code firstStep} up to {@code endStep}. */
    public static MinuteLog record(RunPlan plan, int firstStep, int endStep) {
        MinuteRecorder minutes = new MinuteRecorder(plan.clock(), firstStep, endStep);
        run(plan, minutes);
        return minutes.log();
    }

    static RunResult run(RunPlan plan, Recorder recorder) {
        return new Simulator(plan, recorder).run();
    }

    private RunResult run() {
        for (int day = 0; day < clock.trip().days(); day++) {
            totals.beginDay(day);
            int end = clock.firstStepOfDay(day + 1);
            for (int i = clock.firstStepOfDay(day); i < end; i++) {
                step(i);
            }
            totals.endDay(day);
        }
        return totals.result();
    }

    private void step(int i) {
        m.step = i;
        Stretch now = clock.stretch(i);
        Vehicle vehicle = now.vehicle();
        People people = now.people();
        LoadPlan.Pattern pattern = patterns[plan.loads().pattern(i)];
        boolean powered = !state.bank.loadsCut();
        m.outsideC = weather.airC(i);

        coolCabin(i, vehicle, people, powered);
        refrigerate(people, powered);
        m.outletW = powered ? pattern.outletW() : 0;
        m.askedA = powered ? pattern.busA() : 0;
        m.askedW = powered ? pattern.busW() + pattern.inverterW() + m.coolingAskedW + m.refrigeratorAskedW : 0;

        openPanels(i);
        m.shorePossibleW = shoreSpec != null && now.hookUp() ? shoreSpec.inletW() * shoreSpec.efficiency() : 0;
        openAlternators(vehicle);

        Battery bank = state.bank;
        bank.open();
        Bus.solve(m, bank);
        settleSources(vehicle);
        settleLoads(pattern, powered);
        bank.settle(m.bankA, m.busV, state.cabin.airC());
        applianceHeatW = heatIndoors(pattern);

        totals.minute(m, vehicle, people);
        recorder.minute(m, state);
    }

    private void coolCabin(int i, Vehicle vehicle, People people, boolean powered) {
        int present = people == People.AWAY ? 0 : cabinSpec.people();
        double airC = state.cabin.airC();
        double peopleW = present * PeopleHeat.sensibleW(airC);
        double moistureW = present * PeopleHeat.latentW(airC, people == People.ASLEEP);
        state.cabin.open(
                vehicle.moves(),
                m.outsideC,
                plan.cabin().faceGainW(i),
                plan.cabin().glassGainW(i),
                peopleW + applianceHeatW);
        double setC = setPointC(people);
        m.coolingAskedW = 0;
        m.coolingMissedW = 0;
        double coilW = 0;
        boolean wanted = state.cooler != null && !Double.isNaN(setC);
        if (wanted && powered && state.cooler.mayRun(m.busV)) {
            double wetBulbC = state.moistAir.wetBulbC(airC, state.cabin.humidityRatio());
            state.cooler.step(
                    state.cabin.nodes(),
                    airC,
                    state.cabin.massC(),
                    state.cabin.q1W(),
                    state.cabin.q2W(),
                    setC,
                    wetBulbC,
                    m.outsideC,
                    m.busV);
            state.cabin.cooledTo(state.cooler.node1C(), state.cooler.node2C());
            m.coolingAskedW = state.cooler.inputW();
            coilW = state.cooler.latentW();
        } else {
            if (state.cooler != null) {
                state.cooler.off(clock.stepSeconds());
            }
            state.cabin.floatFree();
            m.coolingMissedW = wanted && airC > setC ? state.cooler.fullInputW(m.outsideC) : 0;
        }
        state.cabin.moisten(weather.humidityRatio(i), moistureW, coilW);
    }

    private double setPointC(People people) {
        return switch (people) {
            case AWAKE -> cabinSpec.awakeC();
            case ASLEEP -> cabinSpec.asleepC();
            case ABOARD -> cabinSpec.aboardC();
            case AWAY -> cabinSpec.awayC();
        };
    }

    private void refrigerate(People people, boolean powered) {
        if (state.refrigerator != null) {
            state.refrigerator.step(state.cabin.airC(), people == People.AWAKE, powered);
            m.refrigeratorAskedW = state.refrigerator.askedW();
        }
    }

    /** What the panels can give; through a pulse-width controller at the battery's voltage of the step before. */
    private void openPanels(int i) {
        double bestW = plan.roof() == null ? 0 : plan.roof().possibleWPerW(i) * solarRatedW;
        if (pulseWidth == null) {
            m.solarPossibleW = bestW * solarConversion;
            return;
        }
        m.solarHeldA = pulseWidth.heldA(bestW, plan.roof().cellC(i), m.busV);
        m.solarCapA = m.solarHeldA < solarMostA ? m.solarHeldA : solarMostA;
        m.solarPossibleW = m.solarHeldA * m.busV;
    }

    private void openAlternators(Vehicle vehicle) {
        switch (vehicle) {
            case PARKED -> state.bonnet.stopped();
            case IDLING -> state.bonnet.idle();
            case TOWN -> state.bonnet.town();
            case HIGHWAY -> state.bonnet.highway();
        }
        m.secondPossibleA = 0;
        m.factoryPossibleW = 0;
        if (state.second != null) {
            open(state.second, vehicle);
            m.secondPossibleA = state.second.availableA();
        }
        if (state.factory != null) {
            open(state.factory, vehicle);
            double spareA = state.factory.spareA(vehicleA(vehicle));
            m.factoryCapA = factorySpec.chargerA() * state.factory.rampShare();
            m.factoryPossibleW = spareA > 0
                    ? DcDcCharger.outputW(
                            spareA,
                            factorySpec.alternator().setPointV(),
                            factorySpec.alternator().cableOhm(),
                            factorySpec.chargerEfficiency())
                    : 0;
        }
    }

    private static void open(Alternator alternator, Vehicle vehicle) {
        switch (vehicle) {
            case PARKED -> alternator.openStopped();
            case IDLING -> alternator.openIdle();
            case TOWN -> alternator.openTown();
            case HIGHWAY -> alternator.openHighway();
        }
    }

    private double vehicleA(Vehicle vehicle) {
        return switch (vehicle) {
            case PARKED -> 0;
            case IDLING -> factorySpec.vehicleIdleA();
            case TOWN, HIGHWAY -> factorySpec.vehicleDrivingA();
        };
    }

    private void settleSources(Vehicle vehicle) {
        if (m.solarIsCurrent) {
            m.solarPossibleW = m.solarHeldA * m.busV;
        }
        m.solarSourceW = m.solarW / solarConversion;
        m.curtailedW = (m.solarPossibleW - m.solarW) / solarConversion;
        m.shoreSourceW = m.shoreW > 0 ? m.shoreW / shoreSpec.efficiency() : 0;
        double bonnetC = m.outsideC + state.bonnet.riseK();
        m.secondSourceW = 0;
        if (state.second != null) {
            double terminalV = m.busV + m.secondA * m.secondCableOhm;
            m.secondSourceW = m.secondA * terminalV;
            state.second.settle(m.secondA, bonnetC);
            totals.addFuel(state.second.fuelLitres(m.secondA, 0, terminalV));
        }
        m.factorySourceA = 0;
        m.factorySourceW = 0;
        if (state.factory != null) {
            double setPointV = factorySpec.alternator().setPointV();
            if (m.factoryW > 0) {
                m.factorySourceA = DcDcCharger.inputA(
                        m.factoryW, setPointV, factorySpec.alternator().cableOhm(), factorySpec.chargerEfficiency());
                m.factorySourceW = m.factorySourceA * setPointV;
            }
            double carriedA = state.factory.availableA() - state.factory.spareA(vehicleA(vehicle));
            state.factory.settle(carriedA + m.factorySourceA, bonnetC);
            totals.addFuel(state.factory.fuelLitres(carriedA + m.factorySourceA, carriedA, setPointV));
        }
    }

    private void settleLoads(LoadPlan.Pattern pattern, boolean powered) {
        double served = powered ? m.servedShare : 0;
        double onBusW = pattern.busA() * m.busV + pattern.busW();
        m.loadsW = served * (onBusW + pattern.outletW());
        m.inverterLossW = served * (pattern.inverterW() - pattern.outletW());
        m.coolingW = served * m.coolingAskedW;
        m.refrigeratorW = served * m.refrigeratorAskedW;
        m.unservedW =
                m.coolingMissedW + (1 - served) * (onBusW + pattern.outletW() + m.coolingAskedW + m.refrigeratorAskedW);
        totals.served(plan.loads().pattern(m.step), served, m.busV);
    }

    /** Heat that appliances, converters and bank gave off indoors in this step, W; the cabin feels it in the next. */
    private double heatIndoors(LoadPlan.Pattern pattern) {
        double heatW = m.inverterLossW > 0 || m.loadsW > 0
                ? m.servedShare * (pattern.busA() * m.busV * pattern.heatShareOfA() + pattern.heatW())
                : 0;
        return heatW
                + m.refrigeratorW
                + (m.solarSourceW - m.solarW)
                + (m.shoreSourceW - m.shoreW)
                + (m.factorySourceW - m.factoryW)
                + state.bank.heatW();
    }
}
