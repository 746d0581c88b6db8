package ampdays.study;

import ampdays.log.Signal;
import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import ampdays.results.Reconciliation;
import ampdays.results.Reconciliation.Cause;
import ampdays.results.Reconciliation.Curves;
import ampdays.results.Reconciliation.Fitted;
import ampdays.results.Reconciliation.Share;
import ampdays.results.Series;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.sim.Measured;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Divides the gap between a promise and a log among its causes.
 *
 * <p>What is divided is the energy left in the bank at its lowest, less what is left unserved. Each set of causes is switched
 * from promised to logged in a run of its own: flows that were logged take the place of those worked out, and values that the
 * log tells the place of those promised. Each cause gets its Shapley value ({@link Shapley}), so the shares add up to the gap
 * between the promise and the run with all causes as logged. Test: {@code ReconcileTruthTest}.
 */
public final class Reconcile {
    private static final String START = "battery.start";
    private static final Set<Channel> CHANNELS = EnumSet.of(Channel.STATE_OF_CHARGE, Channel.UNSERVED);

    private final Function<Variant, RunPlan> planner;
    private final Values values;
    private final LoggedTrip logged;
    private final LoggedFlows flows;
    private final int from;
    private final int to;

    private Reconcile(Values values, LoggedTrip logged, MinuteLog promised, Function<Variant, RunPlan> planner) {
        this.planner = planner;
        this.logged = logged;
        this.flows = new LoggedFlows(logged, promised);
        int steps = logged.clock().steps();
        int[] told = IntStream.range(0, steps)
                .filter(step -> !Double.isNaN(logged.bankW(step)))
                .toArray();
        this.from = told.length == 0 ? 0 : told[0];
        this.to = told.length == 0 ? 0 : empty(promised, told[told.length - 1] + 1);
        double soc = firstSoc(FittedKnobs.plan(values, this.planner).variant().bankWh());
        boolean fromStart = from < 60;
        this.values = Double.isNaN(soc) || !fromStart ? values : values.with(START, soc);
    }

    /**
     * Reconciles.
     *
     * @param values of the promised design
     * @param promised every step of its run
     * @param planner under the sky of the promise
     */
    public static Reconciliation of(Values values, LoggedTrip logged, MinuteLog promised, Planner planner) {
        return new Reconcile(values, logged, promised, planner.under(Sky.AS_IT_IS)).reconciled();
    }

    /** The end of the hour in which the bank is first empty, as promised or as logged; else the end of the log. */
    private int empty(MinuteLog promised, int end) {
        double reserve = logged.clock().reserveShare();
        int step = from;
        while (step < end
                && promised.get(Channel.STATE_OF_CHARGE, step) / 100 > reserve
                && !(logged.soc(step) <= reserve)) {
            step++;
        }
        return Math.min(end, (step / 60 + 1) * 60);
    }

    /** State of charge before the first step, since a meter shows that after it; NaN when the log does not tell it. */
    private double firstSoc(double bankWh) {
        double charged = 0;
        for (int step = from; step < to; step++) {
            charged += logged.bankW(step) / 60 / bankWh;
            if (!Double.isNaN(logged.soc(step))) {
                return Math.max(0, Math.min(1, logged.soc(step) - (Double.isNaN(charged) ? 0 : charged)));
            }
        }
        return Double.NaN;
    }

