package ampdays.cli;

import ampdays.chart.jfree.ChartRenderer;
import ampdays.results.Reasons;
import ampdays.scenario.Scenario;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Value;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.sim.RunPlan;
import ampdays.study.Compare;
import ampdays.study.Comparison;
import ampdays.study.HotTest;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Future;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Simulates one option of a scenario, or shows it with every default filled in. */
@Command(
        mixinStandardHelpOptions = true,
        description = "Simulate one option of a scenario; without --option, the design as it is.")
final class RunCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The scenario.")
    private Path file;

    @Option(names = "--option", paramLabel = "NAME", description = "The option, by its name in the scenario.")
    private String option = ScenarioFile.BASE_NAME;

    @Option(
            names = "--set",
            paramLabel = "PATH=VALUE",
            description = "Change a value of the design, like battery.capacity=\"300 Ah\"; may be given several times.")
    private List<String> changes = List.of();

    @Option(
            names = "--show",
            description =
                    "Do not simulate; print the design with every default filled in and where each value came from.")
    private boolean show;

    @Option(
            names = "--hot-test",
            description =
                    "Do not simulate days; predict the spare amps of the alternators, cold and hot, at idle, fast idle"
                            + " and cruise.")
    private boolean hotTest;

    @Mixin
    private Outputs outputs;

    @Override
    public Integer call() throws Exception {
        Loaded read = Loaded.read(file);
        Variant asWritten = read.option(option);
        Loaded loaded = changes.isEmpty() ? read : read.changed(option, changes);
        Variant variant =
                changes.isEmpty() ? asWritten : loaded.scenario().variants().get(0);
        if ((show || hotTest) && outputs.asksWhy()) {
            throw new UsageException(
                    "--why needs the run that " + (show ? "--show" : "--hot-test") + " leaves out. Give one of them.");
        }
        if (show) {
            show(loaded.file().values(variant.name()).orElseThrow());
            return Exit.DONE;
        }
        if (hotTest) {
            HotTest test = HotTest.of(variant).orElseThrow(RunCommand::nothingToTest);
            new HotTestScreen(spec.commandLine().getOut())
                    .print(loaded.scenario().title(), test);
            return Exit.DONE;
        }
        Future<ChartRenderer> renderer = ChartRenderer.begin();
        RunPlan plan = loaded.plan(new RunPlan.Maker(Outputs.STEP_SECONDS), variant);
        Scenario one = new Scenario(
                loaded.scenario().name(),
                loaded.scenario().title(),
                loaded.scenario().notes(),
                List.of(variant));
        Comparison comparison = Compare.of(one, List.of(plan));
        Map<String, Reasons> reasons = outputs.reasons(loaded, comparison);
        Path folder = outputs.folder(Path.of(comparison.scenario(), Outputs.fileName(variant.name())));
        Set<String> charts = outputs.write(comparison, reasons, List.of(plan), renderer, folder, name -> "");
        outputs.print(spec, loaded, comparison, reasons, List.of(plan), folder, charts);
        return Exit.DONE;
    }

    private static UsageException nothingToTest() {
        return new UsageException("This design has no alternator to test. Name an option that has one: --option NAME.");
    }

    private void show(Values values) {
        PrintWriter out = spec.commandLine().getOut();
        List<Values.Listed> list = values.listing();
        int pathWidth = list.stream().mapToInt(l -> l.path().length()).max().orElse(0);
        int valueWidth = list.stream()
                .mapToInt(l -> Math.min(40, firstLine(l.value()).length()))
                .max()
                .orElse(0);
        for (Values.Listed line : list) {
            Value value = line.value();
            String mark = value.mark().map(m -> m.label()).orElse("");
            String note = value.note().isEmpty() ? "" : "; " + value.note();
            out.println((pad(line.path(), pathWidth) + "  " + pad(firstLine(value), valueWidth) + "  " + pad(mark, 9)
                            + "  " + value.origin() + note)
                    .stripTrailing());
        }
    }

    private static String firstLine(Value value) {
        return value.text().lines().findFirst().orElse("");
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
