package ampdays.report;

import ampdays.report.ClockDay.Span;
import ampdays.trip.Stretch;
import ampdays.units.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Where the van stands by day, on one kind of day, in words. */
final class Parking {
    private static final int MORNING = 5 * 60;
    private static final int EVENING = 19 * 60;
    private static final double MOST_PART_SHADE = 0.9;
    private static final double MOST_SHADE = 0.3;
    private static final List<String> PLACES = List.of("in full sun", "in part shade", "in shade");
    private static final String DRIVING = "";

    /** Where it stands from a time to another, minutes after midnight; driving too. */
    private record Stay(int from, int to, String place) {
        boolean goesOnIn(Stay next) {
            return to == next.from && place.equals(next.place);
        }
    }

    private final Map<String, List<String>> times = new LinkedHashMap<>();
    private final List<Stay> stays = new ArrayList<>();

    private Parking(ClockDay day) {
        PLACES.forEach(place -> times.put(place, new ArrayList<>()));
        List<String> night =
                day.before().stream().map(Parking::place).distinct().toList();
        if (night.size() == 1) {
            add(0, day.first(), night.get(0));
        }
        day.spans().forEach(this::add);
        stays.forEach(this::tell);
    }

    /** Such as "in full sun 07:15 to 16:45, in part shade 17:30 to 19:00"; empty where it never stands by day. */
    static String of(ClockDay day) {
        Parking parking = new Parking(day);
        List<String> texts = new ArrayList<>();
        if (isUnsure(day)) {
            texts.add("until " + clock(Math.min(day.first(), EVENING)) + " as the day before ended");
        }
        parking.times.forEach((place, when) -> {
            if (!when.isEmpty()) {
                texts.add(place + " " + Wording.listed(when));
            }
        });
        return String.join(", ", texts);
    }

    /** Whether where it stands in the morning depends on which kind of day it was before. */
    private static boolean isUnsure(ClockDay day) {
        return day.first() > MORNING
                && day.before().stream().map(Parking::place).distinct().count() > 1;
    }

    private void add(Span span) {
        add(span.from(), span.to(), place(span.line()));
    }

    private void add(int from, int to, String place) {
        Stay stay = new Stay(Math.max(from, MORNING), Math.min(to, EVENING), place);
        if (stay.from >= stay.to) {
            return;
        }
        int last = stays.size() - 1;
        if (last >= 0 && stays.get(last).goesOnIn(stay)) {
            stays.set(last, new Stay(stays.get(last).from, stay.to, place));
        } else {
            stays.add(stay);
        }
    }

    private void tell(Stay stay) {
        if (!stay.place.equals(DRIVING)) {
            boolean isAll = stay.from == MORNING && stay.to == EVENING;
            times.get(stay.place).add(isAll ? "all day" : clock(stay.from) + " to " + clock(stay.to));
        }
    }

    private static String place(Stretch line) {
        if (line.vehicle().moves()) {
            return DRIVING;
        }
        double light = line.shade().beamShare();
        return PLACES.get(light > MOST_PART_SHADE ? 0 : light > MOST_SHADE ? 1 : 2);
    }

    private static String clock(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
    }
}
