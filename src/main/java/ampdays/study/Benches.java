package ampdays.study;

import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;

/**
 * What workers make designs and their plans with, under the sky as it is. A bench remembers parts of its last design; it serves
 * one worker at a time, and the next one after it.
 */
final class Benches {
    private final Planner planner;
    private final ConcurrentLinkedQueue<Bench> idle = new ConcurrentLinkedQueue<>();

    /** What one worker makes designs and plans with. */
    record Bench(VariantBuilder designs, Function<Variant, RunPlan> plans) {}

    Benches(Planner planner) {
        this.planner = planner;
    }

    /** A bench of one's own. */
    static Bench bench(Planner planner) {
        return new Bench(new VariantBuilder(), planner.under(Sky.AS_IT_IS));
    }

    /** Works at an idle bench, or at a new one. */
    <T> T work(Function<Bench, T> piece) {
        Bench free = idle.poll();
        Bench bench = free == null ? bench(planner) : free;
        T made = piece.apply(bench);
        idle.add(bench);
        return made;
    }
}
