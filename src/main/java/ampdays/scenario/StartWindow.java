package ampdays.scenario;

import ampdays.trip.Trip;
import ampdays.units.QuantityException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.LongStream;

/**
 * The days between which the trips of a study begin. Test: {@code HabitsTest}.
 *
 * @param first in the year of the trip's own start, or the one before
 * @param last on it or later, in the same year or the next
 * @param said whether the scenario says either of them
 */
public record StartWindow(LocalDate first, LocalDate last, boolean said) {
    private static final int USUAL_DAYS = 14;

    /** The window of a design. */
    public static StartWindow of(Values values, Trip trip) {
        boolean said = values.isSaid(ChancesSection.FIRST_START) || values.isSaid(ChancesSection.LAST_START);
        LocalDate first = date(values, ChancesSection.FIRST_START, trip.start().minusDays(USUAL_DAYS), trip);
        LocalDate last = date(values, ChancesSection.LAST_START, trip.start().plusDays(USUAL_DAYS), trip);
        return new StartWindow(first, last.isBefore(first) ? last.plusYears(1) : last, said);
    }

    private static LocalDate date(Values values, String path, LocalDate usual, Trip trip) {
        String text = values.word(path);
        if (text.isEmpty()) {
            return usual;
        }
        try {
            return Days.date(text).withYear(trip.start().getYear());
        } catch (QuantityException e) {
            throw new IllegalStateException(path + " was read before: " + e.getMessage(), e);
        }
    }

    /** Every day of it, moved by whole years. */
    public List<LocalDate> days(int laterYears) {
        return LongStream.rangeClosed(0, ChronoUnit.DAYS.between(first, last))
                .mapToObj(day -> first.plusDays(day).plusYears(laterYears))
                .distinct()
                .toList();
    }
}
