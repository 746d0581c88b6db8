package ampdays.weather;

import java.time.LocalDate;

/** What is usual on each day of the nominal year, from monthly means. */
final class DailyNormals {
    static final int DAYS = 365;

    private static final int ROUNDS = 20;

    private DailyNormals() {}

    /** Month of a day of the year, 0 January. */
    static int monthOf(int day) {
        return date(day).getMonthValue() - 1;
    }

    static LocalDate date(int day) {
        return LocalDate.ofYearDay(WeatherSeries.NOMINAL_YEAR, day + 1);
    }

    /** A value for each day: straight lines between mid-months, which are moved until each month's mean is right. */
    static double[] of(double[] wanted) {
        double[] middle = wanted.clone();
        double[] days = new double[DAYS];
        for (int round = 0; round < ROUNDS; round++) {
            double[] sum = new double[12];
            for (int day = 0; day < DAYS; day++) {
                LocalDate date = date(day);
                int month = date.getMonthValue() - 1;
                double fromMiddle = (date.getDayOfMonth() - 0.5) / date.lengthOfMonth() - 0.5;
                int other = (month + (fromMiddle < 0 ? 11 : 1)) % 12;
                days[day] = middle[month] + Math.abs(fromMiddle) * (middle[other] - middle[month]);
                sum[month] += days[day] / date.lengthOfMonth();
            }
            for (int month = 0; month < 12; month++) {
                middle[month] += wanted[month] - sum[month];
            }
        }
        return days;
    }
}
