package ampdays.cli;

import ampdays.results.Finding.Severity;
import ampdays.results.WiringResult;
import ampdays.sim.RunPlan;
import ampdays.study.WiringCheck;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The one line that a comparison says of the wiring, where the scenario names circuits. */
final class WiringLine {
    private WiringLine() {}

    static Optional<String> of(List<RunPlan> plans) {
        List<WiringResult> results = plans.stream()
                .filter(plan -> !plan.variant().design().circuits().isEmpty())
                .map(plan -> WiringCheck.of(plan, false).result())
                .toList();
        return results.isEmpty()
                ? Optional.empty()
                : Optional.of("Wiring findings: "
                        + results.stream().map(WiringLine::count).collect(Collectors.joining("; "))
                        + ". \"ampdays wiring\" tells them.");
    }

    private static String count(WiringResult result) {
        int all = result.findings().size();
        long danger = result.count(Severity.DANGER);
        return result.option() + " " + (all == 0 ? "none" : Integer.toString(all))
                + (danger > 0 ? " (" + danger + " of danger)" : "");
    }
}
