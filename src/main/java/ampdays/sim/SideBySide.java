package ampdays.sim;

import ampdays.alternator.RestingAlternators;
import ampdays.alternator.RestingFactoryUnits;
import ampdays.alternator.UnderBonnet;
import ampdays.battery.Banks;
import ampdays.cabin.Cabins;
import ampdays.cooling.Coolers;
import ampdays.cooling.Refrigerators;
import ampdays.results.Limit;
import ampdays.results.RunResult;
import ampdays.scenario.Design;
import ampdays.weather.MinuteWeather;
import java.util.Arrays;
import java.util.List;

/**
 * Steps several options through the same trip at once. While the engine stands still, the vans in which nothing special
 * happens are taken through a step side by side, by the same equations in loops over vans, which the compiler turns into
 * instructions for several vans at a time; a van in which a limit of discharge, voltage, temperature or shedding is met
 * takes that step and those up to the end of the stretch by itself. The results are those of {@link Simulator}, to the last
 * bit. Test: {@code FleetTest}.
 */
final class SideBySide {
    /** With less than one of so many aboard all are quicker by themselves. */
    private static final int FEW = 3;

    private final int vans;
    private final RunPlan plan;
    private final TripClock clock;
    private final Scene[] scenes;
    private final MinuteWeather weather;
    private final double coolerLeastV;
    private final int stepsAnHour;
    private final Simulator[] runs;

    private final Cabins cabins;
    /** Null without them, like the next three. */
    private final Coolers coolers;

    private final Refrigerators refrigerators;
    private final RestingAlternators second;
    private final RestingFactoryUnits factory;
    private final Banks banks;
    private final FleetBus bus;
    private final FleetSums sums;
    private final FleetLoads loads;
    private final UnderBonnet bonnet;
    private final UnderBonnet bonnetBefore;
    private final double[] applianceW;
    private final double[] zeroW;
    private final boolean[] aboard;
    private final int[] sinceStep;
    private final double[] shedsBelow;
    private final double[] dayLowestSoc;
    /** Above 0 where a step is like others. */
    private final double[] plain;

    private final double[] stays;
    private int vansAboard;
    /** Whether the vans were asked aboard in this stretch between drives. */
    private boolean asked;

    /** @param plans that {@link Fleet} has found to be alike */
    private SideBySide(List<RunPlan> plans) {
        this.vans = plans.size();
        this.plan = plans.get(0);
        this.clock = plan.clock();
        this.weather = plan.sky().weather();
        this.runs = plans.stream()
                .map(each -> Simulator.starting(each, Recorder.NONE))
                .toArray(Simulator[]::new);
        this.scenes = runs[0].scenes;
        Design design = plan.variant().design();
        this.coolerLeastV = design.cooler().map(Coolers::leastV).orElse(0.0);
        this.stepsAnHour = Math.toIntExact(3600 / clock.stepSeconds());
        RunState one = runs[0].state;
        this.cabins = new Cabins(vans, one.cabin);
        this.coolers = design.cooler()
                .map(spec -> new Coolers(vans, spec, one.moistAir))
                .orElse(null);
        this.refrigerators = one.refrigerator == null ? null : new Refrigerators(vans);
        this.second = one.second == null ? null : new RestingAlternators(vans);
        this.factory = one.factory == null ? null : new RestingFactoryUnits(vans, one.factory);
        this.banks = new Banks(vans);
        this.bus = new FleetBus(vans);
        this.sums = new FleetSums(vans, clock.stepSeconds());
        this.loads = new FleetLoads(vans, plan, cabins, bus, sums);
        this.bonnet = new UnderBonnet(design.engine(), clock.stepSeconds());
        this.bonnetBefore = new UnderBonnet(design.engine(), clock.stepSeconds());
        applianceW = new double[vans];
        zeroW = new double[vans];
        aboard = new boolean[vans];
        sinceStep = new int[vans];
        shedsBelow = new double[vans];
        dayLowestSoc = new double[vans];
        plain = new double[vans];
        stays = new double[vans];
        for (int van = 0; van < vans; van++) {
            bus.load(van, runs[van].sources);
            shedsBelow[van] = runs[van].state.shedding.firstShare();
        }
    }

    /** Runs such vans; results in their order. */
    static List<RunResult> run(List<RunPlan> plans) {
        return new SideBySide(plans).run();
    }

