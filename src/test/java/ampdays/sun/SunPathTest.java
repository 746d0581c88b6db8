package ampdays.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SunPathTest {
    /** Degrees; asked for are 0.02, the table grants a full implementation 0.0005. */
    private static final double TOLERANCE_DEG = 0.001;

    private static double offDeg(SunPath path, int step, double zenithDeg, double azimuthDeg) {
        double zenith = Math.toRadians(zenithDeg);
        double azimuth = Math.toRadians(azimuthDeg);
        double up = path.cosZenith(step) - Math.cos(zenith);
        double east = path.east(step) - Math.sin(zenith) * Math.sin(azimuth);
        double north = path.north(step) - Math.sin(zenith) * Math.cos(azimuth);
        return Math.toDegrees(Math.sqrt(up * up + east * east + north * north));
    }

    /**
     * Source: table sun_position. The sun stands at different places between two nodes because each of five starts is
     * tried.
     */
    @ParameterizedTest
    @ValueSource(ints = {0, 29, 61, 90, 150})
    void agreesWithTheTableAboveTheHorizon(int minutesBefore) {
        for (var row : ReferenceTable.rows("sun_position")) {
            if (row.number("apparent_elevation_deg") <= 0) {
                continue;
            }
            long start = Instant.parse(row.text("time_utc")).getEpochSecond() - 60L * minutesBefore - 30;
            SunPath path = SunPath.of(
                    row.number("latitude_deg"),
                    row.number("longitude_deg"),
                    row.number("pressure_Pa"),
                    row.number("temperature_C"),
                    start,
                    60,
                    minutesBefore + 1);
            double offDeg = offDeg(path, minutesBefore, row.number("apparent_zenith_deg"), row.number("azimuth_deg"));
            assertThat(offDeg).as(row.toString()).isLessThan(TOLERANCE_DEG);
        }
    }

    /** Source: the full algorithm, on every minute that the sun is up of a day in each of three years of real files. */
    @ParameterizedTest
    @ValueSource(strings = {"1976-07-01T07:00:00Z", "2001-07-01T07:00:00Z", "2026-12-21T07:00:00Z"})
    void followsTheFullAlgorithmMinuteByMinute(String start) {
        Instant begin = Instant.parse(start);
        SunPath path = SunPath.of(33.45, -112, 337, begin.getEpochSecond(), 60, 1440);
        for (int i = 0; i < path.steps(); i++) {
            SunPosition sun = SunPosition.at(begin.plusSeconds(60L * i + 30), 33.45, -112, 337);
            if (sun.apparentZenithDeg() < 90) {
                assertThat(offDeg(path, i, sun.apparentZenithDeg(), sun.azimuthDeg()))
                        .as("minute " + i)
                        .isLessThan(TOLERANCE_DEG);
                assertThat((path.azimuthDeg(i) - sun.azimuthDeg()) * Math.sin(Math.toRadians(sun.zenithDeg())))
                        .as("azimuth of minute " + i)
                        .isCloseTo(0, within(TOLERANCE_DEG));
            }
        }
    }

    /** Identity: a step of ten minutes has the same middle as the sixth step of 10/11 of it; here 600 s against 120 s. */
    @Test
    void theStepOnlyChoosesWhereThePathIsRead() {
        SunPath coarse = SunPath.of(-24, 134, 500, 1_770_000_000L, 600, 100);
        SunPath fine = SunPath.of(-24, 134, 500, 1_770_000_000L, 120, 500);
        for (int i = 0; i < 100; i++) {
            assertThat(coarse.cosZenith(i)).isCloseTo(fine.cosZenith(5 * i + 2), within(1e-12));
        }
    }

    /** Definition: the mean of {@code max(cos z, 0)} over a group of steps. */
    @Test
    void meanHeightOfAnHour() {
        SunPath path = SunPath.of(33.45, -112, 337, 1_770_000_000L, 300, 288);
        double[] hourly = path.meanCosZenith(12);
        assertThat(hourly).hasSize(24);
        double sum = 0;
        for (int i = 12; i < 24; i++) {
            sum += Math.max(path.cosZenith(i), 0);
        }
        assertThat(hourly[1]).isCloseTo(sum / 12, within(1e-15));
    }
}
