package ampdays.scenario;

import ampdays.trip.DayKind;
import ampdays.trip.People;
import ampdays.trip.Shade;
import ampdays.trip.Stretch;
import ampdays.trip.Trip;
import ampdays.trip.Vehicle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The same days, lived a little differently. */
final class TripChanges {
    private static final int MINUTES_A_DAY = 1440;

    private TripChanges() {}

    /**
     * A changed trip.
     *
     * @param days how many of its days, or nights, changed
     */
    record Changed(Trip trip, int days) {}

    /**
     * The last drive of each day that has one ends later, and what follows begins later. Empty when no day has a drive, or
     * when what follows one of them leaves no room.
     */
    static Optional<Changed> longerDrives(Trip trip, int minutes) {
        List<DayKind> kinds = new ArrayList<>();
        List<Integer> changed = new ArrayList<>();
        for (int kind = 0; kind < trip.kinds().size(); kind++) {
            List<Stretch> stretches = new ArrayList<>(trip.kinds().get(kind).stretches());
            int next = afterLastDrive(stretches);
            if (next > 0) {
                int later = stretches.get(next).fromMinuteOfDay() + minutes;
                int end = next + 1 < stretches.size() ? stretches.get(next + 1).fromMinuteOfDay() : MINUTES_A_DAY;
                if (later >= end) {
                    return Optional.empty();
                }
                stretches.set(next, beginning(stretches.get(next), later));
                changed.add(kind);
            }
            kinds.add(new DayKind(trip.kinds().get(kind).name(), stretches));
        }
        int days = (int) trip.kindOfDay().stream().filter(changed::contains).count();
        return days == 0
                ? Optional.empty()
                : Optional.of(new Changed(
                        new Trip(trip.start(), trip.zone(), kinds, trip.kindOfDay(), trip.reserveShare()), days));
    }

    /**
     * Every drive lasts longer or shorter by a factor; it begins when it did, or when the drive before it ends. It leaves at
     * least a minute to what follows, and a drive over midnight stays as it is.
     */
    static Trip stretchedDrives(Trip trip, double factor) {
        List<DayKind> kinds = new ArrayList<>();
        for (DayKind kind : trip.kinds()) {
            List<Stretch> was = kind.stretches();
            List<Stretch> now = new ArrayList<>(was);
            for (int i = 0; i + 1 < was.size(); i++) {
                if (was.get(i).vehicle().moves()) {
                    int begin = now.get(i).fromMinuteOfDay();
                    int length = was.get(i + 1).fromMinuteOfDay() - was.get(i).fromMinuteOfDay();
                    int next = i + 2 < was.size() ? was.get(i + 2).fromMinuteOfDay() : MINUTES_A_DAY;
                    int end = begin + Math.max(1, (int) Math.round(length * factor));
                    now.set(i + 1, beginning(was.get(i + 1), Math.min(end, next - 1)));
                }
            }
            kinds.add(new DayKind(kind.name(), now));
        }
        return new Trip(trip.start(), trip.zone(), kinds, trip.kindOfDay(), trip.reserveShare());
    }

    /** Place of the stretch that ends the last drive of the day; 0 without a drive that ends within it. */
    private static int afterLastDrive(List<Stretch> stretches) {
        for (int i = stretches.size() - 1; i > 0; i--) {
            if (stretches.get(i - 1).vehicle().moves()
                    && !stretches.get(i).vehicle().moves()) {
                return i;
            }
        }
        return 0;
    }

    /** A stretch that begins at another time. */
    static Stretch beginning(Stretch s, int fromMinuteOfDay) {
        return new Stretch(
                fromMinuteOfDay, s.vehicle(), s.shade(), s.hookUp(), s.people(), s.headingDeg(), s.windows());
    }

    /**
     * Every so many nights the last place of the day has a hook-up, until the first line of the next day. Empty when no
     * such night ends parked without one.
     */
    static Optional<Changed> hookUpEvery(Trip trip, int nights) {
        List<DayKind> kinds = new ArrayList<>(trip.kinds());
        List<Integer> kindOfDay = new ArrayList<>(trip.kindOfDay());
        int changed = 0;
        for (int day = nights - 1; day < trip.days(); day += nights) {
            DayKind kind = trip.kinds().get(trip.kindOfDay().get(day));
            Stretch last = kind.stretches().get(kind.stretches().size() - 1);
            if (last.vehicle() == Vehicle.PARKED && !last.hookUp()) {
                kindOfDay.set(day, place(kinds, hookedUp(kind, last)));
                changed++;
            }
        }
        return changed == 0
                ? Optional.empty()
                : Optional.of(new Changed(
                        new Trip(trip.start(), trip.zone(), kinds, kindOfDay, trip.reserveShare()), changed));
    }

    private static DayKind hookedUp(DayKind kind, Stretch last) {
        List<Stretch> stretches = new ArrayList<>(kind.stretches());
        stretches.set(
                stretches.size() - 1,
                new Stretch(
                        last.fromMinuteOfDay(),
                        last.vehicle(),
                        last.shade(),
                        true,
                        last.people(),
                        last.headingDeg(),
                        last.windows()));
        return new DayKind(kind.name() + " with hook-up", stretches);
    }

    /**
     * Some days are spent parked in one shade, without a hook-up; who would be aboard is awake.
     *
     * @param firstDay the first of them, 0 the trip's first
     * @param endDay the first one after them
     */
    static Trip parked(Trip trip, int firstDay, int endDay, Shade shade) {
        List<DayKind> kinds = new ArrayList<>(trip.kinds());
        List<Integer> kindOfDay = new ArrayList<>(trip.kindOfDay());
        for (int day = firstDay; day < endDay && day < trip.days(); day++) {
            DayKind kind = trip.kinds().get(trip.kindOfDay().get(day));
            List<Stretch> stretches =
                    kind.stretches().stream().map(s -> parked(s, shade)).toList();
            kindOfDay.set(day, place(kinds, new DayKind(kind.name() + ", parked", stretches)));
        }
        return new Trip(trip.start(), trip.zone(), kinds, kindOfDay, trip.reserveShare());
    }

    private static Stretch parked(Stretch s, Shade shade) {
        People people = s.people() == People.ABOARD ? People.AWAKE : s.people();
        return new Stretch(s.fromMinuteOfDay(), Vehicle.PARKED, shade, false, people, s.headingDeg(), s.windows());
    }

    /** All days are spent parked in the sun with nobody in the van. */
    static Trip away(Trip trip) {
        DayKind kind = new DayKind(
                "parked in the sun", List.of(new Stretch(0, Vehicle.PARKED, Shade.NONE, false, People.AWAY)));
        return new Trip(
                trip.start(), trip.zone(), List.of(kind), Collections.nCopies(trip.days(), 0), trip.reserveShare());
    }

    private static int place(List<DayKind> kinds, DayKind wanted) {
        if (!kinds.contains(wanted)) {
            kinds.add(wanted);
        }
        return kinds.indexOf(wanted);
    }
}
