package ampdays.log;

import java.util.List;
import java.util.function.Function;

/** Faults of one kind: how many there are, and the first. */
final class Faults {
    private int count;
    private int firstLine;
    private String first = "";

    void add(int line, String what) {
        if (count == 0) {
            firstLine = line;
            first = what;
        }
        count++;
    }

    String first() {
        return first;
    }

    /** "" or " (and 12 times more)". */
    String andMore() {
        return count < 2 ? "" : count == 2 ? " (and once more)" : " (and " + (count - 1) + " times more)";
    }

    /** Adds one line for all, if there are any. */
    void tell(List<Trap> traps, Function<Faults, String> text) {
        if (count > 0) {
            traps.add(new Trap(firstLine, text.apply(this)));
        }
    }
}
