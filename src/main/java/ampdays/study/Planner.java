package ampdays.study;

import ampdays.scenario.Variant;
import ampdays.sim.RunPlan;
import java.util.function.Function;

/** Makes plans of changed designs for a study, which itself knows no weather. */
public interface Planner {
    /**
     * Makes plans under one sky; plans share their parts. The planner serves several threads, each of these functions one.
     */
    Function<Variant, RunPlan> under(Sky sky);
}
