package ampdays.study;

import ampdays.results.RunResult;
import ampdays.results.Sizing;
import ampdays.results.Sizing.Tried;
import ampdays.scenario.Grid;
import ampdays.scenario.Knob;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.Simulator;
import ampdays.study.Sweep.Cell;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Finds the smallest or largest value of a knob that reaches goals, by runs of the true simulation.
 *
 * <p>Values spread over the whole range come first; between the first of them that reaches the goals and its neighbour the
 * boundary is searched ({@link Boundary}). Then the neighbours of the answer are run, and where one nearer to the wanted end
 * reaches the goals too, the answer moves there. So an answer always reaches its goals, the next value does not, and where
 * more is not always better, values that show it are told. Between the values that were run nothing is known. Test:
 * {@code SizeTest}.
 */
public final class Size {
    private static final int SPREAD = 13;
    private static final int NEIGHBOURS = 3;

    private final ScenarioFile file;
    private final Grid grid;
    private final Knob knob;
    private final List<Goal> goals;
    private final Planner planner;
    private final Benches.Bench bench;
    private final Map<Integer, Cell> cells = new TreeMap<>();

    private Size(ScenarioFile file, String option, Knob knob, List<Goal> goals, Planner planner) {
        this.file = file;
        this.grid = grid(option, knob);
        this.knob = knob;
        this.goals = goals;
        this.planner = planner;
        this.bench = Benches.bench(planner);
    }

    /** The designs that a search runs among. */
    public static Grid grid(String option, Knob knob) {
        return new Grid(List.of(new Knob(Knob.OPTION, "", List.of(option)), knob), false);
    }

    /**
     * Searches.
     *
     * @param option that the value belongs to
     * @param knob with rising values, two or more
     * @param range of its values, as written
     */
    public static Sizing find(
            ScenarioFile file,
            String option,
            Knob knob,
            String range,
            boolean smallest,
            List<Goal> goals,
            Planner planner) {
        Size size = new Size(file, option, knob, goals, planner);
        return size.sizing(option, range, smallest, size.answer(smallest));
    }

    /** Searches from the wanted end: among places counted from there, the first is wanted in both cases. */
    private OptionalInt answer(boolean smallest) {
        int[] spread = spread();
        IntStream.of(spread).forEach(this::reaches);
        int[] fromWanted = smallest
                ? spread
                : IntStream.range(0, spread.length)
                        .map(i -> spread[spread.length - 1 - i])
                        .toArray();
        for (int i = 0; i < fromWanted.length; i++) {
            if (reaches(fromWanted[i])) {
                int first = i == 0 ? fromWanted[0] : Boundary.between(fromWanted[i - 1], fromWanted[i], this::reaches);
                return OptionalInt.of(withNeighbours(first, smallest));
            }
        }
        return OptionalInt.empty();
    }

    private int last() {
        return knob.values().size() - 1;
    }

    /** Places evenly over the range, both ends among them. */
    private int[] spread() {
        int count = Math.min(SPREAD, last() + 1);
        return IntStream.range(0, count)
                .map(i -> (int) Math.round(i * (double) last() / (count - 1)))
                .toArray();
    }

    /** Runs the neighbours; the answer moves on as long as one of them nearer to the wanted end reaches the goals. */
    private int withNeighbours(int first, boolean smallest) {
        int answer = first;
        while (true) {
            int at = answer;
            IntStream.rangeClosed(at - NEIGHBOURS, at + NEIGHBOURS)
                    .filter(place -> place >= 0 && place <= last())
                    .forEach(this::reaches);
            OptionalInt nearer = cells.keySet().stream()
                    .mapToInt(place -> place)
                    .filter(place -> (smallest ? place < at : place > at) && reaches(place))
                    .reduce((a, b) -> smallest ? Math.min(a, b) : Math.max(a, b));
            if (nearer.isEmpty()) {
                return answer;
            }
            answer = nearer.getAsInt();
        }
    }

    private boolean reaches(int place) {
        Cell cell = cells.computeIfAbsent(place, row -> Sweep.cell(file, grid, row, bench));
        return cell.result()
                .map(run -> goals.stream().allMatch(goal -> goal.isReached(run)))
                .orElse(false);
    }

    /** The margin of the goal that is missed most. */
    private double margin(int place) {
        return cells.get(place)
                .result()
                .map(run -> goals.stream()
                        .mapToDouble(goal -> goal.margin(run))
                        .min()
                        .orElseThrow())
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private Sizing sizing(String option, String range, boolean smallest, OptionalInt answer) {
        List<Integer> places = List.copyOf(cells.keySet());
        Comparator<Integer> byMargin = Comparator.comparingDouble(this::margin);
        int best = answer.orElseGet(() -> places.stream()
                .max(byMargin.thenComparing(smallest ? Comparator.reverseOrder() : Comparator.naturalOrder()))
                .orElseThrow());
        List<String> against = answer.isEmpty()
                ? List.of()
                : places.stream()
                        .filter(place -> (smallest ? place > best : place < best) && !reaches(place))
                        .map(knob.values()::get)
                        .toList();
        return new Sizing(
                option,
                knob.path(),
                smallest,
                range,
                goals.stream().map(Goal::text).toList(),
                places.stream().map(this::tried).toList(),
                answer.isPresent() ? Optional.of(places.indexOf(best)) : Optional.empty(),
                places.indexOf(best),
                knob.path().equals(ReadyQuestion.PARKED_DAYS) ? parkedForGood(option) : Optional.empty(),
                against);
    }

    /** Days parked in a row are a rhythm that drives in between; this is the trip without any. Empty where drives past midnight stay. */
    private Optional<RunResult> parkedForGood(String option) {
        Variant parked;
        try {
            Values values = file.values(option).orElseThrow();
            parked = VariantBuilder.build(option, values.with(ReadyQuestion.DRIVE_HOURS, "0 h/day"));
        } catch (ScenarioException e) {
            throw new IllegalStateException("a trip without its drives: " + e.problems(), e);
        }
        return parked.drives()
                ? Optional.empty()
                : Optional.of(Simulator.run(planner.under(Sky.AS_IT_IS).apply(parked)));
    }

    private Tried tried(int place) {
        Cell cell = cells.get(place);
        return new Tried(
                place,
                knob.values().get(place),
                cell.result()
                        .map(run ->
                                goals.stream().map(goal -> goal.measured(run)).toList())
                        .orElse(List.of()),
                reaches(place),
                cell.result(),
                cell.problem());
    }
}
