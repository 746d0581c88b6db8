package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.sun.AirMass;
import ampdays.sun.ClearSky;
import ampdays.sun.SunPath;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The same days without cloud, and with cooler nights. */
class OtherWeatherTest {
    private static final int DAYS = 3;
    private static final WeatherSeries CLOUDY = Sky.shifted(DAYS, 3600, 0, 7);

    /** Identity: light that is that of a clear sky already stays as it is, to the last bit. */
    @Test
    void aClearSkyStaysAsItIs() {
        WeatherSeries clear = OtherWeather.withoutCloud(CLOUDY);
        WeatherSeries again = OtherWeather.withoutCloud(clear);
        for (int row = 0; row < clear.size(); row++) {
            assertThat(again.ghiWm2(row)).isEqualTo(clear.ghiWm2(row));
            assertThat(again.dniWm2(row)).isEqualTo(clear.dniWm2(row));
            assertThat(again.dhiWm2(row)).isEqualTo(clear.dhiWm2(row));
        }
    }

    /** By definition: never less light than before, the rest of the weather untouched, and some cloud was there to take. */
    @Test
    void cloudTakesLightAway() {
        WeatherSeries clear = OtherWeather.withoutCloud(CLOUDY);
        double moreWm2 = 0;
        for (int row = 0; row < clear.size(); row++) {
            assertThat(clear.ghiWm2(row)).isGreaterThanOrEqualTo(CLOUDY.ghiWm2(row));
            assertThat(clear.airC(row)).isEqualTo(CLOUDY.airC(row));
            moreWm2 += clear.ghiWm2(row) - CLOUDY.ghiWm2(row);
        }
        assertThat(moreWm2 / clear.size()).isGreaterThan(20);
    }

    /**
     * Over five minutes the mean is the value at the middle, so light is that of Ineichen and Perez (2002), which
     * {@code ClearSkyTest} holds against a reference library.
     */
    @Test
    void lightIsThatOfTheClearSkyModel() {
        SeriesInfo info = Sky.info(33.4, 300, 0);
        double[] none = new double[DAYS * 288];
        WeatherSeries clear = OtherWeather.withoutCloud(Sky.light(info, none, none, none));
        SunPath sun = SunPath.of(33.4, -112, 340, info.startEpochSecond(), 300, none.length);
        int noon = 288 + 150;
        double cosZenith = sun.cosZenith(noon);
        double airMass = AirMass.absolute(
                AirMass.kastenYoung(Math.toDegrees(Math.acos(cosZenith))), AirMass.standardPressurePa(340));
        double ghiWm2 = ClearSky.ineichenGhiWm2(cosZenith, airMass, 3, 340, sun.extraterrestrialWm2(noon));
        assertThat(clear.ghiWm2(noon)).isEqualTo(ghiWm2);
        assertThat(clear.dniWm2(noon) * cosZenith + clear.dhiWm2(noon)).isCloseTo(ghiWm2, within(1e-9));
    }

    /** By definition: dark hours are cooler, the others as before, and no air is more than saturated. */
    @Test
    void onlyDarkHoursAreCooler() {
        double[] dew = new double[24];
        Arrays.fill(dew, 9);
        double[] air = new double[24];
        Arrays.fill(air, 10);
        double[] any = new double[24];
        SeriesInfo oneDay = Sky.info(33.4, 3600, 0);
        WeatherSeries series = WeatherSeries.of(oneDay, any, any, any, air, dew, any, air);
        WeatherSeries cooler = OtherWeather.coolerNights(series, 3);
        assertThat(List.of(cooler.airC(1), cooler.dewPointC(1), cooler.airC(12), cooler.dewPointC(12)))
                .containsExactly(7.0, 7.0, 10.0, 9.0);
    }

    /** By definition: all hours are warmer, the water in the air stays; cooler air is never more than saturated. */
    @Test
    void allHoursAreWarmer() {
        double[] dew = new double[24];
        Arrays.fill(dew, 9);
        double[] air = new double[24];
        Arrays.fill(air, 10);
        double[] any = new double[24];
        WeatherSeries series = WeatherSeries.of(Sky.info(33.4, 3600, 0), any, any, any, air, dew, any, air);
        WeatherSeries warmer = OtherWeather.warmer(series, 4);
        WeatherSeries cooler = OtherWeather.warmer(series, -4);
        assertThat(List.of(warmer.airC(1), warmer.dewPointC(1), warmer.airC(12), warmer.dewPointC(12)))
                .containsExactly(14.0, 9.0, 14.0, 9.0);
        assertThat(List.of(cooler.airC(1), cooler.dewPointC(1), cooler.airC(12), cooler.dewPointC(12)))
                .containsExactly(6.0, 6.0, 6.0, 6.0);
    }
}
