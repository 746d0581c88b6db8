package ampdays.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether a meter shows current out of the bank as plus or as minus. */
public final class MeterSign {
    private MeterSign() {}

    /**
     * Tells by what switching on and off did to the reading, since the sign of the reading itself would mislead while
     * something charges; by that sign when nothing was switched alone. Empty when neither tells.
     *
     * @param rows readings with the sign that the meter shows
     */
    public static Optional<Boolean> dischargeIsPlus(List<Reading> rows) {
        double evidenceA = 0;
        for (int i = 1; i < rows.size(); i++) {
            Reading now = rows.get(i);
            Reading before = rows.get(i - 1);
            int added = without(now, before);
            int removed = without(before, now);
            if (added == 0 || removed == 0) {
                evidenceA += Integer.signum(added - removed) * (now.currentA() - before.currentA());
            }
        }
        if (evidenceA == 0) {
            evidenceA = rows.stream().mapToDouble(Reading::currentA).sum();
        }
        return evidenceA == 0 ? Optional.empty() : Optional.of(evidenceA > 0);
    }

    private static int without(Reading a, Reading b) {
        List<String> left = new ArrayList<>(a.on());
        left.removeAll(b.on());
        return left.size();
    }
}
