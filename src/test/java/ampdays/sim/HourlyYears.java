package ampdays.sim;

import ampdays.weather.WeatherSeries;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.ranking.NaturalRanking;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/** The days of hourly years that begin on 1 January, for statistics of them. */
final class HourlyYears {
    /** One day; clearness is its light over that outside the atmosphere. */
    record Day(
            int year,
            int month,
            double clearness,
            double highC,
            double lowC,
            double dewPointC,
            double windMs,
            double ghiKwhM2,
            double dhiKwhM2) {}

    private final List<Day> days = new ArrayList<>();
    private int years;

    void add(WeatherSeries year, IntervalSun sun) {
        for (int day = 0; day < 365; day++) {
            double outside = 0;
            double ghi = 0;
            double dhi = 0;
            double dew = 0;
            double wind = 0;
            double high = -100;
            double low = 100;
            for (int row = 24 * day; row < 24 * day + 24; row++) {
                outside += sun.height(row) * sun.extraterrestrialWm2(row);
                ghi += year.ghiWm2(row);
                dhi += year.dhiWm2(row);
                dew += year.dewPointC(row) / 24;
                wind += year.windMs(row) / 24;
                high = Math.max(high, year.airC(row));
                low = Math.min(low, year.airC(row));
            }
            int month = LocalDate.ofYearDay(WeatherSeries.NOMINAL_YEAR, day + 1).getMonthValue();
            days.add(new Day(years, month, ghi / outside, high, low, dew, wind, ghi / 1000, dhi / 1000));
        }
        years++;
    }

    List<Day> days() {
        return days;
    }

    double[] ofMonth(int month, ToDoubleFunction<Day> value) {
        return days.stream().filter(d -> d.month == month).mapToDouble(value).toArray();
    }

    double mean(int month, ToDoubleFunction<Day> value) {
        return days.stream()
                .filter(d -> d.month == month)
                .mapToDouble(value)
                .average()
                .orElseThrow();
    }

    /** What is left of each day after a straight line through its month of its year, over the standard deviation of that. */
    double[] departures(ToDoubleFunction<Day> value) {
        double[] left = new double[days.size()];
        for (int from = 0; from < left.length; ) {
            int to = from;
            SimpleRegression line = new SimpleRegression();
            while (to < left.length && days.get(to).month == days.get(from).month) {
                line.addData(to, value.applyAsDouble(days.get(to)));
                to++;
            }
            double spread = Math.sqrt(line.getSumSquaredErrors() / (to - from));
            for (int i = from; i < to; i++) {
                left[i] = (value.applyAsDouble(days.get(i)) - line.predict(i)) / spread;
            }
            from = to;
        }
        return left;
    }

    /** Each day less the mean of its date over all years. */
    double[] departuresFromDates(ToDoubleFunction<Day> value) {
        double[] means = new double[365];
        for (int i = 0; i < days.size(); i++) {
            means[i % 365] += value.applyAsDouble(days.get(i)) / years;
        }
        double[] left = new double[days.size()];
        Arrays.setAll(left, i -> value.applyAsDouble(days.get(i)) - means[i % 365]);
        return left;
    }

    /** Each day's clearness by its rank among all days of its month, as a normal variate. */
    double[] clearnessScores() {
        double[] scores = new double[days.size()];
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        for (int month = 1; month <= 12; month++) {
            double[] ranks = new NaturalRanking().rank(ofMonth(month, Day::clearness));
            int next = 0;
            for (int i = 0; i < scores.length; i++) {
                if (days.get(i).month == month) {
                    scores[i] = normal.inverseCumulativeProbability((ranks[next] - 0.5) / ranks.length);
                    next++;
                }
            }
        }
        return scores;
    }

    /** Correlation of today's first values with the day before's second, within months. */
    double withTheDayBefore(double[] today, double[] yesterday) {
        List<double[]> pairs = new ArrayList<>();
        for (int i = 1; i < days.size(); i++) {
            if (days.get(i).month == days.get(i - 1).month) {
                pairs.add(new double[] {today[i], yesterday[i - 1]});
            }
        }
        return new PearsonsCorrelation(pairs.toArray(double[][]::new))
                .getCorrelationMatrix()
                .getEntry(0, 1);
    }

    static double onOneDay(double[] a, double[] b) {
        return new PearsonsCorrelation().correlation(a, b);
    }

    /** Clearness less the mean of its month, over the standard deviation of its month. */
    double[] standardClearness() {
        return IntStream.rangeClosed(1, 12)
                .mapToObj(month -> ofMonth(month, Day::clearness))
                .flatMapToDouble(clear -> Arrays.stream(StatUtils.normalize(clear)))
                .toArray();
    }
}
