package ampdays.study;

import ampdays.results.WiringResult;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.study.WiringCheck.Checked;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * The changes that clear the findings of a design. After each round the changed design is simulated and checked anew, since
 * another cable or regulator cap moves the currents.
 *
 * @param changes path to text, as an option of the scenario would say them
 * @param after the changed design's check; its findings are what nobody could mend
 */
public record WiringFix(Map<String, String> changes, WiringResult after) {
    private static final int MOST_ROUNDS = 6;

    /**
     * Mends a design.
     *
     * @param values of the design, circuits in them
     * @param planner makes the plan of a changed design
     */
    public static WiringFix of(Values values, Checked now, boolean offered, Function<Variant, RunPlan> planner) {
        Map<String, String> all = new LinkedHashMap<>();
        Checked checked = now;
        Values changed = values;
        for (int round = 0; round < MOST_ROUNDS && !checked.changes().isEmpty(); round++) {
            for (Map.Entry<String, String> change : checked.changes().entrySet()) {
                changed = with(changed, change.getKey(), change.getValue(), all);
            }
            checked = WiringCheck.of(planner.apply(variant(now.result().option(), changed)), offered);
        }
        return new WiringFix(all, checked.result());
    }

    /** A joint that was told by its millivolts is mended by its millivolts. */
    private static Values with(Values values, String path, String text, Map<String, String> all) {
        String measured = path.replaceFirst("\\.worst-joint$", ".worst-joint-drop");
        if (!measured.equals(path) && values.isSaid(measured)) {
            double volts = CircuitDraft.GOOD_JOINT_OHM * values.number(measured + "-at");
            String drop = CircuitDraft.number(1000 * volts) + " mV";
            all.put(measured, drop);
            return values.with(measured, drop);
        }
        all.put(path, text);
        return values.with(path, text);
    }

    private static Variant variant(String name, Values values) {
        try {
            return VariantBuilder.build(name, values);
        } catch (ScenarioException e) {
            throw new IllegalStateException("a remedy made a design that cannot be: " + e.getMessage(), e);
        }
    }
}
