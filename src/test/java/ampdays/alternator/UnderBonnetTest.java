package ampdays.alternator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class UnderBonnetTest {
    private static UnderBonnet after(EngineState state, int minutes, double stepS) {
        UnderBonnet air = new UnderBonnet(Machines.ENGINE, stepS);
        go(air, state, minutes, stepS);
        return air;
    }

    private static void go(UnderBonnet air, EngineState state, int minutes, double stepS) {
        for (int i = 0; i < minutes * 60 / stepS; i++) {
            air.step(state);
        }
    }

    /** Source: heat soak after a drive is 10 to 20 K in a few minutes (common practice, no source). */
    @ParameterizedTest
    @EnumSource(names = {"TOWN", "HIGHWAY"})
    void soakAfterADrive(EngineState road) {
        UnderBonnet air = after(road, 60, 60);
        double drivingK = air.riseK();
        double peakK = drivingK;
        int peakMinute = 0;
        for (int minute = 1; minute <= 240; minute++) {
            air.step(EngineState.STOPPED);
            peakMinute = air.riseK() > peakK ? minute : peakMinute;
            peakK = air.riseK() > peakK ? air.riseK() : peakK;
        }
        assertThat(peakK - drivingK).isBetween(10.0, 20.0);
        assertThat(peakMinute).isBetween(3, 12);
        assertThat(air.riseK()).isLessThan(drivingK);
    }

    /** A short run from cold leaves less to soak than a long one. */
    @Test
    void aShortRunSoaksLess() {
        UnderBonnet brief = after(EngineState.HIGHWAY, 3, 60);
        UnderBonnet full = after(EngineState.HIGHWAY, 60, 60);
        go(brief, EngineState.STOPPED, 8, 60);
        go(full, EngineState.STOPPED, 8, 60);
        assertThat(brief.riseK()).isBetween(0.2 * full.riseK(), 0.5 * full.riseK());
    }

    /** Minutes or ten seconds give the same air: the solution is exact (identity). */
    @Test
    void doesNotDependOnTheStep() {
        UnderBonnet coarse = after(EngineState.TOWN, 20, 60);
        UnderBonnet fine = after(EngineState.TOWN, 20, 10);
        go(coarse, EngineState.STOPPED, 25, 60);
        go(fine, EngineState.STOPPED, 25, 10);
        go(coarse, EngineState.IDLE, 5, 60);
        go(fine, EngineState.IDLE, 5, 10);
        assertThat(coarse.riseK()).isCloseTo(fine.riseK(), within(1e-9));
    }

    /** The mean of a minute is that of its six parts (identity), with the engine on and after a stop. */
    @ParameterizedTest
    @EnumSource(names = {"HIGHWAY", "STOPPED"})
    void meanOfAStepIsThatOfItsParts(EngineState now) {
        UnderBonnet coarse = after(EngineState.TOWN, 20, 60);
        UnderBonnet fine = after(EngineState.TOWN, 20, 10);
        coarse.step(now);
        double sumK = 0;
        for (int i = 0; i < 6; i++) {
            fine.step(now);
            sumK += fine.meanRiseK();
        }
        assertThat(coarse.meanRiseK()).isCloseTo(sumK / 6, within(1e-9));
        assertThat(coarse.meanRiseK()).isNotCloseTo(coarse.riseK(), within(0.01));
    }

    /** Source: the same equations by the Dormand-Prince 8(5,3) method of Commons Math, to 1e-9. */
    @Test
    void soakIsTheSolutionOfItsEquations() {
        UnderBonnet air = after(EngineState.HIGHWAY, 600, 60);
        double[] y = {20, 1};
        for (int minute = 1; minute <= 30; minute++) {
            air.step(EngineState.STOPPED);
        }
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-6, 1, 1e-11, 1e-11);
        integrator.integrate(
                new Equations(2, (t, at, rate) -> {
                    rate[0] = (45 * at[1] - at[0]) / 3;
                    rate[1] = -at[1] / 60;
                }),
                0,
                y,
                30,
                y);
        assertThat(air.riseK()).isCloseTo(y[0], within(1e-6));
    }
}
