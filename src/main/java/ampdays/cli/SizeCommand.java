package ampdays.cli;

import ampdays.chart.ChartModel;
import ampdays.chart.SweepCharts;
import ampdays.chart.jfree.ChartRenderer;
import ampdays.io.InputException;
import ampdays.io.SizeFiles;
import ampdays.io.SizeJson;
import ampdays.results.Lifted;
import ampdays.results.Metric;
import ampdays.results.Sizing;
import ampdays.results.Sizing.Tried;
import ampdays.results.SweepTable;
import ampdays.scenario.Knob;
import ampdays.scenario.KnobText;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Variant;
import ampdays.study.Goal;
import ampdays.study.ReadyQuestion;
import ampdays.study.Size;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Finds the value of a knob that is just enough. */
@Command(
        mixinStandardHelpOptions = true,
        description = {
            "Find the smallest or largest value that reaches a goal.",
            "",
            "Example:  ampdays size my-van.yaml --knob \"battery.capacity=200..1600 Ah step 10 Ah\""
                    + " --goal \"daysToEmpty >= 7\"",
            "",
            "Or one of the ready questions:  ampdays size my-van.yaml --question \"least bank\"",
            "",
            "Exit code 3 when no value in the range reaches it; the best that was reached is told.",
            ""
        })
final class SizeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The scenario.")
    private Path file;

    @Option(
            names = "--knob",
            paramLabel = "PATH=LO..HI",
            description = "The value that is searched and its range, like \"battery.capacity=200..1600 Ah step 10 Ah\";"
                    + " without a step, about a hundredth of the range.")
    private String knob = "";

    @Option(
            names = "--goal",
            paramLabel = "GOAL",
            description = "What shall be reached: a metric of summary.json and its bound, like \"daysToEmpty >= 7\","
                    + " \"lowestSoc >= 30 %%\", \"comfortableNights >= nights\", or holds; several joined by and.")
    private String goal = "";

    @Option(
            names = "--question",
            paramLabel = "NAME",
            description = "A ready question, which sets knob, goal and direction where they are not given: least bank,"
                    + " least solar, least driving, warmest weather, longest parked.")
    private String question = "";

    @Option(names = "--largest", description = "Find the largest value that reaches the goal, not the smallest.")
    private boolean largest;

    @Option(names = "--option", paramLabel = "NAME", description = "Search with an option of the scenario.")
    private String option = ScenarioFile.BASE_NAME;

    @Option(
            names = "--set",
            paramLabel = "PATH=VALUE",
            description = "Change a value of the design, like cabin.covers=insulated; may be given several times.")
    private List<String> changes = List.of();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the results; without it, a folder in out/NAME/ named after the knob.")
    private Path out;

    @Option(names = "--json", description = "Print one JSON document, and nothing else, on standard output.")
    private boolean json;

    @Override
    public Integer call() throws Exception {
        Loaded read = Loaded.read(file);
        Variant asWritten = read.option(option);
        Loaded loaded = changes.isEmpty() ? read : read.changed(option, changes);
        String name =
                (changes.isEmpty() ? asWritten : loaded.scenario().variants().get(0)).name();
        Variant variant = loaded.scenario().variant(name).orElseThrow();
        boolean smallest = ask(variant) && !largest;
        Knob range = knob(loaded);
        List<Goal> goals = goals(variant, range.path().equals("trip.days"));
        SortedSet<String> uses = loaded.prepareSome(Size.grid(name, range));
        Sizing sizing = Size.find(
                loaded.file(), name, range, ends(knob), smallest, goals, loaded.planner(Outputs.STEP_SECONDS));
        Path folder =
                out == null ? Path.of("out", loaded.scenario().name(), "size-" + Outputs.fileName(range.path())) : out;
        show(loaded, sizing, folder, new SizeFiles(folder, loaded.file(), range, uses));
        return sizing.answer().isPresent() ? Exit.DONE : Exit.TARGET_NOT_MET;
    }

    /** Fills in what a ready question says, and tells whether the smallest value is wanted. */
    private boolean ask(Variant variant) throws UsageException {
        if (question.isEmpty()) {
            return true;
        }
        try {
            ReadyQuestion ready = ReadyQuestion.of(question);
            knob = knob.isEmpty() ? ready.knob(variant.trip().days()) : knob;
            goal = goal.isEmpty() ? ready.goal() : goal;
            return ready.smallest();
        } catch (IllegalArgumentException e) {
            throw new UsageException("--question: " + e.getMessage());
        }
    }

    /** The range as written, without its path. */
    private static String ends(String assignment) {
        return assignment.substring(assignment.indexOf('=') + 1).strip();
    }

    private Knob knob(Loaded loaded) throws UsageException {
        if (knob.isEmpty()) {
            throw new UsageException(
                    "There is nothing to search. Write for example: --knob \"battery.capacity=200..1600"
                            + " Ah step 10 Ah\".");
        }
        try {
            return KnobText.readRange(knob, loaded.file());
        } catch (IllegalArgumentException e) {
            throw new UsageException("--knob: " + e.getMessage());
        }
    }

    private List<Goal> goals(Variant variant, boolean tripVaries) throws UsageException {
        if (goal.isEmpty()) {
            throw new UsageException(
                    "There is no goal. Write for example: --goal \"daysToEmpty >= 7\", or --goal holds.");
        }
        try {
            List<Goal> goals = Goal.read(goal, Metric.all(Loaded.uses(variant)));
            if (!tripVaries) {
                goals.forEach(one -> one.requireWithin(variant.trip().days()));
            }
            return goals;
        } catch (IllegalArgumentException e) {
            throw new UsageException("--goal: " + e.getMessage());
        }
    }

    private void show(Loaded loaded, Sizing sizing, Path folder, SizeFiles files)
            throws IOException, InputException, UsageException {
        String scenario = loaded.scenario().name();
        String title = loaded.scenario().title();
        Optional<Lifted> lifted = lifted(loaded, sizing);
        SweepTable table = files.write(scenario, title, sizing, lifted, loaded.fingerprint());
        SortedMap<String, ChartModel> charts = SweepCharts.of(table, title, loaded.longestTripDays());
        new ChartRenderer().writeAll(charts, folder);
        loaded.remarks().forEach(spec.commandLine().getErr()::println);
        PrintWriter screen = spec.commandLine().getOut();
        if (json) {
            SizeJson.write(screen, scenario, title, sizing, lifted);
            screen.flush();
        } else {
            new SizeScreen(screen).print(title, sizing, lifted.map(Lifted::words), folder, charts.keySet());
        }
    }

    /** What a better part would bring the design that comes nearest; empty when the goal is reached. */
    private static Optional<Lifted> lifted(Loaded loaded, Sizing sizing)
            throws IOException, InputException, UsageException {
        Tried best = sizing.bestTried();
        if (sizing.answer().isPresent() || best.result().isEmpty()) {
            return Optional.empty();
        }
        Loaded there = loaded.changed(sizing.option(), List.of(sizing.path() + "=" + best.value()));
        String name = there.scenario().variants().get(0).name();
        return Optional.of(there.lift(name, best.result().get()));
    }
}
