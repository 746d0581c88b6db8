package ampdays.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Where an input comes from. */
public enum Mark {
    MEASURED,
    DATASHEET,
    STANDARD,
    PRACTICE,
    GUESS;

    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Mark> of(String label) {
        return Arrays.stream(values()).filter(m -> m.label().equals(label)).findFirst();
    }

    public static List<String> labels() {
        return Arrays.stream(values()).map(Mark::label).toList();
    }
}
