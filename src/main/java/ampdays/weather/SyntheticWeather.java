package ampdays.weather;

import ampdays.weather.MonthlyNormals.DaySpread;
import ampdays.weather.MonthlyNormals.Month;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.special.Erf;

/**
 * Invents years of hourly weather that return given monthly normals in the long run. The same seed gives the same year.
 *
 * <p>Departures of the high, the low, the clearness and the dew point hang together and remember the day before ({@link
 * DayMemory}); clearness is spread as in {@link ClearnessSpread}; clouds within the day follow {@link HourlyClearness}, and
 * temperature and dew point {@link SyntheticDays}. Wind is strongest at 15 h (by 35 %, guess); its days spread by 31 % and
 * remember by 0.44 (means over three open typical years). The highest and lowest hour of a day are not quite those that were
 * aimed at, since a cold night may begin before midnight and the dew point cannot exceed the temperature; pilot years tell by
 * how much, and the aim is moved. Leaves out fronts that turn the course of a day, storms, rain, and what makes one year
 * differ from the next beyond the scatter of its days. Test: {@code SyntheticYearsTest}.
 */
public final class SyntheticWeather {
    /** Hours of the year that is made. */
    public static final int HOURS = 8760;

    /** Where the normals do not say: means over three open typical years. The clearness is that of the paper. */
    private static final DaySpread USUAL_SPREAD = new DaySpread(DaySpread.MOST_CLEARNESS, 3.1, 2.9, 4.4);

    private static final double WIND_MEMORY = 0.44;
    private static final double WIND_BY_DAY = 0.31;
    private static final double WIND_BY_HOUR = 0.35;
    private static final double WINDIEST_HOUR = 15;
    private static final int PILOT_YEARS = 40;
    private static final int PILOT_ROUNDS = 3;

    private final MonthlyNormals normals;
    private final double[] sunHeight;
    private final double[] extraterrestrialWm2;
    private final double pressurePa;
    private final DayMemory memory = DayMemory.usual();
    private final ClearnessSpread[] clearness = new ClearnessSpread[12];
    private final double[] usualWindMs;
    private final SyntheticDays.Usual usual;

    /**
     * Prepares what all years of a place share.
     *
     * @param sunHeight mean of {@code max(cos z, 0)} in each hour of {@link #info}
     * @param extraterrestrialWm2 normal irradiance outside the atmosphere in each hour
     * @param pressurePa air pressure, the same in all hours
     * @throws IllegalArgumentException when a month has more or less light than the sun can give
     */
    public SyntheticWeather(
            MonthlyNormals normals, double[] sunHeight, double[] extraterrestrialWm2, double pressurePa) {
        if (sunHeight.length != HOURS || extraterrestrialWm2.length != HOURS) {
            throw new IllegalArgumentException("The sun over a synthetic year has " + HOURS + " hours, not "
                    + sunHeight.length + " and " + extraterrestrialWm2.length + ".");
        }
        this.normals = normals;
        this.sunHeight = sunHeight.clone();
        this.extraterrestrialWm2 = extraterrestrialWm2.clone();
        this.pressurePa = pressurePa;
        Arrays.setAll(clearness, this::clearnessOf);
        usualWindMs = DailyNormals.of(monthly(Month::windMs));
        usual = usual();
    }

    /** Where and when the years lie, so that the sun can be followed through one before it is made. */
    public static SeriesInfo info(MonthlyNormals normals, String note) {
        return new SeriesInfo(
                normals.title(),
                normals.latitudeDeg(),
                normals.longitudeDeg(),
                normals.elevationM(),
                normals.utcOffsetHours(),
                DailyNormals.date(0).atStartOfDay().toEpochSecond(ZoneOffset.UTC)
                        - Math.round(normals.utcOffsetHours() * 3600),
                3600,
                true,
                0,
                List.of(note));
    }

