package ampdays.cli;

import ampdays.chart.BreakEven;
import ampdays.chart.ChartModel;
import ampdays.chart.FrontChart;
import ampdays.chart.SweepChart;
import ampdays.chart.SweepCharts;
import ampdays.chart.jfree.ChartRenderer;
import ampdays.io.FrontFile;
import ampdays.io.InputException;
import ampdays.io.SweepFiles;
import ampdays.io.SweepJson;
import ampdays.io.SweepReader;
import ampdays.results.SweepTable;
import ampdays.scenario.BreakEvenGrid;
import ampdays.scenario.Grid;
import ampdays.scenario.Knob;
import ampdays.scenario.KnobText;
import ampdays.scenario.OverriddenOptions;
import ampdays.scenario.Parts;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Variant;
import ampdays.study.Allowed;
import ampdays.study.Front;
import ampdays.study.Sweep;
import ampdays.study.SweepSummary;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Simulates many variants of a design. */
@Command(
        mixinStandardHelpOptions = true,
        description = {
            "Simulate many variants of a design and write a table with a row for each.",
            "",
            "Example:  ampdays sweep my-van.yaml --vary \"battery.capacity=200..800 Ah step 100 Ah\" --vary option=all"
        })
final class SweepCommand implements Callable<Integer> {
    /** More rows than this are only run on purpose. */
    private static final long MOST_UNASKED = 1_000_000;

    /** What a step takes of one core with all that goes with a row, by itself, ns: from 24 s of 10,000 rows (docs/SPEED.md). */
    private static final double STEP_NS = 120;

    private static final int LONGEST_NAME = 60;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The scenario; with --summary, a finished table.")
    private Path file;

    @Option(
            names = "--vary",
            paramLabel = "PATH=VALUES",
            description = "A value of the scenario and what it shall be: a range with its step, like"
                    + " \"battery.capacity=200..800 Ah step 100 Ah\"; a list, like \"solar.power=400, 600, 900 W\" (with"
                    + " semicolons where a value has a comma); option=all or names of options. Several --vary make"
                    + " every combination.")
    private List<String> vary = List.of();

    @Option(
            names = "--named",
            paramLabel = "NAME",
            description = "In place of --vary: a sweep that the scenario keeps under \"sweeps\".")
    private String named = "";

    @Option(
            names = "--break-even",
            description =
                    "In place of --vary: all options by driving hours a day, days parked in a row and summer heat; a"
                            + " map of which option wins for each heat.")
    private boolean breakEven;

    @Mixin
    private FrontSearch front;

    @Option(names = "--together", description = "Vary all knobs in step instead of making every combination.")
    private boolean together;

    @Option(
            names = {"-j", "--workers"},
            paramLabel = "N",
            description = "How many rows are run at once; without it, one for each processor core.")
    private int workers = Runtime.getRuntime().availableProcessors();

    @Option(names = "--resume", description = "Go on with a sweep that was stopped, after its last whole row.")
    private boolean resume;

    @Option(
            names = "--replace",
            description =
                    "Write over the sweep in the folder: of other values, of the scenario before a change, or unfinished.")
    private boolean replace;

    @Option(
            names = "--summary",
            description = "Do not simulate; say what a finished table holds: ampdays sweep --summary out/…/sweep.csv")
    private boolean summary;

