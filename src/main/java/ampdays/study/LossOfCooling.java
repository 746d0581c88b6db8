package ampdays.study;

import ampdays.results.HeatAfterLoss;
import ampdays.scenario.Failure;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.sim.CoolingLoss;
import java.util.List;

/** How long after a loss of cooling a parked van becomes dangerously hot, at the worst moment of its trip. */
public final class LossOfCooling {
    /** What is taken as kept where the design wishes for no temperature, °C; a guess. */
    public static final double KEPT_C = 24;

    private LossOfCooling() {}

    /**
     * The van of a design, parked in full sun with its windows shut and nobody in it, covers as the design has them. Until
     * the cooling stops it keeps the temperature that the design wishes for while people are awake, else asleep.
     *
     * @param values that the variant was built from
     */
    public static HeatAfterLoss of(Variant variant, Values values, Planner planner) {
        double keptC = List.of("cabin.set.awake", "cabin.set.asleep").stream()
                .mapToDouble(values::number)
                .filter(setC -> !Double.isNaN(setC))
                .findFirst()
                .orElse(KEPT_C);
        return CoolingLoss.worst(planner.under(Sky.AS_IT_IS).apply(Failure.parkedInTheSun(variant)), keptC);
    }
}
