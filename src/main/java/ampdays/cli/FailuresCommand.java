package ampdays.cli;

import ampdays.chart.ChartModel;
import ampdays.chart.FailureCharts;
import ampdays.chart.jfree.ChartRenderer;
import ampdays.io.FailureFiles;
import ampdays.results.FailureReport;
import ampdays.scenario.Failure;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Variant;
import ampdays.study.Failures;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lets one thing after another fail. */
@Command(
        mixinStandardHelpOptions = true,
        description = "What happens when something fails: how long the bank lasts, what stays alive, how hot the cabin"
                + " gets, what would be noticed first, and what makes it good.")
final class FailuresCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "FILE",
            description = "The scenario; with its own failures, or without for one of each kind.")
    private Path file;

    @Option(names = "--option", paramLabel = "NAME", description = "The option, by its name in the scenario.")
    private String option = ScenarioFile.BASE_NAME;

    @Option(
            names = "--quick",
            description = "Do not look for what makes each failure good, which takes most of the time.")
    private boolean quick;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the results; without it, failures in the scenario's folder in out/.")
    private Path out;

    @Option(names = "--json", description = "Print one JSON document, and nothing else, on standard output.")
    private boolean json;

    @Override
    public Integer call() throws Exception {
        Loaded loaded = Loaded.read(file);
        Variant variant = loaded.option(option);
        loaded.requireCoverage();
        List<Failure> own = loaded.file().failures();
        FailureReport report = Failures.of(
                loaded.scenario(),
                variant,
                loaded.file().values(option).orElseThrow(),
                own.isEmpty() ? Failures.builtIn() : own,
                loaded.planner(Outputs.STEP_SECONDS),
                !quick);
        Path folder = out == null ? Path.of("out", loaded.scenario().name(), "failures" + ofOption()) : out;
        FailureFiles.write(folder, report);
        SortedMap<String, ChartModel> charts = FailureCharts.of(report);
        new ChartRenderer().writeAll(charts, folder);
        loaded.remarks().forEach(spec.commandLine().getErr()::println);
        PrintWriter screen = spec.commandLine().getOut();
        if (json) {
            FailureFiles.json(screen, report);
            screen.flush();
        } else {
            new FailuresScreen(screen, report).print(folder, charts.keySet());
        }
        return Exit.DONE;
    }

    private String ofOption() {
        return option.equals(ScenarioFile.BASE_NAME) ? "" : "-" + Outputs.fileName(option);
    }
}
