package ampdays.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PsychrometricsTest {
    /**
     * Source: saturation pressure over water of the steam tables (ASHRAE Handbook of Fundamentals, thermodynamic properties
     * of water at saturation), from memory to 4 digits; the Magnus form is good to 0.4 %.
     */
    @ParameterizedTest
    @CsvSource({"0, 611.2", "10, 1228", "20, 2339", "30, 4247", "40, 7384", "50, 12352"})
    void saturationPressure(double temperatureC, double expectedPa) {
        assertThat(Psychrometrics.saturationPa(temperatureC)).isCloseTo(expectedPa, within(0.004 * expectedPa));
    }

    /**
     * Source: psychrometric chart at sea level (ASHRAE), from memory to 3 digits: saturated air at 20 °C has 14.7 g/kg, at
     * 10 °C 7.66 g/kg, at 0 °C 3.79 g/kg. Ideal gases leave out the enhancement of 0.4 %.
     */
    @ParameterizedTest
    @CsvSource({"20, 0.0147", "10, 0.00766", "0, 0.00379"})
    void humidityRatio(double dewPointC, double expected) {
        assertThat(Psychrometrics.humidityRatio(dewPointC, 101_325)).isCloseTo(expected, within(0.007 * expected));
    }

    /** Identity: the dew point at 100 % is the air temperature; at any humidity its vapour pressure is that share. */
    @Test
    void dewPointUndoesHumidity() {
        assertThat(Psychrometrics.dewPointC(31, 1)).isCloseTo(31, within(1e-9));
        double dewPointC = Psychrometrics.dewPointC(41, 0.17);
        assertThat(Psychrometrics.saturationPa(dewPointC) / Psychrometrics.saturationPa(41))
                .isCloseTo(0.17, within(1e-12));
    }
}
