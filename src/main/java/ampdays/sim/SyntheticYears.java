package ampdays.sim;

import ampdays.sun.AirMass;
import ampdays.weather.MonthlyNormals;
import ampdays.weather.NormalsFit;
import ampdays.weather.SyntheticWeather;
import ampdays.weather.WeatherSeries;

/**
 * Invented years with the sun of their place: global light drawn, beam and diffuse light derived from it; and the way back,
 * from a series to its normals. The sun is followed once for all years. Test: {@code SyntheticYearsTest}.
 */
public final class SyntheticYears {
    private final IntervalSun sun;
    private final SyntheticWeather weather;

    private SyntheticYears(IntervalSun sun, SyntheticWeather weather) {
        this.sun = sun;
        this.weather = weather;
    }

    /**
     * Years of a place.
     *
     * @throws IllegalArgumentException when a month has more or less light than the sun can give
     */
    public static SyntheticYears of(MonthlyNormals normals) {
        IntervalSun sun =
                IntervalSun.of(SyntheticWeather.info(normals, "the sun of the place"), SyntheticWeather.HOURS);
        return new SyntheticYears(
                sun,
                new SyntheticWeather(
                        normals,
                        sun.heights(),
                        sun.extraterrestrialWm2(),
                        AirMass.standardPressurePa(normals.elevationM())));
    }

    /** One hourly year of no date; the same seed gives the same year. */
    public WeatherSeries year(long seed) {
        return SkyCompletion.complete(weather.year(seed), sun);
    }

    /**
     * The monthly normals of a series.
     *
     * @throws IllegalArgumentException when it lacks light or months
     */
    public static MonthlyNormals normalsOf(WeatherSeries series) {
        IntervalSun sun = IntervalSun.of(series.info(), series.size());
        return NormalsFit.of(SkyCompletion.complete(series, sun), sun.heights(), sun.extraterrestrialWm2());
    }
}
