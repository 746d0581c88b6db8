package ampdays.commission;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Causes by what deviates and to which side, each list in its order. */
final class CauseTable {
    /** The reading that finds a bad joint. */
    static final String JOINT_BY_JOINT = "Millivolts over each joint and each length of cable at the same current.";

    private final Map<Symptom, List<Cause>> tooLittle = new EnumMap<>(Symptom.class);
    private final Map<Symptom, List<Cause>> tooMuch = new EnumMap<>(Symptom.class);

    List<Cause> of(Symptom symptom, boolean isTooMuch) {
        return (isTooMuch ? tooMuch : tooLittle).getOrDefault(symptom, List.of());
    }

    void low(Symptom symptom, String text, String test) {
        put(tooLittle, symptom, new Cause(text, test, Optional.empty()));
    }

    void low(Symptom symptom, String text, String test, Symptom witness) {
        put(tooLittle, symptom, new Cause(text, test, Optional.of(witness)));
    }

    void high(Symptom symptom, String text, String test) {
        put(tooMuch, symptom, new Cause(text, test, Optional.empty()));
    }

    void high(Symptom symptom, String text, String test, Symptom witness) {
        put(tooMuch, symptom, new Cause(text, test, Optional.of(witness)));
    }

    private static void put(Map<Symptom, List<Cause>> side, Symptom symptom, Cause cause) {
        side.computeIfAbsent(symptom, key -> new ArrayList<>()).add(cause);
    }
}
