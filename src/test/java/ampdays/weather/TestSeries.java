package ampdays.weather;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** Small weather series for tests. */
final class TestSeries {
    static final double UTC_OFFSET_HOURS = -7;

    private TestSeries() {}

    static long utc(LocalDateTime local) {
        return local.toEpochSecond(ZoneOffset.ofHours((int) UTC_OFFSET_HOURS));
    }

    static SeriesInfo info(LocalDateTime start, int stepSeconds, boolean typical, double instantShare) {
        return new SeriesInfo(
                "test.csv",
                33.4,
                -112,
                340,
                UTC_OFFSET_HOURS,
                utc(start),
                stepSeconds,
                typical,
                instantShare,
                List.of());
    }

    static WeatherSeries of(
            SeriesInfo info, int size, IntToDoubleFunction ghi, IntToDoubleFunction dhi, IntToDoubleFunction air) {
        return WeatherSeries.of(
                info,
                column(size, ghi),
                column(size, i -> Double.NaN),
                column(size, dhi),
                column(size, air),
                column(size, i -> 10),
                column(size, i -> i % 5),
                column(size, i -> 97_300));
    }

    private static double[] column(int size, IntToDoubleFunction value) {
        double[] column = new double[size];
        Arrays.setAll(column, value);
        return column;
    }
}
