package ampdays.wiring;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Whose air surrounds a cable or a breaker. */
public enum Place {
    CABIN("cabin"),
    BONNET("under bonnet"),
    OUTSIDE("outside"),
    /** On the roof beneath or beside the panels, as warm as their cells. */
    ROOF("roof");

    private final String label;

    Place(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    public static List<String> labels() {
        return Arrays.stream(values()).map(Place::label).toList();
    }

    public static Optional<Place> of(String label) {
        return Arrays.stream(values()).filter(p -> p.label.equals(label)).findFirst();
    }
}
