package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import ampdays.alternator.OutputPoint;
import ampdays.trip.Vehicle;
import ampdays.units.QuantityException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a designer types about alternators: points of a curve, and fast idle. */
class CurvePointsTest {
    @Test
    void readsPointsAsAPersonWritesThem() throws QuantityException {
        assertThat(CurvePoints.parse("1800 rpm 120 A, 2500rpm 190A; 6000 1/min 260 amps"))
                .containsExactly(new OutputPoint(1800, 120), new OutputPoint(2500, 190), new OutputPoint(6000, 260));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1800 rpm|is not a rotor speed and a current. Write points like: 1800 rpm 120 A",
                "1800 120|is not a rotor speed and a current",
                "1800 rpm 120 V|is a voltage. Write a current such as 10 A",
                "2500 rpm 190 A, 1800 rpm 120 A|Write the points by rising speed",
                "1800 rpm 9000 A|must lie from 0"
            })
    void tellsWhatIsWrongWithAPoint(String text, String message) {
        assertThatThrownBy(() -> CurvePoints.parse(text))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining(message);
    }

    @Test
    void fastIdleIsAStateOfTheVehicle() throws QuantityException {
        TimetableLine line = TimetableLine.parse("10:00 fast idle shade, away");
        assertThat(line.vehicle()).isEqualTo(Vehicle.FAST_IDLING);
        assertThat(line.shade()).isEqualTo("shade");
        assertThat(TimetableLine.parse("10:00 idle, away").vehicle()).isEqualTo(Vehicle.IDLING);
    }
}
