package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.InputException;
import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.util.Arrays;
import java.util.function.ToDoubleBiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whether real files close: global light less diffuse light less the beam on the level, over the hours whose beam is above
 * 300 W/m². The model behind those files makes it so but for rounding to 1 W/m² and its own sun; 6 W/m² is about a hundredth
 * of the light of such an hour (common practice, no source). With stamps half an hour off the sun stands up to 7.5 degrees
 * elsewhere, which is tens of W/m².
 */
class RealWeatherClosureTest {
    private static final double BRIGHT_WM2 = 300;

    @ParameterizedTest
    @ValueSource(
            strings = {
                RealWeather.PHOENIX_EPW,
                RealWeather.PHOENIX_TMY3,
                "USA_FL_Miami.Intl.AP.722020_TMY3.epw",
                "USA_NV_Las.Vegas-McCarran.Intl.AP.723860_TMY3.epw",
                "AZ-Tucson_International_Ap.tmy3.csv"
            })
    void lightClosesWithTheRightStampsAndNotHalfAnHourOff(String name) throws IOException, InputException {
        WeatherSeries series = RealWeather.read(name);
        assertThat(misfitWm2(series)).isLessThan(6);
        assertThat(misfitWm2(RealWeather.later(series, 1800))).isGreaterThan(20);
        assertThat(misfitWm2(RealWeather.later(series, -1800))).isGreaterThan(20);
    }

    /** One set of data in two formats: the EPW gives the longitude to 0.01 degrees, and pressure and light alike. */
    @Test
    void oneYearInTwoFormatsIsTheSame() throws IOException, InputException {
        WeatherSeries epw = RealWeather.read(RealWeather.PHOENIX_EPW);
        WeatherSeries tmy3 = RealWeather.read(RealWeather.PHOENIX_TMY3);
        assertThat(epw.size()).isEqualTo(8760).isEqualTo(tmy3.size());
        assertThat(epw.info().startEpochSecond()).isEqualTo(tmy3.info().startEpochSecond());
        assertThat(epw.info().typicalYear()).isTrue().isEqualTo(tmy3.info().typicalYear());
        assertThat(epw.info().latitudeDeg()).isEqualTo(tmy3.info().latitudeDeg());
        assertThat(epw.info().longitudeDeg()).isCloseTo(tmy3.info().longitudeDeg(), within(0.005));
        assertThat(epw.info().elevationM()).isEqualTo(tmy3.info().elevationM());
        assertThat(column(epw, WeatherSeries::ghiWm2)).isEqualTo(column(tmy3, WeatherSeries::ghiWm2));
        assertThat(column(epw, WeatherSeries::dniWm2)).isEqualTo(column(tmy3, WeatherSeries::dniWm2));
        assertThat(column(epw, WeatherSeries::dhiWm2)).isEqualTo(column(tmy3, WeatherSeries::dhiWm2));
        assertThat(column(epw, WeatherSeries::airC)).isEqualTo(column(tmy3, WeatherSeries::airC));
        assertThat(column(epw, WeatherSeries::dewPointC)).isEqualTo(column(tmy3, WeatherSeries::dewPointC));
        assertThat(column(epw, WeatherSeries::windMs)).isEqualTo(column(tmy3, WeatherSeries::windMs));
        assertThat(column(epw, WeatherSeries::pressurePa)).isEqualTo(column(tmy3, WeatherSeries::pressurePa));
    }

    private static double[] column(WeatherSeries series, ToDoubleBiFunction<WeatherSeries, Integer> value) {
        double[] all = new double[series.size()];
        Arrays.setAll(all, row -> value.applyAsDouble(series, row));
        return all;
    }

    private static double misfitWm2(WeatherSeries series) {
        IntervalSun sun = IntervalSun.of(series.info(), series.size());
        double squares = 0;
        int hours = 0;
        for (int row = 0; row < series.size(); row++) {
            if (series.dniWm2(row) > BRIGHT_WM2) {
                double rest = series.ghiWm2(row) - series.dhiWm2(row) - series.dniWm2(row) * sun.height(row);
                squares += rest * rest;
                hours++;
            }
        }
        assertThat(hours).as("bright hours").isGreaterThan(1000);
        return Math.sqrt(squares / hours);
    }
}
