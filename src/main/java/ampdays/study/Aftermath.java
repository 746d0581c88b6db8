package ampdays.study;

import ampdays.results.Channel;
import ampdays.results.Milestones;
import ampdays.results.MinuteLog;
import ampdays.results.RunResult;
import ampdays.sim.RunPlan;
import ampdays.sim.TripCut;
import ampdays.sim.TripCut.Recorded;
import ampdays.sim.TripCut.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What a trip is like from a moment on: one stretch with something changed, and one with all as before again. */
final class Aftermath {
    /** A use that asks for less asks for nothing, Wh. */
    private static final double LEAST_WH = 0.5;

    private final List<RunResult> results;
    private final List<Milestones> milestones;
    private final List<MinuteLog> logs;

    private Aftermath(List<RunResult> results, List<Milestones> milestones, List<MinuteLog> logs) {
        this.results = results;
        this.milestones = milestones;
        this.logs = logs;
    }

    /**
     * Goes on from a cut.
     *
     * @param during the plan up to {@code until}
     * @param after the plan from there to the end
     * @param recorded whether to keep what every minute was like
     */
    static Aftermath of(TripCut cut, RunPlan during, int until, RunPlan after, boolean recorded) {
        Aftermath made = new Aftermath(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        TripCut end = made.add(cut, during, until, recorded);
        if (until < after.clock().steps()) {
            made.add(end, after, after.clock().steps(), recorded);
        }
        return made;
    }

    private TripCut add(TripCut from, RunPlan plan, int to, boolean recorded) {
        Stretch stretch;
        if (recorded) {
            Recorded both = from.goOnRecorded(plan, to);
            stretch = both.stretch();
            logs.add(both.log());
        } else {
            stretch = from.goOn(plan, to);
        }
        results.add(stretch.result());
        milestones.add(stretch.milestones());
        return stretch.end();
    }

    /** The same without what every minute was like, which takes most of the memory. */
    Aftermath withoutMinutes() {
        return new Aftermath(results, milestones, List.of());
    }

    Milestones milestones() {
        return milestones.stream().reduce(Milestones::then).orElseThrow();
    }

    int comfortableNights() {
        return results.stream().mapToInt(RunResult::comfortableNights).sum();
    }

    /** The uses of the first stretch. */
    Set<String> uses() {
        return results.get(0).servedWhByUse().keySet();
    }

    /** Whether all stretches have a use that some other has: whether none took it out of the design. */
    boolean keeps(String use) {
        return results.stream().allMatch(r -> r.servedWhByUse().containsKey(use));
    }

    /**
     * What share of what a use asks for it gets in all stretches, 0 to 1; NaN when it asks for nothing. Where a stretch has
     * lost the use it asks for what it asks in the same stretch of another aftermath.
     */
    double servedShare(String use, Aftermath other) {
        return servedShare(use, other, results.size());
    }

    /** The same in the first stretch alone: while something is changed. */
    double servedShareDuring(String use, Aftermath other) {
        return servedShare(use, other, 1);
    }

    private double servedShare(String use, Aftermath other, int count) {
        double servedWh = 0;
        double askedWh = 0;
        for (int i = 0; i < count; i++) {
            RunResult own = results.get(i);
            boolean kept = own.servedWhByUse().containsKey(use);
            RunResult asks = kept ? own : other.results.get(i);
            servedWh += own.servedWhByUse().getOrDefault(use, 0.0);
            askedWh += asks.servedWhByUse().getOrDefault(use, 0.0)
                    + asks.unservedWhByUse().getOrDefault(use, 0.0);
        }
        return askedWh < LEAST_WH ? Double.NaN : servedWh / askedWh;
    }

    /** What a use gets while something is changed, Wh. */
    double servedWhDuring(String use) {
        return results.get(0).servedWhByUse().getOrDefault(use, 0.0);
    }

    /** A channel in a step of the trip. */
    double get(Channel channel, int step) {
        for (MinuteLog log : logs) {
            if (step < log.firstStep() + log.rows()) {
                return log.get(channel, step - log.firstStep());
            }
        }
        throw new IndexOutOfBoundsException(step);
    }
}
