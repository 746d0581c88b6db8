package ampdays.report;

import ampdays.results.Chances;
import ampdays.results.HeatAfterLoss;
import ampdays.results.Matters;
import ampdays.results.SweepTable;
import ampdays.results.WiringResult;
import ampdays.study.UpgradePath.Stage;
import java.util.List;
import java.util.Optional;

/**
 * What was looked into beside the comparison; what was not is left out of the document.
 *
 * @param heat of the recommended design; likewise what matters
 * @param breakEven all options by heat, parked days and driving
 * @param stages in which the changes are worth buying
 * @param wiring of the options that name circuits
 */
public record Studies(
        Optional<Chances> chances,
        Optional<HeatAfterLoss> heat,
        Optional<Matters> matters,
        Optional<SweepTable> breakEven,
        List<Stage> stages,
        List<WiringResult> wiring) {
    public Studies {
        stages = List.copyOf(stages);
        wiring = List.copyOf(wiring);
    }
}
