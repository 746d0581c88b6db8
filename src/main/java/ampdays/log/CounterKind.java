package ampdays.log;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How a counter counts. */
public enum CounterKind {
    /** Since the device was made. */
    LIFETIME("lifetime"),
    /** Since the last midnight. */
    DAILY("daily"),
    /** Since the row before. */
    PER_ROW("per row");

    private final String label;

    CounterKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    public static Optional<CounterKind> of(String label) {
        return Arrays.stream(values()).filter(k -> k.label.equals(label)).findFirst();
    }

    public static List<String> labels() {
        return Arrays.stream(values()).map(CounterKind::label).toList();
    }
}
