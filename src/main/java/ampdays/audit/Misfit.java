package ampdays.audit;

import java.util.List;

/**
 * A reading that contradicts the others.
 *
 * @param lines where it stands; several, when the readings cannot tell which of them is wrong
 * @param offA current read less current expected, A; its size alone counts when there are several lines
 * @param leftOut whether the draws were told without it
 */
public record Misfit(List<Integer> lines, double offA, boolean leftOut) {
    public Misfit {
        lines = List.copyOf(lines);
    }
}
