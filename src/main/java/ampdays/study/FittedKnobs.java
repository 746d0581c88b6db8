package ampdays.study;

import ampdays.results.Reconciliation.Cause;
import ampdays.results.Reconciliation.Fitted;
import ampdays.scenario.Kind;
import ampdays.scenario.Mark;
import ampdays.scenario.Origin;
import ampdays.scenario.Registry;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Value;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.Measured;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Finds values of the design with which a run under the logged flows gives the logged currents, voltage and state of charge
 * ({@link LoggedBlocks}). What the log does not depend on is left as promised. Test: {@code ReconcileTruthTest}.
 */
final class FittedKnobs {
    /** What meters of current and power are off by in scale: class 1 (IEC 60051); no scatter shows it. */
    static final double METER = 0.01;

    /** A value whose 95 % interval is wider than this share of it is not told. */
    static final double TOLD = 0.4;

    /** By how much the sum of squares must rise without a limit for it to be told: four standard errors. */
    private static final double CLEAR = 16;

    private static final String SECOND = "second-alternator.";
    private static final String CHARGER = "factory-alternator.charger";

    private final Values values;
    private final Measured flows;
    private final Function<Values, RunPlan> plans;
    private final LoggedBlocks blocks;
    private final double[] observed;

    /** What the best run so far misses by far. */
    private Optional<String> missed = Optional.empty();

    /** A value that may be searched for. */
    private record Knob(String path, String label, Cause cause, double low, double high, List<Double> tries) {
        /** The value at which a limit of the second alternator rules nothing. */
        double ofNoEffect() {
            return path.endsWith("cable") ? low : high;
        }
    }

    /**
     * Prepares.
     *
     * @param values of the promised design, its bank as full at the start as the log's
     * @param plans of designs
     */
    FittedKnobs(Values values, LoggedTrip logged, Measured flows, Function<Values, RunPlan> plans) {
        this.values = values;
        this.flows = flows;
        this.plans = plans;
        this.blocks = new LoggedBlocks(logged);
        this.observed = blocks.observed();
    }

    static RunPlan plan(Values values, Function<Variant, RunPlan> planner) {
        try {
            return planner.apply(VariantBuilder.build("as logged", values));
        } catch (ScenarioException e) {
            throw new IllegalStateException("a design with values of a log: " + e.problems(), e);
        }
    }

    /** A design with a value of a log. */
    static Values with(Values values, Fitted found) {
        Origin origin = new Origin("log", 0, 0);
        return values.with(
                found.path(),
                new Value(
                        found.in().show(found.value()),
                        found.value(),
                        Optional.of(found.in()),
                        Optional.of(Mark.MEASURED),
                        "",
                        origin));
    }

    private double[] modelled(List<Knob> knobs, double... found) {
        Values changed = values;
        for (int i = 0; i < found.length; i++) {
            changed = changed.with(knobs.get(i).path(), found[i]);
        }
        RunPlan plan = plans.apply(changed).with(flows);
        return blocks.of(Simulator.record(plan, 0, plan.clock().steps(), LoggedBlocks.CHANNELS));
    }

    /** What was found. */
    FittedUse.Told find() {
        List<Knob> knobs = candidates();
        double[] u = blocks.firstU();
        double[] from = knobs.isEmpty() ? new double[0] : scanned(knobs, u);
        while (!knobs.isEmpty()) {
            List<Fitted> found = fitted(knobs, from, u);
            int worst = leastTold(found);
            worst = worst < 0 ? withoutEffect(knobs, found, u) : worst;
            if (worst < 0) {
                return missed.isEmpty()
                        ? new FittedUse.Told(found, List.of())
                        : new FittedUse.Told(
                                List.of(),
                                List.of("values of alternators and bank: the best run still misses " + missed.get()
                                        + ", so something rules there that neither scenario nor log tells, such as the"
                                        + " temperature of the bank"));
            }
            knobs.remove(worst);
            found = new ArrayList<>(found);
            found.remove(worst);
            from = found.stream().mapToDouble(Fitted::value).toArray();
        }
        return new FittedUse.Told(List.of(), List.of());
    }

    private static int leastTold(List<Fitted> found) {
        int worst = -1;
        double widest = TOLD;
        for (int i = 0; i < found.size(); i++) {
            double width = found.get(i).plusMinus() / found.get(i).value();
            if (!(width <= widest)) {
                widest = width;
                worst = i;
            }
        }
        return worst;
    }

    /** A limit of the second alternator that the run does as well without; −1 if there is none. */
    private int withoutEffect(List<Knob> knobs, List<Fitted> found, double... u) {
        double[] at = found.stream().mapToDouble(Fitted::value).toArray();
        double least = misfit(knobs, u, at);
        for (int i = 0; i < at.length; i++) {
            double[] without = at.clone();
            without[i] = knobs.get(i).ofNoEffect();
            if (knobs.get(i).path().startsWith(SECOND) && misfit(knobs, u, without) - least < CLEAR) {
                return i;
            }
        }
        return -1;
    }

