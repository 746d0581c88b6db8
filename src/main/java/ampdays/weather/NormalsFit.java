package ampdays.weather;

import ampdays.weather.MonthlyNormals.DaySpread;
import ampdays.weather.MonthlyNormals.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * The monthly normals of a weather series, and how far its days lie from them. Several years of one month count together.
 *
 * <p>Spreads are those about a straight line through the days of each single month. Days that remember each other stray less
 * from such a line than their spread; so the sum of squares is divided by {@code n − Σ u'Ru} over the two unit vectors u of
 * the line, with the correlations {@code R = memory^|i−j|} of {@link DayMemory}, which makes it right in the mean (ours).
 * Test: {@code NormalsFitTest}.
 */
public final class NormalsFit {
    /** Whole days that every month must have. */
    public static final int LEAST_DAYS = 20;

    private static final DayMemory MEMORY = DayMemory.usual();

    private NormalsFit() {}

    /** A day and its light over that outside the atmosphere; not a number without sun. */
    private record ClearDay(WeatherDay day, double clearness) {}

    /**
     * Normals of a series with light in all rows.
     *
     * @param sunHeight mean of {@code max(cos z, 0)} in each interval
     * @param extraterrestrialWm2 normal irradiance outside the atmosphere in each interval
     * @throws IllegalArgumentException when a month has fewer than {@link #LEAST_DAYS} whole days
     */
    public static MonthlyNormals of(WeatherSeries series, double[] sunHeight, double[] extraterrestrialWm2) {
        int perDay = WeatherSeries.DAY_SECONDS / series.info().stepSeconds();
        Map<Integer, Map<YearMonth, List<ClearDay>>> months = new TreeMap<>();
        for (WeatherDay day : WeatherDay.of(series)) {
            double outsideW = 0;
            for (int row = day.firstRow(); row < day.firstRow() + perDay; row++) {
                outsideW += sunHeight[row] * extraterrestrialWm2[row];
            }
            months.computeIfAbsent(day.date().getMonthValue(), m -> new TreeMap<>())
                    .computeIfAbsent(YearMonth.from(day.date()), m -> new ArrayList<>())
                    .add(new ClearDay(day, day.ghiKwhM2() * 1000 / (outsideW / perDay * 24)));
        }
        refuseShortMonths(series.source(), months);
        SeriesInfo info = series.info();
        return new MonthlyNormals(
                info.source(),
                info.latitudeDeg(),
                info.longitudeDeg(),
                info.elevationM(),
                info.utcOffsetHours(),
                months.values().stream().map(years -> month(years.values())).toList());
    }

    private static void refuseShortMonths(String source, Map<Integer, Map<YearMonth, List<ClearDay>>> months) {
        List<String> shorts = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            int days = months.getOrDefault(month, Map.of()).values().stream()
                    .mapToInt(List::size)
                    .sum();
            if (days < LEAST_DAYS) {
                shorts.add(java.time.Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH));
            }
        }
        if (!shorts.isEmpty()) {
            throw new IllegalArgumentException(
                    "The weather of " + source + " has fewer than " + LEAST_DAYS + " whole days in "
                            + String.join(", ", shorts) + "; monthly normals need that many of every month.");
        }
    }

    private static Month month(Collection<List<ClearDay>> years) {
        List<ClearDay> days = years.stream().flatMap(List::stream).toList();
        DaySpread spread = new DaySpread(
                spread(years, ClearDay::clearness, DayMemory.CLEARNESS),
                spread(years, d -> d.day.maxC(), DayMemory.HIGH),
                spread(years, d -> d.day.minC(), DayMemory.LOW),
                spread(years, d -> d.day.dewPointC(), DayMemory.DEW_POINT));
        return new Month(
                mean(days, WeatherDay::ghiKwhM2),
                mean(days, WeatherDay::maxC),
                mean(days, WeatherDay::minC),
                mean(days, WeatherDay::windMs),
                mean(days, WeatherDay::dewPointC),
                Optional.of(spread));
    }

    private static double mean(List<ClearDay> days, ToDoubleFunction<WeatherDay> value) {
        return days.stream().collect(Collectors.averagingDouble(d -> value.applyAsDouble(d.day)));
    }

    private static double spread(Collection<List<ClearDay>> years, ToDoubleFunction<ClearDay> value, int quantity) {
        double squares = 0;
        double free = 0;
        for (List<ClearDay> days : years) {
            SimpleRegression line = new SimpleRegression();
            for (int i = 0; i < days.size(); i++) {
                double y = value.applyAsDouble(days.get(i));
                line.addData(i, Double.isFinite(y) ? y : 0);
            }
            if (days.size() >= LEAST_DAYS) {
                squares += line.getSumSquaredErrors();
                free += days.size() - boundByTheLine(days.size(), MEMORY.withTheDayBefore(quantity, quantity));
            }
        }
        return free > 0 ? StrictMath.sqrt(Math.max(0, squares) / free) : 0;
    }

    /** The part of n days' squares that a fitted line takes away, in units of their variance. */
    static double boundByTheLine(int n, double memory) {
        double middle = (n - 1) / 2.0;
        double squares = n * ((double) n * n - 1) / 12;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double both = 1.0 / n + (i - middle) * (j - middle) / squares;
                sum += both * StrictMath.pow(memory, Math.abs(i - j));
            }
        }
        return sum;
    }
}
