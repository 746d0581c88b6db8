package ampdays.results;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Three days in a row.
 *
 * @param first their first day
 * @param askedWh energy asked for in them, delivered or not
 * @param cameWh energy that the sources gave in them
 */
public record ThreeDays(LocalDate first, double askedWh, double cameWh) {
    private static final int DAYS = 3;

    /** What was asked for and did not come, Wh; below zero where more came. */
    public double lackWh() {
        return askedWh - cameWh;
    }

    /** Those days of a run, the first in case of a tie, that lack most; all days of a shorter run. */
    public static ThreeDays worst(List<DayTotals> days) {
        int length = Math.min(DAYS, days.size());
        return IntStream.rangeClosed(0, days.size() - length)
                .mapToObj(from -> of(days.subList(from, from + length)))
                .max(Comparator.comparingDouble(ThreeDays::lackWh)
                        .thenComparing(ThreeDays::first, Comparator.reverseOrder()))
                .orElseThrow();
    }

    private static ThreeDays of(List<DayTotals> days) {
        return new ThreeDays(
                days.get(0).date(),
                days.stream()
                        .mapToDouble(
                                day -> day.energy().servedWh() + day.energy().unservedWh())
                        .sum(),
                days.stream().mapToDouble(day -> day.energy().sourcesWh()).sum());
    }
}
