package ampdays.cli;

import ampdays.chart.SurvivalChart;
import ampdays.chart.jfree.ChartRenderer;
import ampdays.io.ChancesFiles;
import ampdays.io.ChancesJson;
import ampdays.results.Chances;
import ampdays.study.ManyTrips;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Simulates many trips of every option and says how sure the answer is. */
@Command(
        mixinStandardHelpOptions = true,
        description = {
            "Simulate many trips of every option that differ in start, weather, habits and tolerances, and say how"
                    + " often the bank lasts. The spreads stand in the scenario under chances.",
            "",
            "Example:  ampdays chances my-van.yaml --samples 1000"
        })
final class ChancesCommand implements Callable<Integer> {
    private static final String CHART = "not-yet-empty";

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The scenario.")
    private Path file;

    @Option(
            names = "--samples",
            paramLabel = "N",
            description = "Trips of each option, 10 to 1,000,000. Without it, 256.")
    private int samples = 256;

    @Mixin
    private Draws draws;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the results; without it, out/NAME/chances, with the name of the scenario.")
    private Path out;

    @Option(names = "--json", description = "Print one JSON document, and nothing else, on standard output.")
    private boolean json;

    @Override
    public Integer call() throws Exception {
        draws.check();
        Draws.checkCount("--samples", samples, 10);
        Loaded loaded = Loaded.read(file);
        DrawnWeather weather = new DrawnWeather(loaded, draws.seed());
        Draws.refuseImpossible(loaded, weather);
        Chances chances;
        try (Progress progress = new Progress("trips", 0, samples)) {
            chances = new ManyTrips(loaded.file(), weather, samples, draws.seed()).run(draws.workers(), progress::step);
        }
        Path folder = out == null ? Path.of("out", chances.scenario(), "chances") : out;
        ChancesFiles.write(folder, chances);
        new ChartRenderer().write(SurvivalChart.of(chances), folder, CHART);
        loaded.remarks().forEach(spec.commandLine().getErr()::println);
        PrintWriter screen = spec.commandLine().getOut();
        if (json) {
            ChancesJson.write(screen, chances);
            screen.flush();
        } else {
            new ChancesScreen(screen, chances).print();
            screen.println("Written to " + folder + ": " + ChancesFiles.TABLE + ", " + ChancesFiles.DOCUMENT
                    + "; chart (.svg and .png): " + CHART + ".");
        }
        return Exit.DONE;
    }
}
