package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.WiringRule;
import ampdays.study.CircuitRules.Breach;
import ampdays.study.CircuitRules.Setting;
import ampdays.units.QuantityException;
import ampdays.wiring.Circuit;
import ampdays.wiring.Circuit.Opening;
import ampdays.wiring.Conductor;
import ampdays.wiring.End;
import ampdays.wiring.End.Point;
import ampdays.wiring.Place;
import ampdays.wiring.Protection;
import ampdays.wiring.ProtectionKind;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Properties of the wiring rules, on random circuits in random currents and heat. */
class CircuitRulesTest {
    private static final int STEPS = 180;

    /** These three tell the same trouble from its two sides. */
    private static final Set<WiringRule> RATING =
            EnumSet.of(WiringRule.TOO_SMALL, WiringRule.TOO_LARGE, WiringRule.NO_SIZE);

    static LongStream seeds() {
        return LongStream.range(0, 300);
    }

    static LongStream fewSeeds() {
        return LongStream.range(0, 60);
    }

    /** Currents and air drawn at random. */
    private static final class Drawn implements CircuitTrace.Source {
        private final double[] currentA;
        private final double[] cabinC;
        private final double[] bonnetC;

        Drawn(double[] currentA, double[] cabinC, double[] bonnetC) {
            this.currentA = currentA;
            this.cabinC = cabinC;
            this.bonnetC = bonnetC;
        }

        @Override
        public double currentA(int step) {
            return currentA[step];
        }

        @Override
        public double airC(Place place, int step) {
            return place == Place.BONNET ? bonnetC[step] : cabinC[step];
        }

        Drawn more(double current, double warmerK) {
            Drawn more = new Drawn(currentA.clone(), cabinC.clone(), bonnetC.clone());
            for (int i = 0; i < currentA.length; i++) {
                more.currentA[i] *= current;
                more.cabinC[i] += warmerK;
                more.bonnetC[i] += warmerK;
            }
            return more;
        }

        CircuitTrace trace() {
            return CircuitTrace.of(this, currentA.length, 60);
        }
    }

    private static Drawn drawn(Random random) {
        double most = 20 + 200 * random.nextDouble();
        double cabin = 10 + 40 * random.nextDouble();
        double[] current = random.doubles(STEPS).map(x -> most * x).toArray();
        double[] cabinC = random.doubles(STEPS).map(x -> cabin + 5 * x).toArray();
        double[] bonnetC = random.doubles(STEPS).map(x -> cabin + 45 * x).toArray();
        return new Drawn(current, cabinC, bonnetC);
    }

    private static Circuit circuit(Random random) {
        List<Conductor> sizes = sizes(random.nextBoolean() ? "10 AWG" : "6 mm²");
        Place place = random.nextBoolean() ? Place.BONNET : Place.CABIN;
        ProtectionKind[] kinds = ProtectionKind.values();
        ProtectionKind kind = kinds[random.nextInt(kinds.length)];
        List<Double> ratings = Protection.ratings();
        Protection protection = new Protection(
                kind,
                ratings.get(12 + random.nextInt(ratings.size() - 12)),
                kind.usualCalibrationC(),
                20_000,
                random.nextBoolean() ? Place.BONNET : Place.CABIN,
                Optional.empty(),
                0.1 + 0.1 * random.nextDouble());
        double joint = random.nextInt(3) == 0 ? 0.001 * random.nextDouble() : 0.00005;
        return circuit(
                0.3 + 3 * random.nextDouble(),
                sizes.get(random.nextInt(sizes.size())),
                random.nextBoolean() ? 105 : 125,
                place,
                joint,
                Optional.of(protection));
    }

    private static Circuit circuit(
            double lengthM,
            Conductor conductor,
            double insulationC,
            Place place,
            double jointOhm,
            Optional<Protection> protection) {
        return new Circuit(
                "run",
                End.of(Point.BANK),
                End.of(Point.BUS),
                lengthM,
                OptionalDouble.empty(),
                false,
                conductor,
                insulationC,
                2,
                place,
                false,
                4,
                0.00005,
                Math.max(jointOhm, 0.00005),
                0.03,
                OptionalDouble.empty(),
                false,
                Opening.NEVER,
                protection);
    }

