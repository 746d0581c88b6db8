package ampdays.sim;

import ampdays.battery.Battery;
import ampdays.cabin.Cabin;
import ampdays.cooling.Cooler;
import ampdays.cooling.CoolerSpec;
import ampdays.cooling.Refrigerator;
import ampdays.load.InverterSpec;
import ampdays.results.AlternatorWork;
import ampdays.results.CabinHistory;
import ampdays.results.Channel;
import ampdays.results.DayTotals;
import ampdays.results.MinuteLog;
import ampdays.results.RunResult;
import ampdays.results.TripCurve;
import ampdays.scenario.Design;
import ampdays.weather.MinuteWeather;
import ampdays.wiring.Circuit;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

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
    private final boolean records;
    private final TripClock clock;
    private final MinuteWeather weather;
    private final Design design;
    private final Battery bank;
    private final Cabin cabin;
    /** Null without one, like the next. */
    private final Refrigerator refrigerator;

    private final Cooler cooler;
    private final Shedding shedding;
    final Climate climate;
    final Sources sources;
    private final CoolerSpec coolerSpec;
    private final InverterSpec inverter;
    private final boolean coolingOnInverter;
    final RunState state;
    final Minute m = new Minute();
    final Scene[] scenes;
    private final LoadPlan.Pattern[] patterns;
    private final boolean chargerIndoors;
    final Totals totals;
    private final Measured measured;
    private final boolean anyMeasured;
    private boolean useMeasured;
    private double plannedHeatW;
    double applianceHeatW;
    private boolean shopping;

    private Simulator(RunPlan plan, Recorder recorder) {
        this.plan = plan;
        this.recorder = recorder;
        this.records = recorder != Recorder.NONE;
        this.clock = plan.clock();
        this.weather = plan.sky().weather();
        this.design = plan.variant().design();
        this.state = new RunState(plan);
        this.bank = state.bank;
        this.cabin = state.cabin;
        this.refrigerator = state.refrigerator;
        this.cooler = state.cooler;
        this.shedding = state.shedding;
        this.climate = new Climate(plan, state);
        this.sources = new Sources(plan, state, m);
        this.coolerSpec = design.cooler().orElse(null);
        this.inverter = design.inverter().orElse(null);
        this.coolingOnInverter = coolerSpec != null && coolerSpec.onInverter();
        this.scenes = Arrays.stream(clock.lines())
                .map(line -> Scene.of(line, design.cabin()))
                .toArray(Scene[]::new);
        this.patterns = plan.loads().patterns();
        this.chargerIndoors =
                design.factory().map(f -> !f.charger().inEngineBay()).orElse(false);
        this.totals = new Totals(plan, state);
        this.measured = plan.measured();
        this.anyMeasured = measured != Measured.NONE;
        bank.open();
        m.busV = bank.emfV();
    }

    /** Runs an option and keeps its totals only. */
    public static RunResult run(RunPlan plan) {
        return run(plan, Recorder.NONE);
    }

    /**
     * Result of an option with what charts of the whole trip need.
     *
     * @param soc state of charge, 0 to 1
     * @param alternators the second alternator first; empty without any
     */
    public record WithCurves(RunResult result, TripCurve soc, CabinHistory cabin, List<AlternatorWork> alternators) {}

    /** Runs an option and keeps its totals and what charts of the whole trip need. */
    public static WithCurves runWithCurves(RunPlan plan) {
        TripRecorder recorder = new TripRecorder(plan);
        RunResult result = run(plan, recorder);
        return new WithCurves(result, recorder.soc(), recorder.cabin(), recorder.alternators());
    }

    /** Runs an option and records every channel of some of its days, one log for each. */
    public static List<MinuteLog> recordDays(RunPlan plan, List<DayTotals> days) {
        List<MinuteRecorder> recorders = days.stream()
                .map(day -> new MinuteRecorder(plan.clock(), day.firstStep(), day.firstStep() + day.steps()))
                .toList();
        run(plan, (m, state) -> {
            for (int i = 0; i < recorders.size(); i++) {
                recorders.get(i).minute(m, state);
            }
        });
        return recorders.stream().map(MinuteRecorder::log).toList();
    }

    /** Runs an option and records every channel of the steps from {@code firstStep} up to {@code endStep}. */
    public static MinuteLog record(RunPlan plan, int firstStep, int endStep) {
        MinuteRecorder minutes = new MinuteRecorder(plan.clock(), firstStep, endStep);
        run(plan, minutes);
        return minutes.log();
    }

    /** Result of an option with the currents of its circuits. */
    public record WithCircuits(RunResult result, CircuitLog circuits) {}

    /** Runs an option and records what flows in these circuits, and the air around them. */
    public static WithCircuits runWithCircuits(RunPlan plan, List<Circuit> circuits) {
        CircuitRecorder recorder = new CircuitRecorder(plan, circuits);
        RunResult result = run(plan, recorder);
        return new WithCircuits(result, recorder.log());
    }

    /** Runs an option and records some channels of the steps from {@code firstStep} up to {@code endStep}. */
    public static MinuteLog record(RunPlan plan, int firstStep, int endStep, Set<Channel> channels) {
        MinuteRecorder minutes = new MinuteRecorder(plan.clock(), firstStep, endStep, channels);
        run(plan, minutes);
        return minutes.log();
    }

    static RunResult run(RunPlan plan, Recorder recorder) {
        return new Simulator(plan, recorder).run(0, plan.clock().steps());
    }

    /**
     * Made to go on from where another was, with all that lasts from step to step.
     *
     * @param before one that has run a part of the same trip
     */
    static Simulator goingOn(Simulator before, RunPlan plan, Recorder recorder) {
        Simulator after = new Simulator(plan, recorder);
        after.state.goOnFrom(before.state);
        after.climate.goOnFrom(before.climate);
        after.m.goOnFrom(before.m);
        after.applianceHeatW = before.applianceHeatW;
        after.shopping = before.shopping;
        return after;
    }

    /** Made to start a trip. */
    static Simulator starting(RunPlan plan, Recorder recorder) {
        return new Simulator(plan, recorder);
    }

    /** Runs the steps from {@code from} up to {@code to}, without the latter, and adds up these. */
    RunResult run(int from, int to) {
        for (int day = 0; day < clock.trip().days(); day++) {
            int first = Math.max(from, clock.firstStepOfDay(day));
            int end = Math.min(to, clock.firstStepOfDay(day + 1));
            if (first < end) {
                totals.beginDay(day);
                for (int i = first; i < end; i++) {
                    step(i, scenes[clock.line(i)]);
                }
                totals.endDay(day, first, end);
            }
        }
        return result();
    }

    /** What came of the steps that were run. */
    RunResult result() {
        totals.addFuel(climate.fuelLitres());
        totals.addFuel(sources.fuelLitres());
        return totals.result();
    }

    TripClock clock() {
        return clock;
    }

    void step(int i, Scene now) {
        m.step = i;
        boolean powered = !bank.loadsCut();
        m.outsideC = weather.airC(i);
        m.pattern = climate.fansRun(m.outsideC)
                ? plan.loads().pattern(i)
                : plan.loads().stillPattern(i);
        shedding.step(bank.soc());
        int level = shedding.level();
        m.leftPattern = level == 0 ? m.pattern : plan.loads().left(m.pattern, level);
        LoadPlan.Pattern pattern = patterns[m.leftPattern];

        climate.step(m, now, pattern.flow(), applianceHeatW, powered);
        refrigerate(now, powered && !shedding.refrigeratorOff());
        useMeasured = anyMeasured && measured.tellsUse(i);
        if (powered) {
            ask(pattern);
        } else {
            askNothing();
        }
        if (useMeasured) {
            askMeasured(i, powered);
        }

        sources.open(m, now);
        bank.open();
        Bus.solve(m, bank);
        startCooler();
        sources.settle(m, now);
        settleLoads(pattern, powered);
        bank.settle(m.bankA, m.busV, cabin.airC());
        applianceHeatW = heatIndoors(pattern);

        totals.minute(m, now);
        if (records) {
            recorder.minute(m, state);
        }
    }

    private void refrigerate(Scene now, boolean powered) {
        if (refrigerator != null) {
            if (shopping && !now.moves()) {
                refrigerator.stock();
            }
            shopping = now.shops();
            refrigerator.step(cabin.airC(), now.awake(), powered);
            m.refrigeratorAskedW = refrigerator.askedW();
        }
    }

    /** What the loads, the inverter and the air conditioner ask of the bus. */
    private void ask(LoadPlan.Pattern pattern) {
        m.outletW = pattern.outletW();
        m.inverterAskedW = pattern.inverterW();
        double coolingOnBusW = m.coolingAskedW;
        if (coolingOnInverter && m.coolingAskedW > 0) {
            m.outletW += m.coolingAskedW;
            m.inverterAskedW = inverter.inputW(m.outletW);
            coolingOnBusW = 0;
        }
        m.askedA = pattern.busA();
        m.askedW = pattern.busW() + m.inverterAskedW + coolingOnBusW + m.refrigeratorAskedW;
    }

    /** What was measured is asked for; what the appliances would have warmed the cabin with goes on warming it. */
    private void askMeasured(int i, boolean powered) {
        plannedHeatW = powered ? m.inverterAskedW - m.outletW + m.refrigeratorAskedW : 0;
        askNothing();
        m.measuredW = measured.useW(i);
        m.askedW = powered ? m.measuredW : 0;
    }

    private void askNothing() {
        m.outletW = 0;
        m.inverterAskedW = 0;
        m.askedA = 0;
        m.askedW = 0;
    }

    private void startCooler() {
        m.coolerStarts = cooler != null && cooler.startW() > 0 && !useMeasured;
        if (m.coolerStarts) {
            StartSurge.meet(m, bank, cooler, coolerSpec, coolingOnInverter ? inverter : null);
        }
    }

    private void settleLoads(LoadPlan.Pattern pattern, boolean powered) {
        double served = powered ? m.servedShare : 0;
        if (useMeasured) {
            settleMeasured(served);
            return;
        }
        double onBusW = pattern.busA() * m.busV + pattern.busW();
        double outletAskedW = pattern.outletW();
        m.loadsW = served * (onBusW + outletAskedW);
        m.inverterLossW = served * (m.inverterAskedW - m.outletW);
        m.coolingW = served * m.coolingAskedW;
        m.refrigeratorW = served * m.refrigeratorAskedW;
        m.unservedW =
                m.coolingMissedW + (1 - served) * (onBusW + outletAskedW + m.coolingAskedW + m.refrigeratorAskedW);
        if (m.leftPattern != m.pattern) {
            addShed(patterns[m.pattern], pattern);
        }
        totals.served(m.pattern, m.leftPattern, served, m.busV);
    }

    private void addShed(LoadPlan.Pattern all, LoadPlan.Pattern left) {
        m.unservedW += (all.busA() - left.busA()) * m.busV + all.busW() - left.busW();
        m.unservedW += all.outletW() - left.outletW();
    }

    private void settleMeasured(double served) {
        m.loadsW = served * m.askedW;
        m.inverterLossW = 0;
        m.coolingW = 0;
        m.refrigeratorW = 0;
        m.unservedW = m.measuredW - m.loadsW;
    }

    /** Heat that appliances, converters and bank gave off indoors in this step, W; the cabin feels it in the next. */
    private double heatIndoors(LoadPlan.Pattern pattern) {
        double heatW =
                m.loadsW > 0 ? m.servedShare * (pattern.busA() * m.busV * pattern.heatShareOfA() + pattern.heatW()) : 0;
        return heatW
                + (useMeasured ? plannedHeatW : m.inverterLossW + m.refrigeratorW)
                + (m.solarSourceW - m.solarW)
                + (m.shoreSourceW - m.shoreW)
                + (chargerIndoors ? m.factorySourceW - m.factoryW : 0)
                + bank.heatW();
    }
}
