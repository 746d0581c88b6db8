package ampdays.study;

import ampdays.results.Causes;
import ampdays.results.Causes.Remedy;
import ampdays.results.Causes.Share;
import ampdays.results.RunResult;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.SingleChange;
import ampdays.scenario.SingleChanges;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Finds why a design does not hold and what would turn it, by runs of changed designs.
 *
 * <p>What is divided among the causes is the draw: how far the bank falls below full at worst, with all that was asked and
 * not delivered. Every set of causes is taken away in a run of its own, and each gets its Shapley value; what no cause
 * explains is left to the other uses, so the shares add up to one by construction. Runs share the processor's cores; their
 * results are put in place by number, so the cores do not show in them. Test: {@code WhyTest}.
 */
public final class Why {
    private static final String REST = "other uses";

    private final Variant variant;
    private final Values values;
    private final RunResult result;
    private final Planner planner;
    private final List<Factor> factors;
    private final List<List<SingleChange>> changes;

    /**
     * Asks why a design came to its result.
     *
     * @param values that the variant was built from
     * @param result of the variant
     */
    public Why(Variant variant, Values values, RunResult result, Planner planner) {
        this.variant = variant;
        this.values = values;
        this.result = result;
        this.planner = planner;
        this.factors = Factor.of(values, result);
        this.changes = SingleChanges.of(values, variant.trip());
    }

    /** Name of the design. */
    public String option() {
        return variant.name();
    }

    /** How many pieces of work there are: a run for each set of causes, and a search for each kind of change. */
    public int pieces() {
        return (1 << factors.size()) - 1 + changes.size();
    }

    /**
     * Finds the causes, and what would turn the design.
     *
     * @param done called after each piece of work, by any thread
     */
    public Causes causes(Runnable done) {
        double bankWh = variant.bankWh();
        return new Causes(drawWh(result, bankWh), (1 - result.reserveShare()) * bankWh, shares(done), remedies(done));
    }

    /** What a trip draws at worst, counted from a full bank, with what it asked for and did not get, Wh. */
    static double drawWh(RunResult result, double bankWh) {
        return result.energy().unservedWh() + (1 - result.lowestSoc()) * bankWh;
    }

    private List<Share> shares(Runnable done) {
        double[] draws = draws(done);
        double[] takenWh = Shapley.shares(draws);
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < factors.size(); i++) {
            shares.add(new Share(factors.get(i).label(), takenWh[i] / draws[0]));
        }
        shares.add(new Share(REST, draws[draws.length - 1] / draws[0]));
        shares.sort(Comparator.comparingDouble(Share::share).reversed());
        return shares;
    }

    /** The draw with each set of causes taken away, by the set as bits. */
    private double[] draws(Runnable done) {
        double[] draws = new double[1 << factors.size()];
        Map<Sky, List<Integer>> setsBySky = new LinkedHashMap<>();
        for (int set = 1; set < draws.length; set++) {
            setsBySky.computeIfAbsent(sky(set), s -> new ArrayList<>()).add(set);
        }
        draws[0] = drawWh(result, variant.bankWh());
        List.copyOf(setsBySky.entrySet()).parallelStream().forEach(group -> {
            Function<Variant, RunPlan> plans = planner.under(group.getKey());
            for (int set : group.getValue()) {
                RunPlan plan = plans.apply(built(without(set)));
                draws[set] = drawWh(Simulator.run(plan), variant.bankWh());
                done.run();
            }
        });
        return draws;
    }

    private Sky sky(int set) {
        return taken(set).stream().map(Factor::sky).reduce(Sky.AS_IT_IS, Sky::without);
    }

    private Values without(int set) {
        Values changed = values;
        for (Factor factor : taken(set)) {
            changed = factor.away().apply(changed);
        }
        return changed;
    }

    private List<Factor> taken(int set) {
        return IntStream.range(0, factors.size())
                .filter(i -> (set & (1 << i)) != 0)
                .mapToObj(factors::get)
                .toList();
    }

    private Variant built(Values changed) {
        try {
            return VariantBuilder.build(variant.name(), changed);
        } catch (ScenarioException e) {
            throw new IllegalStateException("a design without one of its causes: " + e.problems(), e);
        }
    }

    private List<Remedy> remedies(Runnable done) {
        return changes.parallelStream()
                .map(steps -> {
                    Remedy remedy = smallestThatTurns(steps);
                    done.run();
                    return remedy;
                })
                .sorted(Comparator.comparing((Remedy remedy) -> !remedy.turns())
                        .thenComparingDouble(remedy -> remedy.turns() ? remedy.price() : remedy.lackWh()))
                .toList();
    }

    /** Of the steps of one kind of change the first that turns the design, else the one that lacks least. */
    private Remedy smallestThatTurns(List<SingleChange> steps) {
        Function<Variant, RunPlan> plans = planner.under(Sky.AS_IT_IS);
        List<Remedy> tried = new ArrayList<>();
        for (SingleChange step : steps) {
            Remedy remedy = tried(step, plans);
            if (remedy.turns()) {
                return remedy;
            }
            tried.add(remedy);
        }
        return tried.stream().min(Comparator.comparingDouble(Remedy::lackWh)).orElseThrow();
    }

    private Remedy tried(SingleChange change, Function<Variant, RunPlan> plans) {
        Variant changed;
        try {
            changed = change.variant();
        } catch (ScenarioException e) {
            throw new IllegalStateException("a design with " + change.words() + ": " + e.problems(), e);
        }
        RunResult then = Simulator.run(plans.apply(changed));
        double bankWh = changed.bankWh();
        return new Remedy(
                change.words(),
                then.holds() && then.comfortableNights() >= result.comfortableNights(),
                change.price(),
                change.perTrip(),
                change.currency(),
                change.priceFrom(),
                drawWh(then, bankWh) - (1 - then.reserveShare()) * bankWh,
                then);
    }
}
