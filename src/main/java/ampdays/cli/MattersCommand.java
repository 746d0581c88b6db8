package ampdays.cli;

import ampdays.chart.TornadoChart;
import ampdays.chart.jfree.ChartRenderer;
import ampdays.io.MattersFiles;
import ampdays.results.Matters;
import ampdays.scenario.Inputs;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Variant;
import ampdays.study.WhatMatters;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says which inputs of a design move its answer, and so what to measure first. */
@Command(
        mixinStandardHelpOptions = true,
        description = {
            "Say which inputs of a design move its answer: each alone over the spread that its mark stands for, then all"
                    + " together; and what to measure first.",
            "",
            "Example:  ampdays matters my-van.yaml --option \"more solar\""
        })
final class MattersCommand implements Callable<Integer> {
    private static final String CHART = "one-at-a-time";

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The scenario.")
    private Path file;

    @Option(
            names = "--option",
            paramLabel = "NAME",
            description = "The option to look at; without it, the base design.")
    private String name = ScenarioFile.BASE_NAME;

    @Option(
            names = "--samples",
            paramLabel = "N",
            description =
                    "How often all inputs are drawn together, 10 to 1,000,000; each takes up to twelve runs. Without"
                            + " it, 128.")
    private int samples = 128;

    @Mixin
    private Draws draws;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the results; without it, out/NAME/matters-OPTION, with the name of the scenario.")
    private Path out;

    @Option(names = "--json", description = "Print one JSON document, and nothing else, on standard output.")
    private boolean json;

    @Override
    public Integer call() throws Exception {
        draws.check();
        Draws.checkCount("--samples", samples, 10);
        Loaded loaded = Loaded.read(file);
        Variant option = loaded.option(name);
        loaded.requireCoverage(option);
        DrawnWeather weather = new DrawnWeather(loaded, draws.seed());
        Draws.refuseImpossible(loaded, weather);
        Matters matters;
        int pieces =
                samples + Inputs.of(loaded.file().values(name).orElseThrow()).size();
        try (Progress progress = new Progress("draws", 0, pieces)) {
            matters = new WhatMatters(
                            loaded.file(),
                            option,
                            weather,
                            loaded.planner(Outputs.STEP_SECONDS),
                            draws.workers(),
                            progress::step)
                    .run(samples, draws.seed());
        }
        Path folder = out == null ? Path.of("out", matters.scenario(), "matters-" + Outputs.fileName(name)) : out;
        MattersFiles.write(folder, matters);
        new ChartRenderer().write(TornadoChart.of(matters), folder, CHART);
        loaded.remarks().forEach(spec.commandLine().getErr()::println);
        PrintWriter screen = spec.commandLine().getOut();
        if (json) {
            MattersFiles.writeJson(screen, matters);
            screen.flush();
        } else {
            new MattersScreen(screen, matters).print();
            screen.println("Written to " + folder + ": " + MattersFiles.TABLE + ", " + MattersFiles.DOCUMENT
                    + "; chart (.svg and .png): " + CHART + ".");
        }
        return Exit.DONE;
    }
}
