package ampdays.sim;

import ampdays.sun.AirMass;
import ampdays.sun.ClearSky;
import ampdays.sun.SunPath;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.util.List;

/**
 * The same days under another sky: what would have been without cloud, with cooler nights, or in warmer air. Test:
 * {@code OtherWeatherTest}.
 */
public final class OtherWeather {
    /** Linke turbidity of the clear sky: 2 very clear, 7 dusty or humid; a guess for a clear day on dry land. */
    public static final double CLEAR_TURBIDITY = 3;

    private static final int SUN_STEP_SECONDS = 300;

    private OtherWeather() {}

    /**
     * The series with the light of a clear sky wherever that is more global light than it has; temperatures stay. The clear
     * sky is that of {@link ClearSky#ineichenGhiWm2} at {@link #CLEAR_TURBIDITY}, meant over each interval, so haze beyond
     * that turbidity counts as cloud. An interval that has as much light or more keeps its own.
     *
     * @param series with beam and diffuse light in every interval ({@link SkyCompletion})
     */
    public static WeatherSeries withoutCloud(WeatherSeries series) {
        SeriesInfo info = series.info();
        int step = info.stepSeconds() % SUN_STEP_SECONDS == 0 ? SUN_STEP_SECONDS : info.stepSeconds();
        int perInterval = info.stepSeconds() / step;
        SunPath sun = SunPath.of(
                info.latitudeDeg(),
                info.longitudeDeg(),
                info.elevationM(),
                info.startEpochSecond(),
                step,
                series.size() * perInterval);
        double pressurePa = AirMass.standardPressurePa(info.elevationM());
        double[] ghiWm2 = new double[series.size()];
        double[] dniWm2 = new double[series.size()];
        double[] dhiWm2 = new double[series.size()];
        for (int row = 0; row < ghiWm2.length; row++) {
            double ghi = 0;
            double dni = 0;
            double onFlat = 0;
            for (int i = row * perInterval; i < (row + 1) * perInterval; i++) {
                double cosZenith = sun.cosZenith(i);
                if (cosZenith > 0) {
                    double airMass =
                            AirMass.absolute(AirMass.kastenYoung(Math.toDegrees(Math.acos(cosZenith))), pressurePa);
                    double extraWm2 = sun.extraterrestrialWm2(i);
                    double global =
                            ClearSky.ineichenGhiWm2(cosZenith, airMass, CLEAR_TURBIDITY, info.elevationM(), extraWm2);
                    double beam = ClearSky.ineichenDniWm2(
                            global, cosZenith, airMass, CLEAR_TURBIDITY, info.elevationM(), extraWm2);
                    ghi += global;
                    dni += beam;
                    onFlat += beam * cosZenith;
                }
            }
            boolean clearer = ghi / perInterval > series.ghiWm2(row);
            ghiWm2[row] = clearer ? ghi / perInterval : series.ghiWm2(row);
            dniWm2[row] = clearer ? dni / perInterval : series.dniWm2(row);
            dhiWm2[row] = clearer ? (ghi - onFlat) / perInterval : series.dhiWm2(row);
        }
        return series.withIrradiance(ghiWm2, dniWm2, dhiWm2, List.of());
    }

    /**
     * The series with cooler air in every interval in which the sun stays down; the dew point never lies above the air.
     *
     * @param byK how much cooler, K, 0 to 30
     */
    public static WeatherSeries coolerNights(WeatherSeries series, double byK) {
        IntervalSun sun = IntervalSun.of(series.info(), series.size());
        double[] airC = new double[series.size()];
        double[] dewPointC = new double[series.size()];
        for (int row = 0; row < airC.length; row++) {
            airC[row] = series.airC(row) - (sun.height(row) > 0 ? 0 : byK);
            dewPointC[row] = Math.min(series.dewPointC(row), airC[row]);
        }
        return series.withAir(airC, dewPointC);
    }

    /**
     * The series with warmer or cooler air all the time; light, wind and the dew point stay, so that warmer air is drier in
     * relative terms and holds the same water; the dew point never lies above the air.
     *
     * @param byK how much warmer, K; below zero cooler
     */
    public static WeatherSeries warmer(WeatherSeries series, double byK) {
        double[] airC = new double[series.size()];
        double[] dewPointC = new double[series.size()];
        for (int row = 0; row < airC.length; row++) {
            airC[row] = series.airC(row) + byK;
            dewPointC[row] = Math.min(series.dewPointC(row), airC[row]);
        }
        return series.withAir(airC, dewPointC);
    }
}
