package ampdays.chart;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.study.Comparison;
import org.junit.jupiter.api.Test;

/** Both scales by hand: 15 °C are 59 °F, 25 °C are 77 °F. */
class FahrenheitTest {
    @Test
    void labelsHaveTheOtherDegreesInTheirPlaceOrBehind() {
        assertThat(Fahrenheit.label("comfort band asleep, 15 to 25 °C")).isEqualTo("comfort band asleep, 59 to 77 °F");
        assertThat(Fahrenheit.both("comfort band asleep, 15 to 25 °C"))
                .isEqualTo("comfort band asleep, 15 to 25 °C (59 to 77 °F)");
        assertThat(Fahrenheit.both("cold, windings at 25 °C")).isEqualTo("cold, windings at 25 °C (77 °F)");
        assertThat(Fahrenheit.both("temperature, °C")).isEqualTo("temperature, °C (°F)");
    }

    @Test
    void besideEachOtherTheLinesStayWhereTheyAre() {
        Comparison comparison = InventedComparison.of(2);
        CabinChart celsius = CabinChart.of(comparison, comparison.options().get(0));
        CabinChart both = (CabinChart) Fahrenheit.beside(celsius);
        assertThat(both.cabinC()).isEqualTo(celsius.cabinC());
        assertThat(both.warmestC()).isEqualTo(celsius.warmestC());
        assertThat(both.bothDegrees()).isTrue();
        assertThat(celsius.bothDegrees()).isFalse();
        CabinChart other = (CabinChart) Fahrenheit.of(celsius);
        assertThat(other.warmestC()).isEqualTo(celsius.warmestC() * 9 / 5 + 32);
        assertThat(other.temperatureLabel()).isEqualTo("temperature, °F");
    }
}
