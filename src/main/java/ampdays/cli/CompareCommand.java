package ampdays.cli;

import ampdays.chart.jfree.ChartRenderer;
import ampdays.results.Reasons;
import ampdays.sim.RunPlan;
import ampdays.study.Compare;
import ampdays.study.Comparison;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Future;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Simulates every option of a scenario and says which one holds. */
@Command(
        mixinStandardHelpOptions = true,
        description = "Simulate every option of a scenario, say which one holds, and write tables and charts.")
final class CompareCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The scenario.")
    private Path file;

    @Mixin
    private Outputs outputs;

    @Override
    public Integer call() throws Exception {
        Loaded loaded = Loaded.read(file);
        Future<ChartRenderer> renderer = ChartRenderer.begin();
        List<RunPlan> plans = loaded.plans(Outputs.STEP_SECONDS);
        Comparison comparison = Compare.of(loaded.scenario(), plans);
        Map<String, Reasons> reasons = outputs.reasons(loaded, comparison);
        Path folder = outputs.folder(Path.of(comparison.scenario()));
        Set<String> charts = outputs.write(comparison, reasons, plans, renderer, folder, Outputs::fileName);
        outputs.print(spec, loaded, comparison, reasons, plans, folder, charts);
        return Exit.DONE;
    }
}
