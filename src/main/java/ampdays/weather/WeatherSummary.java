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
     * @param maxC mean of the daily highs
     * @param ghiKwhM2 mean global horizontal irradiation of a day
     */
    public record Week(LocalDate firstDay, double maxC, double ghiKwhM2) {}

    private record Day(LocalDate date, double ghiKwhM2, double maxC, double minC, double windMs) {}

    public static WeatherSummary of(WeatherSeries series) {
        List<Day> days = days(series);
        return new WeatherSummary(months(days), hottestWeek(days));
    }

    private static List<Day> days(WeatherSeries series) {
        int perDay = WeatherSeries.DAY_SECONDS / series.info().stepSeconds();
        List<Day> days = new ArrayList<>();
        int row = 0;
        while (row + perDay <= series.size()) {
            LocalDate date = series.localStart(row).toLocalDate();
            boolean whole = date.equals(series.localStart(row + perDay - 1).toLocalDate());
            if (whole) {
                days.add(day(series, date, row, perDay));
            }
            row += whole ? perDay : 1;
        }
        return days;
    }

    private static Day day(WeatherSeries series, LocalDate date, int first, int rows) {
        double ghi = 0;
        double wind = 0;
        double max = Double.NEGATIVE_INFINITY;
        double min = Double.POSITIVE_INFINITY;
        for (int row = first; row < first + rows; row++) {
            ghi += Double.isNaN(series.ghiWm2(row)) ? 0 : series.ghiWm2(row);
            wind += series.windMs(row);
            max = Math.max(max, series.airC(row));
            min = Math.min(min, series.airC(row));
        }
        return new Day(date, ghi / rows * 24 / 1000, max, min, wind / rows);
    }

    private static List<Month> months(List<Day> days) {
        List<Month> months = new ArrayList<>();
        for (int number = 1; number <= 12; number++) {
            int month = number;
            List<Day> in =
                    days.stream().filter(d -> d.date.getMonthValue() == month).toList();
            if (!in.isEmpty()) {
                months.add(new Month(
                        month,
                        in.size(),
                        in.stream().mapToDouble(Day::ghiKwhM2).average().orElseThrow(),
                        in.stream().mapToDouble(Day::maxC).average().orElseThrow(),
                        in.stream().mapToDouble(Day::minC).average().orElseThrow(),
                        in.stream().mapToDouble(Day::windMs).average().orElseThrow()));
            }
        }
        return months;
    }

    private static Optional<Week> hottestWeek(List<Day> days) {
        Optional<Week> hottest = Optional.empty();
        for (int first = 0; first + WEEK <= days.size(); first++) {
            List<Day> week = days.subList(first, first + WEEK);
            double maxC = week.stream().mapToDouble(Day::maxC).average().orElseThrow();
            if (hottest.isEmpty() || maxC > hottest.get().maxC()) {
                double ghi = week.stream().mapToDouble(Day::ghiKwhM2).average().orElseThrow();
                hottest = Optional.of(new Week(week.get(0).date, maxC, ghi));
            }
        }
        return hottest;
    }
}
