package ampdays.cli;

import ampdays.io.InputException;
import ampdays.results.Chances;
import ampdays.results.SweepTable;
import ampdays.scenario.Grid;
import ampdays.scenario.Knob;
import ampdays.scenario.ScenarioException;
import ampdays.study.Allowed;
import ampdays.study.Front;
import ampdays.study.ManyTrips;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;

/** Whether and how a sweep seeks the designs that no other beats. */
final class FrontSearch {
    private static final int USUAL_TRIPS = 64;
    private static final int LEAST_TRIPS = 10;

    /** On 64 trips of two weeks so many take about half a minute of one core. */
    private static final int MOST_TRIED = 100;

    private static final Pattern NO_DESIGN = Pattern.compile("weather|weather-offset|(trip|place|shade)\\..+");

    @Option(
            names = "--front",
            description =
                    "Also list the designs that no other beats in price, mass and how often the bank is never empty and"
                            + " every night comfortable, within prices.budget, masses.payload and the roof. Exit code 3"
                            + " when no design is within them.")
    private boolean asked;

    @Option(
            names = "--trips",
            paramLabel = "N",
            description = "With --front: on how many trips designs are tried, drawn as by the command chances; 0 for"
                    + " the one trip of the scenario only. Without it, 64.")
    private Optional<Integer> trips = Optional.empty();

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "With --front: a whole number from 0 that decides which trips are drawn. Without it, 1.")
    private Optional<Long> seed = Optional.empty();

    boolean isAsked() {
        return asked;
    }

    int trips() {
        return trips.orElse(USUAL_TRIPS);
    }

    private long seed() {
        return seed.orElse(1L);
    }

    /** Refuses what cannot be sought before anything is simulated. */
    void check(Loaded loaded, Grid grid) throws IOException, InputException, UsageException {
        if (asked) {
            for (Knob knob : grid.knobs()) {
                refuse(knob.path());
            }
        }
        if (!asked && (trips.isPresent() || seed.isPresent())) {
            throw new UsageException(
                    (trips.isPresent() ? "--trips" : "--seed") + " is about the trips of a front. Add --front.");
        }
        Draws.checkCountOrNone("--trips", trips(), LEAST_TRIPS, "for the one trip of the scenario only");
        Draws.checkSeed(seed());
        if (asked && trips() > 0) {
            Draws.refuseImpossible(loaded, new DrawnWeather(loaded, seed()));
        }
    }

    /** What is no part of a design must not win: mild weather costs nothing. */
    private static void refuse(String path) throws UsageException {
        if (NO_DESIGN.matcher(path).matches()) {
            throw new UsageException("--front compares designs, but " + path
                    + " changes the trip or its weather, not the design. Leave out --front, or do not vary it.");
        }
    }

    /** The front of a finished sweep. */
    Front seek(Loaded loaded, Grid grid, SweepTable table, Allowed allowed, int workers)
            throws IOException, InputException, UsageException {
        if (trips() == 0 || allowed.rows().isEmpty()) {
            return Front.ofOneTrip(table, allowed.rows());
        }
        List<Integer> tried = Front.worthTrying(table, allowed.rows(), MOST_TRIED);
        return Front.ofManyTrips(
                table, tried, manyTrips(designs(loaded, grid, tried), workers).options());
    }

    private static Loaded designs(Loaded loaded, Grid grid, List<Integer> rows) {
        try {
            return loaded.with(grid.only(loaded.file(), rows));
        } catch (ScenarioException e) {
            throw new IllegalStateException("a design that was run before: " + e.getMessage(), e);
        }
    }

    private Chances manyTrips(Loaded designs, int workers) throws IOException, InputException, UsageException {
        DrawnWeather weather = new DrawnWeather(designs, seed());
        try {
            Draws.refuseImpossible(designs, weather);
        } catch (UsageException e) {
            throw new UsageException(e.getMessage()
                    + " The table of the sweep is whole; with --resume --trips 0 its front is that of the one trip.");
        }
        try (Progress progress = new Progress("trips", 0, trips())) {
            return new ManyTrips(designs.file(), weather, trips(), seed()).run(workers, progress::step);
        }
    }
}
