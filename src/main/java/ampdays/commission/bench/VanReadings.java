package ampdays.commission.bench;

import ampdays.alternator.EngineState;
import ampdays.alternator.FactorySpec;
import ampdays.alternator.SystemVoltage;
import ampdays.battery.BankPhysics;
import ampdays.battery.Battery;
import ampdays.commission.bench.EngineRun.Way;
import ampdays.cooling.MoistAir;
import ampdays.cooling.Refrigerator;
import ampdays.load.LoadSpec;
import ampdays.load.Occasion;
import ampdays.scenario.Design;
import ampdays.scenario.Variant;
import ampdays.sun.AirMass;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What meters would read on a van on a day, by simulation: resting, each large load by itself, cold engine, hot soak, road
 * run, sun, hook-up, cooling, refrigerator. Reference: VanReadingsTest.
 */
final class VanReadings {
    /** From here a load counts as large, A at the bank. */
    static final double LARGE_A = 5;

    static final double HOT_SOAK_S = 1800;
    /** Fuller than this a bank may take less than the alternators give. */
    static final double ROAD_UP_TO_SOC = 0.9;

    private static final double MOST_ROAD_S = 2700;
    private static final double LEAST_ROAD_S = 600;
    private static final double ROAD_PART_S = 300;

    /** Below this an air conditioner cannot be judged, °C. */
    static final double COOLING_FROM_C = 20;

    private static final double COLD_S = 300;
    private static final double MINUTE_S = 60;
    private static final double USED_S = 16 * 3600;
    private static final double DAY_S = 24 * 3600;
    private static final double STEP_S = 10;

    private final Design design;
    private final Day day;
    private final Plan plan;
    private final double densityShare;
    private final Battery bank;
    private final double emfV;
    private final double ohm;
    private final double baseA;
    private final Map<String, Double> values = new LinkedHashMap<>();
    private final Map<String, String> heldBy = new LinkedHashMap<>();
    private double socAfterSoak;
    private double roadBeforeFullS;

    /**
     * What is read, the same for every van drawn around a design.
     *
     * @param largeLoads places of the loads to read one by one
     * @param roadS length of the road run, s
     * @param damp air of the place
     */
    record Plan(List<Integer> largeLoads, double roadS, MoistAir damp) {
        Plan {
            largeLoads = List.copyOf(largeLoads);
        }

        /** The road run ends before the bank is so full that it takes little. */
        static Plan of(Variant variant, Day day) {
            MoistAir damp =
                    new MoistAir(AirMass.standardPressurePa(variant.site().elevationM()));
            Plan whole = new Plan(VanReadings.largeLoads(variant.design()), MOST_ROAD_S, damp);
            double roadS = new VanReadings(variant, day, whole).roadBeforeFullS;
            return new Plan(whole.largeLoads, Math.max(LEAST_ROAD_S, roadS), damp);
        }
    }

    VanReadings(Variant variant, Day day, Plan plan) {
        this.design = variant.design();
        this.day = day;
        this.plan = plan;
        this.densityShare = AirMass.standardPressurePa(variant.site().elevationM()) / AirMass.SEA_LEVEL_PA;
        this.bank = Battery.of(design.bank(), day.ambientC(), STEP_S);
        bank.open();
        this.emfV = bank.emfV() + day.cellShiftV() * design.bank().seriesCells();
        this.ohm = bank.dischargeOhm();
        this.baseA = listedBaseA() + day.parasiticA();
        rest();
        plan.largeLoads().forEach(this::load);
        engine();
        sunAndShore();
        living();
    }

    /** Places of the loads that draw 5 A or more at the bank. */
    static List<Integer> largeLoads(Design design) {
        double nominalV = design.bank().chemistry().cellV() * design.bank().seriesCells();
        List<LoadSpec> loads = design.loads();
        return IntStream.range(0, loads.size())
                .filter(i -> loads.get(i).drawA() + atBankW(design, loads.get(i)) / nominalV >= LARGE_A)
                .boxed()
                .toList();
    }

    /** What is always on and cannot be switched off for the test, A. */
    private double listedBaseA() {
        double sumA = 0;
        for (LoadSpec load : design.loads()) {
            boolean always = load.occasion() == Occasion.ALWAYS
                    && load.windows().isEmpty()
                    && !(load.useHoursPerDay() < 24)
                    && !load.onInverter();
            sumA += always ? load.drawA() + load.drawW() / emfV : 0;
        }
        return sumA;
    }

    private static double atBankW(Design design, LoadSpec load) {
        return load.onInverter()
                ? design.inverter().map(i -> i.inputW(load.drawW())).orElseThrow()
                : load.drawW();
    }

    private void rest() {
        values.put("rest.voltage", emfV - ohm * baseA);
        values.put("rest.current", baseA);
        design.inverter().ifPresent(i -> values.put("inverter.idle", baseA + i.idleW() / emfV));
    }

    private void load(int place) {
        LoadSpec load = design.loads().get(place);
        double powerW = atBankW(design, load);
        double busV = BankPhysics.busV(emfV, ohm, -baseA - load.drawA(), -powerW);
        values.put(loadId(place) + ".current", baseA + load.drawA() + powerW / busV);
        values.put(loadId(place) + ".voltage", busV);
    }

    static String loadId(int place) {
        return "load-" + (place + 1);
    }

