package ampdays.audit;

import java.util.List;

/**
 * What a list of readings tells.
 *
 * @param draws the base draw first, then the appliances in the order in which they were first switched
 * @param driftA how much more the base drew at the last reading than at the first, A
 * @param driftPlusMinusA its uncertainty at 95 %, A
 * @param scatter of the readings around the draws, relative to what was expected of the meter
 * @param spare readings beyond those that the draws need
 * @param untold what cannot be told apart
 * @param misfits readings that contradict the others
 */
public record Audit(
        List<Draw> draws,
        double driftA,
        double driftPlusMinusA,
        double scatter,
        int spare,
        List<Untold> untold,
        List<Misfit> misfits) {
    public Audit {
        draws = List.copyOf(draws);
        untold = List.copyOf(untold);
        misfits = List.copyOf(misfits);
    }

    /** Whether the drift is more than its uncertainty. */
    public boolean driftSeen() {
        return Math.abs(driftA) > driftPlusMinusA;
    }
}
