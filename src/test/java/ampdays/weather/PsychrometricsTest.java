package ampdays.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PsychrometricsTest {
    /**
     * ASHRAE Handbook of Fundamentals, Psychrometrics, table of water at saturation (over liquid from 0 °C), from memory.
     * The table has four digits; the Magnus form keeps to it within 0.3 %, a figure of one digit, hence 0.35 %.
     */
    @ParameterizedTest
    @CsvSource({"0, 611.2", "10, 1228", "20, 2339", "25, 3169", "30, 4247", "40, 7384", "50, 12350"})
    void saturationPressureIsThatOfTheTables(double temperatureC, double pa) {
        assertThat(Psychrometrics.saturationPa(temperatureC)).isCloseTo(pa, within(0.0035 * pa));
    }

    /** 13.9 °C: psychrometric tables, from memory, to their last digit; saturated air is at its dew point by definition. */
    @Test
    void dewPointOfHalfSaturatedAir() {
        assertThat(Psychrometrics.dewPointC(25, 0.5)).isCloseTo(13.9, within(0.05));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-30, -5, 0, 12.5, 25, 45})
    void dewPointSolvesTheSaturationPressure(double airC) {
        assertThat(Psychrometrics.dewPointC(airC, 1)).isCloseTo(airC, within(1e-9));
        for (double humidity = 0.05; humidity < 1; humidity += 0.1) {
            double dewPointC = Psychrometrics.dewPointC(airC, humidity);
            double wantedPa = humidity * Psychrometrics.saturationPa(airC);
            assertThat(Psychrometrics.saturationPa(dewPointC)).isCloseTo(wantedPa, within(1e-9 * wantedPa));
        }
    }

    /**
     * 9.9 g/kg at 25 °C and 50 % at sea level: psychrometric chart, from memory, to its last digit. 14.758 g/kg at 20 °C
     * saturated: ASHRAE table of moist air, from memory; that counts a real gas (0.4 % more vapour), and the Magnus form may
     * be 0.3 % low, hence 0.75 %.
     */
    @Test
    void humidityRatioIsThatOfTheChart() {
        double dewPointC = Psychrometrics.dewPointC(25, 0.5);
        assertThat(Psychrometrics.humidityRatio(dewPointC, 101_325)).isCloseTo(0.0099, within(0.00005));
        assertThat(Psychrometrics.humidityRatio(20, 101_325)).isCloseTo(0.014758, within(0.0075 * 0.014758));
    }

    @Test
    void thinnerAirHoldsMoreWaterPerKilogram() {
        assertThat(Psychrometrics.humidityRatio(12, 80_000)).isGreaterThan(Psychrometrics.humidityRatio(12, 101_325));
    }
}
