package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.sun.AirMass;
import ampdays.sun.ClearSky;
import ampdays.sun.DiffuseSplit;
import ampdays.sun.Plane;
import ampdays.sun.PlaneOfArray;
import ampdays.sun.SunPath;
import ampdays.weather.MinuteWeather;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/**
 * Light against instruments, minute by minute. What is expected is what this program was found to reach, to hold it there;
 * the comments say what one may expect of such models. The files are not part of the project.
 */
class MeasuredLightRegressionTest {
    private static final Path PLANE_OF_ARRAY = Path.of("../shared/reference/pv/nrel_ghi_poa40_1min_2019-03.csv");
    private static final Path TUCSON = Path.of("../shared/reference/weather/midc_raw_20181018_UAT_Tucson_1min.csv");
    private static final ZoneOffset MOUNTAIN_TIME = ZoneOffset.ofHours(-7);

    /** Column of a file without its heading line. */
    private static double[] column(Path file, int index) throws IOException {
        Assumptions.assumeTrue(Files.exists(file), () -> "skipped: there is no " + file);
        List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        return lines.stream()
                .skip(1)
                .mapToDouble(line -> Double.parseDouble(line.split(",", -1)[index]))
                .toArray();
    }

    private static double[] light(Path file, int index) throws IOException {
        return Arrays.stream(column(file, index)).map(w -> w > 0 ? w : 0).toArray();
    }

    private static long epoch(String local) {
        return LocalDateTime.parse(local).toEpochSecond(MOUNTAIN_TIME);
    }

    /** Mean of the model over that of the instrument less 1, and root mean square difference, W/m². */
    private record Fit(double bias, double rmseWm2, double meanWm2) {
        static Fit of(double[] model, double[] measured, boolean[] counts) {
            double modelSum = 0;
            double measuredSum = 0;
            double squares = 0;
            int n = 0;
            for (int i = 0; i < model.length; i++) {
                if (counts[i]) {
                    modelSum += model[i];
                    measuredSum += measured[i];
                    squares += (model[i] - measured[i]) * (model[i] - measured[i]);
                    n++;
                }
            }
            return new Fit(modelSum / measuredSum - 1, Math.sqrt(squares / n), measuredSum / n);
        }
    }

    private static boolean[] higherThan(SunPath sun, double degrees) {
        boolean[] higher = new boolean[sun.steps()];
        for (int i = 0; i < higher.length; i++) {
            higher[i] = sun.cosZenith(i) > Math.sin(Math.toRadians(degrees));
        }
        return higher;
    }

    /**
     * From global light to a plane tilted 40° south, by Erbs and Hay and Davies, eight days of March 2019 in Golden, clear and
     * cloudy. Source of the light: NREL Solar Radiation Research Laboratory, 1 min. Such chains are within some 3 % in bias and
     * 5 to 10 % in root mean square when fed by the hour (from memory; C. Gueymard, 2009, Solar Energy 83, 432). Found: −1.0 %
     * and 5.8 %, by the minute, sun above 5°. Clear days are 1 to 4 % low, which snow on the ground would explain.
     */
    @Test
    void globalLightToTiltedPlane() throws IOException {
        double[] ghiWm2 = light(PLANE_OF_ARRAY, 1);
        double[] measuredWm2 = column(PLANE_OF_ARRAY, 2);
        SunPath sun = SunPath.of(39.742, -105.18, 1829, epoch("2019-03-10T00:00"), 60, ghiWm2.length);
        Plane plane = Plane.of(40, 180);
        double[] modelWm2 = new double[ghiWm2.length];
        boolean[] counts = higherThan(sun, 5);
        for (int i = 0; i < modelWm2.length; i++) {
            if (counts[i]) {
                modelWm2[i] = onPlane(ghiWm2[i], plane, sun, i);
            }
        }
        Fit fit = Fit.of(modelWm2, measuredWm2, counts);
        assertThat(fit.bias()).isCloseTo(-0.0103, within(0.002));
        assertThat(fit.rmseWm2() / fit.meanWm2()).isCloseTo(0.0579, within(0.002));
    }

    private static double onPlane(double ghiWm2, Plane plane, SunPath sun, int step) {
        double cosZenith = sun.cosZenith(step);
        double extraWm2 = sun.extraterrestrialWm2(step);
        double split = (ghiWm2 - DiffuseSplit.erbsDhiWm2(ghiWm2, cosZenith, extraWm2)) / cosZenith;
        double dniWm2 = split < extraWm2 ? split : extraWm2;
        double dhiWm2 = ghiWm2 - dniWm2 * cosZenith;
        double incidence = plane.incidenceCosine(cosZenith, sun.east(step), sun.north(step));
        return PlaneOfArray.beamWm2(dniWm2, incidence)
                + PlaneOfArray.circumsolarWm2(dhiWm2, dniWm2, extraWm2, incidence, cosZenith)
                + PlaneOfArray.evenSkyWm2(dhiWm2, dniWm2, extraWm2, plane.skyView())
                + PlaneOfArray.groundWm2(ghiWm2, 0.2, plane.groundView());
    }

