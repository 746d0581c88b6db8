package ampdays.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import ampdays.sun.SunPath;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The method is ours; what is checked needs no outside source: energy is conserved, global light is the sum of its parts,
 * nothing is brighter than the sun outside the atmosphere (I0 is checked in the tests of {@code sun}), a straight line is
 * straight. Tolerance 1e-9 of the energy: rounding of a few thousand additions of doubles stays far below.
 */
class MinuteWeatherTest {
    private static final int HOUR = 3600;
    private static final int OFFSET_HOURS = -7;

    @ParameterizedTest
    @ValueSource(ints = {10, 30, 60, 300})
    void energyOfEachIntervalIsKept(int stepSeconds) {
        Random random = new Random(stepSeconds);
        WeatherSeries series = randomLight(random, 48, HOUR);
        MinuteWeather minutes = laid(series, series.info().startEpochSecond(), stepSeconds, 48 * HOUR / stepSeconds);
        int perHour = HOUR / stepSeconds;
        for (int row = 0; row < series.size(); row++) {
            double joules = 0;
            for (int i = row * perHour; i < (row + 1) * perHour; i++) {
                joules += minutes.ghiWm2(i) * stepSeconds;
            }
            double wanted = series.ghiWm2(row) * HOUR;
            assertThat(joules).as("hour " + row).isCloseTo(wanted, within(1e-9 * wanted + 1e-12));
        }
    }

    /** Trips that begin anywhere in an interval, steps that straddle two intervals, intervals of any length. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void whateverTheLightTheSumsHold(long seed) {
        Random random = new Random(seed);
        int interval = new int[] {600, 900, 1800, HOUR, 3 * HOUR}[random.nextInt(5)];
        int stepSeconds = new int[] {10, 30, 60, 120, 300}[random.nextInt(5)];
        WeatherSeries series = randomLight(random, 3 * 86_400 / interval, interval);
        long start = series.info().startEpochSecond() + random.nextInt(86_400);
        int steps = (86_400 + random.nextInt(40_000)) / stepSeconds;
        SunPath sun = sun(series, start, stepSeconds, steps);
        MinuteWeather minutes = laid(series, start, stepSeconds, steps);

        double joules = 0;
        for (int i = 0; i < steps; i++) {
            joules += minutes.ghiWm2(i) * stepSeconds;
            double up = sun.cosZenith(i) > 0 ? sun.cosZenith(i) : 0;
            assertThat(minutes.dniWm2(i) * up + minutes.dhiWm2(i))
                    .isCloseTo(minutes.ghiWm2(i), within(1e-9 * (1 + minutes.ghiWm2(i))));
            assertThat(minutes.dniWm2(i)).isBetween(0.0, sun.extraterrestrialWm2(i));
            assertThat(minutes.dhiWm2(i)).isGreaterThanOrEqualTo(0);
            assertThat(up > 0 || minutes.dniWm2(i) == 0)
                    .as("no beam in the dark")
                    .isTrue();
        }
        double wanted = 0;
        for (int row = 0; row < series.size(); row++) {
            long begin = series.info().startEpochSecond() + (long) row * interval;
            long inside = Math.min(begin + interval, start + (long) steps * stepSeconds) - Math.max(begin, start);
            wanted += inside > 0 ? series.ghiWm2(row) * inside : 0;
        }
        assertThat(joules).isCloseTo(wanted, within(1e-9 * wanted));
    }

    @Test
    void lightOfADarkHourIsEvenAndDiffuse() {
        WeatherSeries series = series(constant(24, 12), constant(24, 0), row -> 20, 0.5);
        MinuteWeather minutes = laid(series, series.info().startEpochSecond(), 60, 24 * 60);
        for (int i = 0; i < 180; i++) {
            assertThat(minutes.ghiWm2(i)).isCloseTo(12, within(1e-9));
            assertThat(minutes.dhiWm2(i)).isCloseTo(12, within(1e-9));
            assertThat(minutes.dniWm2(i)).isZero();
        }
    }

    /** More than arrives outside the atmosphere (about 1320 W/m² in July) cannot be beam, nor follow the sun's height. */
    @Test
    void lightBeyondTheSunIsDiffuse() {
        WeatherSeries series = series(constant(24, 1500), constant(24, 0), row -> 20, 0.5);
        SunPath sun = sun(series, series.info().startEpochSecond(), 60, 24 * 60);
        MinuteWeather minutes = laid(series, series.info().startEpochSecond(), 60, 24 * 60);
        int noon = 12 * 60 + 30;
        assertThat(minutes.dniWm2(noon)).isEqualTo(sun.extraterrestrialWm2(noon));
        assertThat(minutes.dhiWm2(noon))
                .isCloseTo(minutes.ghiWm2(noon) - minutes.dniWm2(noon) * sun.cosZenith(noon), within(1e-9));
    }