    private Reconciliation reconciled() {
        Function<Values, RunPlan> plans = v -> FittedKnobs.plan(v, planner);
        FittedUse.Told use = FittedUse.of(values, logged, plans);
        Values used = with(values, use.fitted());
        FittedUse.Told setPoints = FittedSetPoints.of(used, logged, all(), plans);
        Values lived = with(used, setPoints.fitted());
        FittedUse.Told knobs = new FittedKnobs(lived, logged, all(), plans).find();
        List<Fitted> fitted = Stream.of(knobs.fitted(), use.fitted(), setPoints.fitted())
                .flatMap(List::stream)
                .toList();
        List<Cause> causes = causes(fitted);
        double[] left = new double[1 << causes.size()];
        for (int set = 0; set < left.length; set++) {
            left[set] = leftWh(causes, set, fitted);
        }
        double[] taken = Shapley.shares(left);
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < taken.length; i++) {
            shares.add(new Share(causes.get(i), taken[i]));
        }
        return new Reconciliation(
                left[0],
                left[left.length - 1],
                loggedLeftWh(causes, fitted, left[left.length - 1]),
                shares,
                fitted,
                Stream.of(untold(fitted), knobs.untold(), use.untold(), setPoints.untold())
                        .flatMap(List::stream)
                        .toList(),
                to / 1440.0,
                curves(causes, fitted));
    }

    private static Values with(Values values, List<Fitted> found) {
        Values changed = values;
        for (Fitted value : found) {
            changed = FittedKnobs.with(changed, value);
        }
        return changed;
    }

    private Measured all() {
        Measured measured = Measured.NONE;
        measured = flows.tellsUse() ? flows.use(measured) : measured;
        measured = flows.tellsSolar() ? flows.solar(measured) : measured;
        return flows.tellsEngine() ? flows.engine(measured) : measured;
    }

    private List<Cause> causes(List<Fitted> fitted) {
        List<Cause> causes = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            boolean told = switch (cause) {
                case USE -> flows.tellsUse();
                case DRIVING -> flows.tellsEngine();
                case SUN -> flows.tellsSolar();
                case SETTINGS, CABLE, HEAT, BANK -> fitted.stream().anyMatch(f -> f.cause() == cause);
            };
            if (told) {
                causes.add(cause);
            }
        }
        return causes;
    }

    private RunPlan plan(List<Cause> causes, int set, List<Fitted> fitted) {
        Measured measured = Measured.NONE;
        Values changed = values;
        for (int i = 0; i < causes.size(); i++) {
            if ((set & (1 << i)) == 0) {
                continue;
            }
            Cause cause = causes.get(i);
            measured = switch (cause) {
                case USE -> flows.use(measured);
                case DRIVING -> flows.engine(measured);
                case SUN -> flows.solar(measured);
                case SETTINGS, CABLE, HEAT, BANK -> measured;
            };
            for (Fitted value : fitted) {
                changed = value.cause() == cause ? FittedKnobs.with(changed, value) : changed;
            }
        }
        RunPlan plan = FittedKnobs.plan(changed, planner);
        return measured == Measured.NONE ? plan : plan.with(measured);
    }

    private double leftWh(List<Cause> causes, int set, List<Fitted> fitted) {
        RunPlan plan = plan(causes, set, fitted);
        return leftWh(Simulator.record(plan, 0, to, CHANNELS), plan.variant().bankWh());
    }

    private Curves curves(List<Cause> causes, List<Fitted> fitted) {
        MinuteLog then = Simulator.record(plan(causes, 0, fitted), 0, to);
        MinuteLog explained = Simulator.record(plan(causes, (1 << causes.size()) - 1, fitted), 0, to, CHANNELS);
        return new Curves(
                hours(step -> then.get(Channel.STATE_OF_CHARGE, step) / 100),
                hours(step -> explained.get(Channel.STATE_OF_CHARGE, step) / 100),
                hours(logged::soc),
                hours(step -> LoggedDays.useW(then, step)),
                hours(logged::useW),
                hours(step -> then.get(Channel.SOLAR, step)),
                hours(logged::solarW),
                hours(step -> LoggedDays.alternatorsW(then, step)),
                hours(step -> logged.chargerW(step) + logged.secondW(step)));
    }

    private Series hours(IntToDoubleFunction of) {
        double[] means = new double[(to + 59) / 60];
        Arrays.setAll(
                means,
                hour -> IntStream.range(60 * hour, Math.min(60 * hour + 60, to))
                        .mapToDouble(of)
                        .filter(value -> !Double.isNaN(value))
                        .average()
                        .orElse(Double.NaN));
        return Series.of(means);
    }

    private double leftWh(MinuteLog run, double bankWh) {
        double lowest = 1;
        double unservedWh = 0;
        for (int step = from; step < to; step++) {
            lowest = Math.min(lowest, run.get(Channel.STATE_OF_CHARGE, step) / 100);
            unservedWh += run.get(Channel.UNSERVED, step) / 60;
        }
        return lowest * bankWh - unservedWh;
    }

    /**
     * What the log itself has left: that of the run with every cause as logged, and by how much the state of charge of the
     * log is off it within half an hour of the lowest point, which no noise of a single reading moves.
     */
    private double loggedLeftWh(List<Cause> causes, List<Fitted> fitted, double explainedLeftWh) {
        RunPlan plan = plan(causes, (1 << causes.size()) - 1, fitted);
        MinuteLog run = Simulator.record(plan, 0, to, CHANNELS);
        int lowest = IntStream.range(from, to)
                .boxed()
                .min(Comparator.comparingDouble(step -> run.get(Channel.STATE_OF_CHARGE, step)))
                .orElse(from);
        double off = IntStream.range(Math.max(from, lowest - 30), Math.min(to, lowest + 30))
                .mapToDouble(step -> logged.soc(step) - run.get(Channel.STATE_OF_CHARGE, step) / 100)
                .filter(difference -> !Double.isNaN(difference))
                .average()
                .orElse(Double.NaN);
        return explainedLeftWh + off * plan.variant().bankWh();
    }

    private List<String> untold(List<Fitted> fitted) {
        List<String> untold = new ArrayList<>();
        if (!flows.tellsUse()) {
            untold.add("what was used: log " + String.join(", ", logged.missing()) + ", or the power in use");
        }
        if (!flows.tellsSolar() && values.has("solar")) {
            untold.add("what the sun gave: log the power of the panels");
        }
        boolean alternators = values.has("factory-alternator") || values.has("second-alternator");
        if (!flows.tellsEngine() && alternators) {
            untold.add("when the engine ran and what the alternators gave: log their current");
        }
        if (values.has("factory-alternator") && logged.log().hasCharger()) {
            untold.add(
                    "cable and joints before the DC-DC charger: it makes up for them until its input is too low; read"
                            + " the voltage at its input under load");
        }
        if (values.has("second-alternator") && !tells(fitted, Cause.CABLE)) {
            untold.add(
                    "cable and joints of the second alternator: they did not rule; read the millivolts along the cable"
                            + " under load");
        }
        if (values.has("second-alternator")
                && logged.log().hasSecond()
                && !logged.log().has(Signal.SECOND_TEMPERATURE)) {
            untold.add("whether a low hot output is heat or a unit below its curve: log its case temperature");
        }
        if (!logged.log().has(Signal.STATE_OF_CHARGE)) {
            untold.add("the size of the bank: log the state of charge, or count one discharge from full");
        } else {
            untold.add(
                    "whether the bank or the size set in its meter is off, where they differ: count one discharge from"
                            + " full");
        }
        return untold;
    }

    private static boolean tells(List<Fitted> fitted, Cause cause) {
        return fitted.stream().anyMatch(f -> f.cause() == cause);
    }
}
