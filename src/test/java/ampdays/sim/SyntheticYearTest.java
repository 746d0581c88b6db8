package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.NormalsReader;
import ampdays.weather.MonthlyNormals;
import ampdays.weather.WeatherSeries;
import ampdays.weather.WeatherSummary;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SyntheticYearTest {
    private static final int YEARS = 60;
    private static MonthlyNormals normals;

    @BeforeAll
    static void readNormals() throws Exception {
        normals = NormalsReader.read(Path.of("weather-profiles", "low-desert-normals.csv"));
    }

    /**
     * Requirement (no source): long runs return the normals. Over 60 years the error of a month's mean is about 1 % in light
     * (spread of days 15 %, 30 remembering days a month) and 0.1 K in temperature; asked for are 3 %, 0.6 K for the highs
     * (hourly values miss the peak by up to 0.3 K) and 0.5 K for the lows, 5 % in wind.
     */
    @Test
    void longRunsReturnTheNormals() {
        double[][] sums = new double[12][4];
        for (int seed = 1; seed <= YEARS; seed++) {
            for (WeatherSummary.Month month :
                    WeatherSummary.of(SyntheticYear.make(normals, seed)).months()) {
                double[] sum = sums[month.month() - 1];
                sum[0] += month.ghiKwhM2() / YEARS;
                sum[1] += month.maxC() / YEARS;
                sum[2] += month.minC() / YEARS;
                sum[3] += month.windMs() / YEARS;
            }
        }
        for (int m = 0; m < 12; m++) {
            MonthlyNormals.Month normal = normals.months().get(m);
            assertThat(sums[m][0])
                    .as("light of month %d", m + 1)
                    .isCloseTo(normal.ghiKwhM2(), within(0.03 * normal.ghiKwhM2()));
            assertThat(sums[m][1]).as("highs of month %d", m + 1).isCloseTo(normal.maxC(), within(0.6));
            assertThat(sums[m][2]).as("lows of month %d", m + 1).isCloseTo(normal.minC(), within(0.5));
            assertThat(sums[m][3])
                    .as("wind of month %d", m + 1)
                    .isCloseTo(normal.windMs(), within(0.05 * normal.windMs()));
        }
    }

    /** Identity: the same seed gives the same year, another seed another one. */
    @Test
    void theSeedDecides() {
        WeatherSeries first = SyntheticYear.make(normals, 7);
        WeatherSeries again = SyntheticYear.make(normals, 7);
        WeatherSeries other = SyntheticYear.make(normals, 8);
        int differing = 0;
        for (int row = 0; row < first.size(); row++) {
            assertThat(again.airC(row)).isEqualTo(first.airC(row));
            assertThat(again.dniWm2(row)).isEqualTo(first.dniWm2(row));
            differing += other.airC(row) == first.airC(row) ? 0 : 1;
        }
        assertThat(differing).isGreaterThan(8000);
    }

    /** Physics: nothing comes from below the horizon, beam is weaker than outside, air is no drier than its dew point. */
    @Test
    void isPossibleWeather() {
        WeatherSeries year = SyntheticYear.make(normals, 3);
        for (int row = 0; row < year.size(); row++) {
            assertThat(year.dhiWm2(row)).isBetween(0.0, year.ghiWm2(row));
            assertThat(year.dniWm2(row)).isBetween(0.0, 1415.0);
            assertThat(year.dewPointC(row)).isLessThanOrEqualTo(year.airC(row));
            assertThat(year.windMs(row)).isNotNegative();
        }
        assertThat(SunFit.warning(year)).isEmpty();
    }
}
