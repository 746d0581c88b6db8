package ampdays.alternator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/**
 * The component's two nodes, minute by minute, against the same differential equations solved by the Dormand-Prince
 * 8(5,3) method of Commons Math. Kernel and equations share the physics functions; the reference knows nothing of steps,
 * of exact solutions or of the repetition in a step.
 */
class AlternatorIntegrationTest {
    private static final double OUTSIDE_C = 38;

    /** One stretch of the day. */
    private record Leg(EngineState state, int minutes) {}

    private static final List<Leg> DAY = List.of(
            new Leg(EngineState.TOWN, 35),
            new Leg(EngineState.STOPPED, 90),
            new Leg(EngineState.HIGHWAY, 75),
            new Leg(EngineState.STOPPED, 12),
            new Leg(EngineState.IDLE, 45),
            new Leg(EngineState.FAST_IDLE, 30),
            new Leg(EngineState.TOWN, 20),
            new Leg(EngineState.STOPPED, 600));

    private static final List<Leg> WEEK =
            Collections.nCopies(7, DAY).stream().flatMap(List::stream).toList();

    /** Differences over a week, K: the winding's worst and that of all but 3 % of the minutes, the case's worst. */
    private record Worst(double windingK, double windingMostlyK, double caseK) {}

    private static Worst worst(AlternatorSpec spec) {
        Alternator unit = new Alternator(spec, Machines.ENGINE, 1, OUTSIDE_C, 60);
        UnderBonnet air = new UnderBonnet(Machines.ENGINE, 60);
        double ohm = AlternatorPhysics.copperOhm(spec.ratedA(), spec.halfLoadEfficiency());
        double[] y = {OUTSIDE_C, OUTSIDE_C};
        List<Double> windingK = new ArrayList<>();
        double caseK = 0;
        for (Leg leg : WEEK) {
            double rotorRpm = Machines.ENGINE.rpm(leg.state()) * spec.pulleyRatio();
            for (int minute = 0; minute < leg.minutes(); minute++) {
                air.step(leg.state());
                double airC = OUTSIDE_C + air.riseK();
                unit.open(leg.state(), airC);
                unit.settle(unit.availableA());
                integrate(spec, ohm, rotorRpm, airC, y);
                windingK.add(Math.abs(unit.windingC() - y[0]));
                caseK = Math.max(caseK, Math.abs(unit.caseC() - y[1]));
            }
        }
        Collections.sort(windingK);
        int most = windingK.size() * 97 / 100;
        return new Worst(windingK.get(windingK.size() - 1), windingK.get(most), caseK);
    }

    private static void integrate(AlternatorSpec spec, double ohm, double rotorRpm, double airC, double[] y) {
        double cooling = AlternatorPhysics.coolingShare(rotorRpm, 1);
        double turningW = AlternatorPhysics.turningLossW(rotorRpm, spec.ratedA());
        Equations equations = new Equations(2, (t, at, rate) -> {
            double currentA = currentA(spec, ohm, rotorRpm, turningW, at[0], at[1]);
            double lossW = AlternatorPhysics.electricalLossW(currentA, ohm, at[0], spec.ratedA());
            double betweenW = spec.windingToCaseWK() * (at[0] - at[1]);
            rate[0] = (lossW - betweenW - spec.windingToAirWK() * cooling * (at[0] - airC)) / spec.windingJK();
            rate[1] = (turningW + betweenW - spec.caseToAirWK() * cooling * (at[1] - airC)) / spec.caseJK();
        });
        new DormandPrince853Integrator(1e-6, 10, 1e-9, 1e-9).integrate(equations, 0, y, 60, y);
    }

    private static double currentA(
            AlternatorSpec spec, double ohm, double rotorRpm, double turningW, double windingC, double caseC) {
        if (rotorRpm == 0) {
            return 0;
        }
        double beltA = AlternatorPhysics.beltCurrentA(
                AlternatorPhysics.beltW(rotorRpm, spec.beltW(), spec.beltRpm()),
                spec.setPointV(),
                ohm,
                windingC,
                spec.ratedA(),
                turningW);
        double heatA = AlternatorPhysics.cutBackShare(caseC, spec.cutBackFromC(), spec.cutBackToC())
                * Math.min(spec.capA(), spec.curve().endA());
        return Math.min(Math.min(spec.curve().currentA(rotorRpm, windingC), beltA), Math.min(spec.capA(), heatA));
    }

    /** Over a week of driving, stops and idling at full output: within 0.1 K, as the design asks. */
    @Test
    void staysWithinATenthOfAKelvin() {
        agrees(worst(Machines.LARGE));
    }

    /** The same where the cut-back rules for hours, the steepest feedback there is. */
    @Test
    void alsoWhereTheCutBackRules() {
        agrees(worst(Machines.alternator(280, new FormulaCurve(280, 1100, 1400), 280, 85, 105)));
    }

    /**
     * In the minutes in which speed or ruling limit change the winding, whose time constant is not two steps long, turns by
     * up to 30 K a minute; half a kelvin of that is a second of delay.
     */
    private static void agrees(Worst worst) {
        assertThat(worst.caseK()).as("case").isLessThan(0.1);
        assertThat(worst.windingMostlyK()).as("winding").isLessThan(0.1);
        assertThat(worst.windingK()).as("winding just after a change").isLessThan(0.5);
    }
}
