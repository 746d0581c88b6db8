package ampdays.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ParallelStringsTest {
    /** Source: Kirchhoff's laws as a system of node equations, solved by the mathematics library. */
    @ParameterizedTest
    @CsvSource({"1, 0.006, 0.0003", "2, 0.012, 0.0003", "4, 0.024, 0.0003", "4, 0.006, 0.002", "8, 0.012, 0.0005"})
    void ladderMeetsTheNodeEquations(int count, double stringOhm, double linkOhm) {
        RealMatrix conductances = new Array2DRowRealMatrix(count, count);
        for (int i = 0; i < count; i++) {
            conductances.addToEntry(i, i, 1 / stringOhm);
            if (i > 0) {
                conductances.addToEntry(i, i, 1 / linkOhm);
                conductances.addToEntry(i - 1, i - 1, 1 / linkOhm);
                conductances.addToEntry(i, i - 1, -1 / linkOhm);
                conductances.addToEntry(i - 1, i, -1 / linkOhm);
            }
        }
        double[] oneAmpere = new double[count];
        oneAmpere[0] = 1;
        double volts = new LUDecomposition(conductances)
                .getSolver()
                .solve(new ArrayRealVector(oneAmpere))
                .getEntry(0);
        assertThat(ParallelStrings.bankOhm(count, stringOhm, linkOhm)).isCloseTo(volts, within(1e-12));
        assertThat(ParallelStrings.nearestShare(count, stringOhm, linkOhm)).isCloseTo(volts / stringOhm, within(1e-9));
    }

    /** Without resistance in the links all carry the same (symmetry). */
    @Test
    void idealLinksShareEvenly() {
        assertThat(ParallelStrings.nearestShare(5, 0.01, 0)).isCloseTo(0.2, within(1e-12));
        assertThat(ParallelStrings.bankOhm(5, 0.01, 0)).isCloseTo(0.002, within(1e-15));
    }

    /** The bank is at its limit when its first string is: 4 × 25 A, of which the first takes its share (Kirchhoff). */
    @Test
    void firstStringLimitsTheBank() {
        LithiumBattery bank = Bank.lithium()
                .chargeLimitA(100)
                .dischargeLimitA(100)
                .steps(ChargeSteps.ANY_TEMPERATURE.times(1000))
                .absorptionV(100)
                .strings(4, 0.001)
                .battery();
        bank.open();
        double nearest = ParallelStrings.nearestShare(4, 4 * 0.006, 0.001);
        assertThat(bank.chargeMaxA() * nearest).isCloseTo(25, within(1e-9));
        assertThat(bank.dischargeMaxA() * nearest).isCloseTo(25, within(1e-9));
        assertThat(bank.chargeMaxA()).isLessThan(95);
    }
}
