package ampdays.study;

import ampdays.results.Channel;
import ampdays.results.FailureOutcome;
import ampdays.results.FailureOutcome.Addition;
import ampdays.results.FailureOutcome.Curve;
import ampdays.results.FailureOutcome.Times;
import ampdays.results.FailureOutcome.Use;
import ampdays.results.FailureReport;
import ampdays.results.FailureReport.NotApplying;
import ampdays.results.Milestones;
import ampdays.results.RunResult;
import ampdays.scenario.Failure;
import ampdays.scenario.FailureKind;
import ampdays.scenario.Scenario;
import ampdays.scenario.SingleChange;
import ampdays.scenario.SingleChanges;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.sim.RunPlan;
import ampdays.sim.TripClock;
import ampdays.sim.TripCut;
import ampdays.sim.TripCut.Recorded;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;

/**
 * Runs the trip of one design with one thing failing at a time.
 *
 * <p>The trip is run up to the moment, cut, and goes on with the design as the failure leaves it; the same trip goes on
 * without it for comparison. What makes a failure good is found by the same with each of the single changes in the design
 * from the trip's start, from its smallest step up. Results are put in place by number, so the cores do not show in them.
 * Test: {@code FailuresTest}.
 */
public final class Failures {
    private static final int MOST_POINTS = 600;

    private final Variant variant;
    private final Values values;
    private final Planner planner;
    private final boolean additions;
    private final TripClock clock;

    private Failures(Variant variant, Values values, Planner planner, boolean additions, TripClock clock) {
        this.variant = variant;
        this.values = values;
        this.planner = planner;
        this.additions = additions;
        this.clock = clock;
    }

    /** What the program tries when a scenario names no failures of its own. */
    public static List<Failure> builtIn() {
        return Arrays.stream(FailureKind.values()).map(Failure::of).toList();
    }

    /**
     * Runs all failures that a design can suffer.
     *
     * @param values that the variant was built from
     * @param additions whether to look for what makes each good, which takes many runs
     * @throws IllegalArgumentException with a sentence for the user when a failure makes a design that cannot be
     */
    public static FailureReport of(
            Scenario scenario,
            Variant variant,
            Values values,
            List<Failure> failures,
            Planner planner,
            boolean additions) {
        RunPlan plan = planner.under(Sky.AS_IT_IS).apply(variant);
        TripClock clock = plan.clock();
        Recorded whole = TripCut.start().goOnRecorded(plan, clock.steps());
        FailureMoments moments = new FailureMoments(clock, whole.log());
        Failures study = new Failures(variant, values, planner, additions, clock);
        List<FailureOutcome> outcomes = new ArrayList<>();
        List<NotApplying> not = new ArrayList<>();
        for (Failure failure : failures) {
            Optional<String> whyNot = failure.whyNot(values);
            FailureMoments.Found found = whyNot.isPresent()
                    ? new FailureMoments.Found(Optional.empty(), whyNot.get())
                    : moments.find(failure);
            found.place()
                    .ifPresentOrElse(
                            place -> outcomes.add(study.outcome(place)),
                            () -> not.add(new NotApplying(failure.name(), found.whyNot())));
        }
        RunResult undisturbed = whole.stretch().result();
        return new FailureReport(
                scenario.name(),
                scenario.title(),
                variant.name(),
                clock.zone(),
                undisturbed.reserveShare(),
                undisturbed.tripDays(),
                outcomes,
                not,
                undisturbed,
                study.curve(step -> whole.log().get(Channel.STATE_OF_CHARGE, step), 0),
                LossOfCooling.of(variant, values, planner));
    }

