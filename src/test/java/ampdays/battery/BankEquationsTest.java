package ampdays.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The step against an integrator of the mathematics library on the same equations. */
class BankEquationsTest {
    private static final double OHM = 0.006;
    private static final double HEAT_J_K = 10_000;
    private static final double HEAT_W_K = 4;
    private static final double CABIN_C = 12;

    /**
     * A week of powers that change every five minutes, in and out. Source: Dormand-Prince 8(5,3) of Commons Math with 1e-10:
     * charge within 0.1 % of the capacity all week, temperature within 0.1 K.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void weekAgainstDormandPrince(long seed) {
        Random random = new Random(seed);
        LithiumBattery bank = Bank.lithium()
                .ohm(OHM)
                .efficiency(0.995)
                .startC(CABIN_C)
                .heatWK(HEAT_W_K)
                .startShare(0.6)
                .absorptionV(100)
                .steps(ChargeSteps.ANY_TEMPERATURE.times(1000))
                .battery();
        double[] exact = {0.6, CABIN_C};
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-6, 60, 1e-10, 1e-10);
        double powerW = 0;
        for (int minute = 0; minute < 7 * 1440; minute++) {
            if (minute % 5 == 0) {
                double towardMiddle = exact[0] > 0.6 ? -300 : 300;
                powerW = towardMiddle + 1000 * (random.nextDouble() - 0.5);
            }
            bank.open();
            double busV = BankPhysics.busV(bank.emfV(), bank.chargeOhm(), 0, powerW);
            bank.settle(powerW / busV, busV, CABIN_C);
            integrator.integrate(new Equations(powerW), 0, exact, 60, exact);
            assertThat(bank.soc()).isCloseTo(exact[0], within(1e-3));
            assertThat(bank.temperatureC()).isCloseTo(exact[1], within(0.1));
        }
        assertThat(exact[1]).isGreaterThan(CABIN_C + 1);
    }

    /** Charge and temperature of the lithium bank, written down anew. */
    private record Equations(double powerW) implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return 2;
        }

        @Override
        public void computeDerivatives(double t, double[] y, double[] rate) {
            double emfV = 4 * OpenCircuit.LITHIUM_IRON_PHOSPHATE.cellV(y[0], y[1]);
            double ohm = OHM * Math.exp(0.02 * (25 - y[1]));
            double current = (Math.sqrt(emfV * emfV + 4 * ohm * powerW) - emfV) / (2 * ohm);
            double kept = current > 0 ? 0.995 * current : current;
            double heatW = ohm * current * current + emfV * (current - kept);
            rate[0] = kept / (100 * 3600);
            rate[1] = (HEAT_W_K * (CABIN_C - y[1]) + heatW) / HEAT_J_K;
        }
    }
}