    private List<Knob> candidates() {
        List<Knob> knobs = new ArrayList<>();
        if (blocks.tells(LoggedBlocks.SECOND) && values.has("second-alternator")) {
            double rated = values.number(SECOND + "rated");
            knobs.add(new Knob(
                    SECOND + "cap", "regulator cap", Cause.SETTINGS, 5, 2000, List.of(1.0, 0.7, 0.5, 0.35, 0.25)));
            knobs.add(new Knob(
                    SECOND + "rated",
                    "hot output, as rated current",
                    Cause.HEAT,
                    20,
                    2 * rated,
                    List.of(1.0, 0.85, 0.7, 0.55)));
            knobs.add(new Knob(SECOND + "cable", "cable and joints", Cause.CABLE, 1e-4, 0.5, List.of(1.0, 3.0, 9.0)));
        }
        if (blocks.tells(LoggedBlocks.CHARGER) && values.has("factory-alternator")) {
            knobs.add(new Knob(CHARGER, "DC-DC charger", Cause.SETTINGS, 1, 500, List.of(1.0, 0.85, 0.7, 0.5, 0.3)));
        }
        if (blocks.tells(LoggedBlocks.SOC)) {
            knobs.add(new Knob(
                    "battery.capacity", "size of the bank", Cause.BANK, 5, 20_000, List.of(1.0, 0.9, 0.8, 0.65, 0.5)));
        }
        if (blocks.tells(LoggedBlocks.VOLTS)) {
            knobs.add(new Knob(
                    "battery.resistance", "resistance of the bank", Cause.BANK, 1e-5, 1, List.of(1.0, 1.5, 2.5)));
        }
        return knobs;
    }

    private List<Fitted> fitted(List<Knob> knobs, double[] start, double... u) {
        double[] low = knobs.stream().mapToDouble(Knob::low).toArray();
        double[] high = knobs.stream().mapToDouble(Knob::high).toArray();
        Fit.Model model = found -> modelled(knobs, found);
        Fit.Result first = Fit.of(model, observed, u, start, low, high);
        missed = blocks.astray(first, u);
        blocks.scale(first, u);
        Fit.Result second = Fit.of(model, observed, u, first.values(), low, high);
        int[] hours = blocks.hours();
        List<Fitted> fitted = new ArrayList<>();
        for (int i = 0; i < knobs.size(); i++) {
            Knob knob = knobs.get(i);
            fitted.add(new Fitted(
                    knob.path(),
                    knob.label(),
                    knob.cause(),
                    promised(knob.path()),
                    second.value(i),
                    Math.hypot(
                            Fit.NORMAL_95 * Math.max(second.standard(i), second.standard(i, hours)),
                            METER * second.value(i)),
                    usual(knob.path())));
        }
        return fitted;
    }

    private static Dimension usual(String path) {
        Kind kind = Registry.parameter(path).orElseThrow().kind();
        return ((Kind.Measured) kind).dimensions().get(0);
    }

    private double promised(String path) {
        return path.equals("battery.capacity") ? values.bankAh() : values.number(path);
    }

    /**
     * Where the search begins: of each knob the best of some values in turn; of the second alternator, whose limits leave no
     * trace where another rules, the one knob that explains most when all but the others of its kind are searched with it.
     */
    private double[] scanned(List<Knob> knobs, double... u) {
        double[] together = knobs.stream().mapToDouble(k -> promised(k.path())).toArray();
        int[] others = IntStream.range(0, knobs.size())
                .filter(i -> !knobs.get(i).path().startsWith(SECOND))
                .toArray();
        for (int other : others) {
            together = bestTry(knobs, other, together, u);
        }
        double[] best = together;
        double least = misfit(knobs, u, best);
        for (int i = 0; i < knobs.size(); i++) {
            if (knobs.get(i).path().startsWith(SECOND)) {
                int[] free =
                        IntStream.concat(IntStream.of(i), Arrays.stream(others)).toArray();
                double[] found = free(knobs, bestTry(knobs, i, together, u), u, free);
                double misfit = misfit(knobs, u, found);
                if (misfit < least) {
                    least = misfit;
                    best = found;
                }
            }
        }
        return best;
    }

    private double[] bestTry(List<Knob> knobs, int knob, double[] from, double... u) {
        double least = Double.POSITIVE_INFINITY;
        double[] best = from;
        for (double times : knobs.get(knob).tries()) {
            double[] tried = from.clone();
            tried[knob] = Math.min(knobs.get(knob).high(), times * from[knob]);
            double misfit = misfit(knobs, u, tried);
            if (misfit < least) {
                least = misfit;
                best = tried;
            }
        }
        return best;
    }

    /** The best values of some knobs, the others as they are. */
    private double[] free(List<Knob> knobs, double[] from, double[] u, int... free) {
        Fit.Model model = some -> modelled(knobs, with(from, some, free));
        double[] start = Arrays.stream(free).mapToDouble(i -> from[i]).toArray();
        double[] low = Arrays.stream(free).mapToDouble(i -> knobs.get(i).low()).toArray();
        double[] high =
                Arrays.stream(free).mapToDouble(i -> knobs.get(i).high()).toArray();
        return with(from, Fit.of(model, observed, u, start, low, high).values(), free);
    }

    private static double[] with(double[] all, double[] some, int... places) {
        double[] with = all.clone();
        for (int i = 0; i < places.length; i++) {
            with[places[i]] = some[i];
        }
        return with;
    }

    private double misfit(List<Knob> knobs, double[] u, double... tried) {
        double[] modelled = modelled(knobs, tried);
        double sum = 0;
        for (int i = 0; i < modelled.length; i++) {
            double off = (modelled[i] - observed[i]) / u[i];
            sum += off * off;
        }
        return sum;
    }
}
