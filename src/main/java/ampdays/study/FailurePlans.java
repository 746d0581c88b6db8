package ampdays.study;

import ampdays.scenario.ScenarioException;
import ampdays.scenario.SingleChange;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** Makes plans of designs before failures and during them; all share their parts. For one thread. */
final class FailurePlans {
    private final Planner planner;
    private final VariantBuilder designs = new VariantBuilder();
    private final Map<Sky, Function<Variant, RunPlan>> skies = new HashMap<>();

    FailurePlans(Planner planner) {
        this.planner = planner;
    }

    /** Of the trip without any. */
    RunPlan asItIs(Variant variant) {
        return plan(Sky.AS_IT_IS, variant);
    }

    RunPlan before(FailureCase place, SingleChange design) throws ScenarioException {
        return asItIs(place.before(design, designs));
    }

    RunPlan during(FailureCase place, SingleChange design) throws ScenarioException {
        return plan(place.sky(), place.during(design, designs));
    }

    private RunPlan plan(Sky sky, Variant variant) {
        return skies.computeIfAbsent(sky, planner::under).apply(variant);
    }
}
