package ampdays.sim;

import ampdays.cooling.MoistAir;
import ampdays.scenario.Site;
import ampdays.sun.AirMass;
import ampdays.sun.SunPath;
import ampdays.weather.MinuteWeather;
import ampdays.weather.WeatherSeries;
import java.util.Arrays;

/** Sun and weather over the trip at the site, before any shade: made once and shared by every option that goes there. */
public final class SkyPlan {
    private final SunPath sun;
    private final MinuteWeather weather;
    private final double pressurePa;
    private final MoistAir moistAir;
    private final double[] dailyRainMm;
    private final double[] warmestC;
    private final double[] coolestC;

    private SkyPlan(SunPath sun, MinuteWeather weather, double pressurePa, TripClock clock, double[] dailyRainMm) {
        this.sun = sun;
        this.weather = weather;
        this.pressurePa = pressurePa;
        this.moistAir = new MoistAir(pressurePa);
        this.dailyRainMm = dailyRainMm;
        this.warmestC = new double[dailyRainMm.length];
        this.coolestC = new double[dailyRainMm.length];
        for (int day = 0; day < dailyRainMm.length; day++) {
            warmestC[day] = weather.warmestC(clock.firstStepOfDay(day), clock.firstStepOfDay(day + 1));
            coolestC[day] = weather.coolestC(clock.firstStepOfDay(day), clock.firstStepOfDay(day + 1));
        }
    }

    /**
     * Lays a weather series over the steps of a trip.
     *
     * @param series with beam and diffuse light in every interval ({@link SkyCompletion})
     * @param clock of which only the dates and the zone count
     */
    public static SkyPlan of(Site site, WeatherSeries series, TripClock clock) {
        SunPath sun = SunPath.of(
                site.latitudeDeg(),
                site.longitudeDeg(),
                site.elevationM(),
                clock.startEpochSecond(),
                clock.stepSeconds(),
                clock.steps());
        MinuteWeather weather = MinuteWeather.of(
                series,
                sun.cosZenith(),
                sun.extraterrestrialWm2(),
                clock.startEpochSecond(),
                clock.stepSeconds(),
                clock.steps());
        double[] dailyRainMm = new double[clock.trip().days()];
        Arrays.setAll(
                dailyRainMm,
                day -> series.rainMm(
                        clock.epochSecond(clock.firstStepOfDay(day)),
                        clock.epochSecond(clock.firstStepOfDay(day + 1))));
        return new SkyPlan(sun, weather, AirMass.standardPressurePa(site.elevationM()), clock, dailyRainMm);
    }

    public SunPath sun() {
        return sun;
    }

    /** Whether the sun is down in the middle of a step. */
    public boolean isDark(int step) {
        return sun.cosZenith(step) <= 0;
    }

    public MinuteWeather weather() {
        return weather;
    }

    /** Rain of each day of the trip, mm; NaN where unknown. */
    double[] dailyRainMm() {
        return dailyRainMm.clone();
    }

    /** Warmest air of a day of the trip, °C. */
    double warmestC(int day) {
        return warmestC[day];
    }

    /** Coolest air of a day of the trip, °C. */
    double coolestC(int day) {
        return coolestC[day];
    }

    /** Air pressure of the standard atmosphere at the site, Pa. */
    public double pressurePa() {
        return pressurePa;
    }

    /** Moist air at that pressure. */
    MoistAir moistAir() {
        return moistAir;
    }

    /** Air density relative to sea level. */
    public double densityShare() {
        return pressurePa / 101_325;
    }
}
