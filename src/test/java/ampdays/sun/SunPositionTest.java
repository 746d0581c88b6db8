package ampdays.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunPositionTest {
    /**
     * Source: table sun_position (same algorithm): 0.0005 degrees as its heading suggests. Below the horizon only the
     * unrefracted angles are compared, because there refraction is continued differently here.
     */
    @Test
    void agreesWithTheTable() {
        for (var row : ReferenceTable.rows("sun_position")) {
            SunPosition sun = SunPosition.at(
                    Instant.parse(row.text("time_utc")),
                    row.number("latitude_deg"),
                    row.number("longitude_deg"),
                    row.number("altitude_m"),
                    row.number("pressure_Pa"),
                    row.number("temperature_C"));
            assertThat(sun.zenithDeg()).as(row.toString()).isCloseTo(row.number("zenith_deg"), within(0.0005));
            if (row.number("apparent_elevation_deg") > 0) {
                assertThat(sun.apparentZenithDeg())
                        .as(row.toString())
                        .isCloseTo(row.number("apparent_zenith_deg"), within(0.0005));
            }
            // The same angle across the sky is a larger azimuth near the zenith.
            double level = Math.sin(Math.toRadians(sun.zenithDeg()));
            assertThat((sun.azimuthDeg() - row.number("azimuth_deg")) * level)
                    .as(row.toString())
                    .isCloseTo(0, within(0.0005));
        }
    }

    /**
     * Source: worked example of the algorithm's report (I. Reda and A. Andreas, NREL/TP-560-34302, table A5.1): zenith
     * 50.11162, azimuth 194.340241 at 820 mbar and 11 °C; delta-T is estimated here instead of 67 s.
     */
    @Test
    void workedExampleOfTheReport() {
        SunPosition sun =
                SunPosition.at(Instant.parse("2003-10-17T19:30:30Z"), 39.742476, -105.1786, 1830.14, 82_000, 11);
        assertThat(sun.apparentZenithDeg()).isCloseTo(50.11162, within(0.0001));
        assertThat(sun.azimuthDeg()).isCloseTo(194.340241, within(0.0001));
    }

    /** Source: expected values of the reference library's own tests (32.2 N, 111 W, 700 m, 24 June 2014, UTC − 7). */
    @ParameterizedTest
    @CsvSource({
        "2014-06-24T13:00:00Z, 82.977056, 66.714103",
        "2014-06-24T19:00:00Z, 10.567258, 144.765678",
        "2014-06-25T01:00:00Z, 72.469036, 287.041041"
    })
    void desertInJune(String instant, double zenithDeg, double azimuthDeg) {
        SunPosition sun = SunPosition.at(Instant.parse(instant), 32.2, -111, 700);
        assertThat(sun.zenithDeg()).isCloseTo(zenithDeg, within(0.0005));
        assertThat(sun.azimuthDeg()).isCloseTo(azimuthDeg, within(0.001));
    }

    /**
     * Source: table sun_position_spencer, the Fourier series of J. W. Spencer, 1971, Search 2 (5), 172, by the number of the
     * day: another author's way to the same sun. Its heading bounds it by 0.571°, and on average such series are off by 0.18°;
     * beside it the table has the full algorithm, which is met within 0.0005°.
     */
    @Test
    void agreesWithAFourierSeriesAsFarAsThatGoes() {
        double squares = 0;
        var rows = ReferenceTable.rows("sun_position_spencer");
        for (var row : rows) {
            SunPosition sun = SunPosition.at(
                    Instant.parse(row.text("time_utc")), row.number("latitude_deg"), row.number("longitude_deg"), 0);
            double offDeg = sun.zenithDeg() - row.number("zenith_deg");
            assertThat(offDeg).as(row.toString()).isCloseTo(0, within(0.572));
            squares += offDeg * offDeg;
            assertThat(sun.zenithDeg()).as(row.toString()).isCloseTo(row.number("spa_zenith_deg"), within(0.0005));
            double level = Math.sin(Math.toRadians(sun.zenithDeg()));
            assertThat((sun.azimuthDeg() - row.number("spa_azimuth_deg")) * level)
                    .as(row.toString())
                    .isCloseTo(0, within(0.0005));
        }
        assertThat(Math.sqrt(squares / rows.size())).isCloseTo(0.18, within(0.01));
    }
}
