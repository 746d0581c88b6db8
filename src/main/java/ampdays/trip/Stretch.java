package ampdays.trip;

import ampdays.units.Require;

/**
 * One line of a timetable: it holds from its time of day until the next line.
 *
 * @param fromMinuteOfDay local clock time of its start, minutes after midnight, 0 to 1439
 * @param headingDeg where the front of the standing vehicle points, degrees clockwise from north; NaN when not said
 * @param windows whether the window covers are on
 */
public record Stretch(
        int fromMinuteOfDay,
        Vehicle vehicle,
        Shade shade,
        boolean hookUp,
        People people,
        double headingDeg,
        Windows windows) {
    /** A stretch that says nothing of heading and covers. */
    public Stretch(int fromMinuteOfDay, Vehicle vehicle, Shade shade, boolean hookUp, People people) {
        this(fromMinuteOfDay, vehicle, shade, hookUp, people, Double.NaN, Windows.BY_RULE);
    }

    public Stretch {
        Require.within("minute of the day", fromMinuteOfDay, 0, 1439);
        if (hookUp && vehicle != Vehicle.PARKED) {
            throw new IllegalArgumentException("hook-up is only possible while parked");
        }
        if (!Double.isNaN(headingDeg)) {
            Require.within("heading", headingDeg, 0, 360);
            if (vehicle.moves()) {
                throw new IllegalArgumentException("only a standing vehicle has a heading");
            }
        }
    }
}
