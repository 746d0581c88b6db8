package ampdays.study;

import ampdays.results.RunResult;
import ampdays.scenario.Grid;
import ampdays.scenario.Problem;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Variant;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Runs every design of a grid. Workers take stretches of rows; what they made is handed over in the order of the rows, so
 * the number of workers does not show in the result. At any time only a few stretches are under way: memory does not grow
 * with the number of rows. Tests: {@code SweepCommandTest}.
 */
public final class Sweep {
    /** Rows that a worker takes at a time. */
    private static final int STRETCH = 16;

    /** Stretches under way for each worker, so that none waits for a slower one. */
    private static final int AHEAD = 4;

    private final ScenarioFile file;
    private final Grid grid;
    private final Planner planner;
    private final ConcurrentLinkedQueue<Function<Variant, RunPlan>> idlePlans = new ConcurrentLinkedQueue<>();

    /** @param file that the designs are changes of */
    public Sweep(ScenarioFile file, Grid grid, Planner planner) {
        this.file = file;
        this.grid = grid;
        this.planner = planner;
    }

    /**
     * What became of one design.
     *
     * @param row counted from zero
     * @param places which value each knob has
     * @param result empty when the design is impossible
     * @param problem why, in a sentence; else empty
     */
    public record Cell(long row, List<Integer> places, Optional<RunResult> result, String problem) {}

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
        ExecutorService pool = Executors.newFixedThreadPool(workers);
        try {
            Deque<Future<List<T>>> underWay = new ArrayDeque<>();
            long next = first;
            while (true) {
                while (next < grid.rows() && underWay.size() < AHEAD * workers && !stopped.getAsBoolean()) {
                    long from = next;
                    long end = Math.min(grid.rows(), from + STRETCH);
                    underWay.add(pool.submit(() -> stretch(from, end, make)));
                    next = end;
                }
                if (underWay.isEmpty()) {
                    return;
                }
                for (T made : await(underWay.remove())) {
                    sink.accept(made);
                }
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private <T> List<T> stretch(long from, long end, Function<Cell, T> make) {
        Function<Variant, RunPlan> idle = idlePlans.poll();
        Function<Variant, RunPlan> plans = idle == null ? planner.under(Sky.AS_IT_IS) : idle;
        List<T> made = new ArrayList<>();
        for (long row = from; row < end; row++) {
            made.add(make.apply(cell(file, grid, row, plans)));
        }
        idlePlans.add(plans);
        return made;
    }

    /** Runs one design of a grid. */
    static Cell cell(ScenarioFile file, Grid grid, long row, Function<Variant, RunPlan> plans) {
        List<Integer> places = grid.places(row);
        RunPlan plan;
        try {
            plan = plans.apply(grid.variant(file, places));
        } catch (ScenarioException e) {
            String problems = e.problems().stream().map(Problem::message).collect(Collectors.joining(" "));
            return new Cell(row, places, Optional.empty(), problems);
        } catch (IllegalArgumentException e) {
            return new Cell(row, places, Optional.empty(), e.getMessage());
        }
        return new Cell(row, places, Optional.of(Simulator.run(plan)), "");
    }

    private static <T> T await(Future<T> made) throws IOException {
        try {
            return made.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("The sweep was interrupted.", e);
        }
    }
}
