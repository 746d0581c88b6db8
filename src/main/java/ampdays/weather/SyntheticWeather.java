package ampdays.weather;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.apache.commons.math3.special.Erf;

/**
 * Invents one year of hourly weather that has the given monthly normals in the long run. The same seed gives the same year.
 *
 * <p>A simple generator: the clearness of each day is drawn from the spread of {@link ClearnessSpread} with a memory of the
 * day before (correlation 0.29: V. A. Graham, K. G. T. Hollands and T. E. Unny, 1988, A time series model for Kt with
 * application to global synthetic weather generation, Solar Energy 40, 83; value from memory); the day's light follows the
 * clear-sky shape of Haurwitz (1945); temperature swings between the day's extremes by half cosines, and its departures from
 * normal last some days (correlation 0.65, 2.2 K), a clear day being hotter at noon and cooler at dawn; dew point departs
 * likewise (0.7, 3 K); wind varies by day and hour. The numbers for temperature, dew point and wind are guesses fitted by eye
 * to a typical desert year. Leaves out clouds within the day, fronts, storms and rain. Test: {@code SyntheticYearTest}.
 */
public final class SyntheticWeather {
    /** Hours of the year that is made. */
    public static final int HOURS = 8760;

    private static final int DAYS = 365;
    private static final double CLEARNESS_MEMORY = 0.29;
    private static final double AIR_MEMORY = 0.65;
    private static final double AIR_SPREAD_K = 2.2;
    private static final double NOON_PER_CLEARNESS_K = 0.8;
    private static final double DAWN_PER_CLEARNESS_K = -0.5;
    private static final double DEW_POINT_MEMORY = 0.7;
    private static final double DEW_POINT_SPREAD_K = 3;
    private static final double WIND_BY_DAY = 0.35;
    private static final double WIND_BY_HOUR = 0.35;
    private static final double WINDIEST_HOUR = 15;
    private static final double HOURS_NOON_TO_HOTTEST = 3;
    /** Guards against a dawn warmer than the noon before it. */
    private static final double LEAST_SWING_K = 1;

    private final MonthlyNormals normals;
    private final double[] sunHeight;
    private final double[] extraterrestrialWm2;
    private final RandomGenerator random;
    private final double[] ghiWm2 = new double[HOURS];
    private final double[] maxC = new double[DAYS];
    private final double[] minC = new double[DAYS];
    private final double[] dewPointC = new double[HOURS];
    private final double[] windMs = new double[HOURS];

    private SyntheticWeather(
            MonthlyNormals normals, double[] sunHeight, double[] extraterrestrialWm2, RandomGenerator random) {
        this.normals = normals;
        this.sunHeight = sunHeight.clone();
        this.extraterrestrialWm2 = extraterrestrialWm2.clone();
        this.random = random;
    }

    /** Where and when the year lies, so that the sun can be followed through it before it is made. */
    public static SeriesInfo info(MonthlyNormals normals, long seed) {
        LocalDateTime start = LocalDate.of(WeatherSeries.NOMINAL_YEAR, 1, 1).atStartOfDay();
        return new SeriesInfo(
                normals.title(),
                normals.latitudeDeg(),
                normals.longitudeDeg(),
                normals.elevationM(),
                normals.utcOffsetHours(),
                start.toEpochSecond(ZoneOffset.UTC) - Math.round(normals.utcOffsetHours() * 3600),
                3600,
                true,
                0,
                List.of("invented from monthly normals, seed " + seed));
    }

    /**
     * Makes a year. Beam and diffuse light are left missing.
     *
     * @param sunHeight mean of {@code max(cos z, 0)} in each hour of {@link #info}
     * @param extraterrestrialWm2 normal irradiance outside the atmosphere in each hour
     * @param pressurePa air pressure, the same in all hours
     */
    public static WeatherSeries make(
            MonthlyNormals normals, double[] sunHeight, double[] extraterrestrialWm2, double pressurePa, long seed) {
        if (sunHeight.length != HOURS || extraterrestrialWm2.length != HOURS) {
            throw new IllegalArgumentException("The sun over a synthetic year has " + HOURS + " hours, not "
                    + sunHeight.length + " and " + extraterrestrialWm2.length + ".");
        }
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        return new SyntheticWeather(normals, sunHeight, extraterrestrialWm2, random)
                .year(info(normals, seed), pressurePa);
    }

    private WeatherSeries year(SeriesInfo info, double pressurePa) {
        drawDays();
        double[] airC = new double[HOURS];
        for (int hour = 0; hour < HOURS; hour++) {
            airC[hour] = airC(hour / 24, hour % 24);
            dewPointC[hour] = dewPointC[hour] < airC[hour] ? dewPointC[hour] : airC[hour];
        }
        double[] unknown = new double[HOURS];
        Arrays.fill(unknown, Double.NaN);
        double[] pressures = new double[HOURS];
        Arrays.fill(pressures, pressurePa);
        return WeatherSeries.of(info, ghiWm2, unknown, unknown, airC, dewPointC, windMs, pressures);
    }

