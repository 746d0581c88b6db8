package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.cabin.CabinSpec;
import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The cabin of a week in the kernel, by exact steps of one minute with constant inputs, against the method of Dormand and
 * Prince, order 8(5,3), of Apache Commons Math on the same equations with inputs that change continuously. They meet at half hours: at full hours the light of an
 * hourly file jumps, which the continuous inputs smear over a minute.
 */
class CabinAgainstIntegratorTest {
    private static final int DAYS = 7;

    @ParameterizedTest
    @ValueSource(strings = {"0 m³/h", "600 m³/h"})
    void aWeekWithinATenthOfAKelvin(String airflow) {
        RunPlan plan = new Van()
                .with("trip.days", Integer.toString(DAYS))
                .with("cabin.people", "0")
                .with("cabin.airing", "off")
                .load("fan", "1 A", "always")
                .with("loads.fan.heat", "0 %")
                .with("loads.fan.airflow", airflow)
                .with("battery.capacity", "4000 Ah")
                .plan(Van.weather(
                        hour -> 24 + 8 * Math.sin((hour - 9) * Math.PI / 12),
                        hour -> 900 * (hour > 6 && hour < 18 ? Math.sin((hour - 6) * Math.PI / 12) : 0)));
        MinuteLog log = Simulator.record(plan, 0, DAYS * 1440);
        Equations equations = new Equations(plan, airflow.startsWith("6") ? 600 : 0);
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-3, 600, 1e-8, 1e-8);
        double[] airAndMassC = {
            plan.sky().weather().airC(0), plan.sky().weather().airC(0)
        };
        for (int hour = 0; hour < DAYS * 24; hour++) {
            double fromS = hour == 0 ? 0 : (hour - 0.5) * 3600;
            integrator.integrate(equations, fromS, airAndMassC, (hour + 0.5) * 3600, airAndMassC);
            int row = hour * 60 + 29;
            assertThat(log.get(Channel.CABIN_AIR, row)).isCloseTo(airAndMassC[0], within(0.1));
            assertThat(log.get(Channel.CABIN_MASS, row)).isCloseTo(airAndMassC[1], within(0.1));
        }
    }

    /** The two balances, written out anew; inputs are straight between the middles of the minutes. */
    private record Equations(RunPlan plan, double airflowM3H) implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return 2;
        }

        @Override
        public void computeDerivatives(double timeS, double[] y, double[] yDot) {
            double at = timeS / 60 - 0.5;
            int i = (int) at;
            i = i < 0 ? 0 : i > DAYS * 1440 - 2 ? DAYS * 1440 - 2 : i;
            double share = at - i;
            CabinSpec c = plan.variant().design().cabin();
            double outsideC =
                    between(plan.sky().weather().airC(i), plan.sky().weather().airC(i + 1), share);
            double faceW = between(plan.cabin().faceGainW(i), plan.cabin().faceGainW(i + 1), share);
            double glassW = between(plan.cabin().glassGainW(i), plan.cabin().glassGainW(i + 1), share);
            double u = 1 / (0.13 + c.insulationM() / c.insulationWmK() + 1 / 17.0) + c.bridgeWm2K();
            double k = u * (c.roofM2() + c.wallM2()) + c.floorUWm2K() * c.floorM2() + c.glassUWm2K() * c.glassM2();
            double airWK = (c.volumeM3() * c.parkedAirChangesPerH() + airflowM3H) / 3600 * 1200;
            yDot[0] = ((k + airWK) * (outsideC - y[0])
                            + c.airToMassWK() * (y[1] - y[0])
                            + faceW
                            + c.solarToAirShare() * glassW)
                    / c.airJK();
            yDot[1] = (c.airToMassWK() * (y[0] - y[1]) + (1 - c.solarToAirShare()) * glassW) / c.massJK();
        }

        private static double between(double from, double to, double share) {
            return from + (to - from) * share;
        }
    }
}
