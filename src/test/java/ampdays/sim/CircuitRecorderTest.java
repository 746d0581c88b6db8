package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.wiring.Circuit;
import ampdays.wiring.Place;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Currents of circuits against the bus of the simulation: Kirchhoff's current law, and loads counted with all they draw. */
class CircuitRecorderTest {
    private static Van van() {
        return new Van()
                .with("trip.days", "2")
                .with(
                        "trip.timetable.all days",
                        "00:00 park open, asleep\n07:00 drive highway, aboard\n09:00 park open, awake")
                .with("battery.start", "40 %")
                .with("battery.electronics", "0 A")
                .with("battery.self-discharge", "0 %/month")
                .with("second-alternator.preset", "medium frame")
                .with("factory-alternator.preset", "factory 180 A class")
                .with("factory-alternator.charger", "30 A");
    }

    private static Van circuit(Van van, String name, String from, String to) {
        return van.with("circuits." + name + ".from", from)
                .with("circuits." + name + ".to", to)
                .with("circuits." + name + ".length", "1 m")
                .with("circuits." + name + ".conductor", "35 mm²");
    }

    private static CircuitLog log(RunPlan plan) {
        return Simulator.runWithCircuits(plan, plan.variant().design().circuits())
                .circuits();
    }

    /** With steady loads alone, the run from bus to bank carries the bank's own current in every step. */
    @Test
    void theBanksRunCarriesTheBanksCurrent() {
        Van van = circuit(van().load("fan", "8 A", "always"), "bank", "bus", "bank");
        RunPlan plan = van.plan(Van.dark(20));
        List<Double> bankA = new ArrayList<>();
        Simulator.run(plan, (m, state) -> bankA.add(Math.abs(m.bankA)));
        CircuitLog log = log(plan);
        for (int step = 0; step < bankA.size(); step++) {
            assertThat(log.currentA(0, step)).isCloseTo(bankA.get(step), within(1e-4));
        }
        assertThat(log.currentA(0, 30)).isCloseTo(8, within(1e-4));
    }

    /** A pump of 5 A that runs 12 min a day loads its cable with 5 A whenever it may run, not with the mean of the day. */
    @Test
    void aLoadCountsWithAllItDraws() {
        Van van = circuit(van(), "pump", "bus", "pump")
                .with("loads.pump.draw", "5 A")
                .with("loads.pump.use", "12 min/day")
                .with("loads.pump.when", "awake");
        CircuitLog log = log(van.plan(Van.dark(20)));
        assertThat(log.currentA(0, 60)).isZero();
        assertThat(log.currentA(0, 10 * 60)).isCloseTo(5, within(1e-6));
    }

    /** Input of the charger and output of the alternators are those of the simulation, each on its own side. */
    @Test
    void eachSideHasItsOwnCurrent() {
        Van van = circuit(
                circuit(circuit(van(), "second", "second alternator", "bank"), "in", "start battery", "DC-DC charger"),
                "start",
                "factory alternator",
                "start battery");
        RunPlan plan = van.plan(Van.dark(20));
        List<double[]> seen = new ArrayList<>();
        Simulator.run(
                plan, (m, state) -> seen.add(new double[] {m.secondA, m.factorySourceA, state.factory.outputA()}));
        CircuitLog log = log(plan);
        for (int step = 0; step < seen.size(); step++) {
            for (int i = 0; i < 3; i++) {
                assertThat(log.currentA(i, step)).isCloseTo(seen.get(step)[i], within(1e-4));
            }
        }
        assertThat(log.currentA(0, 8 * 60)).isGreaterThan(20);
        assertThat(log.secondMostA()).isGreaterThanOrEqualTo(log.currentA(0, 8 * 60));
        assertThat(log.airC(Place.BONNET, 8 * 60)).isGreaterThan(35);
        assertThat(log.airC(Place.OUTSIDE, 8 * 60)).isCloseTo(20, within(0.01));
    }

    /** Recording circuits moves no result. */
    @Test
    void recordingMovesNothing() {
        RunPlan plan = circuit(van(), "bank", "bus", "bank").plan(Van.dark(20));
        List<Circuit> circuits = plan.variant().design().circuits();
        assertThat(Simulator.runWithCircuits(plan, circuits).result()).isEqualTo(Simulator.run(plan));
    }

    /** Source: Ohm's law; the bank's own data reach the check: 10.2 kA from 200 Ah, links make strings uneven. */
    @Test
    void terminalsOfTheBank() {
        BankTerminals one = BankTerminals.of(new Van()
                .with("battery.capacity", "200 Ah")
                .with("battery.charge-rate", "0.5 C")
                .variant()
                .design());
        assertThat(one.faultA()).isCloseTo(10_200, within(50.0));
        assertThat(one.chargeMostA()).isCloseTo(100, within(1e-9));
        BankTerminals two = BankTerminals.of(new Van()
                .with("battery.capacity", "200 Ah")
                .with("battery.charge-rate", "0.5 C")
                .with("battery.strings", "2")
                .variant()
                .design());
        assertThat(two.chargeMostA()).isLessThan(100);
    }
}