    private FailureOutcome outcome(FailureCase place) {
        SingleChange asItIs = FailureCase.unchanged(values, variant);
        Aftermath with = with(place, asItIs, true);
        Aftermath without = without(place, asItIs);
        FailureSigns signs = new FailureSigns(clock, with, without, place.fromStep());
        List<String> worse = FailureGood.worse(with, without);
        List<List<SingleChange>> changes =
                additions && !worse.isEmpty() ? SingleChanges.of(values, variant.trip()) : List.of();
        return new FailureOutcome(
                place.failure().name(),
                FailureText.what(place),
                clock.epochSecond(place.fromStep()),
                clock.epochSecond(place.untilStep()),
                hours(clock.steps() - place.fromStep()),
                times(place, with),
                times(place, without),
                uses(with, without),
                signs.sign(),
                signs.alarm(),
                worse,
                additions(place, without, changes),
                changes.size(),
                FailureText.advice(place.failure()),
                curve(step -> with.get(Channel.STATE_OF_CHARGE, step), place.fromStep()));
    }

    private Aftermath with(FailureCase place, SingleChange design, boolean recorded) {
        RunPlan before = planner.under(Sky.AS_IT_IS).apply(place.before(design));
        RunPlan during = planner.under(place.sky()).apply(place.during(design));
        TripCut cut = TripCut.start().goOn(before, place.fromStep()).end();
        return Aftermath.of(cut, during, place.untilStep(), before, recorded);
    }

    private Aftermath without(FailureCase place, SingleChange design) {
        RunPlan before = planner.under(Sky.AS_IT_IS).apply(place.before(design));
        TripCut cut = TripCut.start().goOn(before, place.fromStep()).end();
        return Aftermath.of(cut, before, place.untilStep(), before, true);
    }

    private List<Addition> additions(FailureCase place, Aftermath without, List<List<SingleChange>> changes) {
        return changes.parallelStream()
                .map(steps -> smallestThatMakesGood(place, without, steps))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(Addition::price))
                .toList();
    }

    private Optional<Addition> smallestThatMakesGood(FailureCase place, Aftermath without, List<SingleChange> steps) {
        Function<Variant, RunPlan> asItIs = planner.under(Sky.AS_IT_IS);
        Function<Variant, RunPlan> under = place.warmerK() == 0 ? asItIs : planner.under(place.sky());
        for (SingleChange step : steps) {
            RunPlan before = asItIs.apply(place.before(step));
            RunPlan during = under.apply(place.during(step));
            TripCut cut = TripCut.start().goOn(before, place.fromStep()).end();
            if (FailureGood.isGood(Aftermath.of(cut, during, place.untilStep(), before, false), without)) {
                return Optional.of(
                        new Addition(step.words(), step.price(), step.perTrip(), step.currency(), step.priceFrom()));
            }
        }
        return Optional.empty();
    }

    private Times times(FailureCase place, Aftermath after) {
        Milestones m = after.milestones();
        return new Times(
                hours(place, m.reserve()),
                hours(place, m.cutOut()),
                hours(place, m.over32C()),
                hours(place, m.over35C()),
                hours(place, m.over40C()),
                m.hotHours(),
                after.comfortableNights());
    }

    /** From the moment to the start of the step at whose end it was so; NaN when never. */
    private double hours(FailureCase place, int step) {
        return step < 0 ? Double.NaN : hours(step - place.fromStep());
    }

    private double hours(int steps) {
        return steps * clock.stepSeconds() / 3600.0;
    }

    private static List<Use> uses(Aftermath with, Aftermath without) {
        List<Use> uses = new ArrayList<>();
        for (String name : without.uses()) {
            uses.add(new Use(
                    name,
                    with.servedWhDuring(name),
                    without.servedWhDuring(name),
                    with.servedShareDuring(name, without),
                    without.servedShareDuring(name, without)));
        }
        return uses;
    }

    private Curve curve(IntToDoubleFunction socPercent, int from) {
        int every = Math.max(1, (clock.steps() - from) / MOST_POINTS);
        List<Double> day = new ArrayList<>();
        List<Double> soc = new ArrayList<>();
        for (int step = from; step < clock.steps(); step += every) {
            day.add(step * clock.stepSeconds() / 86_400.0);
            soc.add(socPercent.applyAsDouble(step));
        }
        return new Curve(day, soc);
    }
}
