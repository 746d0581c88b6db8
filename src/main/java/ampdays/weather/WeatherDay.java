package ampdays.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What a whole calendar day of local standard time brought. Light that is missing counts as none.
 *
 * @param date its year is {@link WeatherSeries#NOMINAL_YEAR} in a typical year
 * @param firstRow its first interval in the series
 * @param ghiKwhM2 global horizontal irradiation
 * @param maxC highest air temperature of its rows
 * @param minC lowest air temperature of its rows
 * @param windMs mean wind speed
 * @param dewPointC mean dew point
 */
record WeatherDay(
        LocalDate date, int firstRow, double ghiKwhM2, double maxC, double minC, double windMs, double dewPointC) {

    /** The days that a series covers from midnight to midnight. */
    static List<WeatherDay> of(WeatherSeries series) {
        int perDay = WeatherSeries.DAY_SECONDS / series.info().stepSeconds();
        List<WeatherDay> days = new ArrayList<>();
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

    private static WeatherDay day(WeatherSeries series, LocalDate date, int first, int rows) {
        double ghi = 0;
        double wind = 0;
        double dewPoint = 0;
        double max = Double.NEGATIVE_INFINITY;
        double min = Double.POSITIVE_INFINITY;
        for (int row = first; row < first + rows; row++) {
            ghi += Double.isNaN(series.ghiWm2(row)) ? 0 : series.ghiWm2(row);
            wind += series.windMs(row);
            dewPoint += series.dewPointC(row);
            max = Math.max(max, series.airC(row));
            min = Math.min(min, series.airC(row));
        }
        return new WeatherDay(date, first, ghi / rows * 24 / 1000, max, min, wind / rows, dewPoint / rows);
    }
}