    /** Half diffuse by the hour is half diffuse in each minute in which the beam is possible. */
    @Test
    void globalAndDiffuseShareOneShape() {
        double[] ghi = new double[24];
        Arrays.fill(ghi, 7, 17, 400);
        WeatherSeries series = series(ghi, Arrays.stream(ghi).map(g -> g / 2).toArray(), row -> 20, 0.5);
        MinuteWeather minutes = laid(series, series.info().startEpochSecond(), 60, 24 * 60);
        SunPath sun = sun(series, series.info().startEpochSecond(), 60, 24 * 60);
        for (int i = 9 * 60; i < 10 * 60; i++) {
            assertThat(minutes.dhiWm2(i)).isCloseTo(minutes.ghiWm2(i) / 2, within(1e-9));
            assertThat(minutes.ghiWm2(i) / sun.cosZenith(i))
                    .isCloseTo(minutes.ghiWm2(9 * 60) / sun.cosZenith(9 * 60), within(1e-6));
        }
    }

    /** The air has as many degrees as hours have passed at the instant of its row: a straight line through all rows. */
    @ParameterizedTest
    @CsvSource({"0, 60", "0.5, 60", "1, 60", "0, 10", "0.5, 300", "1, 300"})
    void temperatureAndWindRunStraightBetweenInstants(double instantShare, int stepSeconds) {
        WeatherSeries series = series(constant(24, 0), constant(24, 0), row -> row + instantShare, instantShare);
        MinuteWeather minutes = laid(series, series.info().startEpochSecond(), stepSeconds, 24 * HOUR / stepSeconds);
        for (int i = 0; i < minutes.steps(); i++) {
            double hours = (i + 0.5) * stepSeconds / HOUR;
            double first = instantShare;
            double last = 23 + instantShare;
            double wanted = hours < first ? first : hours > last ? last : hours;
            assertThat(minutes.airC(i)).as("at " + hours + " h").isCloseTo(wanted, within(1e-9));
            assertThat(minutes.windMs(i)).isCloseTo(wanted / 10, within(1e-9));
        }
    }

    @Test
    void humidityRatioNotDewPointRunsStraight() {
        WeatherSeries series = series(constant(24, 0), constant(24, 0), row -> row % 2 == 0 ? 0 : 20, 0);
        MinuteWeather minutes = laid(series, series.info().startEpochSecond() + HOUR, HOUR, 3);
        double dry = Psychrometrics.humidityRatio(0, 95_000);
        double moist = Psychrometrics.humidityRatio(20, 95_000);
        assertThat(minutes.humidityRatio(1)).isCloseTo((dry + moist) / 2, within(1e-12));
    }

    /** The air has a tenth of the day's number in degrees: 36.5 on the last day, 0.1 on the first. */
    @Test
    void aTypicalYearWrapsAtNewYear() {
        MinuteWeather minutes = laid(typicalYear(), epoch(2026, 12, 31, 12), 60, 24 * 60);
        assertThat(minutes.airC(0)).isCloseTo(36.5, within(1e-9));
        assertThat((minutes.airC(12 * 60 - 1) + minutes.airC(12 * 60)) / 2)
                .as("midnight lies half way between the instants of two rows")
                .isCloseTo((36.5 + 0.1) / 2, within(1e-9));
        assertThat(minutes.airC(24 * 60 - 1)).isCloseTo(0.1, within(1e-9));
    }

    /** The air has a tenth of the day's number in degrees: 28 February is day 59, 1 March is day 60. */
    @Test
    void of29FebruaryATypicalYearRepeatsThe28th() {
        MinuteWeather minutes = laid(typicalYear(), epoch(2028, 2, 28, 0), 60, 3 * 24 * 60);
        assertThat(minutes.airC(12 * 60)).isCloseTo(5.9, within(1e-9));
        assertThat(minutes.airC(36 * 60)).isCloseTo(5.9, within(1e-9));
        assertThat(minutes.airC(60 * 60)).isCloseTo(6.0, within(1e-9));
    }

    @Test
    void anyYearFindsTheSameTypicalDays() {
        for (int year : new int[] {1999, 2023, 2026, 2100}) {
            MinuteWeather minutes = laid(typicalYear(), epoch(year, 7, 1, 9), 300, 12);
            assertThat(minutes.airC(0)).isCloseTo(18.2, within(1e-9));
        }
    }