    private List<RunResult> run() {
        for (int day = 0; day < clock.days(); day++) {
            int first = clock.firstStepOfDay(day);
            int end = clock.firstStepOfDay(day + 1);
            for (Simulator run : runs) {
                run.totals.beginDay(day);
            }
            for (int i = first; i < end; i++) {
                step(i, scenes[clock.line(i)], i + 1 == end);
            }
            for (Simulator run : runs) {
                run.totals.endDay(day, first, end);
            }
        }
        return Arrays.stream(runs).map(Simulator::result).toList();
    }

    private void step(int i, Scene now, boolean endsDay) {
        boolean apart = i == 0 || endsDay || now.engineRuns() || now.hookUp() || scenes[clock.line(i - 1)].engineRuns();
        if (apart) {
            leaveAll(i);
            asked = false;
        } else if (!asked) {
            board(i);
            asked = true;
        }
        if (vansAboard * FEW < vans) {
            leaveAll(i);
        }
        for (int van = 0; van < vans; van++) {
            if (!aboard[van]) {
                runs[van].step(i, now);
            }
        }
        if (vansAboard > 0) {
            sideBySide(i, now);
        }
    }

    /** Takes aboard the vans in which nothing special is to be expected. */
    private void board(int i) {
        bonnet.goOnFrom(runs[0].state.bonnet);
        for (int van = 0; van < vans; van++) {
            Simulator run = runs[van];
            RunState state = run.state;
            aboard[van] = Banks.calm(state.bank)
                    && state.shedding.level() == 0
                    && state.bank.soc() >= shedsBelow[van]
                    && run.m.busV >= coolerLeastV
                    && (state.cooler == null || !state.cooler.stopped());
            if (aboard[van]) {
                vansAboard++;
                load(van, i);
            }
        }
    }

    private void load(int van, int i) {
        Simulator run = runs[van];
        RunState state = run.state;
        sinceStep[van] = i;
        cabins.load(van, state.cabin);
        banks.load(van, state.bank);
        if (refrigerators != null) {
            refrigerators.load(van, state.refrigerator);
        }
        if (second != null) {
            second.load(van, state.second);
        }
        if (factory != null) {
            factory.load(van, state.factory);
        }
        sums.load(van, run.totals);
        dayLowestSoc[van] = run.totals.dayLowestSoc;
        applianceW[van] = run.applianceHeatW;
        loads.load(van, run);
        bus.busV[van] = run.m.busV;
    }

    private void leaveAll(int i) {
        for (int van = 0; van < vans && vansAboard > 0; van++) {
            if (aboard[van]) {
                leave(van, i, bonnet);
                runs[van].m.busV = bus.busV[van];
            }
        }
    }

    /** Gives a van back what it has at the start of a step; it goes on by itself. */
    private void leave(int van, int i, UnderBonnet underBonnet) {
        Simulator run = runs[van];
        RunState state = run.state;
        aboard[van] = false;
        vansAboard--;
        cabins.store(van, state.cabin);
        banks.store(van, state.bank, i - sinceStep[van], i % stepsAnHour);
        if (refrigerators != null) {
            refrigerators.store(van, state.refrigerator);
        }
        if (second != null) {
            second.store(van, state.second);
        }
        if (factory != null) {
            factory.store(van, state.factory);
        }
        sums.store(van, run.totals);
        loads.store(van, run);
        state.bonnet.goOnFrom(underBonnet);
        run.applianceHeatW = applianceW[van];
    }

    private void sideBySide(int i, Scene now) {
        double outsideC = weather.airC(i);
        loads.choose(i, now, outsideC, runs, aboard);
        cabins.open(
                now.present(),
                now.asleep(),
                outsideC,
                plan.cabin().faceGainW(i),
                plan.cabin().glassGainW(i),
                applianceW);
        boolean cools = coolers != null && now.wanted();
        if (cools) {
            coolers.step(
                    cabins.airC(), cabins.humidityRatio(), cabins.nextAirC(), cabins.wattPerK(), now.setC(), outsideC);
            cabins.end(coolers.coolingW());
        } else {
            cabins.endMass();
        }
        cabins.moisten(weather.humidityRatio(i), cools ? coolers.latentW() : zeroW);
        double[] cabinC = cabins.nextAirC();
        if (refrigerators != null) {
            refrigerate(now, cabinC);
        }
        restAlternators(now, outsideC, cabinC);
        banks.open();
        double possibleWPerW = plan.roof() == null ? 0 : plan.roof().possibleWPerW(i);
        bus.solve(
                possibleWPerW,
                cools ? coolers.inputW() : zeroW,
                refrigerators == null ? zeroW : refrigerators.askedW(),
                banks.emfV(),
                banks.ohm(),
                banks.chargeMaxA());
        banks.settle(bus.bankA, bus.busV, cabinC);
        bus.settle();
        bus.warm(banks.heatW());
        sums.close(bus, banks);
        sortOut(i, now);
        sums.add(bus, banks);
        commit();
        note(i, now);
    }

