package ampdays.scenario;

import java.util.List;
import java.util.stream.Collectors;

/** Values that do not make a design. */
public final class ScenarioException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    public ScenarioException(List<Problem> problems) {
        super(problems.stream().map(Problem::message).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public List<Problem> problems() {
        return problems;
    }
}