    private void engine() {
        boolean second = design.second().isPresent();
        boolean factory = design.factory().isPresent();
        if (!second && !factory) {
            return;
        }
        EngineRun run = new EngineRun(design, densityShare, day, baseA);
        Way main = second ? Way.SECOND : Way.CHARGER;
        if (factory) {
            run.on(Way.CHARGER, EngineState.IDLE, day.ambientC(), run.startS() + COLD_S);
            double shiftV = systemShiftV();
            values.put("factory.voltage", run.systemV() + shiftV);
            charger(run, "idle", shiftV);
            run.on(Way.CHARGER, EngineState.HIGHWAY, day.ambientC(), MINUTE_S);
            charger(run, "raised", shiftV);
        }
        if (second) {
            run.on(Way.SECOND, EngineState.IDLE, day.ambientC(), run.startS() + COLD_S);
            cold(run, "idle");
            run.on(Way.SECOND, EngineState.FAST_IDLE, day.ambientC(), MINUTE_S);
            cold(run, "fast-idle");
            values.put("second.voltage", run.busV());
            run.on(Way.SECOND, EngineState.HIGHWAY, day.ambientC(), MINUTE_S);
            cold(run, "raised");
        }
        run.on(main, EngineState.FAST_IDLE, day.underBonnetC(), HOT_SOAK_S - MINUTE_S);
        double beforeC = second ? run.caseC() : Double.NaN;
        run.on(main, EngineState.FAST_IDLE, day.underBonnetC(), MINUTE_S);
        if (second) {
            hot(run, "hot");
            values.put("hot.rate", run.caseC() - beforeC);
            values.put("hot.cable", 1000 * run.cableDropV());
        }
        chargerAfter(run, EngineState.FAST_IDLE, day.underBonnetC(), "hot.charger");
        socAfterSoak = run.soc();
        double roadAirC = day.ambientC() + design.engine().riseK(EngineState.HIGHWAY);
        for (double s = 0; s < plan.roadS(); s += ROAD_PART_S) {
            run.on(main, EngineState.HIGHWAY, roadAirC, ROAD_PART_S);
            roadBeforeFullS = run.soc() < ROAD_UP_TO_SOC ? s + ROAD_PART_S : roadBeforeFullS;
        }
        if (second) {
            hot(run, "road");
        }
        chargerAfter(run, EngineState.HIGHWAY, roadAirC, "road.charger");
    }

    private double systemShiftV() {
        return design.factory()
                .map(FactorySpec::voltage)
                .filter(SystemVoltage::smart)
                .map(v -> day.systemShiftV() * v.setPointV() / 14)
                .orElse(0.0);
    }

    private void chargerAfter(EngineRun run, EngineState state, double airC, String id) {
        if (design.factory().isPresent()) {
            run.on(Way.CHARGER, state, airC, MINUTE_S);
            values.put(id, run.chargerA());
        }
    }

    private void charger(EngineRun run, String speed, double shiftV) {
        values.put("charger." + speed + "-input", run.systemV() - run.chargerDropV() + shiftV);
        values.put("charger." + speed + "-drop", run.chargerDropV());
        values.put("charger." + speed + "-output", run.chargerA());
    }

    private void cold(EngineRun run, String speed) {
        values.put("second." + speed, run.secondA());
        heldBy.put("second." + speed, run.heldBy());
    }

    private void hot(EngineRun run, String when) {
        values.put(when + ".current", run.secondA());
        values.put(when + ".case", run.caseC());
        heldBy.put(when + ".current", run.heldBy());
    }

    private void sunAndShore() {
        double takesA = bank.chargeMaxA() + baseA;
        double fullV = emfV + bank.chargeOhm() * bank.chargeMaxA();
        design.solar().filter(s -> !Double.isNaN(day.sunWm2())).ifPresent(solar -> {
            double possibleW =
                    SolarPhysics.intoBankW(solar, day.sunWm2(), day.workingShare(), day.ambientC(), day.windMs(), emfV);
            double busV = BankPhysics.busV(emfV, bank.chargeOhm(), -baseA, possibleW);
            values.put("solar.power", Math.min(possibleW, takesA * fullV));
            values.put("solar.current", Math.min(possibleW / busV, takesA));
        });
        design.shore().ifPresent(shore -> {
            double mostA = Math.min(shore.ratedA(), shore.inletW() * shore.efficiency() / emfV);
            values.put("shore.current", Math.min(mostA, takesA));
        });
    }

    private void living() {
        design.cooler().filter(c -> day.ambientC() >= COOLING_FROM_C - 2).ifPresent(spec -> {
            CoolingRun run = new CoolingRun(design, spec, densityShare, day, plan.damp(), bank, baseA);
            values.put("cooling.current", run.currentA());
            values.put("cooling.cabin", run.cabinC());
        });
        design.refrigerator().ifPresent(spec -> {
            Refrigerator refrigerator = new Refrigerator(spec, MINUTE_S);
            double wh = 0;
            for (double s = 0; s < DAY_S; s += MINUTE_S) {
                refrigerator.step(day.dayMeanC(), s < USED_S, true);
                wh += refrigerator.askedW() / 60;
            }
            values.put("refrigerator.energy", wh);
        });
    }

    /** By id, in the order of the sheet, each in the unit of its item. */
    Map<String, Double> values() {
        return values;
    }

    /** What keeps the second alternator from giving more, by the ids of its currents. */
    Map<String, String> heldBy() {
        return heldBy;
    }

    /** Length of the road run, min. */
    double roadMinutes() {
        return plan.roadS() / 60;
    }

    /** State of charge when the hot soak is over. */
    double socAfterSoak() {
        return socAfterSoak;
    }
}