    private void refrigerate(Scene now, double[] cabinC) {
        refrigerators.step(cabinC, now.awake());
        for (int van = 0; van < vans; van++) {
            if (refrigerators.switches(van) && aboard[van]) {
                refrigerators.alone(van, runs[van].state.refrigerator, cabinC[van], now.awake());
            }
        }
    }

    private void restAlternators(Scene now, double outsideC, double[] cabinC) {
        bonnetBefore.goOnFrom(bonnet);
        bonnet.step(now.engine());
        double underBonnetC = outsideC + bonnet.meanRiseK();
        if (second != null) {
            second.step(underBonnetC);
        }
        if (factory != null) {
            factory.step(underBonnetC, cabinC);
        }
    }

    /** Lets those take the step by themselves in which something special happens. */
    private void sortOut(int i, Scene now) {
        double[] ofBank = banks.margin();
        for (int van = 0; van < vans; van++) {
            plain[van] = Math.min(Math.min(ofBank[van], bus.margin[van]), sums.margin[van]);
        }
        for (int van = 0; van < vans; van++) {
            if (!(plain[van] > 0) && aboard[van]) {
                leave(van, i, bonnetBefore);
                runs[van].step(i, now);
            }
        }
    }

    private void commit() {
        cabins.commit();
        if (refrigerators != null) {
            refrigerators.commit();
        }
        banks.commit(bus.bankA);
        if (second != null) {
            second.commit();
            sums.addCases(second.caseC());
        }
        if (factory != null) {
            factory.commit();
            sums.addCases(factory.caseC());
        }
        System.arraycopy(bus.indoorW, 0, applianceW, 0, vans);
    }

    /** Notes what is not a sum, and lets those leave that will meet something special. */
    private void note(int i, Scene now) {
        double[] soc = banks.soc();
        double[] airC = cabins.airC();
        boolean endsHour = (i + 1) % stepsAnHour == 0;
        watch(soc, banks.floorShare(), banks.mildK());
        boolean sleep = now.asleep() || scenes[clock.line(i - 1)].asleep();
        for (int van = 0; van < vans; van++) {
            if (!aboard[van]) {
                continue;
            }
            if (!(plain[van] > 0)) {
                notable(van, i, soc[van]);
            }
            if (endsHour) {
                banks.endHour(van, runs[van].state.bank, stepsAnHour);
            }
            if (sleep || airC[van] > Findings.HOT_CABIN_C) {
                runs[van].totals.air(i, now, airC[van]);
            }
            if (!(stays[van] > 0)) {
                leave(van, i + 1, bonnet);
                runs[van].m.busV = bus.busV[van];
            }
        }
    }

    /** Where nothing is to be told of the bank's charge, and who may stay aboard: above 0. */
    private void watch(double[] soc, double[] floorShare, double[] mildK) {
        double reserve = clock.reserveShare();
        for (int i = 0; i < vans; i++) {
            double aboveEmpty = soc[i] - Math.max(reserve, floorShare[i]);
            double belowFull = Math.min(Totals.FULL_SHARE - soc[i], bus.takesAll[i]);
            plain[i] = Math.min(Math.min(aboveEmpty, belowFull), soc[i] - dayLowestSoc[i]);
        }
        for (int i = 0; i < vans; i++) {
            stays[i] = Math.min(Math.min(mildK[i], soc[i] - shedsBelow[i]), bus.busV[i] - coolerLeastV);
        }
    }

    private void notable(int van, int i, double soc) {
        Totals totals = runs[van].totals;
        totals.charge(i, soc, banks.floorShare()[van]);
        dayLowestSoc[van] = totals.dayLowestSoc;
        if (bus.takesAll[van] == 0) {
            Limit limit = Ruling.ofBank(banks.chargeLimit(van));
            totals.ruled(limit);
            if (bus.curtailedW[van] > 0) {
                totals.curtailed(limit, bus.curtailedW[van]);
            }
        }
    }
}
