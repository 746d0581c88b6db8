package ampdays.audit;

import ampdays.units.Require;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A list of readings.
 *
 * @param title a name for tables
 * @param uses how each appliance is used, by its name, in the order in which they were first switched
 * @param rows in the order in which they were taken, at least one
 * @param resolutionA one step of the meter's last digit, A
 * @param driftA standard uncertainty of how far the base draw may have drifted from the first reading to the last, A
 * @param notes what was assumed in reading them
 */
public record Readings(
        String title,
        Map<String, Use> uses,
        List<Reading> rows,
        double resolutionA,
        double driftA,
        List<String> notes) {
    /** Common practice for a lithium bank of 12 V between full and empty. */
    private static final double USUAL_V = 12.8;

    public Readings {
        uses = Collections.unmodifiableMap(new LinkedHashMap<>(uses));
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
        Require.within("number of readings", rows.size(), 1, Integer.MAX_VALUE);
        Require.positive("resolution of the meter", resolutionA);
        Require.positive("drift of the base draw", driftA);
    }

    public List<String> appliances() {
        return List.copyOf(uses.keySet());
    }

    /** Whether a voltage was read at all. */
    public boolean hasVoltage() {
        return rows.stream().anyMatch(row -> !Double.isNaN(row.voltageV()));
    }

    /** Mean voltage of the bank over the readings that have one, V; that of a usual bank when none has. */
    public double voltageV() {
        return rows.stream()
                .mapToDouble(Reading::voltageV)
                .filter(v -> !Double.isNaN(v))
                .average()
                .orElse(USUAL_V);
    }
}