    @Test
    void aTripBeyondARealSeriesIsRefusedWithTheDaysCovered() {
        WeatherSeries series = series(constant(72, 0), constant(72, 0), row -> 20, 1);
        assertThatThrownBy(() -> laid(series, epoch(2026, 7, 9, 0), 60, 3 * 24 * 60))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The weather of invented covers 2026-07-08 to 2026-07-10; the trip from 2026-07-09 to"
                        + " 2026-07-11 is not within that.");
        assertThatThrownBy(() -> laid(series, epoch(2025, 7, 8, 0), 60, 24 * 60))
                .hasMessageContaining("the trip from 2025-07-08 to 2025-07-08 is not within that");
        assertThat(laid(series, epoch(2026, 7, 8, 0), 60, 3 * 24 * 60).steps()).isEqualTo(3 * 24 * 60);
    }

    @Test
    void aTripBeyondATypicalSummerIsRefused() {
        double[] none = constant(48, 0);
        WeatherSeries summer = WeatherSeries.of(
                info(LocalDateTime.of(WeatherSeries.NOMINAL_YEAR, 7, 8, 0, 0), HOUR, true, 1),
                none,
                none,
                none,
                constant(48, 20),
                constant(48, 10),
                constant(48, 2),
                constant(48, 95_000));
        assertThat(laid(summer, epoch(2030, 7, 8, 0), 60, 48 * 60).steps()).isEqualTo(48 * 60);
        assertThatThrownBy(() -> laid(summer, epoch(2030, 7, 9, 0), 60, 48 * 60))
                .hasMessage("The weather of invented covers 07-08 to 07-09 of any year; the trip from 2030-07-09 to"
                        + " 2030-07-10 is not within that.");
    }

    private static MinuteWeather laid(WeatherSeries series, long start, int stepSeconds, int steps) {
        SunPath sun = sun(series, start, stepSeconds, steps);
        return MinuteWeather.of(series, sun.cosZenith(), sun.extraterrestrialWm2(), start, stepSeconds, steps);
    }

    private static SunPath sun(WeatherSeries series, long start, int stepSeconds, int steps) {
        SeriesInfo info = series.info();
        return SunPath.of(info.latitudeDeg(), info.longitudeDeg(), info.elevationM(), start, stepSeconds, steps);
    }

    private static WeatherSeries typicalYear() {
        double[] none = constant(8760, 0);
        double[] airC = new double[8760];
        Arrays.setAll(airC, row -> (row / 24 + 1) / 10.0);
        return WeatherSeries.of(
                info(LocalDateTime.of(WeatherSeries.NOMINAL_YEAR, 1, 1, 0, 0), HOUR, true, 0.5),
                none,
                none,
                none,
                airC,
                none,
                none,
                constant(8760, 95_000));
    }

    /** Hourly rows from 8 July 2026; dew point as the air, wind a tenth of it. */
    private static WeatherSeries series(
            double[] ghiWm2, double[] dhiWm2, IntToDoubleFunction air, double instantShare) {
        double[] airC = new double[ghiWm2.length];
        Arrays.setAll(airC, air);
        return WeatherSeries.of(
                info(LocalDateTime.of(2026, 7, 8, 0, 0), HOUR, false, instantShare),
                ghiWm2,
                constant(ghiWm2.length, 0),
                dhiWm2,
                airC,
                airC,
                Arrays.stream(airC).map(c -> c / 10).toArray(),
                constant(ghiWm2.length, 95_000));
    }

    /** Light of all kinds: none, faint, likely, impossible, at night too; diffuse sometimes above global. */
    private static WeatherSeries randomLight(Random random, int size, int interval) {
        double[] ghiWm2 = new double[size];
        double[] dhiWm2 = new double[size];
        for (int row = 0; row < size; row++) {
            ghiWm2[row] = random.nextInt(5) == 0 ? 0 : 1400 * random.nextDouble() * random.nextDouble();
            dhiWm2[row] = ghiWm2[row] * random.nextDouble() * 1.1;
        }
        double[] level = constant(size, 10);
        return WeatherSeries.of(
                info(LocalDateTime.of(2026, 7, 8, 0, 0), interval, false, 1),
                ghiWm2,
                constant(size, 0),
                dhiWm2,
                level,
                level,
                level,
                constant(size, 95_000));
    }

    private static SeriesInfo info(LocalDateTime localStart, int interval, boolean typical, double instantShare) {
        long start = localStart.toEpochSecond(ZoneOffset.ofHours(OFFSET_HOURS));
        return new SeriesInfo(
                "invented", 33.4, -112, 340, OFFSET_HOURS, start, interval, typical, instantShare, List.of());
    }

    private static double[] constant(int size, double value) {
        double[] all = new double[size];
        Arrays.fill(all, value);
        return all;
    }

    private static long epoch(int year, int month, int day, int hour) {
        return LocalDateTime.of(year, month, day, hour, 0).toEpochSecond(ZoneOffset.ofHours(OFFSET_HOURS));
    }
}
