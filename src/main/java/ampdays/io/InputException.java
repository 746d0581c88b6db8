package ampdays.io;

import java.util.List;
import java.util.stream.Collectors;

/** An input file that cannot be used, with everything that is wrong in it. */
public final class InputException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<InputProblem> problems;

    public InputException(List<InputProblem> problems) {
        super(problems.stream().map(InputProblem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public List<InputProblem> problems() {
        return problems;
    }
}