    private void drawDays() {
        double[] normalMaxC = byDay(MonthlyNormals.Month::maxC);
        double[] normalMinC = byDay(MonthlyNormals.Month::minC);
        double[] normalDewC = byDay(MonthlyNormals.Month::dewPointC);
        double[] normalWindMs = byDay(MonthlyNormals.Month::windMs);
        ClearnessSpread[] spreads = new ClearnessSpread[12];
        Arrays.setAll(spreads, month -> ClearnessSpread.around(meanClearness(month)));
        double clear = gaussian();
        double air = gaussian();
        double dew = gaussian();
        for (int day = 0; day < DAYS; day++) {
            clear = remember(clear, CLEARNESS_MEMORY);
            air = remember(air, AIR_MEMORY);
            dew = remember(dew, DEW_POINT_MEMORY);
            double below = (1 + Erf.erf(clear / StrictMath.sqrt(2))) / 2;
            light(day, spreads[monthOf(day)].quantile(below) * outsideWh(day));
            double departureK = air * AIR_SPREAD_K;
            minC[day] = normalMinC[day] + departureK + clear * DAWN_PER_CLEARNESS_K;
            double hottestC = normalMaxC[day] + departureK + clear * NOON_PER_CLEARNESS_K;
            maxC[day] = hottestC > minC[day] + LEAST_SWING_K ? hottestC : minC[day] + LEAST_SWING_K;
            double windFactor = StrictMath.exp(WIND_BY_DAY * gaussian() - WIND_BY_DAY * WIND_BY_DAY / 2);
            for (int h = 0; h < 24; h++) {
                double byHour = 1 + WIND_BY_HOUR * StrictMath.cos((h - WINDIEST_HOUR) / 24 * 2 * Math.PI);
                windMs[24 * day + h] = normalWindMs[day] * windFactor * byHour;
                dewPointC[24 * day + h] = normalDewC[day] + dew * DEW_POINT_SPREAD_K;
            }
        }
    }

    /** The next value of a normal series of mean 0 and spread 1 that remembers the last. */
    private double remember(double last, double memory) {
        return memory * last + StrictMath.sqrt(1 - memory * memory) * gaussian();
    }

    /** A normal variate by the transformation of Box and Muller (1958), the same bytes on every machine. */
    private double gaussian() {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()));
        return radius * StrictMath.cos(2 * Math.PI * random.nextDouble());
    }

    private void light(int day, double energyWh) {
        double sum = 0;
        for (int hour = 24 * day; hour < 24 * (day + 1); hour++) {
            ghiWm2[hour] = sunHeight[hour] > 0 ? sunHeight[hour] * StrictMath.exp(-0.059 / sunHeight[hour]) : 0;
            sum += ghiWm2[hour];
        }
        for (int hour = 24 * day; hour < 24 * (day + 1) && sum > 0; hour++) {
            ghiWm2[hour] *= energyWh / sum;
        }
    }

    private double outsideWh(int day) {
        double sum = 0;
        for (int hour = 24 * day; hour < 24 * (day + 1); hour++) {
            sum += sunHeight[hour] * extraterrestrialWm2[hour];
        }
        return sum;
    }

    private double meanClearness(int month) {
        double outsideWh = 0;
        int days = 0;
        for (int day = 0; day < DAYS; day++) {
            if (monthOf(day) == month) {
                outsideWh += outsideWh(day);
                days++;
            }
        }
        return normals.months().get(month).ghiKwhM2() * 1000 * days / outsideWh;
    }

    private static int monthOf(int day) {
        return LocalDate.ofYearDay(WeatherSeries.NOMINAL_YEAR, day + 1).getMonthValue() - 1;
    }

    /** A normal for each day: straight lines between mid-months, which are moved until each month's mean is right. */
    private double[] byDay(ToDoubleFunction<MonthlyNormals.Month> normal) {
        double[] wanted = normals.months().stream().mapToDouble(normal).toArray();
        double[] middle = wanted.clone();
        double[] days = new double[DAYS];
        for (int round = 0; round < 20; round++) {
            double[] sum = new double[12];
            int[] count = new int[12];
            for (int day = 0; day < DAYS; day++) {
                LocalDate date = LocalDate.ofYearDay(WeatherSeries.NOMINAL_YEAR, day + 1);
                int month = date.getMonthValue() - 1;
                double fromMiddle = (date.getDayOfMonth() - 0.5) / date.lengthOfMonth() - 0.5;
                int other = (month + (fromMiddle < 0 ? 11 : 1)) % 12;
                days[day] = middle[month] + Math.abs(fromMiddle) * (middle[other] - middle[month]);
                sum[month] += days[day];
                count[month]++;
            }
            for (int month = 0; month < 12; month++) {
                middle[month] += wanted[month] - sum[month] / count[month];
            }
        }
        return days;
    }

    /** Temperature at a full hour: rising from dawn to the hottest hour, then falling to the next dawn. */
    private double airC(int day, int hour) {
        double dawn = dawn(day);
        double hottest = hottest(day);
        if (hour < dawn) {
            int before = (day + DAYS - 1) % DAYS;
            double sinceHottest = hour + 24 - hottest(before);
            return between(maxC[before], minC[day], sinceHottest / (dawn + 24 - hottest(before)));
        }
        if (hour < hottest) {
            return between(minC[day], maxC[day], (hour - dawn) / (hottest - dawn));
        }
        int next = (day + 1) % DAYS;
        return between(maxC[day], minC[next], (hour - hottest) / (dawn(next) + 24 - hottest));
    }

    private static double between(double from, double to, double share) {
        return from + (to - from) * (1 - StrictMath.cos(Math.PI * share)) / 2;
    }

    private double hottest(int day) {
        return noon(day) + HOURS_NOON_TO_HOTTEST;
    }

    /** First light; six hours before noon where the sun does not set or rise. */
    private double dawn(int day) {
        int light = 0;
        for (int h = 0; h < 24; h++) {
            light += sunHeight[24 * day + h] > 0 ? 1 : 0;
        }
        return noon(day) - (light > 4 && light < 20 ? light / 2.0 : 6);
    }

    private double noon(int day) {
        double sum = 0;
        double moment = 0;
        for (int h = 0; h < 24; h++) {
            sum += sunHeight[24 * day + h];
            moment += sunHeight[24 * day + h] * (h + 0.5);
        }
        double noon = sum > 0 ? moment / sum : 12;
        return noon < 10 ? 10 : noon > 15 ? 15 : noon;
    }
}
