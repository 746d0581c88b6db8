package ampdays.study;

import ampdays.results.FailureOutcome.Addition;
import ampdays.scenario.SingleChange;
import ampdays.scenario.Values;
import ampdays.sim.RunPlan;
import ampdays.sim.TripCut;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Looks for what makes failures good: of each kind of change the smallest step with which the trip with the failure is no
 * worse than without either. Each changed design is planned once for all failures, and its trip up to them is run once: they
 * are cut from it in the order in which they strike. One that takes something for granted has a trip of its own.
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
     * What makes each failure good, the cheapest first; nothing for one that is survived.
     *
     * @param changes by kind, with the steps in rising order
     */
    static List<List<Addition>> of(List<Suffered> failures, List<List<SingleChange>> changes, Planner planner) {
        FailureAdditions additions = new FailureAdditions(failures, planner);
        List<List<Optional<Addition>>> byKind =
                changes.parallelStream().map(additions::smallest).toList();
        List<List<Addition>> byFailure = new ArrayList<>();
        for (int i = 0; i < failures.size(); i++) {
            int failure = i;
            byFailure.add(byKind.stream()
                    .flatMap(found -> found.get(failure).stream())
                    .sorted(Comparator.comparingDouble(Addition::price))
                    .toList());
        }
        return byFailure;
    }

    /** The smallest step for each failure. */
    private List<Optional<Addition>> smallest(List<SingleChange> steps) {
        List<Optional<Addition>> found = new ArrayList<>(Collections.nCopies(failures.size(), Optional.empty()));
        FailurePlans plans = new FailurePlans(planner);
        for (SingleChange step : steps) {
            IdentityHashMap<Values, Undisturbed> trips = new IdentityHashMap<>();
            for (int i : inOrder) {
                if (found.get(i).isEmpty() && isGood(failures.get(i), step, trips, plans)) {
                    found.set(i, Optional.of(addition(step)));
                }
            }
        }
        return found;
    }

    private static boolean isGood(
            Suffered suffered, SingleChange step, IdentityHashMap<Values, Undisturbed> trips, FailurePlans plans) {
        FailureCase place = suffered.place();
        Undisturbed trip =
                trips.computeIfAbsent(place.before(step), values -> new Undisturbed(plans.before(place, step)));
        RunPlan during = plans.during(place, step);
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
