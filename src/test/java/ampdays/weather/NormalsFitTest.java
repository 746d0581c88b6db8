package ampdays.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.Arrays;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NormalsFitTest {
    private static final int HOURS = 8760;

    private static double[] filled(double value) {
        double[] all = new double[HOURS];
        Arrays.fill(all, value);
        return all;
    }

    /** Definition: two parameters of a line take the squares of two independent days. */
    @Test
    void aLineThroughIndependentDaysTakesTwo() {
        assertThat(NormalsFit.boundByTheLine(30, 0)).isCloseTo(2, within(1e-12));
    }

    /** Definition of an unbiased estimate: over 3000 months of remembering days it is 1; its own scatter is then 0.01. */
    @ParameterizedTest
    @ValueSource(doubles = {0.29, 0.65})
    void spreadIsRightInTheMean(double memory) {
        Gaussians gaussians = new Gaussians(2);
        double squares = 0;
        double free = 0;
        double last = gaussians.next();
        for (int month = 0; month < 3000; month++) {
            SimpleRegression line = new SimpleRegression();
            for (int day = 0; day < 30; day++) {
                last = gaussians.after(last, memory);
                line.addData(day, last);
            }
            squares += line.getSumSquaredErrors();
            free += 30 - NormalsFit.boundByTheLine(30, memory);
        }
        assertThat(Math.sqrt(squares / free)).isCloseTo(1, within(0.01));
    }

    /** Worked by hand: 24 h of 100 W/m² under 1000 W/m² at height 0.25 are 2.4 kWh/m² and clearness 0.4; highs alternate. */
    @Test
    void aYearOfKnownDays() {
        SeriesInfo info = TestSeries.info(LocalDateTime.of(2023, 1, 1, 0, 0), 3600, true, 0);
        WeatherSeries year =
                TestSeries.of(info, HOURS, k -> 100, k -> 100, k -> k % 24 < 12 ? 10 : k / 24 % 2 == 0 ? 18 : 22);
        MonthlyNormals normals = NormalsFit.of(year, filled(0.25), filled(1000));
        MonthlyNormals.Month june = normals.months().get(5);
        assertThat(june.ghiKwhM2()).isCloseTo(2.4, within(1e-9));
        assertThat(june.maxC()).isCloseTo(20, within(1e-9));
        assertThat(june.minC()).isCloseTo(10, within(1e-9));
        assertThat(june.dewPointC()).isCloseTo(10, within(1e-9));
        MonthlyNormals.DaySpread spread = june.spread().orElseThrow();
        assertThat(spread.clearness()).isCloseTo(0, within(1e-6));
        assertThat(spread.minK()).isCloseTo(0, within(1e-6));
        assertThat(spread.maxK()).isBetween(2.0, 2.5);
    }

    /** This program's own rule, no source. */
    @Test
    void monthsThatAreMissingAreNamed() {
        SeriesInfo info = TestSeries.info(LocalDateTime.of(2023, 1, 1, 0, 0), 3600, true, 0);
        WeatherSeries series = TestSeries.of(info, 31 * 24 + 28 * 24 + 19 * 24, k -> 100, k -> 100, k -> 20);
        assertThatThrownBy(() -> NormalsFit.of(series, filled(0.25), filled(1000)))
                .hasMessage(
                        "The weather of test.csv has fewer than 20 whole days in March, April, May, June, July, August,"
                                + " September, October, November, December; monthly normals need that many of every month.");
    }
}