    /**
     * A clear day, 18 October 2018, at the University of Arizona in Tucson (measurement and instrumentation data center of
     * NREL, 1 min): three instruments, beam on the level plus diffuse against global light, sun above 10°. Instruments of that
     * class agree within 2 to 3 % (practice); found −1.6 %.
     */
    @Test
    void threeInstrumentsClose() throws IOException {
        double[] dniWm2 = light(TUCSON, 4);
        double[] dhiWm2 = light(TUCSON, 5);
        SunPath sun = tucsonSun();
        double[] sumWm2 = new double[dniWm2.length];
        Arrays.setAll(sumWm2, i -> dniWm2[i] * sun.cosZenith(i) + dhiWm2[i]);
        Fit fit = Fit.of(sumWm2, light(TUCSON, 6), higherThan(sun, 10));
        assertThat(fit.bias()).isCloseTo(-0.0159, within(0.001));
        assertThat(fit.rmseWm2()).isCloseTo(10.9, within(0.3));
    }

    /**
     * The same day against the clear sky of Ineichen and Perez, its haze being that which makes the beam at noon what it was.
     * Clear-sky models stay within 3 to 7 % of global light (P. Ineichen, 2016, Solar Energy 132, 332; from memory). Found, sun
     * above 10°: turbidity 2.35, −2.9 % in global light, of which the instruments among themselves leave 1.6 open.
     */
    @Test
    void clearSkyOfAClearDay() throws IOException {
        double elevationM = 786;
        SunPath sun = tucsonSun();
        int noon = 12 * 60;
        double clean = (0.664 + 0.163 * Math.exp(elevationM / 8000)) * sun.extraterrestrialWm2(noon);
        double turbidity = 1 + Math.log(clean / light(TUCSON, 4)[noon]) / (0.09 * airMass(sun, noon, elevationM));
        boolean[] counts = higherThan(sun, 10);
        double[] modelWm2 = new double[sun.steps()];
        for (int i = 0; i < modelWm2.length; i++) {
            if (counts[i]) {
                modelWm2[i] = ClearSky.ineichenGhiWm2(
                        sun.cosZenith(i),
                        airMass(sun, i, elevationM),
                        turbidity,
                        elevationM,
                        sun.extraterrestrialWm2(i));
            }
        }
        Fit fit = Fit.of(modelWm2, light(TUCSON, 6), counts);
        assertThat(turbidity).isCloseTo(2.35, within(0.01));
        assertThat(fit.bias()).isCloseTo(-0.0291, within(0.002));
        assertThat(fit.rmseWm2()).isCloseTo(17.1, within(0.3));
    }

    private static double airMass(SunPath sun, int step, double elevationM) {
        double zenithDeg = Math.toDegrees(Math.acos(sun.cosZenith(step)));
        return AirMass.absolute(AirMass.kastenYoung(zenithDeg), AirMass.standardPressurePa(elevationM));
    }

    /**
     * The same day's hourly means laid back onto minutes: 1.6 % of the mean global light, and on a clear day nothing more than
     * the change of the air's path within the hour. On a cloudy day it would be much more: clouds within an hour are not in its
     * mean. The energy of each hour is kept, so that the bias is nothing but rounding.
     */
    @Test
    void hourlyMeansBackToMinutes() throws IOException {
        double[] ghiWm2 = light(TUCSON, 6);
        double[] dhiWm2 = light(TUCSON, 5);
        SunPath sun = tucsonSun();
        WeatherSeries hours = hourly(ghiWm2, dhiWm2);
        MinuteWeather minutes = MinuteWeather.of(
                hours, sun.cosZenith(), sun.extraterrestrialWm2(), epoch("2018-10-18T00:00"), 60, ghiWm2.length);
        double[] ghiBackWm2 = new double[ghiWm2.length];
        double[] dhiBackWm2 = new double[ghiWm2.length];
        Arrays.setAll(ghiBackWm2, minutes::ghiWm2);
        Arrays.setAll(dhiBackWm2, minutes::dhiWm2);
        boolean[] day = higherThan(sun, 0);
        Fit global = Fit.of(ghiBackWm2, ghiWm2, day);
        assertThat(global.bias()).isCloseTo(0, within(1e-3));
        assertThat(global.rmseWm2()).isCloseTo(7.8, within(0.3));
        assertThat(global.meanWm2()).isCloseTo(501.4, within(0.1));
        assertThat(Fit.of(dhiBackWm2, dhiWm2, day).rmseWm2()).isCloseTo(3.6, within(0.3));
    }

    private static SunPath tucsonSun() {
        return SunPath.of(32.2297, -110.9553, 786, epoch("2018-10-18T00:00"), 60, 1440);
    }

    private static WeatherSeries hourly(double[] ghiWm2, double[] dhiWm2) {
        int hours = ghiWm2.length / 60;
        double[] ghi = new double[hours];
        double[] dhi = new double[hours];
        double[] unknown = new double[hours];
        double[] any = new double[hours];
        Arrays.fill(unknown, Double.NaN);
        Arrays.fill(any, 10);
        for (int i = 0; i < ghiWm2.length; i++) {
            ghi[i / 60] += ghiWm2[i] / 60;
            dhi[i / 60] += dhiWm2[i] / 60;
        }
        SeriesInfo info = new SeriesInfo(
                "Tucson", 32.2297, -110.9553, 786, -7, epoch("2018-10-18T00:00"), 3600, false, 0.5, List.of());
        return SkyCompletion.complete(WeatherSeries.of(info, ghi, unknown, dhi, any, any, any, any));
    }
}
