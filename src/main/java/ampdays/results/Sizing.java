package ampdays.results;

import java.util.List;
import java.util.Optional;

/**
 * The answer to a question of size: which value of a knob is just enough.
 *
 * @param option that the value belongs to
 * @param path of the knob
 * @param smallest whether the smallest value is wanted, else the largest
 * @param range that was searched, as written
 * @param goals as written
 * @param tried values in the order of the knob
 * @param answer place in {@code tried} of the value that is just enough; empty when none reaches the goals
 * @param best place in {@code tried} of the value that reaches them, or else comes nearest
 * @param parkedForGood where days parked in a row are asked: the trip without any drive; empty otherwise
 * @param against values farther from the wanted end than the answer that do not reach the goals all the same
 */
public record Sizing(
        String option,
        String path,
        boolean smallest,
        String range,
        List<String> goals,
        List<Tried> tried,
        Optional<Integer> answer,
        int best,
        Optional<RunResult> parkedForGood,
        List<String> against) {
    public Sizing {
        goals = List.copyOf(goals);
        tried = List.copyOf(tried);
        against = List.copyOf(against);
    }

    /**
     * One value that was run.
     *
     * @param place which of all values of the knob it is
     * @param value as a scenario would say it
     * @param measured what the metrics of the goals came to, with units; empty when the design is impossible
     * @param reached whether it reaches all goals
     * @param result empty when the design is impossible
     * @param problem why, in a sentence; else empty
     */
    public record Tried(
            int place,
            String value,
            List<String> measured,
            boolean reached,
            Optional<RunResult> result,
            String problem) {
        public Tried {
            measured = List.copyOf(measured);
        }
    }

    /** The value that is just enough, or else the one that comes nearest. */
    public Tried bestTried() {
        return tried.get(best);
    }

    /** The value one step nearer to the wanted end than the answer, which is not enough; empty at the end of the range. */
    public Optional<Tried> notEnough() {
        return answer.flatMap(at -> {
            int place = tried.get(at).place() + (smallest ? -1 : 1);
            return tried.stream().filter(t -> t.place() == place).findFirst();
        });
    }
}
