package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.io.InputException;
import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A file with stamps late by so much must be told to move them earlier by as much. The light of invented skies follows the
 * sun of the reference tables ({@code SunPathTest}); real files are right by the manuals of their formats.
 */
class SunFitTest {
    @ParameterizedTest
    @ValueSource(longs = {0, 1, 2, 3, 4, 5})
    void lightThatFollowsTheSunGetsNoWarning(long cloudSeed) {
        assertThat(SunFit.warning(Sky.shifted(30, 3600, 0, cloudSeed))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "-7200, earlier, 120 min later",
        "-3600, earlier, 60 min later",
        "-1800, earlier, 30 min later",
        "1800, later, 30 min earlier",
        "3600, later, 60 min earlier",
        "7200, later, 120 min earlier",
        "10800, later, 180 min earlier"
    })
    void aShiftIsFoundUnderAClearSkyAndUnderClouds(int stampsLateSeconds, String comes, String shift) {
        for (long cloudSeed : new long[] {0, 1, 2}) {
            assertThat(SunFit.warning(Sky.shifted(60, 3600, stampsLateSeconds, cloudSeed)))
                    .as("clouds " + cloudSeed)
                    .hasValueSatisfying(text -> assertThat(text)
                            .contains("it would fit with stamps " + shift)
                            .contains("comes " + comes + " than"));
        }
    }

    /** A quarter of an hour shows where the file has all three kinds of light, clouds or not. */
    @ParameterizedTest
    @ValueSource(longs = {0, 1, 2, 3})
    void beamAndDiffuseLightShowAQuarterOfAnHour(long cloudSeed) {
        assertThat(SunFit.warning(Sky.shifted(30, 3600, 900, cloudSeed)))
                .hasValueSatisfying(text -> assertThat(text).contains("15 min earlier"));
    }

    @ParameterizedTest
    @CsvSource({
        "0, -1800, 30 min later",
        "0, 1800, 30 min earlier",
        "1, -3600, 60 min later",
        "2, 7200, 120 min earlier"
    })
    void globalLightAloneShowsHalfAnHourIfClearAndAnHourIfNot(long cloudSeed, int stampsLateSeconds, String shift) {
        assertThat(SunFit.warning(onlyGlobal(Sky.shifted(60, 3600, stampsLateSeconds, cloudSeed))))
                .hasValueSatisfying(text -> assertThat(text).contains(shift));
        assertThat(SunFit.warning(onlyGlobal(Sky.shifted(60, 3600, 0, cloudSeed))))
                .isEmpty();
    }

    private static WeatherSeries onlyGlobal(WeatherSeries series) {
        double[] ghiWm2 = new double[series.size()];
        Arrays.setAll(ghiWm2, series::ghiWm2);
        double[] unknown = new double[series.size()];
        Arrays.fill(unknown, Double.NaN);
        return Sky.light(series.info(), ghiWm2, unknown, unknown);
    }

    @ParameterizedTest
    @ValueSource(ints = {300, 900, 1800, 10_800})
    void otherIntervalsAreCheckedToo(int stepSeconds) {
        assertThat(SunFit.warning(Sky.shifted(20, stepSeconds, 0, 0))).isEmpty();
        assertThat(SunFit.warning(Sky.shifted(20, stepSeconds, 3600, 0)))
                .hasValueSatisfying(text -> assertThat(text).contains("60 min earlier"));
    }

    @Test
    void theWarningSaysWhereAndWhatToCheck() {
        assertThat(SunFit.warning(Sky.shifted(30, 3600, 3600, 0)))
                .hasValue(
                        "the light of invented comes later than the sun of 33.40, -112.00: it would fit with stamps 60 min"
                                + " earlier. Check the offset from UTC, summer time, and whether stamps mean start or end.");
    }

    @Test
    void aFileWithoutLightGetsNoWarning() {
        double[] dark = new double[48];
        assertThat(SunFit.warning(Sky.light(Sky.info(33.4, 3600, 0), dark, dark, dark)))
                .isEmpty();
        double[] unknown = new double[48];
        Arrays.fill(unknown, Double.NaN);
        assertThat(SunFit.warning(Sky.light(Sky.info(33.4, 3600, 0), unknown, dark, dark)))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                RealWeather.PHOENIX_EPW,
                RealWeather.PHOENIX_TMY3,
                "USA_FL_Miami.Intl.AP.722020_TMY3.epw",
                "USA_NV_Las.Vegas-McCarran.Intl.AP.723860_TMY3.epw",
                "AZ-Tucson_International_Ap.tmy3.csv"
            })
    void realFilesFitAndShiftedOnesDoNot(String name) throws IOException, InputException {
        WeatherSeries right = RealWeather.read(name);
        assertThat(SunFit.warning(right)).isEmpty();
        for (int minutes : new int[] {-60, -30, 30, 60, 120}) {
            assertThat(SunFit.warning(RealWeather.later(right, 60 * minutes)))
                    .as(minutes + " min late")
                    .hasValueSatisfying(text -> assertThat(text)
                            .contains(Math.abs(minutes) + " min " + (minutes > 0 ? "earlier" : "later")));
        }
    }
}