    private static List<Conductor> sizes(String from) {
        try {
            return Conductor.parse(from).andLarger();
        } catch (QuantityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Circuit longer(Circuit c) {
        return circuit(2 * c.lengthM(), c.conductor(), c.insulationC(), c.place(), c.worstJointOhm(), c.protection());
    }

    private static Setting setting() {
        return new Setting(12.8, 300, End.of(Point.BANK), 9000, Double.POSITIVE_INFINITY, false);
    }

    private static Set<WiringRule> rules(Circuit circuit, CircuitTrace trace) {
        Set<WiringRule> rules = EnumSet.noneOf(WiringRule.class);
        CircuitRules.broken(circuit, trace, setting()).stream()
                .map(Breach::rule)
                .forEach(rules::add);
        return rules;
    }

    /** A circuit that breaks no rule was within every limit in every minute, reckoned here from the physics once more. */
    @Test
    void aCleanVerdictNeverHasCurrentAboveAnyLimit() {
        int clean = 0;
        for (long seed = 0; seed < 3000; seed++) {
            Random random = new Random(seed);
            Circuit circuit = circuit(random);
            Drawn drawn = drawn(random);
            if (rules(circuit, drawn.trace()).isEmpty()) {
                clean++;
                Protection p = circuit.protection().orElseThrow();
                for (int i = 0; i < STEPS; i++) {
                    double a = drawn.currentA(i);
                    double airC = drawn.airC(circuit.place(), i);
                    assertThat(a).isLessThanOrEqualTo(circuit.allowedA(airC));
                    assertThat(a).isLessThanOrEqualTo(p.holdA(circuit.protectionC(drawn.airC(p.place(), i), a), 300));
                    assertThat(circuit.dropV(airC, a)).isLessThanOrEqualTo(0.03 * 12.8);
                    assertThat(circuit.worstJointC(airC, a)).isLessThanOrEqualTo(circuit.insulationC());
                    assertThat(p.ratingA()).isLessThanOrEqualTo(circuit.allowedA(airC));
                }
            }
        }
        assertThat(clean).as("clean circuits among the random ones").isGreaterThan(20);
    }

    /** More length, heat or current never clears a rule that is broken. */
    @ParameterizedTest
    @MethodSource("seeds")
    void moreNeverClears(long seed) {
        Random random = new Random(seed);
        Circuit circuit = circuit(random);
        Drawn drawn = drawn(random);
        Set<WiringRule> before = rules(circuit, drawn.trace());
        assertHeld(before, rules(longer(circuit), drawn.trace()));
        assertHeld(before, rules(circuit, drawn.more(1, 12).trace()));
        assertHeld(before, rules(circuit, drawn.more(1.3, 0).trace()));
    }

    private static void assertHeld(Set<WiringRule> before, Set<WiringRule> after) {
        Set<WiringRule> plain = EnumSet.copyOf(before.isEmpty() ? EnumSet.noneOf(WiringRule.class) : before);
        if (plain.removeAll(RATING)) {
            assertThat(after).containsAnyElementsOf(RATING);
        }
        assertThat(after).containsAll(plain);
    }

    /** The hardest steps alone break the same rules as all of them. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theHardestStepsDecide(long seed) {
        Random random = new Random(seed);
        Circuit circuit = circuit(random);
        CircuitTrace trace = drawn(random).trace();
        assertThat(trace.hardest().size()).isLessThan(trace.size());
        assertThat(rules(circuit, trace.hardest())).isEqualTo(rules(circuit, trace));
    }

    /** What a repair says clears all, and a larger rating never goes without its conductor. */
    @ParameterizedTest
    @MethodSource("fewSeeds")
    void repairsClearAll(long seed) {
        Random random = new Random(seed);
        Circuit circuit = circuit(random);
        CircuitTrace trace = drawn(random).trace();
        List<Breach> breaches = CircuitRules.broken(circuit, trace, setting());
        if (!breaches.isEmpty()) {
            Optional<CircuitDraft> whole =
                    Repair.of(circuit, trace, setting(), breaches).whole();
            assertThat(whole).isPresent();
            CircuitDraft mended = whole.orElseThrow();
            assertThat(CircuitRules.broken(mended.circuit(), trace, setting())).isEmpty();
            double after = mended.circuit().protection().orElseThrow().ratingA();
            boolean raised = after > circuit.protection().orElseThrow().ratingA();
            assertThat(mended.changes("conductor") || !raised).isTrue();
            assertThat(after).isLessThanOrEqualTo(CircuitRules.ceilingA(mended.circuit(), trace));
        }
    }

    /** A run without protection needs none behind a fuse that its conductor can follow; else it is a danger. */
    @Test
    void protectionBeforeARunCovers() {
        Circuit bare = circuit(1, sizes("6 AWG").get(0), 105, Place.CABIN, 0, Optional.empty());
        CircuitTrace calm = new Drawn(new double[] {5}, new double[] {25}, new double[] {25}).trace();
        assertThat(CircuitRules.broken(bare, calm, setting()))
                .extracting(Breach::rule)
                .contains(WiringRule.UNPROTECTED);
        Setting behind60 = new Setting(12.8, 0, End.of(Point.BUS), 9000, 60, true);
        assertThat(CircuitRules.broken(bare, calm, behind60)).isEmpty();
    }
}
