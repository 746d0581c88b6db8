package ampdays.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.audit.Untold.Next;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadAuditTest {
    /** Readings as they are taken: what is on changes from one to the next. */
    private static final class Sheet {
        private final Map<String, Use> uses = new LinkedHashMap<>();
        private final List<Reading> taken = new ArrayList<>();
        private Set<String> on = new LinkedHashSet<>();

        Sheet on(double currentA, String... names) {
            Set<String> before = on;
            on = new LinkedHashSet<>(before);
            on.addAll(List.of(names));
            List.of(names).forEach(name -> uses.putIfAbsent(name, Use.UNKNOWN));
            return take(currentA, Set.of(names), Double.NaN);
        }

        Sheet off(double currentA, String... names) {
            on = new LinkedHashSet<>(on);
            on.removeAll(List.of(names));
            return take(currentA, Set.of(), Double.NaN);
        }

        Sheet take(double currentA, Set<String> switchedOn, double surgeA) {
            taken.add(new Reading(taken.size() + 1, on, switchedOn, currentA, 0, surgeA, Double.NaN, 0));
            return this;
        }

        Readings readings(double resolutionA, double driftA) {
            List<Reading> rows = new ArrayList<>();
            for (Reading row : taken) {
                double position = taken.size() == 1 ? 0 : (row.line() - 1.0) / (taken.size() - 1);
                rows.add(new Reading(
                        row.line(),
                        row.on(),
                        row.switchedOn(),
                        row.currentA(),
                        row.waverA(),
                        row.surgeA(),
                        row.voltageV(),
                        position));
            }
            return new Readings("", uses, rows, resolutionA, driftA, List.of());
        }

        Audit audit() {
            return LoadAudit.of(readings(0.1, 0.2));
        }
    }

    private static Draw draw(Audit audit, String label) {
        return audit.draws().stream()
                .filter(d -> d.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Common practice, no source: a base of 4 A with some lights, 7 A with the roof fan, 8.3 A with more lights, 11 A with
     * outside lights and sockets, 14.6 A with the refrigerator, the pump from 17 to 21 A, everything without cooling 15
     * to 20 A, with cooling at full blast 66 A.
     */
    private static Sheet shop() {
        return new Sheet()
                .on(4, "some lights")
                .on(7, "roof fan")
                .on(8.3, "more lights")
                .on(11, "outside lights", "sockets")
                .on(14.6, "refrigerator")
                .on(17, "screen")
                .on(21, "pump")
                .off(17, "pump")
                .on(66, "cooling");
    }

    @Test
    void readingsOfAShop() {
        Audit audit = shop().audit();
        assertThat(draw(audit, "base draw and some lights").amps()).isCloseTo(4, within(0.1));
        assertThat(draw(audit, "roof fan").amps()).isCloseTo(3, within(0.1));
        assertThat(draw(audit, "more lights").amps()).isCloseTo(1.3, within(0.1));
        assertThat(draw(audit, "outside lights and sockets").amps()).isCloseTo(2.7, within(0.1));
        assertThat(draw(audit, "refrigerator").amps()).isCloseTo(3.6, within(0.1));
        assertThat(draw(audit, "pump").amps()).isCloseTo(4, within(0.1));
        assertThat(draw(audit, "cooling").amps()).isCloseTo(49, within(0.1));
        double withoutCoolingA = audit.draws().stream()
                .filter(d -> !d.label().equals("cooling") && !d.label().equals("pump"))
                .mapToDouble(Draw::amps)
                .sum();
        assertThat(withoutCoolingA).isBetween(15.0, 20.0);
        assertThat(audit.misfits()).isEmpty();
    }

    /** By logic: what was only ever on together is named, and one switch of one of them tells them apart. */
    @Test
    void namesWhatCannotBeToldApartAndTheReadingThatWould() {
        Audit audit = shop().audit();
        assertThat(audit.untold())
                .containsExactly(
                        new Untold(List.of("base draw", "some lights"), List.of(new Next("some lights", false))),
                        new Untold(List.of("outside lights", "sockets"), List.of(new Next("outside lights", false))));
        Audit more = shop().off(62, "some lights").off(61, "outside lights").audit();
        assertThat(more.untold()).isEmpty();
        assertThat(draw(more, "some lights").amps()).isCloseTo(4, within(0.2));
        assertThat(draw(more, "base draw").amps()).isCloseTo(0, within(0.2));
        assertThat(draw(more, "sockets").amps()).isCloseTo(1.7, within(0.2));
    }

    /** By logic: a and b, b and c, a and c are three sums; with the base four unknowns, which one reading solves. */
    @Test
    void namesDrawsThatAreOnlyKnownInSums() {
        Audit audit =
                new Sheet().on(5, "a", "b").off(3, "a").on(6, "c").off(4, "b").audit();
        assertThat(audit.untold()).isEmpty();
        Audit sums = new Sheet()
                .on(5, "a", "b")
                .off(5, "a", "b")
                .on(7, "b", "c")
                .off(7, "b", "c")
                .on(6, "a", "c")
                .audit();
        assertThat(sums.untold()).isEmpty();
        Sheet swapped = new Sheet().on(5, "a");
        swapped.off(5, "a").taken.remove(1);
        swapped.on(6, "b").on(9, "c");
        Audit either = swapped.audit();
        assertThat(either.untold()).hasSize(1);
        Untold untold = either.untold().get(0);
        assertThat(untold.names()).containsExactly("base draw", "a", "b");
        assertThat(untold.next()).containsExactly(new Next("a", true));
        assertThat(draw(either, "c").amps()).isCloseTo(3, within(0.1));
        assertThat(draw(either, "a").known()).isFalse();
    }

    /** By hand: 12 A at the start, of which 2 A flowed before: the appliance took 10 A, then 3 A. */
    @Test
    void surgeIsThatOfTheApplianceAlone() {
        Sheet sheet = new Sheet();
        sheet.uses.put("pump", Use.UNKNOWN);
        sheet.take(2, Set.of(), Double.NaN);
        sheet.on = Set.of("pump");
        sheet.take(5, Set.of("pump"), 12);
        assertThat(draw(sheet.audit(), "pump").surgeA()).isCloseTo(10, within(1e-9));
    }

    /** By hand: a reading of 7.1 A written as 1.7 A among readings that check each other. */
    @Test
    void aSlipOfThePenIsNamedAndLeftOut() {
        Audit audit = new Sheet()
                .on(1, "base lamp")
                .on(4, "fan")
                .on(1.7, "light")
                .off(4, "light")
                .on(7.1, "light")
                .off(4.1, "fan")
                .on(7, "fan")
                .audit();
        assertThat(audit.misfits()).hasSize(1);
        Misfit misfit = audit.misfits().get(0);
        assertThat(misfit.lines()).containsExactly(3);
        assertThat(misfit.leftOut()).isTrue();
        assertThat(misfit.offA()).isCloseTo(-5.4, within(0.3));
        assertThat(draw(audit, "light").amps()).isCloseTo(3.1, within(0.2));
    }

    /** By logic: two readings of one state that differ do not tell which of them is wrong. */
    @Test
    void twoReadingsOfOneStateThatDifferAreBothNamed() {
        Audit audit = new Sheet().on(1, "a").on(4, "b").on(6, "c").off(14, "c").audit();
        assertThat(audit.misfits()).hasSize(1);
        assertThat(audit.misfits().get(0).lines()).containsExactly(2, 4);
        assertThat(audit.misfits().get(0).leftOut()).isFalse();
    }

    /** What random lists gave: how often the truth was in the interval, and how wide that was. */
    private record Tally(int draws, int inside, double widths) {}

    /**
     * Random switching patterns with known draws, scatter, drift and rounding to the meter's last digit. Statistics as the
     * outside reference: an interval at 95 % holds the truth in at least 90 % of many cases, and is on the average not
     * much wider than the one of somebody who knows the scatter and drift exactly.
     *
     * @param scatterA standard deviation of the scatter, A; 0.05 is what the meter is taken to have
     * @param drift of the base draw over the list, standard deviation, A
     * @param fewest readings beyond those that the draws need
     * @param most such readings
     * @param mostWide mean width over that of who knows; three for a meter that is better than its last digit
     */
    @ParameterizedTest
    @CsvSource({
        "0.01, 0.0, 0, 3, 3.2",
        "0.05, 0.1, 0, 3, 1.9",
        "0.05, 0.2, 4, 12, 1.5",
        "0.15, 0.2, 6, 12, 1.7",
        "0.5, 0.2, 8, 20, 1.5"
    })
    void trueDrawsLieWithinTheStatedUncertainty(double scatterA, double drift, int fewest, int most, double mostWide) {
        int draws = 0;
        int inside = 0;
        double widths = 0;
        for (int seed = 0; seed < 200; seed++) {
            Tally tally = randomList(new Random(seed), scatterA, drift, fewest, most);
            draws += tally.draws();
            inside += tally.inside();
            widths += tally.widths();
        }
        assertThat(inside / (double) draws).as("share of draws inside").isGreaterThan(0.90);
        assertThat(widths / draws).as("mean width over that of who knows").isBetween(0.7, mostWide);
    }

    private static Tally randomList(Random random, double scatterA, double drift, int fewest, int most) {
        int appliances = 2 + random.nextInt(7);
        double[] truth = new double[appliances];
        Sheet sheet = new Sheet();
        for (int k = 0; k < appliances; k++) {
            truth[k] = Math.exp(random.nextDouble() * Math.log(200)) * 0.2;
            sheet.uses.put("x" + k, Use.UNKNOWN);
        }
        double baseA = 0.2 + random.nextDouble();
        double driftA = drift * random.nextGaussian();
        int n = appliances + 1 + fewest + random.nextInt(most - fewest + 1);
        for (int i = 0; i < n; i++) {
            double currentA = baseA + driftA * i / (n - 1) + scatterA * random.nextGaussian();
            Set<String> on = new LinkedHashSet<>();
            for (int k = 0; k < appliances; k++) {
                if (random.nextBoolean()) {
                    on.add("x" + k);
                    currentA += truth[k];
                }
            }
            sheet.on = on;
            sheet.take(Math.round(currentA * 10) / 10.0, Set.of(), Double.NaN);
        }
        Readings readings = sheet.readings(0.1, 0.2);
        Audit audit = LoadAudit.of(readings);
        double knownU = Math.sqrt(scatterA * scatterA + 0.01 / 12);
        Audit oracle = LoadAudit.of(sheet.readings(knownU * Math.sqrt(3), Math.max(drift, 1e-6)));
        int draws = 0;
        int inside = 0;
        double widths = 0;
        for (int j = 0; j < audit.draws().size(); j++) {
            Draw draw = audit.draws().get(j);
            if (draw.known() && draw.isSingle() && !draw.isBase()) {
                double trueA = truth[Integer.parseInt(draw.label().substring(1))];
                draws++;
                inside += Math.abs(draw.amps() - trueA) <= draw.plusMinusA() ? 1 : 0;
                widths += draw.plusMinusA() / standardWidth(oracle, j);
            }
        }
        return new Tally(draws, inside, widths);
    }

    /** 1.96 standard uncertainties of a draw if those of the readings are what was said. */
    private static double standardWidth(Audit oracle, int j) {
        double degrees = LoadAudit.DEGREES_OF_JUDGEMENT + oracle.spare();
        return 1.96
                * oracle.draws().get(j).plusMinusA()
                / oracle.scatter()
                / new TDistribution(degrees).inverseCumulativeProbability(0.975);
    }
}
