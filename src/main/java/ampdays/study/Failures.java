package ampdays.study;

import ampdays.results.Channel;
import ampdays.results.FailureOutcome;
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
import ampdays.scenario.ScenarioException;
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
import java.util.List;
import java.util.Optional;
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
    private final FailurePlans plans;
    private final TripClock clock;

    private Failures(Variant variant, Values values, FailurePlans plans, TripClock clock) {
        this.variant = variant;
        this.values = values;
        this.plans = plans;
        this.clock = clock;
    }

    /** What the program tries when a scenario names no failures of its own. */
    public static List<Failure> builtIn() {
        return Arrays.stream(FailureKind.values()).map(Failure::of).toList();
    }

    /**
     * Runs all failures that a design can suffer; one with which it cannot be does not apply.
     *
     * @param values that the variant was built from
     * @param additions whether to look for what makes each good, which takes many runs
     */
    public static FailureReport of(
            Scenario scenario,
            Variant variant,
            Values values,
            List<Failure> failures,
            Planner planner,
            boolean additions) {
        FailurePlans plans = new FailurePlans(planner);
        RunPlan plan = plans.asItIs(variant);
        TripClock clock = plan.clock();
        Recorded whole = TripCut.start().goOnRecorded(plan, clock.steps());
        FailureMoments moments = new FailureMoments(clock, whole.log());
        Failures study = new Failures(variant, values, plans, clock);
        List<Suffered> suffered = new ArrayList<>();
        List<NotApplying> not = new ArrayList<>();
        for (Failure failure : failures) {
            Optional<String> whyNot = failure.whyNot(values);
            FailureMoments.Found found = whyNot.isPresent()
                    ? new FailureMoments.Found(Optional.empty(), whyNot.get())
                    : moments.find(failure);
            if (found.place().isEmpty()) {
                not.add(new NotApplying(failure.name(), found.whyNot()));
                continue;
            }
            try {
                suffered.add(study.suffered(found.place().get()));
            } catch (ScenarioException e) {
                not.add(new NotApplying(failure.name(), "the design cannot be with it: " + FailureText.why(e)));
            }
        }
        RunResult undisturbed = whole.stretch().result();
        return new FailureReport(
                scenario.name(),
                scenario.title(),
                variant.name(),
                clock.zone(),
                undisturbed.reserveShare(),
                undisturbed.tripDays(),
                additions ? study.withAdditions(suffered, planner) : outcomes(suffered),
                not,
                undisturbed,
                study.curve(step -> whole.log().get(Channel.STATE_OF_CHARGE, step), 0),
                LossOfCooling.of(variant, values, planner));
    }

    private static List<FailureOutcome> outcomes(List<Suffered> suffered) {
        return suffered.stream().map(Suffered::outcome).toList();
    }

    private List<FailureOutcome> withAdditions(List<Suffered> suffered, Planner planner) {
        if (outcomes(suffered).stream().allMatch(FailureOutcome::survived)) {
            return outcomes(suffered);
        }
        List<List<SingleChange>> changes = SingleChanges.of(values, variant.trip());
        List<FailureAdditions.Made> found = FailureAdditions.of(suffered, changes, planner);
        List<FailureOutcome> outcomes = new ArrayList<>();
        for (int i = 0; i < suffered.size(); i++) {
            FailureOutcome outcome = suffered.get(i).outcome();
            outcomes.add(outcome.survived() ? outcome : found.get(i).in(outcome));
        }
        return outcomes;
    }

    private Suffered suffered(FailureCase place) throws ScenarioException {
        SingleChange asItIs = FailureCase.unchanged(values, variant);
        RunPlan before = plans.before(place, asItIs);
        RunPlan during = plans.during(place, asItIs);
        TripCut cut = TripCut.start().goOn(before, place.fromStep()).end();
        Aftermath with = Aftermath.of(cut, during, place.untilStep(), before, true);
        Aftermath without = Aftermath.of(cut, before, place.untilStep(), before, true);
        return new Suffered(place, outcome(place, with, without), without.withoutMinutes());
    }

    private FailureOutcome outcome(FailureCase place, Aftermath with, Aftermath without) {
        FailureSigns signs = new FailureSigns(clock, with, without, place.fromStep());
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
                FailureGood.worse(with, without),
                List.of(),
                List.of(),
                0,
                FailureText.advice(place.failure()),
                curve(step -> with.get(Channel.STATE_OF_CHARGE, step), place.fromStep()));
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
