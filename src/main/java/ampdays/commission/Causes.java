package ampdays.commission;

import java.util.List;

/**
 * Likely causes of a deviation, in the order in which they turn up and cost least to look at: joints before parts, settings
 * before machines, and never a bigger breaker. Common practice, no source.
 */
final class Causes {
    private static final CauseTable TABLE = table();

    private Causes() {}

    private static CauseTable table() {
        CauseTable table = new CauseTable();
        LivingCauses.addTo(table);
        EngineCauses.addTo(table);
        return table;
    }

    /** Causes of a reading that is too large, or too small. */
    static List<Cause> of(Symptom symptom, boolean tooMuch) {
        return TABLE.of(symptom, tooMuch);
    }
}
