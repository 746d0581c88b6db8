package ampdays.sim;

import ampdays.load.ClockWindow;
import ampdays.load.InverterSpec;
import ampdays.load.LoadSpec;
import ampdays.load.Occasion;
import ampdays.trip.People;
import ampdays.trip.Vehicle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The appliances over the trip. At any step some of them may run; each such set is a pattern, worked out once. A load
 * with a daily use is spread evenly over the steps of its day in which it may run. Each step has a second pattern: the
 * same loads with all fans at rest.
 */
final class LoadPlan {
    /**
     * One set of loads that may run together, as mean flows.
     *
     * @param busA constant current, A
     * @param busW constant power on the bus without the inverter, W
     * @param outletW constant power behind the inverter, W
     * @param inverterW input of the inverter for it, idle draw included, W
     * @param heatShareOfA heat in the cabin per watt of the constant-current loads
     * @param heatW heat in the cabin of the others without the inverter, W
     * @param flow place of the fans' air flow among {@link #airflowsM3H}
     */
    record Pattern(
            double busA, double busW, double outletW, double inverterW, double heatShareOfA, double heatW, int flow) {}

    private final List<LoadSpec> loads;
    private final boolean anyFan;
    private final short[] patternOfStep;
    private final short[] stillPatternOfStep;
    private final List<Double> airflowsM3H = new ArrayList<>(List.of(0.0));
    private final List<Pattern> patterns = new ArrayList<>();
    private final List<double[]> dutyByPattern = new ArrayList<>();
    private final double[] thresholds;
    /** What is left of a pattern at each level of shedding, row by row. */
    private int[] leftOfPattern = {};

    private LoadPlan(List<LoadSpec> loads, double[] thresholds, int steps) {
        this.loads = loads;
        this.thresholds = thresholds;
        this.patternOfStep = new short[steps];
        this.anyFan = loads.stream().anyMatch(load -> load.airflowM3H() > 0);
        this.stillPatternOfStep = anyFan ? new short[steps] : patternOfStep;
    }

    /** @param thresholds states of charge at which something is shed, highest first */
    static LoadPlan of(TripClock clock, List<LoadSpec> loads, Optional<InverterSpec> inverter, double[] thresholds) {
        LoadPlan plan = new LoadPlan(loads, thresholds, clock.steps());
        Map<List<Double>, Short> known = new HashMap<>();
        BitSet[] mayRun = new BitSet[loads.size()];
        for (int load = 0; load < loads.size(); load++) {
            mayRun[load] = new BitSet(clock.steps());
        }
        for (int day = 0; day < clock.trip().days(); day++) {
            plan.layOutDay(clock, day, mayRun, known, inverter);
        }
        plan.shed(known, inverter);
        return plan;
    }

    private void shed(Map<List<Double>, Short> known, Optional<InverterSpec> inverter) {
        int levels = thresholds.length + 1;
        int unshed = patterns.size();
        leftOfPattern = new int[unshed * levels];
        for (int pattern = 0; pattern < unshed; pattern++) {
            leftOfPattern[pattern * levels] = pattern;
            for (int level = 1; level < levels; level++) {
                double[] duty = dutyByPattern.get(pattern).clone();
                for (int load = 0; load < duty.length; load++) {
                    duty[load] = loads.get(load).shedBelowShare() >= thresholds[level - 1] ? 0 : duty[load];
                }
                leftOfPattern[pattern * levels + level] = patternFor(duty, known, inverter);
            }
        }
    }

    private void layOutDay(
            TripClock clock,
            int day,
            BitSet[] mayRun,
            Map<List<Double>, Short> known,
            Optional<InverterSpec> inverter) {
        int from = clock.firstStepOfDay(day);
        int to = clock.firstStepOfDay(day + 1);
        double[] fullDuty = new double[loads.size()];
        for (int load = 0; load < loads.size(); load++) {
            LoadSpec spec = loads.get(load);
            for (int step = from; step < to; step++) {
                mayRun[load].set(step, mayRun(spec, clock, step));
            }
            int allowedSteps = mayRun[load].get(from, to).cardinality();
            double allowedH = allowedSteps * clock.stepSeconds() / 3600.0;
            fullDuty[load] = Double.isNaN(spec.useHoursPerDay()) || spec.useHoursPerDay() >= allowedH
                    ? 1
                    : spec.useHoursPerDay() / allowedH;
        }
        BitSet before = null;
        short pattern = 0;
        short stillPattern = 0;
        BitSet running = new BitSet(loads.size());
        for (int step = from; step < to; step++) {
            running.clear();
            for (int load = 0; load < loads.size(); load++) {
                running.set(load, mayRun[load].get(step));
            }
            if (!running.equals(before)) {
                before = (BitSet) running.clone();
                pattern = patternFor(duty(running, fullDuty), known, inverter);
                stillPattern = anyFan ? patternFor(duty(withoutFans(running), fullDuty), known, inverter) : pattern;
            }
            patternOfStep[step] = pattern;
            stillPatternOfStep[step] = stillPattern;
        }
    }