    @Option(names = "--yes", description = "Run even if there are more than a million rows.")
    private boolean yes;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the results; without it, a folder in out/NAME/ named after the knobs and"
                    + " the ends of their numbers.")
    private Path out;

    @Override
    public Integer call() throws Exception {
        if (summary) {
            SweepSummary.of(SweepReader.read(file)).forEach(spec.commandLine().getOut()::println);
            return Exit.DONE;
        }
        Draws.checkWorkers(workers);
        if (resume && replace) {
            throw new UsageException(
                    "--resume goes on with the sweep in the folder, --replace writes over it. Write one of them.");
        }
        Loaded loaded = Loaded.read(file);
        Grid grid = named.isEmpty() ? grid(loaded) : named(loaded);
        refuseTooMany(grid, loaded.scenario().variants().get(0));
        SortedSet<String> uses = loaded.prepare(grid);
        front.check(loaded, grid);
        Path folder = out == null ? Path.of("out", loaded.scenario().name(), folderName(grid)) : out;
        String study = SweepJson.of(loaded.scenario().name(), loaded.scenario().title(), grid, loaded.fingerprint());
        SweepTable table;
        try (SweepFiles files = new SweepFiles(folder, loaded.file(), grid, uses, study);
                Interruption interruption = new Interruption()) {
            long done = run(loaded, grid, files, interruption);
            loaded.remarks().forEach(spec.commandLine().getErr()::println);
            OverriddenOptions.remarks(loaded.file(), grid)
                    .forEach(spec.commandLine().getErr()::println);
            if (done < grid.rows()) {
                PrintWriter err = spec.commandLine().getErr();
                err.println(number("Stopped after %,d of ", done) + rows(grid.rows()) + ". They are in "
                        + folder.resolve(SweepFiles.PARTIAL_TABLE)
                        + ". To go on, give the same command with --resume.");
                return Exit.DONE;
            }
            files.finish(SweepChart::isFile);
            table = files.table();
        }
        return show(loaded, grid, table, folder);
    }

    private int show(Loaded loaded, Grid grid, SweepTable table, Path folder)
            throws IOException, InputException, UsageException {
        String alike = grid.alike();
        String title = loaded.scenario().title() + (alike.isEmpty() ? "" : ": " + alike);
        SortedMap<String, ChartModel> charts = SweepCharts.of(table, title, loaded.longestTripDays());
        Optional<Allowed> allowed = front.isAsked()
                ? Optional.of(Allowed.of(table, row -> Parts.Limits.of(grid.values(loaded.file(), grid.places(row)))))
                : Optional.empty();
        Optional<Front> best = allowed.isPresent()
                ? Optional.of(front.seek(loaded, grid, table, allowed.get(), workers))
                : Optional.empty();
        if (best.isPresent()) {
            FrontFile.write(folder, best.get().rows(), best.get().ownChances());
            if (!best.get().rows().isEmpty()) {
                charts.put(SweepChart.FRONT.fileName(), FrontChart.of(best.get(), title));
            }
        }
        new ChartRenderer().writeAll(charts, folder);
        PrintWriter screen = spec.commandLine().getOut();
        screen.println(title);
        screen.println();
        SweepSummary.of(table).forEach(screen::println);
        screen.println();
        best.ifPresent(designs -> FrontScreen.print(screen, designs, allowed.orElseThrow()));
        screen.println("Written to " + folder + ": " + SweepFiles.TABLE + ", sweep.json"
                + (front.isAsked() ? ", " + FrontFile.NAME : "")
                + (charts.isEmpty() ? "." : "; charts (.svg and .png): " + String.join(", ", charts.keySet()) + "."));
        boolean noneAllowed = allowed.isPresent() && allowed.get().rows().isEmpty();
        return noneAllowed ? Exit.TARGET_NOT_MET : Exit.DONE;
    }

    private Grid named(Loaded loaded) throws UsageException {
        if (!vary.isEmpty() || together || breakEven) {
            throw new UsageException(
                    "A named sweep says itself what it varies. Leave out --vary, --together and --break-even, or --named.");
        }
        List<ScenarioFile.Sweep> known = loaded.file().sweeps();
        return known.stream()
                .filter(sweep -> sweep.name().equals(named))
                .findFirst()
                .orElseThrow(
                        () -> new UsageException("There is no sweep \"" + named + "\" in " + file + "." + names(known)))
                .grid();
    }

    private static String names(List<ScenarioFile.Sweep> known) {
        return known.isEmpty()
                ? ""
                : " Its sweeps: "
                        + known.stream().map(s -> "\"" + s.name() + "\"").collect(Collectors.joining(", ")) + ".";
    }

    private Grid grid(Loaded loaded) throws UsageException {
        if (breakEven) {
            return breakEven(loaded);
        }
        if (vary.isEmpty()) {
            throw new UsageException(
                    "There is nothing to vary. Write for example: --vary \"battery.capacity=200..800 Ah step 100 Ah\"."
                            + names(loaded.file().sweeps()).replace("Its sweeps", "Or --named with one of its sweeps"));
        }
        try {
            List<Knob> knobs = new ArrayList<>();
            for (String assignment : vary) {
                Knob knob = KnobText.read(assignment, loaded.file());
                if (knobs.stream().anyMatch(k -> k.path().equals(knob.path()))) {
                    throw new IllegalArgumentException(knob.path() + " is varied twice. Keep one.");
                }
                knobs.add(knob);
            }
            return new Grid(knobs, together);
        } catch (IllegalArgumentException e) {
            throw new UsageException("--vary: " + e.getMessage());
        }
    }

    private Grid breakEven(Loaded loaded) throws UsageException {
        if (!vary.isEmpty() || together) {
            throw new UsageException(
                    "A break-even map says itself what it varies, in every combination. Leave out --vary"
                            + " and --together, or --break-even.");
        }
        int options = loaded.scenario().variants().size();
        if (options < 2) {
            throw new UsageException("A break-even map says which option wins, but " + file + " has one design only."
                    + " Write another under \"options\", like more solar: {solar.power: 900 W}.");
        }
        if (options > BreakEven.MOST_OPTIONS) {
            throw new UsageException("A break-even map shows at most " + BreakEven.MOST_OPTIONS
                    + " options, the design as"
                    + " it is among them, but " + file + " has " + options + ". Take some away, or vary with --vary"
                    + " option=all.");
        }
        return BreakEvenGrid.fine(loaded.file());
    }

    private void refuseTooMany(Grid grid, Variant base) throws UsageException {
        if (grid.rows() > MOST_UNASKED && !yes) {
            double steps = (double) grid.rows() * base.trip().days() * 86_400 / Outputs.STEP_SECONDS;
            throw new UsageException("This makes " + (grid.rows() == Long.MAX_VALUE ? "more than " : "")
                    + rows(grid.rows()) + ", which take about "
                    + work(steps * STEP_NS / 1e9, workers, Runtime.getRuntime().availableProcessors())
                    + ". Write larger steps or vary less; or add --yes to run them all.");
        }
    }

    /** How many rows are finished at the end. */
    private long run(Loaded loaded, Grid grid, SweepFiles files, Interruption interruption)
            throws IOException, InputException {
        if (replace) {
            files.delete();
        }
        long before = files.begin(resume);
        Sweep sweep = new Sweep(loaded.file(), grid, loaded.planner(Outputs.STEP_SECONDS));
        try (Progress progress = new Progress("rows", before, grid.rows())) {
            sweep.run(
                    before,
                    workers,
                    cell -> files.line(cell.row(), cell.places(), cell.parts(), cell.result(), cell.problem()),
                    interruption::isAsked,
                    line -> {
                        files.append(line);
                        progress.step();
                    });
            files.close();
            return progress.done();
        }
    }

    private String folderName(Grid grid) {
        return !named.isEmpty()
                ? "sweep-" + Outputs.fileName(named)
                : breakEven ? "break-even" : folderName(grid.knobs());
    }

    static String folderName(List<Knob> knobs) {
        String name = "sweep-"
                + knobs.stream().map(SweepCommand::ends).map(Outputs::fileName).collect(Collectors.joining("-"));
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME);
    }

    /** A knob with its first and last number, such as {@code battery.capacity 200 800 Ah}. */
    private static String ends(Knob knob) {
        int last = knob.values().size() - 1;
        return !knob.isNumber()
                ? knob.path()
                : knob.path() + " " + (last == 0 ? "" : knob.cell(0) + " ")
                        + knob.values().get(last);
    }

    private static String rows(long rows) {
        return rows == 1 ? "one row" : number("%,d rows", rows);
    }

    /** How long the work of one core takes when it is shared, and by how many; more workers than cores bring nothing. */
    static String work(double coreSeconds, int workers, int cores) {
        int sharing = Math.min(workers, cores);
        return duration(coreSeconds / sharing) + " on " + (sharing == 1 ? "one core" : sharing + " cores");
    }

    private static String duration(double seconds) {
        double hours = seconds / 3600;
        return hours < 1
                ? counted(Math.ceil(seconds / 60), "minute")
                : hours < 48 ? counted(hours, "hour") : counted(hours / 24, "day");
    }

    private static String counted(double count, String word) {
        return number("%,.0f ", count) + word + (Math.rint(count) == 1 ? "" : "s");
    }

    private static String number(String format, Object value) {
        return String.format(Locale.ROOT, format, value);
    }
}
