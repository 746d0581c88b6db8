package ampdays.cli;

import ampdays.chart.ChartModel;
import ampdays.chart.LogChart;
import ampdays.chart.jfree.ChartRenderer;
import ampdays.io.InputException;
import ampdays.io.LogMapGuess;
import ampdays.io.LogMapReader;
import ampdays.io.LogReader;
import ampdays.io.ReconcileFiles;
import ampdays.log.LogMap;
import ampdays.log.MeteredLog;
import ampdays.log.Quality;
import ampdays.results.LoggedDay;
import ampdays.results.MinuteLog;
import ampdays.results.Reconciliation;
import ampdays.results.Reconciliation.Fitted;
import ampdays.results.WholeFile;
import ampdays.scenario.Scenario;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Variant;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.study.LoggedDays;
import ampdays.study.LoggedTrip;
import ampdays.study.Reconcile;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
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
    private static final String CHART = "promise-and-log";
    private static final List<String> RESULTS = Stream.concat(
                    ReconcileFiles.NAMES.stream(), Stream.of(CHART + ".svg", CHART + ".png"))
            .toList();
    private static final int LEAST_MINUTES = 60;

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
            description =
                    "Folder for chart, tables and JSON document; without it, a folder in out/ named after the scenario.")
    private Path out;

    @Option(
            names = "--patch",
            paramLabel = "FILE",
            description = "Write the values by the log to this file, as an option of the scenario. Never overwrites a"
                    + " file.")
    private Path patch;

    @Option(names = "--json", description = "Print one JSON document, and nothing else, on standard output.")
    private boolean json;

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
        Path folder = out == null ? Path.of("out", loaded.scenario().name(), "reconcile") : out;
        // a log may lie in this folder under the name of a result
        UsageException.ifAnyExists(folder, RESULTS);
        if (patch != null) {
            UsageException.ifAmong(patch, folder, RESULTS);
        }
        Variant built = loaded.option(option);
        LogMap columns = LogMapReader.read(map, built.trip().zone());
        MeteredLog metered = LogReader.read(log, columns);
        if (metered.minutes() < LEAST_MINUTES) {
            throw new UsageException(
                    log + " covers " + metered.minutes() + (metered.minutes() == 1 ? " minute" : " minutes")
                            + " only. A promise is held against an hour or more.");
        }
        LocalDate first = firstDay(metered, built);
        LoggedDates dates = LoggedDates.moved(loaded, option, built, first);
        RunPlan plan = dates.loaded().plan(new RunPlan.Maker(Outputs.STEP_SECONDS), dates.variant());
        LoggedTrip trip = LoggedTrip.of(metered, plan, first);
        MinuteLog promised = Simulator.record(plan, 0, plan.clock().steps());
        List<LoggedDay> days = LoggedDays.of(trip, promised);
        loaded.remarks().forEach(spec.commandLine().getErr()::println);
        Quality quality = Quality.of(metered);
        Optional<Reconciliation> found = days.isEmpty() || !metered.hasBank()
                ? Optional.empty()
                : Optional.of(Reconcile.of(
                        dates.loaded().file().values(dates.variant().name()).orElseThrow(),
                        trip,
                        promised,
                        dates.loaded().planner(Outputs.STEP_SECONDS)));
        Scenario scenario = loaded.scenario();
        ReconcileFiles files = new ReconcileFiles(
                scenario.name(), scenario.title(), option, metered, quality, first, days, trip.missing(), found);
        SortedMap<String, ChartModel> charts = new TreeMap<>();
        found.ifPresent(gap -> charts.put(CHART, LogChart.of(scenario.title(), gap.curves())));
        List<Fitted> fitted = found.map(Reconciliation::fitted).orElse(List.of());
        String text = FittedValues.option(fitted, metered.facts().file());
        if (patch != null && !fitted.isEmpty()) {
            WholeFile.writeText(patch, text);
        }
        files.write(folder);
        new ChartRenderer().writeAll(charts, folder);
        if (json) {
            files.json(screen);
            return Exit.DONE;
        }
        ReconcileScreen print = new ReconcileScreen(screen, metered);
        print.quality(quality, built.design().bank());
        print.days(days, trip.missing(), first);
        found.ifPresent(print::gap);
        print.written(folder, found.isPresent());
        print.patch(fitted.isEmpty() ? "" : text, patch);
        return Exit.DONE;
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
        WholeFile.writeText(target, text);
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
