package ampdays.cli;

import ampdays.chart.jfree.ChartRenderer;
import ampdays.io.ResultFiles;
import ampdays.io.SummaryJson;
import ampdays.results.Causes;
import ampdays.results.Reasons;
import ampdays.results.RunResult;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.study.Comparison;
import ampdays.study.Why;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Future;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Where results go and how they are shown, the same for every command that simulates. */
final class Outputs {
    static final int STEP_SECONDS = 60;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the results; without it, a folder in out/ named after the scenario.")
    private Path out;

    @Option(names = "--json", description = "Print one JSON document, and nothing else, on standard output.")
    private boolean json;

    @Option(
            names = "--minutes",
            description = "Also write minutes.csv: every quantity of every minute (large for long trips).")
    private boolean minutes;

    @Option(
            names = "--why",
            description =
                    "Also say why each design that does not hold fails, in shares, and which single change turns it"
                            + " at the lowest price; takes many runs.")
    private boolean why;

    boolean asksWhy() {
        return why;
    }

    Path folder(Path usual) {
        return out == null ? Path.of("out").resolve(usual) : out;
    }

    /** Why the options come to what they do, by name; empty unless asked for. */
    Map<String, Reasons> reasons(Loaded loaded, Comparison comparison) {
        Map<String, Reasons> reasons = new LinkedHashMap<>();
        if (!why) {
            return reasons;
        }
        List<Why> whys = results(comparison).stream()
                .filter(result -> !result.holds())
                .map(result -> why(loaded, result))
                .toList();
        int pieces =
                whys.stream().mapToInt(Why::pieces).sum() + results(comparison).size();
        try (Progress progress = new Progress("runs", 0, pieces)) {
            for (RunResult result : results(comparison)) {
                Optional<Causes> causes = whys.stream()
                        .filter(w -> w.option().equals(result.option()))
                        .findFirst()
                        .map(w -> w.causes(progress::step));
                reasons.put(result.option(), new Reasons(causes, loaded.lift(result.option(), result)));
                progress.step();
            }
        }
        return reasons;
    }

    private static Why why(Loaded loaded, RunResult result) {
        return new Why(
                loaded.scenario().variant(result.option()).orElseThrow(),
                loaded.file().values(result.option()).orElseThrow(),
                result,
                loaded.planner(STEP_SECONDS));
    }

    /**
     * Writes tables and charts.
     *
     * @param reasons of options by name
     * @param renderer begun before the runs
     * @param minutesFolder name of an option to the folder below for its minutes; empty for the folder itself
     * @return names of the charts, as they are told on the screen
     */
    Set<String> write(
            Comparison comparison,
            Map<String, Reasons> reasons,
            List<RunPlan> plans,
            Future<ChartRenderer> renderer,
            Path folder,
            UnaryOperator<String> minutesFolder)
            throws IOException {
        List<RunResult> results = results(comparison);
        ResultFiles files = new ResultFiles(folder);
        files.writeOptions(results);
        files.writeDays(results);
        files.writeSummary(comparison.scenario(), comparison.title(), results, reasons);
        for (int i = 0; minutes && i < plans.size(); i++) {
            RunPlan plan = plans.get(i);
            Path below = folder.resolve(minutesFolder.apply(results.get(i).option()));
            new ResultFiles(below)
                    .writeMinutes(
                            results.get(i),
                            Simulator.record(plan, 0, plan.clock().steps()));
        }
        ResultCharts charts = ResultCharts.of(comparison, plans);
        ChartRenderer.ready(renderer).writeAll(charts.byName(), folder);
        return charts.kinds();
    }

    void print(
            CommandSpec spec,
            Loaded loaded,
            Comparison comparison,
            Map<String, Reasons> reasons,
            List<RunPlan> plans,
            Path folder,
            Set<String> charts)
            throws IOException {
        PrintWriter screen = spec.commandLine().getOut();
        loaded.remarks().forEach(spec.commandLine().getErr()::println);
        if (json) {
            SummaryJson.write(screen, comparison.scenario(), comparison.title(), results(comparison), reasons);
            screen.flush();
        } else {
            new CompareScreen(screen).print(comparison, reasons, WiringLine.of(plans), folder, charts);
        }
    }

    private static List<RunResult> results(Comparison comparison) {
        return comparison.options().stream().map(Comparison.Option::result).toList();
    }

    /** An option's name as part of a file's name. */
    static String fileName(String option) {
        String plain = option.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        return plain.replaceAll("^-|-$", "");
    }
}
