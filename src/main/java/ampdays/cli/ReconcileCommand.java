package ampdays.cli;

import ampdays.chart.LogChart;
import ampdays.chart.jfree.ChartRenderer;
import ampdays.io.InputException;
import ampdays.io.LogMapGuess;
import ampdays.io.LogMapReader;
import ampdays.io.LogReader;
import ampdays.log.LogMap;
import ampdays.log.MeteredLog;
import ampdays.log.Quality;
import ampdays.results.MinuteLog;
import ampdays.results.WholeFile;
import ampdays.scenario.Scenario;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Variant;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.study.LoggedDay;
import ampdays.study.LoggedTrip;
import ampdays.study.Reconcile;
import ampdays.study.Reconciliation;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lays a measured log beside what was promised. */
@Command(
        mixinStandardHelpOptions = true,
        description = "Lay a log of the van beside what the scenario promised: how far the log can be trusted, and each"
                + " day as promised and as logged, and the gap by cause. Nothing that is read is changed.")
final class ReconcileCommand implements Callable<Integer> {
    private static final String ON_SCREEN = "";

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "The scenario.")
    private Path file;

    @Option(names = "--log", paramLabel = "LOG", required = true, description = "The log as CSV; see docs/LOGS.md.")
    private Path log;

    @Option(names = "--map", paramLabel = "MAP", description = "What the columns of the log mean, as YAML.")
    private Path map;

    @Option(
            names = "--guess-map",
            paramLabel = "FILE",
            arity = "0..1",
            fallbackValue = ON_SCREEN,
            description = "Do not reconcile; guess a map of the log to begin with, and print it or write it to a new"
                    + " file.")
    private String guess;

    @Option(names = "--option", paramLabel = "NAME", description = "The option that was built, by its name.")
    private String option = ScenarioFile.BASE_NAME;

    @Option(
            names = "--from",
            paramLabel = "DATE",
            description = "Day of the log that was the trip's first, like 2026-07-10; without it, the day that the"
                    + " scenario names, in the log's year.")
    private LocalDate from;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the chart; without it, a folder in out/ named after the scenario.")
    private Path out;

    @Option(
            names = "--patch",
            paramLabel = "FILE",
            description = "Write the values by the log to this file, as an option of the scenario. Never overwrites a"
                    + " file.")
    private Path patch;

    @Override
    public Integer call() throws IOException, InputException, UsageException {
        PrintWriter screen = spec.commandLine().getOut();
        if (guess != null) {
            return guess(screen);
        }
        if (file == null || map == null) {
            throw new UsageException("Name the scenario and the map of the log: ampdays reconcile my-van.yaml --log "
                    + log + " --map map.yaml. A map to begin with: ampdays reconcile --log " + log
                    + " --guess-map map.yaml");
        }
        if (patch != null) {
            UsageException.ifExists(patch);
        }
        Loaded loaded = Loaded.read(file);
        Variant built = loaded.scenario()
                .variant(option)
                .orElseThrow(() -> UsageException.unknownOption(option, file, loaded.scenario()));
        LogMap columns = LogMapReader.read(map, built.trip().zone());
        MeteredLog metered = LogReader.read(log, columns);
        LocalDate first = firstDay(metered, built);
        LoggedDates dates = LoggedDates.moved(loaded, option, built, first);
        RunPlan plan = dates.loaded().plan(new RunPlan.Maker(Outputs.STEP_SECONDS), dates.variant());
        LoggedTrip trip = LoggedTrip.of(metered, plan, first);
        MinuteLog promised = Simulator.record(plan, 0, plan.clock().steps());
        List<LoggedDay> days = LoggedDay.of(trip, promised);
        loaded.remarks().forEach(spec.commandLine().getErr()::println);
        ReconcileScreen print = new ReconcileScreen(screen, metered);
        print.quality(Quality.of(metered), built.design().bank());
        print.days(days, trip.missing(), first);
        if (days.isEmpty() || !metered.hasBank()) {
            nothingToPatch(screen);
            return Exit.DONE;
        }
        Reconciliation found = Reconcile.of(
                dates.loaded().file().values(dates.variant().name()).orElseThrow(),
                trip,
                promised,
                dates.loaded().planner(Outputs.STEP_SECONDS));
        print.gap(found);
        write(screen, loaded.scenario(), found);
        return Exit.DONE;
    }

    private void nothingToPatch(PrintWriter screen) {
        if (patch != null) {
            screen.println("Nothing was written to " + patch + ": the log tells no value of the scenario.");
        }
    }

    private void write(PrintWriter screen, Scenario scenario, Reconciliation found) throws IOException {
        Path folder = out == null ? Path.of("out", scenario.name(), "reconcile") : out;
        new ChartRenderer()
                .writeAll(
                        new TreeMap<>(Map.of("promise-and-log", LogChart.of(scenario.title(), found.curves()))),
                        folder);
        screen.println("Chart: " + folder.resolve("promise-and-log") + ".svg and .png");
        if (found.fitted().isEmpty()) {
            nothingToPatch(screen);
            return;
        }
        String text = FittedValues.option(found.fitted(), metered(log));
        if (patch == null) {
            screen.println("For the scenario (--patch FILE writes this to a file):");
            screen.println();
            screen.print(text);
            screen.flush();
        } else {
            WholeFile.write(patch, to -> to.write(text.getBytes(StandardCharsets.UTF_8)));
            screen.println("Wrote " + patch + ": the values by the log as an option; copy it into the scenario.");
        }
    }

    private static String metered(Path log) {
        return String.valueOf(log.getFileName());
    }

    private int guess(PrintWriter screen) throws IOException, InputException, UsageException {
        String text = LogMapGuess.of(log);
        if (guess.equals(ON_SCREEN)) {
            screen.print(text);
            screen.flush();
            return Exit.DONE;
        }
        Path target = Path.of(guess);
        UsageException.ifExists(target);
        WholeFile.write(target, to -> to.write(text.getBytes(StandardCharsets.UTF_8)));
        screen.println("Wrote " + target + ". Check it, then: ampdays reconcile my-van.yaml --log " + log + " --map "
                + target);
        return Exit.DONE;
    }

    /** The day of the log that was the trip's first. */
    private LocalDate firstDay(MeteredLog metered, Variant built) throws UsageException {
        LocalDate begins = date(metered, 0, built);
        LocalDate ends = date(metered, metered.minutes() - 1, built);
        LocalDate start = built.trip().start();
        int days = built.trip().days();
        for (int year = begins.getYear() - 1; from == null && year <= ends.getYear(); year++) {
            LocalDate first = start.withYear(year);
            if (!first.isAfter(ends) && first.plusDays(days - 1L).isAfter(begins.minusDays(1))) {
                return first;
            }
        }
        boolean touches =
                from != null && !from.isAfter(ends) && from.plusDays(days - 1L).isAfter(begins.minusDays(1));
        if (!touches) {
            throw new UsageException("The log runs from " + begins + " to " + ends + "; the trip of " + days
                    + " days from " + (from == null ? start.toString().substring(5) : from.toString())
                    + " is not in it. Name the day of the log that was the trip's first: --from " + begins + ".");
        }
        return from;
    }

    private static LocalDate date(MeteredLog metered, int minute, Variant built) {
        return Instant.ofEpochSecond(metered.epochSecond(minute))
                .atZone(built.trip().zone())
                .toLocalDate();
    }
}
