package ampdays.sim;

import ampdays.battery.Banks;
import ampdays.cooling.Coolers;
import ampdays.results.RunResult;
import ampdays.scenario.Design;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Runs many options, those side by side that can be: the results are the same as one by one, to the last bit. Test:
 * {@code FleetTest}.
 */
public final class Fleet {
    /** Fewer are quicker one by one (docs/SPEED.md). */
    private static final int LEAST = 20;

    private Fleet() {}

    /** Runs options and keeps their totals only; results in their order. */
    public static List<RunResult> run(List<RunPlan> plans) {
        return run(plans, LEAST);
    }

    /** @param least how many must be alike to go side by side */
    static List<RunResult> run(List<RunPlan> plans, int least) {
        RunResult[] results = new RunResult[plans.size()];
        for (int i = 0; i < results.length; i++) {
            if (results[i] == null) {
                List<Integer> group = group(plans, results, i);
                List<RunPlan> alike = group.stream().map(plans::get).toList();
                List<RunResult> ran = alike.size() < least
                        ? alike.stream().map(Simulator::run).toList()
                        : SideBySide.run(alike);
                for (int k = 0; k < ran.size(); k++) {
                    results[group.get(k)] = ran.get(k);
                }
            }
        }
        return Arrays.asList(results);
    }

    /** A plan and those later ones that can be stepped beside it. */
    private static List<Integer> group(List<RunPlan> plans, RunResult[] results, int first) {
        List<Integer> group = new ArrayList<>(List.of(first));
        if (may(plans.get(first))) {
            for (int i = first + 1; i < results.length; i++) {
                if (results[i] == null && alike(plans.get(first), plans.get(i)) && may(plans.get(i))) {
                    group.add(i);
                }
            }
        }
        return group;
    }

    /** Whether a van can be stepped beside others at all. */
    static boolean may(RunPlan plan) {
        Design design = plan.variant().design();
        return plan.measured() == Measured.NONE
                && design.preCooling().isEmpty()
                && design.cabin().leakM2() == 0
                && design.cooler().map(Coolers::may).orElse(true)
                && design.solar().map(solar -> !solar.controller().pulseWidth()).orElse(true)
                && !BankFindings.uneven(design.bank())
                && Banks.may(design.bank())
                && Arrays.stream(plan.loads().patterns())
                        .allMatch(pattern -> design.inverter()
                                .map(inverter -> pattern.outletW() <= inverter.ratedW())
                                .orElse(true));
    }

    /** Whether two vans live through the same trip in cabins, with machines and loads that are the same. */
    static boolean alike(RunPlan a, RunPlan b) {
        return a.clock() == b.clock()
                && a.sky() == b.sky()
                && a.cabin() == b.cabin()
                && a.roof() == b.roof()
                && a.loads() == b.loads()
                && a.second() == b.second()
                && a.factory() == b.factory()
                && a.variant().design().refrigerator().isPresent()
                        == b.variant().design().refrigerator().isPresent()
                && a.variant().design().cooler().equals(b.variant().design().cooler())
                && a.variant().design().factory().equals(b.variant().design().factory())
                && a.variant().design().engine().equals(b.variant().design().engine());
    }
}
