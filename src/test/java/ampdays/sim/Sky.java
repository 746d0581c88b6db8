package ampdays.sim;

import ampdays.sun.DiffuseSplit;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Invented hourly skies for tests: light that follows the sun's height, dimmed by clouds at random. */
final class Sky {
    private static final long JULY_FIRST = LocalDateTime.of(2026, 7, 1, 0, 0).toEpochSecond(ZoneOffset.ofHours(-7));

    private Sky() {}

    static SeriesInfo info(double latitudeDeg, int stepSeconds, int shiftSeconds) {
        return new SeriesInfo(
                "invented",
                latitudeDeg,
                -112,
                340,
                -7,
                JULY_FIRST + shiftSeconds,
                stepSeconds,
                false,
                1,
                List.of("given"));
    }

    /** Days of light as it falls at the right time, in a series whose stamps are late by a shift. */
    static WeatherSeries shifted(int days, int stepSeconds, int shiftSeconds, long cloudSeed) {
        int size = days * 86_400 / stepSeconds;
        IntervalSun sun = IntervalSun.of(info(33.4, stepSeconds, 0), size);
        Random random = new Random(cloudSeed);
        double[] ghiWm2 = new double[size];
        double[] dhiWm2 = new double[size];
        double[] dniWm2 = new double[size];
        for (int row = 0; row < size; row++) {
            double clearness = cloudSeed == 0 ? 0.72 : 0.75 * Math.sqrt(random.nextDouble());
            double height = sun.height(row);
            ghiWm2[row] = clearness * sun.extraterrestrialWm2(row) * height;
            dhiWm2[row] = DiffuseSplit.erbsDhiWm2(ghiWm2[row], height, sun.extraterrestrialWm2(row));
            dniWm2[row] = height > 0 ? (ghiWm2[row] - dhiWm2[row]) / height : 0;
        }
        return light(info(33.4, stepSeconds, shiftSeconds), ghiWm2, dniWm2, dhiWm2);
    }

    static WeatherSeries light(SeriesInfo info, double[] ghiWm2, double[] dniWm2, double[] dhiWm2) {
        double[] any = new double[ghiWm2.length];
        Arrays.fill(any, 10);
        return WeatherSeries.of(info, ghiWm2, dniWm2, dhiWm2, any, any, any, any);
    }
}
