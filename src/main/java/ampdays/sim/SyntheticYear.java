package ampdays.sim;

import ampdays.sun.AirMass;
import ampdays.weather.MonthlyNormals;
import ampdays.weather.SeriesInfo;
import ampdays.weather.SyntheticWeather;
import ampdays.weather.WeatherSeries;

/** An invented year with the sun of its place: global light drawn, beam and diffuse light derived from it. */
public final class SyntheticYear {
    private SyntheticYear() {}

    /** Makes one hourly year of no date; the same seed gives the same year. Test: {@code SyntheticYearTest}. */
    public static WeatherSeries make(MonthlyNormals normals, long seed) {
        SeriesInfo info = SyntheticWeather.info(normals, seed);
        IntervalSun sun = IntervalSun.of(info, SyntheticWeather.HOURS);
        return SkyCompletion.complete(SyntheticWeather.make(
                normals,
                sun.heights(),
                sun.extraterrestrialWm2(),
                AirMass.standardPressurePa(normals.elevationM()),
                seed));
    }
}
