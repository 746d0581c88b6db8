package ampdays.scenario;

import ampdays.trip.DayKind;
import ampdays.trip.Stretch;
import ampdays.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The same days with more or less driving, so that a study can vary it. Drives that go past midnight stay as they are
 * written, and so cannot be made longer or shorter. Test: {@code DriveChangesTest}.
 */
final class DriveChanges {
    private static final int MINUTES_A_DAY = 1440;

    private DriveChanges() {}

    /**
     * The drives of every day that has one last so long in all. Each begins as written, or where the drive before it ends,
     * and is made longer or shorter by the same factor, to the minute; what follows it begins later or earlier, and what a longer drive covers is left out.
     *
     * @param hours 0 to 24; at 0 there is no drive
     * @throws IllegalArgumentException where the day has no room for them
     */
    static Trip lasting(Trip trip, double hours) {
        List<DayKind> kinds =
                trip.kinds().stream().map(kind -> lasting(kind, hours)).toList();
        if (hours > 0 && !hasDrives(trip)) {
            throw new IllegalArgumentException(
                    TripSections.DRIVE_HOURS
                            + " makes drives longer, but the timetable has none: write a line like 17:00 drive highway, aboard");
        }
        return new Trip(trip.start(), trip.zone(), kinds, trip.kindOfDay(), trip.reserveShare());
    }

    /**
     * After each day with a drive at least so many without one: days that would drive too soon are lived without their
     * drives, that is, what follows a drive begins where the drive began. The first day with a drive keeps it.
     */
    static Trip apart(Trip trip, int parkedDays) {
        List<DayKind> kinds = new ArrayList<>(trip.kinds());
        List<Integer> kindOfDay = new ArrayList<>();
        int parked = parkedDays;
        for (int written : trip.kindOfDay()) {
            DayKind kind = trip.kinds().get(written);
            if (!drives(kind)) {
                kindOfDay.add(written);
                parked++;
            } else if (parked >= parkedDays) {
                kindOfDay.add(written);
                parked = 0;
            } else {
                kindOfDay.add(place(kinds, lasting(kind, 0)));
                parked++;
            }
        }
        return new Trip(trip.start(), trip.zone(), kinds, kindOfDay, trip.reserveShare());
    }

    static boolean hasDrives(Trip trip) {
        return trip.kindOfDay().stream().anyMatch(kind -> drives(trip.kinds().get(kind)));
    }

    private static int place(List<DayKind> kinds, DayKind wanted) {
        if (!kinds.contains(wanted)) {
            kinds.add(wanted);
        }
        return kinds.indexOf(wanted);
    }

    private static boolean drives(DayKind kind) {
        return minutes(kind) > 0;
    }

    /** Driving of a day that ends within it, minutes. */
    private static int minutes(DayKind kind) {
        List<Stretch> stretches = kind.stretches();
        int minutes = 0;
        for (int i = 0; i + 1 < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            minutes +=
                    stretch.vehicle().moves() ? stretches.get(i + 1).fromMinuteOfDay() - stretch.fromMinuteOfDay() : 0;
        }
        return minutes;
    }

    private static DayKind lasting(DayKind kind, double hours) {
        int written = minutes(kind);
        if (written == 0) {
            return kind;
        }
        List<Stretch> stretches = kind.stretches();
        List<Stretch> changed = new ArrayList<>();
        double factor = hours * 60 / written;
        int free = 0;
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            boolean drive = stretch.vehicle().moves() && i + 1 < stretches.size();
            int next = i + 1 < stretches.size() ? stretches.get(i + 1).fromMinuteOfDay() : MINUTES_A_DAY;
            boolean afterDrive = i > 0 && stretches.get(i - 1).vehicle().moves();
            int from = afterDrive ? free : stretch.fromMinuteOfDay();
            if (drive) {
                if (from < free) {
                    throw noRoom(kind, hours);
                }
                int lasts = (int) Math.round((next - stretch.fromMinuteOfDay()) * factor);
                free = from + lasts;
                if (free >= MINUTES_A_DAY) {
                    throw noRoom(kind, hours);
                }
                if (lasts > 0) {
                    changed.add(TripChanges.beginning(stretch, from));
                }
            } else if (next > free) {
                changed.add(TripChanges.beginning(stretch, Math.max(free, from)));
            }
        }
        String name = hours == 0 ? kind.name() + " without drives" : kind.name();
        return new DayKind(name, changed);
    }

    private static IllegalArgumentException noRoom(DayKind kind, double hours) {
        return new IllegalArgumentException(String.format(
                Locale.ROOT,
                "%s of %.4g h leaves no room for what follows the drives of \"%s\"",
                TripSections.DRIVE_HOURS,
                hours,
                kind.name()));
    }
}
