package ampdays.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a series refuses and keeps to itself: this program's own rules, no outside source. */
class WeatherSeriesTest {
    @Test
    void aSeriesDoesNotShareItsColumns() {
        double[] ghiWm2 = {100, 200};
        double[] none = {0, 0};
        WeatherSeries series = WeatherSeries.of(info(3600, false, 1), ghiWm2, none, none, none, none, none, none);
        ghiWm2[0] = 999;
        assertThat(series.ghiWm2(0)).isEqualTo(100);
    }

    @Test
    void newLightKeepsAllElseAndAddsItsNotes() {
        double[] none = {0, 0};
        double[] air = {20, 21};
        WeatherSeries series = WeatherSeries.of(info(3600, false, 1), none, none, none, air, none, none, none)
                .withIrradiance(new double[] {1, 2}, none, none, List.of("made up"));
        assertThat(series.ghiWm2(1)).isEqualTo(2);
        assertThat(series.airC(1)).isEqualTo(21);
        assertThat(series.notes()).containsExactly("given", "made up");
    }

    @Test
    void columnsOfDifferentLengthAreRefused() {
        double[] two = {0, 0};
        assertThatThrownBy(() -> WeatherSeries.of(info(3600, false, 1), two, two, two, two, two, new double[] {1}, two))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The columns of a weather series differ in length: 2 and 1.");
    }

    @Test
    void noRowsAreRefused() {
        double[] none = {};
        assertThatThrownBy(() -> WeatherSeries.of(info(3600, false, 1), none, none, none, none, none, none, none))
                .hasMessage("A weather series has at least one interval.");
    }

    @Test
    void aTypicalYearHasNoMoreThanItsDays() {
        double[] many = new double[8761];
        assertThatThrownBy(() -> WeatherSeries.of(info(3600, true, 1), many, many, many, many, many, many, many))
                .hasMessage("A typical year has at most 365 days.");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -60, 7, 50_000, 86_401})
    void anIntervalDividesADay(int seconds) {
        assertThatThrownBy(() -> info(seconds, false, 1))
                .hasMessage("The interval of a weather series divides a day; " + seconds + " s does not.");
    }

    @ParameterizedTest
    @CsvSource({
        "90.1, 0, 0, 0, The latitude of a weather series is -90.0 to 90.0",
        "NaN, 0, 0, 0, The latitude of a weather series is -90.0 to 90.0",
        "0, -181, 0, 0, The longitude of a weather series is -180.0 to 180.0",
        "0, 0, 9001, 0, The elevation of a weather series is -500.0 to 9000.0",
        "0, 0, 0, 15, The offset from UTC in hours of a weather series is -12.0 to 14.0"
    })
    void placesThatAreNotOnEarthAreRefused(
            double latitudeDeg, double longitudeDeg, double elevationM, double offsetHours, String message) {
        assertThatThrownBy(() -> new SeriesInfo(
                        "x", latitudeDeg, longitudeDeg, elevationM, offsetHours, 0, 3600, false, 1, List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(message);
    }

    @Test
    void anInstantLiesInItsInterval() {
        assertThatThrownBy(() -> info(3600, false, 1.5))
                .hasMessageStartingWith("The place of the instant in its interval of a weather series is 0.0 to 1.0");
    }

    private static SeriesInfo info(int stepSeconds, boolean typical, double instantShare) {
        return new SeriesInfo("x", 33.4, -112, 340, -7, 0, stepSeconds, typical, instantShare, List.of("given"));
    }

    /** Definition: behind 31 December of a typical year comes its 1 January, and never a 29 February. */
    @Test
    void aPartOfATypicalYearMayCrossNewYear() {
        double[] hours = new double[8760];
        Arrays.setAll(hours, hour -> hour);
        WeatherSeries year = WeatherSeries.of(
                TestSeries.info(LocalDateTime.of(2023, 1, 1, 0, 0), 3600, true, 0),
                hours,
                hours,
                hours,
                hours,
                hours,
                hours,
                hours);
        WeatherSeries part = year.part(8760 - 24, 90 * 24);
        assertThat(part.coverage()).isEqualTo("12-31 to 03-30 of any year");
        assertThat(part.airC(0)).isEqualTo(8736);
        assertThat(part.airC(24)).isZero();
        assertThat(part.localStart(24 + 59 * 24)).isEqualTo("2023-03-01T00:00");
        assertThatThrownBy(() -> part.part(0, 91 * 24)).hasMessageContaining("has no 2184 rows from row 0");
        assertThatThrownBy(() -> part.part(89 * 24, 48)).hasMessageContaining("has no 48 rows");
    }
}
