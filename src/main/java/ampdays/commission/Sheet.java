package ampdays.commission;

import java.util.List;
import java.util.stream.Stream;

/**
 * A commissioning sheet: one van on one day.
 *
 * @param title of the scenario
 * @param option by its name
 * @param notes what the bands rest on, and what was left out
 */
public record Sheet(String title, String option, Conditions conditions, List<Step> steps, List<String> notes) {
    /** What stands on every sheet. */
    public static final List<String> CAUTIONS = List.of(
            "Not a code check; have it inspected by a licensed person.",
            "Run the engine outdoors only, windows shut and roof fan off while it runs, nobody asleep in or beside the van:"
                    + " exhaust kills, and it has no smell that warns.",
            "Keep hands, hair and leads clear of belts and fans; the engine may start by itself. No dry grass under a hot"
                    + " exhaust.",
            "Never open a cable, fuse or switch between a charging alternator and the bank.",
            "A stop is a stop: switch off, let it cool, find the cause, and take the reading again before going on.");

    public Sheet {
        steps = List.copyOf(steps);
        notes = List.copyOf(notes);
    }

    public Stream<Item> items() {
        return steps.stream().flatMap(step -> step.items().stream());
    }
}
