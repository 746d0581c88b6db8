package ampdays.trip;

import ampdays.units.Require;

/**
 * One line of a timetable: it holds from its time of day until the next line.
 *
 * @param fromMinuteOfDay local clock time of its start, minutes after midnight, 0 to 1439
 */
public record Stretch(int fromMinuteOfDay, Vehicle vehicle, Shade shade, boolean hookUp, People people) {
    public Stretch {
        Require.within("minute of the day", fromMinuteOfDay, 0, 1439);
        if (hookUp && vehicle != Vehicle.PARKED) {
            throw new IllegalArgumentException("hook-up is only possible while parked");
        }
    }
}
