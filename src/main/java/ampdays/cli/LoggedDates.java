package ampdays.cli;

import ampdays.io.InputException;
import ampdays.scenario.Variant;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;

/** The promised trip on the days of a log. */
record LoggedDates(Loaded loaded, Variant variant) {
    /** The same trip from another day of the year; the year stays that of the scenario, as its weather is. */
    static LoggedDates moved(Loaded loaded, String option, Variant built, LocalDate first)
            throws IOException, InputException, UsageException {
        LocalDate start = first.withYear(built.trip().start().getYear());
        if (start.equals(built.trip().start())) {
            return new LoggedDates(loaded, built);
        }
        Loaded moved = loaded.changed(option, List.of("trip.start=" + start));
        moved.requireCoverage();
        return new LoggedDates(moved, moved.scenario().variants().get(0));
    }
}
