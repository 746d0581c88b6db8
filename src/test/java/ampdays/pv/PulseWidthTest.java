package ampdays.pv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PulseWidthTest {
    /**
     * A 36-cell panel of 100 W and 18 V gives 5.56 A whatever the battery's voltage below 18 V, so at 13.2 V 73.3 W: Kirchhoff's
     * laws.
     */
    @Test
    void currentOfTheBestPointAtTheBatterysVoltage() {
        assertThat(PulseWidth.currentA(100, 18, 13.2)).isCloseTo(100 / 18.0, within(1e-12));
        assertThat(PulseWidth.currentA(100, 18, 18)).isCloseTo(100 / 18.0, within(1e-12));
    }

    /** Beyond the best voltage it falls to nothing at open circuit, and the power is never above that of the best point. */
    @Test
    void fallsToOpenCircuit() {
        assertThat(PulseWidth.currentA(100, 12, 14.4)).isCloseTo(0, within(1e-12));
        assertThat(PulseWidth.currentA(100, 12, 20)).isZero();
        for (double heldV = 8; heldV < 26; heldV += 0.1) {
            assertThat(heldV * PulseWidth.currentA(100, 18, heldV)).isLessThanOrEqualTo(100 + 1e-9);
        }
    }

    /** Source: published coefficients of Vmp, −0.407 to −0.432 %/K (NREL mPERT set, crystalline): 18 V at 65 °C is 14.9 to 15.1. */
    @Test
    void bestVoltageFallsWithHeat() {
        assertThat(PulseWidth.bestV(18, 25)).isEqualTo(18);
        assertThat(PulseWidth.bestV(18, 65)).isBetween(14.85, 15.1);
    }
}
