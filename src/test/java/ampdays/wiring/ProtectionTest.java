package ampdays.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProtectionTest {
    private static Protection of(ProtectionKind kind, double ratingA) {
        return new Protection(
                kind,
                ratingA,
                kind.usualCalibrationC(),
                kind.usualInterruptA(12.8),
                Place.BONNET,
                Optional.empty(),
                0.1);
    }

    /** Source: a maker's family of thermal breakers calibrated at 40 °C, its 100 A frame; about 80 A under a hot bonnet. */
    @ParameterizedTest
    @CsvSource({"20, 100", "40, 100", "50, 96", "55, 92", "60, 85", "65, 80", "70, 69"})
    void thermalBreakerHolds(double ownC, double holdA) {
        assertThat(of(ProtectionKind.THERMAL_BREAKER, 100).holdA(ownC, 0)).isCloseTo(holdA, within(1e-9));
    }

    /** Source: the same family, its 50 A frame at 70 °C: 40 A; the 100 A frame's curve is harsher (34.5 A). */
    @Test
    void theCurveIsOnTheCarefulSideOfASmallerFrame() {
        assertThat(of(ProtectionKind.THERMAL_BREAKER, 50).holdA(70, 0)).isLessThan(40);
    }

    /** Source: makers' pages, hydraulic-magnetic breakers hold the same in any heat. */
    @Test
    void magneticBreakerDoesNotMindHeat() {
        assertThat(of(ProtectionKind.MAGNETIC_BREAKER, 100).holdA(70, 0)).isEqualTo(100);
    }

    /** Source: published altitude rule of fuses, 30 A at 3,000 m is 28.5 A; its slope by temperature, 0.2 %/K. */
    @Test
    void fusesInThinAirAndHeat() {
        assertThat(of(ProtectionKind.BLADE_FUSE, 30).holdA(25, 3000)).isCloseTo(28.5, within(1e-9));
        assertThat(of(ProtectionKind.BLADE_FUSE, 30).holdA(25, 2000)).isEqualTo(30);
        assertThat(of(ProtectionKind.BLADE_FUSE, 30).holdA(75, 0)).isCloseTo(27, within(1e-9));
        assertThat(of(ProtectionKind.STRIP_FUSE, 200).holdA(65, 0)).isCloseTo(160, within(1e-9));
    }

    /** Whatever the heat, nothing holds more than its rating or less than nothing. */
    @ParameterizedTest
    @CsvSource({"-40", "25", "90", "400", "Infinity"})
    void boundsOfHold(double ownC) {
        for (ProtectionKind kind : ProtectionKind.values()) {
            assertThat(of(kind, 100).holdA(ownC, 0)).isBetween(0.0, 100.0);
        }
    }

    /** Source: trade articles: blade 1 kA, strip up to 6 kA, post 10 kA at 14 V, class T 20 kA; small cubes 2 kA at 58 V. */
    @Test
    void usualInterruptRatings() {
        assertThat(ProtectionKind.BLADE_FUSE.usualInterruptA(12.8)).isEqualTo(1000);
        assertThat(ProtectionKind.STRIP_FUSE.usualInterruptA(12.8)).isEqualTo(6000);
        assertThat(ProtectionKind.POST_FUSE.usualInterruptA(14)).isEqualTo(10_000);
        assertThat(ProtectionKind.POST_FUSE.usualInterruptA(58)).isEqualTo(2000);
        assertThat(ProtectionKind.CLASS_T_FUSE.usualInterruptA(51.2)).isEqualTo(20_000);
    }

    /**
     * Source: ISO 8820-3 as a maker quotes it, 600 % for at most 0.1 s: a 30 A blade fuse lets 3,240 A²s through. A breaker
     * contact of 20 ms (from memory) at 5 kA: 500,000 A²s.
     */
    @Test
    void letThrough() {
        assertThat(ProtectionKind.BLADE_FUSE.letThroughA2s(30, 1000)).isCloseTo(3240, within(1e-9));
        assertThat(ProtectionKind.MAGNETIC_BREAKER.letThroughA2s(100, 5000)).isCloseTo(500_000, within(1e-6));
    }

    /** Source: IEC 60364-4-43, k = 115 and 143: 35 mm² at 10 kA stands 0.162 and 0.250 s. */
    @Test
    void withstand() {
        assertThat(Fault.withstandA2s(35, 75) / 1e8).isCloseTo(0.162, within(5e-4));
        assertThat(Fault.withstandA2s(35, 105) / 1e8).isCloseTo(0.250, within(6e-4));
    }

    /** Source: a maker's bound of 0.2 mΩ a cell and 0.5 mΩ of links: 10.2 kA from 200 Ah at 12 V; strings add. */
    @Test
    void faultCurrentOfTheBank() {
        assertThat(Fault.lithiumA(4, 1, 200)).isCloseTo(10_200, within(50.0));
        assertThat(Fault.lithiumA(4, 3, 200)).isCloseTo(3 * Fault.lithiumA(4, 1, 200), within(1e-6));
        assertThat(Fault.lithiumA(16, 1, 200)).isCloseTo(Fault.lithiumA(4, 1, 200), within(1e-6));
    }

    /** Identity: 1 mΩ of cable halves the current of a source of 1 mΩ. */
    @Test
    void cableLimitsTheFault() {
        assertThat(Fault.behindA(13_000, 13, 0.001)).isCloseTo(6500, within(1e-9));
        assertThat(Fault.behindA(13_000, 13, 0)).isEqualTo(13_000);
    }
}
