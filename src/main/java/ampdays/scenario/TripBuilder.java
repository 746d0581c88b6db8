package ampdays.scenario;

import ampdays.trip.DayKind;
import ampdays.trip.Shade;
import ampdays.trip.Stretch;
import ampdays.trip.Trip;
import ampdays.units.Nearest;
import ampdays.units.QuantityException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/** Makes the trip from its values: which day is of which kind, and what happens on it. */
final class TripBuilder {
    private static final String EVERY_DAY = "every day";
    private static final String OTHERS = "others";

    private final Values values;
    private final ProblemList read;

    TripBuilder(Values values, ProblemList read) {
        this.values = values;
        this.read = read;
    }

    Optional<Trip> trip() {
        return read.build("trip", () -> {
            int days = read.count("trip.days");
            String start = read.word("trip.start");
            String zone = read.word("place.zone");
            double reserve = read.number("trip.reserve");
            List<String> names = kindNames();
            boolean sound = checkDayNames(names);
            if (!sound || days == 0 || start.isEmpty() || zone.isEmpty() || names.isEmpty()) {
                return null;
            }
            LocalDate first = date(start);
            List<Integer> kindOfDay = kindOfDay(names, first, days);
            return driven(new Trip(
                    first, ZoneId.of(zone), names.stream().map(this::kind).toList(), kindOfDay, reserve));
        });
    }

    /** The trip with its drives as long, and as far apart, as the scenario says beside the timetable. */
    private Trip driven(Trip trip) {
        double hours = values.number(TripSections.DRIVE_HOURS);
        double days = values.number(TripSections.PARKED_DAYS);
        Trip longer = Double.isNaN(hours) ? trip : DriveChanges.lasting(trip, hours);
        return Double.isNaN(days) ? longer : DriveChanges.apart(longer, (int) days);
    }

    private static LocalDate date(String text) {
        try {
            return Days.date(text);
        } catch (QuantityException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    private List<String> kindNames() {
        List<String> names = new ArrayList<>(values.names("trip.timetable"));
        if (names.isEmpty() && values.find("trip.timetable").isPresent()) {
            names.add(EVERY_DAY);
        }
        if (names.isEmpty()) {
            read.add("trip.timetable", "trip.timetable is missing. Write lines like: 07:10 park sun, away.");
        }
        return names;
    }

    /** Every name that is given days must have a timetable; a misspelt key of the section lands here as well. */
    private boolean checkDayNames(List<String> kinds) {
        int before = read.count();
        List<String> known = new ArrayList<>(Registry.children("trip"));
        known.remove("*");
        for (String name : values.names("trip")) {
            if (!known.contains(name) && !kinds.contains(name)) {
                List<String> candidates = new ArrayList<>(known);
                candidates.addAll(kinds);
                read.add(
                        "trip." + name,
                        "trip." + name + " is neither a key of the trip nor a kind of day with a timetable."
                                + Nearest.of(name, candidates)
                                        .map(w -> " Did you mean " + w + "?")
                                        .orElse(" Keys: " + String.join(", ", known) + "."));
            }
        }
        return read.count() == before;
    }

    private List<Integer> kindOfDay(List<String> names, LocalDate start, int days) {
        int before = read.count();
        int[] kinds = new int[days];
        Arrays.fill(kinds, -1);
        int others = names.size() == 1 && values.find("trip." + names.get(0)).isEmpty() ? 0 : -1;
        for (int kind = 0; kind < names.size(); kind++) {
            String path = "trip." + names.get(kind);
            String text = values.word(path);
            if (text.equals(OTHERS)) {
                if (others >= 0) {
                    read.add(path, path + " is others, but so is another kind of day.");
                }
                others = kind;
            } else if (!text.isEmpty()) {
                assign(kinds, kind, names, text, start);
            } else if (others != kind) {
                read.add(
                        "trip.timetable." + names.get(kind),
                        "The kind of day \"" + names.get(kind) + "\" has a timetable but no days. Write under trip: "
                                + names.get(kind) + ": 1-5, or: others.");
            }
        }
        List<Integer> result = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            if (kinds[day] < 0 && others < 0 && read.count() == before) {
                read.add("trip.days", "Day " + (day + 1) + " of the trip is of no kind. Give one kind: others.");
                break;
            }
            result.add(kinds[day] < 0 ? others : kinds[day]);
        }
        return result;
    }

    private void assign(int[] kinds, int kind, List<String> names, String text, LocalDate start) {
        String path = "trip." + names.get(kind);
        try {
            IntPredicate set = Days.set(text, start, (int) values.longestTripDays());
            for (int day = 0; day < kinds.length; day++) {
                if (set.test(day)) {
                    if (kinds[day] >= 0) {
                        read.add(
                                path,
                                path + " takes day " + (day + 1) + ", which already belongs to " + names.get(kinds[day])
                                        + ". A day has one kind.");
                        return;
                    }
                    kinds[day] = kind;
                }
            }
        } catch (QuantityException e) {
            read.add(path, path + " " + e.getMessage());
        }
    }

    private DayKind kind(String name) {
        String path = name.equals(EVERY_DAY) && values.names("trip.timetable").isEmpty()
                ? "trip.timetable"
                : "trip.timetable." + name;
        try {
            return new DayKind(
                    name,
                    TimetableLine.parseAll(values.word(path)).stream()
                            .map(this::stretch)
                            .toList());
        } catch (QuantityException e) {
            throw new IllegalArgumentException(path + " " + e.getMessage(), e);
        }
    }

    private Stretch stretch(TimetableLine line) {
        Shade shade = line.vehicle().moves() || line.shade().equals(TimetableLine.SUN)
                ? Shade.NONE
                : new Shade(
                        read.number("shade." + line.shade() + ".beam"),
                        read.number("shade." + line.shade() + ".diffuse"));
        return new Stretch(
                line.minuteOfDay(),
                line.vehicle(),
                shade,
                line.hookUp(),
                line.people(),
                line.headingDeg(),
                line.windows());
    }
}