    /** Makes a year. Beam and diffuse light are left missing. */
    public WeatherSeries year(long seed) {
        Gaussians gaussians = new Gaussians(seed);
        double[][] departures = departures(gaussians);
        SyntheticDays days = new SyntheticDays(usual, departures);
        double[] ghiWm2 = new double[HOURS];
        double[] airC = new double[HOURS];
        double[] dewPointC = new double[HOURS];
        double[] windMs = new double[HOURS];
        double windy = gaussians.next();
        for (int day = 0; day < DailyNormals.DAYS; day++) {
            double below = (1 + Erf.erf(departures[day][DayMemory.CLEARNESS] / StrictMath.sqrt(2))) / 2;
            double clear = clearness[DailyNormals.monthOf(day)].quantile(below);
            HourlyClearness.draw(clear, sunHeight, extraterrestrialWm2, 24 * day, gaussians, ghiWm2);
            windy = gaussians.after(windy, WIND_MEMORY);
            double dayMs = usualWindMs[day] * StrictMath.exp(WIND_BY_DAY * windy - WIND_BY_DAY * WIND_BY_DAY / 2);
            for (int h = 0; h < 24; h++) {
                airC[24 * day + h] = days.airC(day, h);
                dewPointC[24 * day + h] = days.dewPointC(day, h);
                windMs[24 * day + h] =
                        dayMs * (1 + WIND_BY_HOUR * StrictMath.cos((h - WINDIEST_HOUR) / 24 * 2 * Math.PI));
            }
        }
        double[] unknown = new double[HOURS];
        Arrays.fill(unknown, Double.NaN);
        double[] pressures = new double[HOURS];
        Arrays.fill(pressures, pressurePa);
        SeriesInfo info = info(normals, "invented from monthly normals, seed " + seed);
        return WeatherSeries.of(info, ghiWm2, unknown, unknown, airC, dewPointC, windMs, pressures);
    }

    private double[][] departures(Gaussians gaussians) {
        double[][] departures = new double[DailyNormals.DAYS][];
        departures[0] = memory.first(gaussians);
        for (int day = 1; day < departures.length; day++) {
            departures[day] = memory.next(departures[day - 1], gaussians);
        }
        return departures;
    }

    /** What is usual, moved until pilot years return the normals. */
    private SyntheticDays.Usual usual() {
        DaySpread[] spreads = new DaySpread[12];
        Arrays.setAll(spreads, m -> normals.months().get(m).spread().orElse(USUAL_SPREAD));
        double[] maxC = monthly(Month::maxC);
        double[] minC = monthly(Month::minC);
        double[] dewPointC = monthly(Month::dewPointC);
        SyntheticDays.Usual moved = new SyntheticDays.Usual(maxC, minC, dewPointC, spreads, sunHeight);
        for (int round = 0; round < PILOT_ROUNDS; round++) {
            double[][] strayedK = new double[3][12];
            for (int seed = 0; seed < PILOT_YEARS; seed++) {
                new SyntheticDays(moved, departures(new Gaussians(seed))).addStrayedK(strayedK, PILOT_YEARS);
            }
            moved = new SyntheticDays.Usual(
                    difference(maxC, strayedK[0]),
                    difference(minC, strayedK[1]),
                    difference(dewPointC, strayedK[2]),
                    spreads,
                    sunHeight);
        }
        return moved;
    }

    private static double[] difference(double[] a, double[] b) {
        double[] difference = new double[a.length];
        Arrays.setAll(difference, i -> a[i] - b[i]);
        return difference;
    }

    private double[] monthly(ToDoubleFunction<Month> normal) {
        return normals.months().stream().mapToDouble(normal).toArray();
    }

    private ClearnessSpread clearnessOf(int month) {
        double outsideWh = 0;
        int days = 0;
        for (int hour = 0; hour < HOURS; hour++) {
            if (DailyNormals.monthOf(hour / 24) == month) {
                outsideWh += sunHeight[hour] * extraterrestrialWm2[hour];
                days += hour % 24 == 0 ? 1 : 0;
            }
        }
        Month normal = normals.months().get(month);
        double lightWh = normal.ghiKwhM2() * 1000 * days;
        if (outsideWh == 0 && lightWh == 0) {
            return ClearnessSpread.around(0.5);
        }
        try {
            ClearnessSpread ofThePaper = ClearnessSpread.around(lightWh / outsideWh);
            return normal.spread()
                    .map(s -> ofThePaper.narrowedTo(s.clearness()))
                    .orElse(ofThePaper);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "month " + (month + 1) + " has " + normal.ghiKwhM2() + " kWh/m² of sun a day. " + e.getMessage()
                            + " Check the unit, and latitude and longitude.",
                    e);
        }
    }
}
