package ampdays.study;

import ampdays.results.RunResult;
import ampdays.scenario.Grid;
import ampdays.scenario.Parts;
import ampdays.scenario.Problem;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Values;
import ampdays.sim.Fleet;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;

/**
 * Runs every design of a grid. Workers take stretches of rows; what they made is handed over in the order of the rows, so
 * the number of workers does not show in the result. At any time only a few stretches are under way: memory does not grow
 * with the number of rows. Tests: {@code SweepCommandTest}.
 */
public final class Sweep {
    /** Rows that a worker takes at a time, at least and at most; {@link Fleet} is quicker with many. */
    private static final long LEAST_STRETCH = 16;

    private static final long MOST_STRETCH = 128;

    /** Stretches for each worker, as far as those bounds allow, so that all end at about the same time. */
    private static final int SHARES = 4;

    private final ScenarioFile file;
    private final Grid grid;
    private final Benches benches;

    /** @param file that the designs are changes of */
    public Sweep(ScenarioFile file, Grid grid, Planner planner) {
        this.file = file;
        this.grid = grid;
        this.benches = new Benches(planner);
    }

    /**
     * What became of one design.
     *
     * @param row counted from zero
     * @param places which value each knob has
     * @param parts what is priced and weighed of it
     * @param result empty when the design is impossible
     * @param problem why, in a sentence; else empty
     */
    public record Cell(long row, List<Integer> places, Parts parts, Optional<RunResult> result, String problem) {}

    /** Takes what was made of each cell, in the order of the rows. */
    @FunctionalInterface
    public interface Sink<T> {
        void accept(T made) throws IOException;
    }

    /**
     * Runs the rows from {@code first} on.
     *
     * @param make what to make of a cell; called by the workers
     * @param stopped asked now and then; when true, rows under way are still handed over, and then it ends
     */
    public <T> void run(long first, int workers, Function<Cell, T> make, BooleanSupplier stopped, Sink<T> sink)
            throws IOException {
        long share = (grid.rows() - first) / SHARES / workers;
        long length = Math.max(LEAST_STRETCH, Math.min(MOST_STRETCH, share));
        long stretches = (grid.rows() - first + length - 1) / length;
        Workers.hand(
                stretches,
                workers,
                stretch -> {
                    long from = first + stretch * length;
                    return benches.work(bench -> stretch(bench, from, Math.min(grid.rows(), from + length), make));
                },
                stopped,
                rows -> {
                    for (T row : rows) {
                        sink.accept(row);
                    }
                });
    }

    private <T> List<T> stretch(Benches.Bench bench, long from, long end, Function<Cell, T> make) {
        List<Planned> rows = LongStream.range(from, end)
                .mapToObj(row -> planned(file, grid, row, bench))
                .toList();
        Iterator<RunResult> results = Fleet.run(
                        rows.stream().flatMap(row -> row.plan().stream()).toList())
                .iterator();
        return rows.stream()
                .map(row -> make.apply(row.cell(row.plan().map(plan -> results.next()))))
                .toList();
    }

    /** A design of a grid before its run; without a plan it is impossible. */
    private record Planned(long row, List<Integer> places, Parts parts, Optional<RunPlan> plan, String problem) {
        Cell cell(Optional<RunResult> result) {
            return new Cell(row, places, parts, result, problem);
        }
    }

    private static Planned planned(ScenarioFile file, Grid grid, long row, Benches.Bench bench) {
        List<Integer> places = grid.places(row);
        Values values = grid.values(file, places);
        Parts parts = Parts.of(values);
        try {
            RunPlan plan = bench.plans().apply(bench.designs().next(grid.option(places), values));
            return new Planned(row, places, parts, Optional.of(plan), "");
        } catch (ScenarioException e) {
            String problems = e.problems().stream().map(Problem::message).collect(Collectors.joining(" "));
            return new Planned(row, places, parts, Optional.empty(), problems);
        } catch (IllegalArgumentException e) {
            return new Planned(row, places, parts, Optional.empty(), e.getMessage());
        }
    }

    /** Runs one design of a grid. */
    static Cell cell(ScenarioFile file, Grid grid, long row, Benches.Bench bench) {
        Planned planned = planned(file, grid, row, bench);
        return planned.cell(planned.plan().map(Simulator::run));
    }
}
