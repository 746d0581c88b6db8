package ampdays.study;

import java.util.function.IntPredicate;
import org.apache.commons.math3.analysis.solvers.BisectionSolver;

/**
 * Finds where something begins to be true along whole numbers.
 *
 * <p>Bisection, because what designers ask for goes in steps: nights are counted, and days to empty leap from some number to
 * never. A method that trusts slopes gains nothing there and may leave the bracket; bisection needs the sign alone and
 * halves the bracket each time (R. L. Burden and J. D. Faires, Numerical Analysis, section 2.1; from memory). Test:
 * {@code BoundaryTest}.
 */
final class Boundary {
    /** Small enough that the bracket, when it is that narrow, tells two neighbours apart. */
    private static final double BRACKET = 0.25;

    private static final int MOST_STEPS = 100;

    private Boundary() {}

    /**
     * The place where it is true that has a neighbour, on the side of {@code isFalse}, where it is not.
     *
     * @param isFalse a place where it is not true
     * @param isTrue a place where it is
     */
    static int between(int isFalse, int isTrue, IntPredicate holds) {
        double crossing = new BisectionSolver(BRACKET)
                .solve(
                        MOST_STEPS,
                        at -> holds.test((int) Math.round(at)) ? 1 : -1,
                        Math.min(isFalse, isTrue),
                        Math.max(isFalse, isTrue));
        int below = (int) Math.floor(crossing);
        return isFalse < isTrue ? below + 1 : below;
    }
}
