package ampdays.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirMassTest {
    /** Source: table airmass_pressure; its zenith has 3 decimals but is the exact input, the rest 10 digits. */
    @Test
    void agreesWithTheTable() {
        for (var row : ReferenceTable.rows("airmass_pressure")) {
            double relative = AirMass.kastenYoung(row.number("apparent_zenith_deg"));
            double pressurePa = AirMass.standardPressurePa(row.number("altitude_m"));
            assertThat(relative)
                    .as(row.toString())
                    .isCloseTo(row.number("airmass_kasten_young_1989"), within(1e-8 * 40));
            assertThat(pressurePa).as(row.toString()).isCloseTo(row.number("pressure_Pa"), within(1e-4));
            assertThat(AirMass.absolute(relative, pressurePa))
                    .as(row.toString())
                    .isCloseTo(row.number("airmass_absolute"), within(4e-7));
        }
    }

    /** Source: expected values of the reference library's own tests; tolerance is their last digit. */
    @ParameterizedTest
    @CsvSource({"89.9, 36.467", "80, 5.586", "0, 1.000"})
    void relativeAirMass(double zenithDeg, double expected) {
        assertThat(AirMass.kastenYoung(zenithDeg)).isCloseTo(expected, within(0.0005));
    }

    /** Source: expected values of the reference library's own tests; tolerance is their last digit. */
    @ParameterizedTest
    @CsvSource({"-100, 102532.073", "0, 101324.999", "1000, 89874.750", "8000, 35600.496"})
    void pressureByElevation(double elevationM, double expectedPa) {
        assertThat(AirMass.standardPressurePa(elevationM)).isCloseTo(expectedPa, within(0.001));
    }

    /** Definition: no way of light exists from a sun below the horizon. */
    @Test
    void isUndefinedBelowTheHorizon() {
        assertThat(AirMass.kastenYoung(90.1)).isNaN();
    }
}
