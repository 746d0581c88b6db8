package ampdays.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.units.QuantityException;
import ampdays.wiring.Circuit.Opening;
import ampdays.wiring.End.Point;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The tree of cables, followed by hand (Kirchhoff's laws on a tree). */
class HarnessTest {
    private static Circuit run(Point from, Point to) {
        return run(End.of(from), End.of(to));
    }

    private static Circuit run(End from, End to) {
        try {
            return new Circuit(
                    from + " to " + to,
                    from,
                    to,
                    1,
                    OptionalDouble.empty(),
                    false,
                    Conductor.parse("35 mm²"),
                    105,
                    2,
                    Place.CABIN,
                    false,
                    4,
                    0.00005,
                    0.00005,
                    0.03,
                    OptionalDouble.empty(),
                    false,
                    Opening.NEVER,
                    Optional.empty());
        } catch (QuantityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static final Circuit BANK = run(Point.BUS, Point.BANK);
    private static final Circuit PANEL = run(Point.LOAD_PANEL, Point.BUS);
    private static final Circuit PUMP = run(End.of(Point.LOAD_PANEL), End.ofLoad("pump"));
    private static final Circuit SECOND = run(Point.SECOND_ALTERNATOR, Point.BANK);
    private static final Circuit IN = run(Point.START_BATTERY, Point.CHARGER);
    private static final Circuit ROOF = run(Point.SOLAR_PANELS, Point.SOLAR_CONTROLLER);
    private static final List<Circuit> ALL = List.of(PUMP, PANEL, BANK, SECOND, IN, ROOF);
    private static final Harness HARNESS = new Harness(ALL);

    @Test
    void theBatterysEndIsTheOneNearerToTheBank() {
        assertThat(HARNESS.batteryEnd(BANK)).isEqualTo(End.of(Point.BANK));
        assertThat(HARNESS.batteryEnd(PANEL)).isEqualTo(End.of(Point.BUS));
        assertThat(HARNESS.batteryEnd(PUMP)).isEqualTo(End.of(Point.LOAD_PANEL));
        assertThat(HARNESS.batteryEnd(SECOND)).isEqualTo(End.of(Point.BANK));
        assertThat(HARNESS.batteryEnd(IN)).isEqualTo(End.of(Point.START_BATTERY));
        assertThat(HARNESS.batteryEnd(ROOF)).isEqualTo(End.of(Point.SOLAR_PANELS));
    }

    @Test
    void upstreamLeadsToTheBank() {
        assertThat(HARNESS.upstream(PUMP)).containsExactly(PANEL, BANK);
        assertThat(HARNESS.upstream(SECOND)).isEmpty();
        assertThat(HARNESS.upstream(IN)).isEmpty();
    }

    /** What no circuit names hangs on the bus, small things on the load panel. */
    @Test
    void whatEachCircuitCarries() {
        assertThat(HARNESS.carries(BANK, End.of(Point.INVERTER))).isTrue();
        assertThat(HARNESS.carries(BANK, End.ofLoad("pump"))).isTrue();
        assertThat(HARNESS.carries(BANK, End.of(Point.SECOND_ALTERNATOR))).isFalse();
        assertThat(HARNESS.carries(PANEL, End.of(Point.REFRIGERATOR))).isTrue();
        assertThat(HARNESS.carries(PANEL, End.ofLoad("lights"))).isTrue();
        assertThat(HARNESS.carries(PANEL, End.of(Point.INVERTER))).isFalse();
        assertThat(HARNESS.carries(PUMP, End.ofLoad("lights"))).isFalse();
        assertThat(HARNESS.carries(SECOND, End.of(Point.SECOND_ALTERNATOR))).isTrue();
    }

    @Test
    void resistanceToTheBankAddsUp() {
        assertThat(HARNESS.ohmToBank(End.ofLoad("pump"))).isCloseTo(3 * BANK.loopOhm(20), within(1e-12));
        assertThat(HARNESS.ohmToBank(End.of(Point.INVERTER))).isCloseTo(BANK.loopOhm(20), within(1e-12));
        assertThat(BANK.loopOhm(20)).isCloseTo(2 * 0.000554 + 4 * 0.00005, within(1e-12));
    }

    @Test
    void loopsAreFound() {
        assertThat(Harness.loop(ALL)).isEmpty();
        Circuit again = run(Point.LOAD_PANEL, Point.BANK);
        assertThat(Harness.loop(List.of(BANK, PANEL, again))).contains(again);
        assertThat(Harness.loop(List.of(BANK, run(Point.BANK, Point.BUS)))).isPresent();
    }

    /** Without a circuit to the bank, bus and bank are one place; an island hangs on the bus. */
    @Test
    void whatIsNotJoinedIsOnePlace() {
        Harness few = new Harness(List.of(PUMP, run(Point.INVERTER, Point.BUS)));
        assertThat(few.upstream(PUMP)).isEmpty();
        assertThat(few.batteryEnd(PUMP)).isEqualTo(End.of(Point.LOAD_PANEL));
        assertThat(few.ohmToBank(End.of(Point.BUS))).isZero();
    }
}
