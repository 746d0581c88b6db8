package ampdays.audit;

import ampdays.units.Require;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * What the meter said with certain appliances on.
 *
 * @param line where it stands in its file, from 1
 * @param on the appliances that were on
 * @param switchedOn those of them that were switched on for this reading
 * @param currentA current out of the bank, A
 * @param waverA how far the meter wavered to either side, A; 0 when it stood still
 * @param surgeA highest current at the start, A; NaN when not read
 * @param voltageV voltage of the bank, V; NaN when not read
 * @param position when it was taken: 0 the first, 1 the last
 */
public record Reading(
        int line,
        Set<String> on,
        Set<String> switchedOn,
        double currentA,
        double waverA,
        double surgeA,
        double voltageV,
        double position) {
    public Reading {
        on = Collections.unmodifiableSet(new LinkedHashSet<>(on));
        switchedOn = Collections.unmodifiableSet(new LinkedHashSet<>(switchedOn));
        Require.notNegative("wavering", waverA);
        Require.share("position", position);
    }
}
