package ampdays.sim;

import ampdays.results.Milestones;
import ampdays.results.MinuteLog;
import ampdays.results.RunResult;

/**
 * A trip that was run up to a moment and may go on from there, with the same design or another: bank, cabin, machines and
 * whatever else lasts from step to step are as they were. What another design has in addition starts as on the trip's
 * first step; what it has not is gone. The state of charge goes on as a share, so that charge in a lost part of the bank is
 * lost with it.
 *
 * <p>Each stretch has a ledger of its own, which closes in every step; what a cut takes away is in neither. Several may go
 * on from one cut, also at once: it is only read. Leaves out that the bank's ageing is counted anew in each stretch. Test:
 * {@code TripCutTest}.
 */
public final class TripCut {
    /** Null before the first step. */
    private final Simulator stopped;

    private final int step;

    private TripCut(Simulator stopped, int step) {
        this.stopped = stopped;
        this.step = step;
    }

    /** The moment before the first step. */
    public static TripCut start() {
        return new TripCut(null, 0);
    }

    /**
     * A stretch of a trip.
     *
     * @param result whose sums, days and findings are of the stretch alone, but whose days to empty count from the trip's
     *     start
     * @param milestones when it first came to what
     * @param end from where it may go on
     */
    public record Stretch(RunResult result, Milestones milestones, TripCut end) {}

    /**
     * Goes on up to a step, without it.
     *
     * @param plan of a trip over the same time in the same steps
     */
    public Stretch goOn(RunPlan plan, int toStep) {
        return goOn(plan, toStep, Recorder.NONE);
    }

    /**
     * A stretch with what every minute was like.
     *
     * @param log every channel of the stretch
     */
    public record Recorded(Stretch stretch, MinuteLog log) {}

    /** Goes on up to a step, without it, and records every channel. */
    public Recorded goOnRecorded(RunPlan plan, int toStep) {
        MinuteRecorder minutes = new MinuteRecorder(plan.clock(), step, toStep);
        Stretch stretch = goOn(plan, toStep, minutes);
        return new Recorded(stretch, minutes.log());
    }

    private Stretch goOn(RunPlan plan, int toStep, Recorder recorder) {
        if (stopped != null && !sameTime(stopped.clock(), plan.clock())) {
            throw new IllegalArgumentException("a trip can only go on over the same time, in the same steps");
        }
        MilestoneWatch watch = new MilestoneWatch(plan);
        Recorder both = (m, state) -> {
            recorder.minute(m, state);
            watch.minute(m, state);
        };
        Simulator simulator = step == 0 ? Simulator.starting(plan, both) : Simulator.goingOn(stopped, plan, both);
        RunResult result = simulator.run(step, toStep);
        return new Stretch(result, watch.milestones(), new TripCut(simulator, toStep));
    }

    private static boolean sameTime(TripClock a, TripClock b) {
        return a.startEpochSecond() == b.startEpochSecond()
                && a.stepSeconds() == b.stepSeconds()
                && a.steps() == b.steps();
    }
}
