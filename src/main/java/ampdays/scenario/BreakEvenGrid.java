package ampdays.scenario;

import ampdays.trip.Trip;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** All options by summer heat, days parked in a row and driving a day: what a break-even map is made from. */
public final class BreakEvenGrid {
    private static final int MOST_PARKED = 6;
    private static final List<Integer> FEW_PARKED = List.of(0, 1, 3);

    private BreakEvenGrid() {}

    /** The places of a study of its own. */
    public static Grid fine(ScenarioFile file) {
        return grid(
                file, "-5, 0, 5 K", IntStream.rangeClosed(0, mostParked(file)).boxed(), "0..4 h/day step 0.5 h/day");
    }

    /** Fewer places, for a document that has other things to tell. */
    public static Grid coarse(ScenarioFile file) {
        return grid(file, "-3, 0, 3 K", FEW_PARKED.stream().filter(days -> days <= mostParked(file)), "1, 2, 4 h/day");
    }

    /** Options change fastest, since they share weather and trip. */
    private static Grid grid(ScenarioFile file, String heat, Stream<Integer> parked, String driving) {
        return new Grid(
                Stream.of(
                                "weather-offset=" + heat,
                                "trip.parked-days="
                                        + parked.map(String::valueOf).collect(Collectors.joining(", ")),
                                "trip.drive-hours=" + driving,
                                Knob.OPTION + "=all")
                        .map(knob -> KnobText.read(knob, file))
                        .toList(),
                false);
    }

    private static int mostParked(ScenarioFile file) {
        return Math.max(1, Math.min(MOST_PARKED, trip(file).days() - 1));
    }

    private static Trip trip(ScenarioFile file) {
        return file.scenario().variants().get(0).trip();
    }

    /**
     * Why a scenario has no map, in a sentence; empty where it has one.
     *
     * @param mostOptions that can be told apart on it
     */
    public static Optional<String> hindrance(ScenarioFile file, int mostOptions) {
        int options = file.scenario().variants().size();
        if (options < 2) {
            return Optional.of("There is no option beside the van as it is.");
        }
        if (options > mostOptions) {
            return Optional.of("More than " + mostOptions + " options cannot be told apart on it.");
        }
        if (trip(file).days() < 2) {
            return Optional.of("The trip lasts one day.");
        }
        return DriveChanges.hasDrives(trip(file)) ? Optional.empty() : Optional.of("The timetable has no drives.");
    }
}
