package ampdays.trip;

import java.util.List;

/** A named kind of day and its timetable; before its first line the last line of the day before still holds. */
public record DayKind(String name, List<Stretch> stretches) {
    public DayKind {
        stretches = List.copyOf(stretches);
        if (stretches.isEmpty()) {
            throw new IllegalArgumentException("the timetable of \"" + name + "\" has no line");
        }
        for (int i = 1; i < stretches.size(); i++) {
            if (stretches.get(i).fromMinuteOfDay() <= stretches.get(i - 1).fromMinuteOfDay()) {
                throw new IllegalArgumentException("the times of \"" + name + "\" do not rise from line to line");
            }
        }
    }
}
