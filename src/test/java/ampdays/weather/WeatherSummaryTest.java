package ampdays.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;

class WeatherSummaryTest {
    /** Definition, worked by hand: 40 days from 20 July; day d is (30 + d) °C by day, 10 K less by night, 24 h of 100 W/m². */
    @Test
    void meansAndHottestWeek() {
        SeriesInfo info = TestSeries.info(LocalDateTime.of(2025, 7, 20, 0, 0), 3600, false, 0);
        WeatherSeries series = TestSeries.of(
                info, 40 * 24, k -> 100, k -> 100, k -> (k / 24 < 30 ? 30 + k / 24 : 30) - (k % 24 < 12 ? 10 : 0));
        WeatherSummary summary = WeatherSummary.of(series);
        assertThat(summary.months()).extracting(WeatherSummary.Month::month).containsExactly(7, 8);
        WeatherSummary.Month july = summary.months().get(0);
        assertThat(july.days()).isEqualTo(12);
        assertThat(july.ghiKwhM2()).isCloseTo(2.4, within(1e-12));
        assertThat(july.maxC()).isCloseTo(30 + 5.5, within(1e-12));
        assertThat(july.minC()).isCloseTo(20 + 5.5, within(1e-12));
        WeatherSummary.Week week = summary.hottestWeek().orElseThrow();
        assertThat(week.firstDay()).isEqualTo(LocalDate.of(2025, 8, 12));
        assertThat(week.maxC()).isCloseTo(30 + 26, within(1e-12));
        assertThat(week.ghiKwhM2()).isCloseTo(2.4, within(1e-12));
    }

    /** Definition: days cut by an end of the series count nowhere. */
    @Test
    void cutDaysDoNotCount() {
        SeriesInfo info = TestSeries.info(LocalDateTime.of(2025, 7, 20, 6, 0), 3600, false, 0);
        WeatherSummary summary = WeatherSummary.of(TestSeries.of(info, 48, k -> 1, k -> 1, k -> 20));
        assertThat(summary.months()).hasSize(1);
        assertThat(summary.months().get(0).days()).isEqualTo(1);
        assertThat(summary.hottestWeek()).isEmpty();
    }
}
