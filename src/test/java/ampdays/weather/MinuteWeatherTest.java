package ampdays.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MinuteWeatherTest {
    private static final LocalDateTime JULY_8 = LocalDateTime.of(2025, 7, 8, 0, 0);
    private static final double I0_WM2 = 1322;

    /** A sun that is up from 6 to 18 o'clock local time, highest at noon. */
    private static double[] heights(long startEpochSecond, int stepSeconds, int steps) {
        double[] heights = new double[steps];
        for (int i = 0; i < steps; i++) {
            double hour = (startEpochSecond + (i + 0.5) * stepSeconds) / 3600 + TestSeries.UTC_OFFSET_HOURS;
            heights[i] = 0.95 * Math.cos((hour - 12) / 12 * Math.PI);
        }
        return heights;
    }

    private static double[] outside(int steps) {
        double[] values = new double[steps];
        Arrays.fill(values, I0_WM2);
        return values;
    }

    private static MinuteWeather lay(WeatherSeries series, LocalDateTime start, int stepSeconds, int steps) {
        long begin = TestSeries.utc(start);
        return MinuteWeather.of(series, heights(begin, stepSeconds, steps), outside(steps), begin, stepSeconds, steps);
    }

    /**
     * Definition (no source): energy of each interval kept to 1e-9, closure and non-negativity in every step, beam no
     * stronger than outside the atmosphere; for steps of 10 s to 5 min and data of 1 min to 3 h, random light by day and a
     * little by night.
     */
    @ParameterizedTest
    @CsvSource({"10, 3600", "60, 3600", "300, 3600", "60, 1800", "300, 900", "60, 60", "300, 60", "60, 10800"})
    void keepsTheEnergyOfEveryInterval(int stepSeconds, int intervalSeconds) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(stepSeconds + intervalSeconds);
        int intervals = 2 * 86_400 / intervalSeconds;
        SeriesInfo info = TestSeries.info(JULY_8, intervalSeconds, false, 1);
        double[] ghi = new double[intervals];
        double[] dhi = new double[intervals];
        for (int k = 0; k < intervals; k++) {
            double hour = (k + 0.5) * intervalSeconds / 3600 % 24;
            ghi[k] = hour > 6 && hour < 18 ? random.nextDouble(1200) : random.nextDouble(8);
            dhi[k] = ghi[k] * random.nextDouble(1.1);
        }
        WeatherSeries series = TestSeries.of(info, intervals, k -> ghi[k], k -> dhi[k], k -> 30);
        int steps = 2 * 86_400 / stepSeconds;
        MinuteWeather minutes = lay(series, JULY_8, stepSeconds, steps);
        double[] heights = heights(TestSeries.utc(JULY_8), stepSeconds, steps);
        int longest = Math.max(stepSeconds, intervalSeconds);
        for (int part = 0; part < 2 * 86_400 / longest; part++) {
            double wantedJ = 0;
            for (int k = 0; k < longest / intervalSeconds; k++) {
                wantedJ += ghi[part * (longest / intervalSeconds) + k] * intervalSeconds;
            }
            double madeJ = 0;
            for (int s = 0; s < longest / stepSeconds; s++) {
                madeJ += minutes.ghiWm2(part * (longest / stepSeconds) + s) * stepSeconds;
            }
            assertThat(madeJ).as("part " + part).isCloseTo(wantedJ, within(1e-9 * wantedJ));
        }
        for (int i = 0; i < steps; i++) {
            double up = heights[i] > 0 ? heights[i] : 0;
            assertThat(minutes.dniWm2(i) * up + minutes.dhiWm2(i))
                    .isCloseTo(minutes.ghiWm2(i), within(1e-9 * (1 + minutes.ghiWm2(i))));
            assertThat(minutes.dhiWm2(i)).isGreaterThanOrEqualTo(-1e-9);
            assertThat(minutes.dniWm2(i)).isBetween(0.0, I0_WM2);
        }
    }

    /** Definition (no source): within an hour the light follows the sun's height, and GHI and DHI share that shape. */
    @Test
    void followsTheHeightOfTheSun() {
        SeriesInfo info = TestSeries.info(JULY_8, 3600, false, 1);
        WeatherSeries series = TestSeries.of(info, 24, k -> k == 8 ? 600 : 0, k -> k == 8 ? 120 : 0, k -> 30);
        MinuteWeather minutes = lay(series, JULY_8, 60, 1440);
        double[] heights = heights(TestSeries.utc(JULY_8), 60, 1440);
        for (int i = 8 * 60; i < 9 * 60; i++) {
            assertThat(minutes.ghiWm2(i) / heights[i])
                    .isCloseTo(minutes.ghiWm2(8 * 60) / heights[8 * 60], within(1e-9));
            assertThat(minutes.dhiWm2(i) / minutes.ghiWm2(i)).isCloseTo(0.2, within(1e-12));
        }
        assertThat(minutes.ghiWm2(8 * 60 - 1)).isZero();
        assertThat(minutes.ghiWm2(9 * 60)).isZero();
    }

    /** Definition (no source): light in an hour without sun is even and diffuse. */
    @Test
    void lightByNightIsEvenAndDiffuse() {
        SeriesInfo info = TestSeries.info(JULY_8, 3600, false, 1);
        WeatherSeries series = TestSeries.of(info, 24, k -> k == 3 ? 5 : 0, k -> 0, k -> 30);
        MinuteWeather minutes = lay(series, JULY_8, 60, 1440);
        for (int i = 180; i < 240; i++) {
            assertThat(minutes.dhiWm2(i)).isCloseTo(5, within(1e-12));
            assertThat(minutes.dniWm2(i)).isZero();
        }
    }

    /** Definition (no source): of an hour cut by an end of the trip, the part inside has the hour's mean. */
    @Test
    void cutIntervalsCountWithThePartInside() {
        SeriesInfo info = TestSeries.info(JULY_8, 3600, false, 1);
        WeatherSeries series = TestSeries.of(info, 24, k -> k == 9 ? 700 : 0, k -> k == 9 ? 100 : 0, k -> 30);
        MinuteWeather minutes = lay(series, JULY_8.plusMinutes(9 * 60 + 20), 60, 60);
        double sum = 0;
        for (int i = 0; i < 60; i++) {
            sum += minutes.ghiWm2(i);
        }
        assertThat(sum).isCloseTo(700 * 40, within(1e-6));
        assertThat(minutes.ghiWm2(40)).isZero();
    }

    /**
     * Definition: temperature, wind and humidity ratio are straight between the instants of the rows, which stand at the
     * start, middle or end of their interval; before the first and after the last they hold.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 1})
    void temperatureIsStraightBetweenStamps(double instantShare) {
        SeriesInfo info = TestSeries.info(JULY_8, 3600, false, instantShare);
        WeatherSeries series = TestSeries.of(info, 24, k -> 0, k -> 0, k -> 20 + k);
        MinuteWeather minutes = lay(series, JULY_8, 60, 1440);
        for (int i = 0; i < 1440; i++) {
            double row = (i + 0.5) / 60 - instantShare;
            double expected = 20 + Math.min(Math.max(row, 0), 23);
            assertThat(minutes.airC(i)).as("minute " + i).isCloseTo(expected, within(1e-9));
        }
        assertThat(minutes.humidityRatio(700)).isCloseTo(Psychrometrics.humidityRatio(10, 97_300), within(1e-15));
        double at = (600 + 0.5) / 60 - instantShare;
        double before = Math.floor(at) % 5;
        double after = (Math.floor(at) + 1) % 5;
        assertThat(minutes.windMs(600)).isCloseTo(before + (at - Math.floor(at)) * (after - before), within(1e-9));
    }

    /** Definition: a typical year serves any year, wraps at its end, and 29 February repeats 28 February. */
    @Test
    void typicalYearsRepeat() {
        LocalDateTime january = LocalDateTime.of(WeatherSeries.NOMINAL_YEAR, 1, 1, 0, 0);
        SeriesInfo info = TestSeries.info(january, 3600, true, 0);
        WeatherSeries series = TestSeries.of(info, 8760, k -> 0, k -> 0, k -> Math.floor(k / 24.0));
        MinuteWeather newYear = lay(series, LocalDateTime.of(2031, 12, 31, 12, 0), 60, 24 * 60);
        assertThat(newYear.airC(0)).isEqualTo(364);
        assertThat(newYear.airC(23 * 60)).isZero();
        MinuteWeather leap = lay(series, LocalDateTime.of(2028, 2, 28, 0, 0), 60, 3 * 1440);
        assertThat(leap.airC(720)).isEqualTo(58);
        assertThat(leap.airC(1440 + 720)).isEqualTo(58);
        assertThat(leap.airC(2880 + 720)).isEqualTo(59);
    }

    /** Definition: a series that does not cover the trip is refused with the days it has. */
    @Test
    void saysWhatASeriesCovers() {
        WeatherSeries real = TestSeries.of(TestSeries.info(JULY_8, 3600, false, 1), 48, k -> 0, k -> 0, k -> 30);
        assertThatThrownBy(() -> lay(real, JULY_8.plusDays(1), 60, 2 * 1440))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The weather of test.csv covers 2025-07-08 to 2025-07-09; the trip from 2025-07-09 to"
                        + " 2025-07-10 is not within that.");
        LocalDateTime may = LocalDateTime.of(WeatherSeries.NOMINAL_YEAR, 5, 1, 0, 0);
        WeatherSeries summer = TestSeries.of(TestSeries.info(may, 3600, true, 0), 153 * 24, k -> 0, k -> 0, k -> 30);
        assertThatThrownBy(() -> lay(summer, LocalDateTime.of(2026, 9, 30, 0, 0), 60, 2 * 1440))
                .hasMessage("The weather of test.csv covers 05-01 to 09-30 of any year; the trip from 2026-09-30 to"
                        + " 2026-10-01 is not within that.");
    }
}
