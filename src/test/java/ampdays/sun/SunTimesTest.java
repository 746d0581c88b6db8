package ampdays.sun;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.ReferenceTable;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class SunTimesTest {
    /**
     * Source: table sunrise_sunset (same algorithm): 2 s as its heading suggests. Sunrise and sunset may belong to
     * neighbouring UTC days there; as the heading says, those are compared modulo a day, where two minutes of drift between
     * days are allowed.
     */
    @Test
    void agreesWithTheTable() {
        for (var row : ReferenceTable.rows("sunrise_sunset")) {
            SunTimes times = SunTimes.of(
                    LocalDate.parse(row.text("date_utc")), row.number("latitude_deg"), row.number("longitude_deg"));
            assertClose(times.noon(), row, "transit_utc");
            assertClose(times.sunrise().orElseThrow(), row, "sunrise_utc");
            assertClose(times.sunset().orElseThrow(), row, "sunset_utc");
        }
    }

    private static void assertClose(Instant made, ReferenceTable.Row row, String column) {
        Instant expected = Instant.parse(row.text(column));
        double seconds = Math.abs(Duration.between(made, expected).toMillis()) / 1000.0;
        double days = Math.rint(seconds / 86_400);
        assertThat(Math.abs(seconds - days * 86_400))
                .as(column + " " + made + " against " + row)
                .isLessThan(days == 0 ? 2.0 : 125.0);
    }

    /** Definition: in polar night the sun neither rises nor sets. */
    @Test
    void polarNightHasNoSunrise() {
        SunTimes times = SunTimes.of(LocalDate.of(2026, 12, 21), 78, 15);
        assertThat(times.sunrise()).isEmpty();
        assertThat(times.sunset()).isEmpty();
    }
}
