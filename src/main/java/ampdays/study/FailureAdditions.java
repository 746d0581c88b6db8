package ampdays.study;

import ampdays.results.FailureOutcome;
import ampdays.results.FailureOutcome.Addition;
import ampdays.results.FailureOutcome.Impossible;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.SingleChange;
import ampdays.scenario.Values;
import ampdays.sim.RunPlan;
import ampdays.sim.TripCut;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Looks for what makes failures good: of each kind of change the smallest step with which the trip with the failure is no
 * worse than without either. Each changed design is planned once for all failures, and its trip up to them is run once: they
 * are cut from it in the order in which they strike. One that takes something for granted has a trip of its own. A step that
 * contradicts a failure is left out with that failure, and told.
 */
final class FailureAdditions {
    private final List<Suffered> failures;
    private final List<Integer> inOrder;
    private final Planner planner;

    private FailureAdditions(List<Suffered> failures, Planner planner) {
        this.failures = failures;
        this.inOrder = new ArrayList<>();
        for (int i = 0; i < failures.size(); i++) {
            if (!failures.get(i).outcome().survived()) {
                inOrder.add(i);
            }
        }
        inOrder.sort(Comparator.comparingInt(i -> failures.get(i).place().fromStep()));
        this.planner = planner;
    }

    /**
     * What was found for one failure.
     *
     * @param additions what makes it good, the cheapest first
     * @param impossible the first step of each kind that cannot be with it
     * @param tried kinds of which some step could be tried
     */
    record Made(List<Addition> additions, List<Impossible> impossible, int tried) {
        FailureOutcome in(FailureOutcome outcome) {
            return outcome.with(additions, impossible, tried);
        }

        private static Made of(List<Tried> kinds) {
            return new Made(
                    kinds.stream()
                            .flatMap(kind -> Optional.ofNullable(kind.good).stream())
                            .sorted(Comparator.comparingDouble(Addition::price))
                            .toList(),
                    kinds.stream()
                            .flatMap(kind -> Optional.ofNullable(kind.impossible).stream())
                            .toList(),
                    (int) kinds.stream().filter(kind -> kind.any).count());
        }
    }

    /** What one kind of change comes to with one failure. */
    private static final class Tried {
        /** Null as long as none is found. */
        private Addition good;

        /** Null without any. */
        private Impossible impossible;

        private boolean any;
    }

    /**
     * What makes each failure good; nothing for one that is survived.
     *
     * @param changes by kind, with the steps in rising order
     */
    static List<Made> of(List<Suffered> failures, List<List<SingleChange>> changes, Planner planner) {
        FailureAdditions additions = new FailureAdditions(failures, planner);
        List<List<Tried>> byKind =
                changes.parallelStream().map(additions::smallest).toList();
        return IntStream.range(0, failures.size())
                .mapToObj(i -> Made.of(byKind.stream().map(kind -> kind.get(i)).toList()))
                .toList();
    }

    /** The smallest step for each failure. */
    private List<Tried> smallest(List<SingleChange> steps) {
        List<Tried> found = failures.stream().map(failure -> new Tried()).toList();
        FailurePlans plans = new FailurePlans(planner);
        for (SingleChange step : steps) {
            IdentityHashMap<Values, Undisturbed> trips = new IdentityHashMap<>();
            for (int i : inOrder) {
                if (found.get(i).good == null) {
                    attempt(found.get(i), failures.get(i), step, trips, plans);
                }
            }
        }
        return found;
    }

    private static void attempt(
            Tried tried,
            Suffered suffered,
            SingleChange step,
            IdentityHashMap<Values, Undisturbed> trips,
            FailurePlans plans) {
        try {
            boolean good = isGood(suffered, step, trips, plans);
            tried.any = true;
            tried.good = good ? addition(step) : null;
        } catch (ScenarioException e) {
            if (tried.impossible == null) {
                tried.impossible = new Impossible(step.words(), FailureText.why(e));
            }
        }
    }

    private static boolean isGood(
            Suffered suffered, SingleChange step, IdentityHashMap<Values, Undisturbed> trips, FailurePlans plans)
            throws ScenarioException {
        FailureCase place = suffered.place();
        RunPlan during = plans.during(place, step);
        Values before = place.before(step);
        Undisturbed trip = trips.get(before);
        if (trip == null) {
            trip = new Undisturbed(plans.before(place, step));
            trips.put(before, trip);
        }
        Aftermath with = Aftermath.of(trip.at(place.fromStep()), during, place.untilStep(), trip.plan, false);
        return FailureGood.isGood(with, suffered.without());
    }

    private static Addition addition(SingleChange step) {
        return new Addition(step.words(), step.price(), step.perTrip(), step.currency(), step.priceFrom());
    }

    /** A trip without a failure, as far as it has been run. */
    private static final class Undisturbed {
        private final RunPlan plan;
        private TripCut cut = TripCut.start();

        Undisturbed(RunPlan plan) {
            this.plan = plan;
        }

        /** The moment before a step that is no earlier than the one asked for last. */
        TripCut at(int step) {
            cut = cut.goOn(plan, step).end();
            return cut;
        }
    }
}
