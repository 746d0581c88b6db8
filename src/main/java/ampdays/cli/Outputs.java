package ampdays.cli;

import ampdays.chart.ChartModel;
import ampdays.chart.DayChart;
import ampdays.chart.DaysBars;
import ampdays.chart.SocChart;
import ampdays.chart.jfree.ChartRenderer;
import ampdays.io.ResultFiles;
import ampdays.io.SummaryJson;
import ampdays.results.RunResult;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.study.Comparison;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
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

    Path folder(Path usual) {
        return out == null ? Path.of("out").resolve(usual) : out;
    }

    /**
     * Writes tables and charts.
     *
     * @param minutesFolder name of an option to the folder below for its minutes; empty for the folder itself
     */
    void write(Comparison comparison, List<RunPlan> plans, Path folder, UnaryOperator<String> minutesFolder)
            throws IOException {
        List<RunResult> results = results(comparison);
        ResultFiles files = new ResultFiles(folder);
        files.writeOptions(results);
        files.writeDays(results);
        files.writeSummary(comparison.scenario(), comparison.title(), results);
        for (int i = 0; minutes && i < plans.size(); i++) {
            RunPlan plan = plans.get(i);
            Path below = folder.resolve(minutesFolder.apply(results.get(i).option()));
            new ResultFiles(below)
                    .writeMinutes(
                            results.get(i),
                            Simulator.record(plan, 0, plan.clock().steps()));
        }
        new ChartRenderer().writeAll(charts(comparison), folder);
    }

    void print(CommandSpec spec, Loaded loaded, Comparison comparison, Path folder) throws IOException {
        PrintWriter screen = spec.commandLine().getOut();
        loaded.remarks().forEach(spec.commandLine().getErr()::println);
        if (json) {
            SummaryJson.write(screen, comparison.scenario(), comparison.title(), results(comparison));
            screen.flush();
        } else {
            new CompareScreen(screen)
                    .print(comparison, folder, charts(comparison).keySet());
        }
    }

    private static List<RunResult> results(Comparison comparison) {
        return comparison.options().stream().map(Comparison.Option::result).toList();
    }

    private static SortedMap<String, ChartModel> charts(Comparison comparison) {
        SortedMap<String, ChartModel> charts = new TreeMap<>();
        charts.put("state-of-charge", SocChart.of(comparison));
        if (comparison.options().size() > 1) {
            charts.put("days-to-empty", DaysBars.of(comparison));
        }
        for (Comparison.Option option : comparison.options()) {
            charts.put("day-" + fileName(option.result().option()), DayChart.of(comparison, option));
        }
        return charts;
    }

    /** An option's name as part of a file's name. */
    static String fileName(String option) {
        String plain = option.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        return plain.replaceAll("^-|-$", "");
    }
}
