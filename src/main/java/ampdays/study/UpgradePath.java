package ampdays.study;

import ampdays.results.RunResult;
import ampdays.scenario.Parts;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.UpgradeStep;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * In which order the changes of the options are worth buying: each stage puts one of them on top of those before: what costs
 * nothing first, then the one that gains most, for its price where all that gain have one. A gain is counted in days that the bank lasts and comfortable
 * nights, a day as much as a night, and one more where the bank now holds. It ends when the bank holds and every night is
 * comfortable, or nothing gains any more. Every stage is simulated. Test: {@code UpgradePathTest}.
 */
public final class UpgradePath {
    private static final double LEAST_GAIN = 0.05;

    private final Map<String, Double> wholePrices;
    private final Function<Variant, RunPlan> plans;

    private UpgradePath(Map<String, Double> wholePrices, Function<Variant, RunPlan> plans) {
        this.wholePrices = wholePrices;
        this.plans = plans;
    }

    /**
     * One more change.
     *
     * @param result with it and all before it
     * @param gain days and nights more than before it
     * @param addedKg mass of the parts more than before it
     * @param price of what it takes; 0 where nothing has to be bought, empty where that is not known
     */
    public record Stage(String name, RunResult result, double gain, double addedKg, OptionalDouble price) {}

    private record Tried(UpgradeStep step, Values values, Stage stage) {}

    /**
     * Finds the stages.
     *
     * @param base run of the base design
     * @param wholePrices what whole changes to options cost, by their names; these go before the prices of their parts
     */
    public static List<Stage> of(ScenarioFile file, RunResult base, Map<String, Double> wholePrices, Planner planner) {
        UpgradePath path = new UpgradePath(wholePrices, planner.under(Sky.AS_IT_IS));
        List<UpgradeStep> left = new ArrayList<>(UpgradeStep.of(file, wholePrices.keySet()));
        List<Stage> stages = new ArrayList<>();
        Values design = file.base();
        RunResult result = base;
        while (!isAllDone(result)) {
            Optional<Tried> next = path.next(left, design, result);
            if (next.isEmpty()) {
                break;
            }
            stages.add(next.get().stage());
            design = next.get().values();
            result = next.get().stage().result();
            left.remove(next.get().step());
        }
        return stages;
    }

    private static boolean isAllDone(RunResult run) {
        return run.holds() && run.comfortableNights() == run.nights();
    }

    private Optional<Tried> next(List<UpgradeStep> steps, Values design, RunResult before) {
        List<Tried> gaining = steps.stream()
                .flatMap(step -> tried(step, design, before).stream())
                .filter(tried -> tried.stage().gain() >= LEAST_GAIN)
                .toList();
        boolean byPrice =
                gaining.stream().allMatch(tried -> tried.stage().price().isPresent());
        return gaining.stream()
                .max(Comparator.comparingDouble((Tried tried) -> worth(tried.stage(), byPrice))
                        .thenComparingDouble(tried -> tried.stage().gain())
                        .thenComparingDouble(tried -> -tried.stage().addedKg()));
    }

    /** What costs nothing is worth more than anything, also where others have no price. */
    private static double worth(Stage stage, boolean byPrice) {
        boolean isFree = stage.price().isPresent() && stage.price().getAsDouble() == 0;
        return byPrice || isFree ? stage.gain() / stage.price().getAsDouble() : stage.gain();
    }

    /** Empty where the change is impossible on this design. */
    private Optional<Tried> tried(UpgradeStep step, Values design, RunResult before) {
        Values changed = step.on(design);
        RunResult then;
        try {
            then = Simulator.run(plans.apply(VariantBuilder.build(step.name(), changed)));
        } catch (ScenarioException e) {
            return Optional.empty();
        }
        return Optional.of(new Tried(
                step,
                changed,
                new Stage(
                        step.name(),
                        then,
                        good(then) - good(before),
                        Parts.of(changed).massKg() - Parts.of(design).massKg(),
                        price(step, design, changed))));
    }

    private OptionalDouble price(UpgradeStep step, Values design, Values changed) {
        Double whole = step.isWhole() ? wholePrices.get(step.option()) : null;
        if (whole != null) {
            return OptionalDouble.of(whole);
        }
        return step.isHabit() ? OptionalDouble.of(0) : Parts.price(Parts.bought(design, changed));
    }

    private static double good(RunResult run) {
        double days = Double.isNaN(run.daysToEmpty()) ? run.tripDays() : run.daysToEmpty();
        return days + run.comfortableNights() + (run.holds() ? 1 : 0);
    }
}
