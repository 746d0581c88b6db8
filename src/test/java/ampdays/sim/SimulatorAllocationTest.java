package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

/**
 * A step allocates nothing. The same days are run in steps of 60 s and of 30 s: what a run allocates at its beginning, per
 * day and for its result is alike, so that the bytes of the two runs differ by those of the added steps only, and that
 * difference is zero. Source: the cost contract of {@link Simulator}.
 *
 * <p>The least of several runs counts, because the virtual machine may allocate on this thread's account when it compiles.
 */
class SimulatorAllocationTest {
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    @Test
    void addedMinutesAllocateNothing() {
        RunPlan minutes = FullVan.variableSpeed().plan(FullVan.weather(), 60);
        RunPlan halfMinutes = FullVan.variableSpeed().plan(FullVan.weather(), 30);
        leastBytes(minutes);
        leastBytes(halfMinutes);
        long addedBytes = leastBytes(halfMinutes) - leastBytes(minutes);
        assertThat(halfMinutes.clock().steps() - minutes.clock().steps()).isEqualTo(6 * 1440);
        assertThat(addedBytes).isZero();
    }

    private static long leastBytes(RunPlan plan) {
        long thread = Thread.currentThread().getId();
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 20; i++) {
            long before = THREADS.getThreadAllocatedBytes(thread);
            Simulator.run(plan);
            least = Math.min(least, THREADS.getThreadAllocatedBytes(thread) - before);
        }
        return least;
    }
}
