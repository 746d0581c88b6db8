package ampdays.study;

import ampdays.log.Signal;
import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import ampdays.results.Reconciliation.Cause;
import ampdays.results.Reconciliation.Fitted;
import ampdays.scenario.Values;
import ampdays.sim.Measured;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Finds the set points of the cooling with which the cabin of a run has the logged temperature while the log's cooling runs.
 * The power of cooling alone does not tell them, since weather moves it as well. Test: {@code FittedUseTest}.
 */
final class FittedSetPoints {
    private static final int BLOCK = 10;
    private static final double RUNS_W = 20;
    /** From this share of its highest power on the cooling may be at its end (guess). */
    private static final double HARD = 0.85;
    /** A cabin that drifts more within twenty minutes is not held, K (guess). */
    private static final double STEADY = 0.3;

    private static final double FIRST_U = 0.3;
    /** What a thermometer in the cabin is off by for good, K (guess). */
    private static final double THERMOMETER = 0.5;
    /** A set point whose 95 % interval is wider is not told, K. */
    private static final double TOLD = 2;

    private static final double LOW = 5;
    private static final double HIGH = 45;
    private static final List<String> STATES = List.of("asleep", "awake", "aboard", "away");

    private final Values values;
    private final LoggedTrip logged;
    private final Measured flows;
    private final Function<Values, RunPlan> plans;
    private final int[] blocks;

    private FittedSetPoints(Values values, LoggedTrip logged, Measured flows, Function<Values, RunPlan> plans) {
        this.values = values;
        this.logged = logged;
        this.flows = flows;
        this.plans = plans;
        int count = logged.clock().steps() / BLOCK;
        double mostW = IntStream.range(0, count)
                .mapToDouble(block -> mean(Signal.COOLING_POWER, block))
                .filter(w -> !Double.isNaN(w))
                .max()
                .orElse(0);
        this.blocks = IntStream.range(1, count - 1)
                .filter(block -> holds(block, mostW))
                .toArray();
    }

    /** What was found; nothing without cooling, a thermometer in the cabin and the power of the cooling. */
    static FittedUse.Told of(Values values, LoggedTrip logged, Measured flows, Function<Values, RunPlan> plans) {
        if (!values.has("cooling") || STATES.stream().allMatch(s -> Double.isNaN(values.number(path(s))))) {
            return new FittedUse.Told(List.of(), List.of());
        }
        boolean told =
                logged.log().has(Signal.CABIN_TEMPERATURE) && logged.log().has(Signal.COOLING_POWER);
        List<Fitted> found = told ? new FittedSetPoints(values, logged, flows, plans).found() : List.of();
        return new FittedUse.Told(
                found,
                !found.isEmpty()
                        ? List.of()
                        : List.of(
                                told
                                        ? "the set point of the cooling: the log has no hours in which it holds the cabin"
                                        : "the set point of the cooling: log the cabin temperature and the power of the"
                                                + " cooling"));
    }

    private static String path(String state) {
        return "cabin.set." + state;
    }

    /** Whether the cooling holds the cabin where it is: it runs, but not as hard as it can, and nothing drifts. */
    private boolean holds(int block, double mostW) {
        double coolingW = mean(Signal.COOLING_POWER, block);
        double drift = mean(Signal.CABIN_TEMPERATURE, block + 1) - mean(Signal.CABIN_TEMPERATURE, block - 1);
        return coolingW > RUNS_W && coolingW < HARD * mostW && Math.abs(drift) < STEADY;
    }

    private double mean(int block) {
        return mean(Signal.CABIN_TEMPERATURE, block);
    }

    private double mean(Signal signal, int block) {
        return IntStream.range(block * BLOCK, (block + 1) * BLOCK)
                .mapToDouble(step -> logged.value(signal, step))
                .average()
                .orElse(Double.NaN);
    }

    private List<Fitted> found() {
        List<String> states = new ArrayList<>(STATES);
        states.removeIf(state -> Double.isNaN(values.number(path(state))));
        double[] observed = Arrays.stream(blocks).mapToDouble(this::mean).toArray();
        while (!states.isEmpty() && observed.length > states.size()) {
            double[] u = new double[observed.length];
            Arrays.fill(u, FIRST_U);
            double[] start = states.stream()
                    .mapToDouble(state -> values.number(path(state)))
                    .toArray();
            double[] low = new double[start.length];
            double[] high = new double[start.length];
            Arrays.fill(low, LOW);
            Arrays.fill(high, HIGH);
            Fit.Result fit = Fit.of(found -> modelled(states, found), observed, u, start, low, high);
            int[] hours = Arrays.stream(blocks).map(block -> block / 6).toArray();
            int worst = -1;
            double widest = TOLD;
            List<Fitted> fitted = new ArrayList<>();
            for (int i = 0; i < start.length; i++) {
                double standard = Math.max(fit.standard(i), fit.standard(i, hours));
                double plusMinus = Math.hypot(Fit.NORMAL_95 * standard, THERMOMETER);
                if (!(plusMinus <= widest)) {
                    widest = plusMinus;
                    worst = i;
                }
                String path = path(states.get(i));
                fitted.add(new Fitted(
                        path,
                        "set point while " + states.get(i),
                        Cause.USE,
                        values.number(path),
                        fit.value(i),
                        plusMinus,
                        Dimension.TEMPERATURE));
            }
            if (worst < 0) {
                return fitted;
            }
            states.remove(worst);
        }
        return List.of();
    }

    private double[] modelled(List<String> states, double... found) {
        Values changed = values;
        for (int i = 0; i < found.length; i++) {
            changed = changed.with(path(states.get(i)), found[i]);
        }
        RunPlan plan = plans.apply(changed).with(flows);
        MinuteLog run = Simulator.record(plan, 0, plan.clock().steps(), EnumSet.of(Channel.CABIN_AIR));
        return Arrays.stream(blocks)
                .mapToDouble(block -> IntStream.range(block * BLOCK, (block + 1) * BLOCK)
                        .mapToDouble(step -> run.get(Channel.CABIN_AIR, step))
                        .average()
                        .orElseThrow())
                .toArray();
    }
}