    private BitSet withoutFans(BitSet running) {
        BitSet still = (BitSet) running.clone();
        for (int load = 0; load < loads.size(); load++) {
            if (loads.get(load).airflowM3H() > 0) {
                still.clear(load);
            }
        }
        return still;
    }

    private static double[] duty(BitSet running, double[] fullDuty) {
        double[] duty = new double[fullDuty.length];
        for (int load = 0; load < duty.length; load++) {
            duty[load] = running.get(load) ? fullDuty[load] : 0;
        }
        return duty;
    }

    private short patternFor(double[] duty, Map<List<Double>, Short> known, Optional<InverterSpec> inverter) {
        List<Double> key = Arrays.stream(duty).boxed().toList();
        Short found = known.get(key);
        if (found != null) {
            return found;
        }
        if (patterns.size() == Short.MAX_VALUE) {
            throw new IllegalArgumentException("the loads have too many different schedules");
        }
        short index = (short) patterns.size();
        patterns.add(pattern(duty, inverter));
        dutyByPattern.add(duty);
        known.put(key, index);
        return index;
    }

    private Pattern pattern(double[] duty, Optional<InverterSpec> inverter) {
        double busA = 0;
        double busW = 0;
        double outletW = 0;
        double outletMayRun = 0;
        double heatA = 0;
        double heatW = 0;
        double airflowM3H = 0;
        for (int load = 0; load < duty.length; load++) {
            LoadSpec spec = loads.get(load);
            double meanW = spec.drawW() * duty[load];
            busA += spec.drawA() * duty[load];
            heatA += spec.drawA() * duty[load] * spec.heatShare();
            busW += spec.onInverter() ? 0 : meanW;
            outletW += spec.onInverter() ? meanW : 0;
            outletMayRun += spec.onInverter() ? duty[load] : 0;
            heatW += meanW * spec.heatShare();
            airflowM3H += spec.airflowM3H() * duty[load];
        }
        double inverterW = 0;
        if (inverter.isPresent()) {
            InverterSpec spec = inverter.get();
            boolean on = spec.alwaysOn() || outletMayRun > 0;
            inverterW = on ? spec.inputW(outletW) : 0;
        }
        return new Pattern(busA, busW, outletW, inverterW, busA > 0 ? heatA / busA : 0, heatW, flowIndex(airflowM3H));
    }

    private int flowIndex(double airflowM3H) {
        if (!airflowsM3H.contains(airflowM3H)) {
            airflowsM3H.add(airflowM3H);
        }
        return airflowsM3H.indexOf(airflowM3H);
    }

    private static boolean mayRun(LoadSpec spec, TripClock clock, int step) {
        return holds(spec.occasion(), clock.people(step), clock.vehicle(step))
                && (spec.windows().isEmpty() || inWindow(spec.windows(), clock.minuteOfDay(step)));
    }

    private static boolean inWindow(List<ClockWindow> windows, int minuteOfDay) {
        for (ClockWindow window : windows) {
            if (window.holds(minuteOfDay)) {
                return true;
            }
        }
        return false;
    }

    private static boolean holds(Occasion occasion, People people, Vehicle vehicle) {
        return switch (occasion) {
            case ALWAYS -> true;
            case AWAKE -> people == People.AWAKE;
            case ASLEEP -> people == People.ASLEEP;
            case ABOARD -> people == People.ABOARD;
            case AWAY -> people == People.AWAY;
            case OCCUPIED -> people != People.AWAY;
            case ENGINE -> vehicle.engineRuns();
            case PARKED -> vehicle == Vehicle.PARKED;
        };
    }

    int pattern(int step) {
        return patternOfStep[step];
    }

    /** The pattern of a step with all fans at rest. */
    int stillPattern(int step) {
        return stillPatternOfStep[step];
    }

    /** Every flow of outside air that fans may drive, m³/h; the first is 0. */
    double[] airflowsM3H() {
        return airflowsM3H.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** What is left of a pattern at a level of shedding. */
    int left(int pattern, int level) {
        return leftOfPattern[pattern * (thresholds.length + 1) + level];
    }

    /** Share of the time that a load runs in a pattern, 0 to 1; a load is on all of it or none of it in the meantime. */
    double duty(int pattern, int load) {
        return dutyByPattern.get(pattern)[load];
    }

    Pattern[] patterns() {
        return patterns.toArray(new Pattern[0]);
    }

    /**
     * Energy of each load by name.
     *
     * @param ran how long each pattern ran
     */
    Map<String, Double> byLoadWh(PatternHours ran) {
        Map<String, Double> sums = new LinkedHashMap<>();
        for (int load = 0; load < loads.size(); load++) {
            LoadSpec spec = loads.get(load);
            double wh = 0;
            for (int pattern = 0; pattern < patterns.size(); pattern++) {
                double duty = dutyByPattern.get(pattern)[load];
                wh += duty * (spec.drawA() * ran.voltHours(pattern) + spec.drawW() * ran.hours(pattern));
            }
            sums.merge(spec.name(), wh, Double::sum);
        }
        return sums;
    }
}
