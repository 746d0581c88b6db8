package ampdays.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A weather series at a glance. A day is a calendar day of local standard time; one that the series covers only in part
 * counts nowhere. Means leave out what is missing.
 *
 * @param months the months that have a whole day, January first; several years of one month are one row
 * @param hottestWeek the seven days on end with the highest mean of daily highs; empty when there are no seven
 */
public record WeatherSummary(List<Month> months, Optional<Week> hottestWeek) {
    private static final int WEEK = 7;

    public WeatherSummary {
        months = List.copyOf(months);
    }

    /**
     * Means of one calendar month.
     *
     * @param month 1 to 12
     * @param days whole days of it in the series
     * @param ghiKwhM2 global horizontal irradiation of a day
     * @param maxC highest air temperature of a day
     * @param minC lowest air temperature of a day
     * @param windMs wind speed
     */
    public record Month(int month, int days, double ghiKwhM2, double maxC, double minC, double windMs) {}

    /**
     * Seven days on end.
     *
     * @param firstDay its year is {@link WeatherSeries#NOMINAL_YEAR} in a typical year
     * @param firstRow first interval of the first day in the series
     * @param maxC mean of the daily highs
     * @param ghiKwhM2 mean global horizontal irradiation of a day
     */
    public record Week(LocalDate firstDay, int firstRow, double maxC, double ghiKwhM2) {}

    public static WeatherSummary of(WeatherSeries series) {
        List<WeatherDay> days = WeatherDay.of(series);
        return new WeatherSummary(months(days), hottestWeek(days));
    }

    private static List<Month> months(List<WeatherDay> days) {
        List<Month> months = new ArrayList<>();
        for (int number = 1; number <= 12; number++) {
            int month = number;
            List<WeatherDay> in =
                    days.stream().filter(d -> d.date().getMonthValue() == month).toList();
            if (!in.isEmpty()) {
                months.add(new Month(
                        month,
                        in.size(),
                        in.stream().mapToDouble(WeatherDay::ghiKwhM2).average().orElseThrow(),
                        in.stream().mapToDouble(WeatherDay::maxC).average().orElseThrow(),
                        in.stream().mapToDouble(WeatherDay::minC).average().orElseThrow(),
                        in.stream().mapToDouble(WeatherDay::windMs).average().orElseThrow()));
            }
        }
        return months;
    }

    private static Optional<Week> hottestWeek(List<WeatherDay> days) {
        Optional<Week> hottest = Optional.empty();
        for (int first = 0; first + WEEK <= days.size(); first++) {
            List<WeatherDay> week = days.subList(first, first + WEEK);
            double maxC = week.stream().mapToDouble(WeatherDay::maxC).average().orElseThrow();
            if (hottest.isEmpty() || maxC > hottest.get().maxC()) {
                double ghi = week.stream()
                        .mapToDouble(WeatherDay::ghiKwhM2)
                        .average()
                        .orElseThrow();
                hottest = Optional.of(new Week(week.get(0).date(), week.get(0).firstRow(), maxC, ghi));
            }
        }
        return hottest;
    }
}
