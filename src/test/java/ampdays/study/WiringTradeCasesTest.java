package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.WiringFinding;
import ampdays.results.WiringResult;
import ampdays.results.WiringRow;
import ampdays.results.WiringRule;
import ampdays.sim.RunPlan;
import ampdays.sim.Van;
import ampdays.study.WiringCheck.Checked;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cases that people in the trade tell; common practice, no source, unless a check names one. */
class WiringTradeCasesTest {
    private static final String RUN = "circuits.alternator";

    /** A second alternator of the 280 A class that idles all day in the heat, behind a 250 A breaker under the bonnet. */
    private static Van idling() {
        return new Van()
                .with("trip.timetable.all days", "00:00 idle, awake")
                .with("trip.days", "1")
                .with("battery.capacity", "1200 Ah")
                .with("battery.start", "10 %")
                .with("second-alternator.preset", "large frame")
                .with("second-alternator.rated", "280 A")
                .with(RUN + ".from", "second alternator")
                .with(RUN + ".to", "bank")
                .with(RUN + ".length", "5 m")
                .with(RUN + ".conductor", "4/0 AWG")
                .with(RUN + ".insulation", "125 °C")
                .with(RUN + ".air", "under bonnet")
                .with(RUN + ".sensed", "at the bank")
                .with(RUN + ".opened", "never")
                .with(RUN + ".protection", "thermal breaker")
                .with(RUN + ".rating", "250 A")
                .with(RUN + ".interrupt", "20 kA")
                .with(RUN + ".protection-air", "under bonnet")
                .with("second-alternator.cable", "1.8 mΩ");
    }

    private static Checked check(Van van, double airC) {
        return WiringCheck.of(new RunPlan.Maker(60).plan(van.variant(), Van.dark(airC)), false);
    }

    private static List<WiringRule> rules(WiringResult result) {
        return result.findings().stream().map(WiringFinding::rule).toList();
    }

    /**
     * A 250 A breaker in front of a 280 A class alternator trips at idle with little over 100 A when its terminals are loose;
     * the cure is the joint before the rating.
     */
    @Test
    void looseTerminalsTripABreakerFarBelowItsRating() {
        Checked loose = check(idling().with(RUN + ".worst-joint", "1.5 mΩ"), 25);
        WiringRow row = loose.result().rows().get(0);
        assertThat(row.mostA()).isBetween(100.0, 180.0);
        assertThat(rules(loose.result())).contains(WiringRule.HOLD, WiringRule.JOINT);
        WiringFinding hold = loose.result().findings().stream()
                .filter(f -> f.rule() == WiringRule.HOLD)
                .findFirst()
                .orElseThrow();
        assertThat(hold.remedy()).isEqualTo("worst-joint 0.05 mΩ");
        assertThat(hold.minutes()).isGreaterThan(60);
        Checked tight = check(idling(), 25);
        assertThat(rules(tight.result())).doesNotContain(WiringRule.HOLD, WiringRule.JOINT);
    }

    /** "Root cause is often resistance": a designer who wrote millivolts gets the cure in millivolts. */
    @Test
    void aJointToldByItsMillivoltsIsMendedInMillivolts() {
        Van van = idling().with(RUN + ".worst-joint-drop", "225 mV").with(RUN + ".worst-joint-drop-at", "150 A");
        RunPlan.Maker maker = new RunPlan.Maker(60);
        WiringFix fix = WiringFix.of(van.values(), check(van, 25), false, variant -> maker.plan(variant, Van.dark(25)));
        assertThat(fix.changes()).containsEntry(RUN + ".worst-joint-drop", "7.5 mV");
        assertThat(fix.after().findings()).isEmpty();
    }

    /** 2/0 cable for a 200 A run from bonnet to bank, where the regulator senses at the bank and the run is not soaked in heat. */
    @Test
    void twoOughtForTwoHundredAmps() {
        Van van = idling().with("trip.timetable.all days", "00:00 drive highway, aboard")
                .with("second-alternator.cap", "200 A")
                .with("second-alternator.cable", "1.7 mΩ")
                .with(RUN + ".length", "2.8 m")
                .with(RUN + ".conductor", "2/0 AWG")
                .with(RUN + ".protection", "class T fuse")
                .with(RUN + ".protection-air", "cabin");
        WiringResult result = check(van, 10).result();
        assertThat(result.rows().get(0).mostA()).isBetween(190.0, 201.0);
        assertThat(result.findings()).isEmpty();
        assertThat(rules(check(van.with(RUN + ".conductor", "4 AWG"), 10).result()))
                .contains(WiringRule.AMPACITY);
    }

    /** On a hot path 125 % of the current and what the conductor carries may not overlap; the route is the cure. */
    @Test
    void noSizeFitsOnAHotPath() {
        Van van = idling().with(RUN + ".insulation", "90 °C").with(RUN + ".conductor", "4/0 AWG");
        WiringResult result = check(van, 45).result();
        WiringFinding none = result.findings().stream()
                .filter(f -> f.rule() == WiringRule.NO_SIZE)
                .findFirst()
                .orElseThrow();
        assertThat(none.measured()).startsWith("at least ");
        assertThat(none.remedy()).contains("insulation 125 °C");
    }

    /** A drop that no cable mends is mended by sensing behind it: the regulator then makes up for it. */
    @Test
    void sensingAtTheBankMendsADrop() {
        Van van = idling().with("trip.timetable.all days", "00:00 drive highway, aboard")
                .with(RUN + ".length", "6 m")
                .with(RUN + ".protection", "class T fuse")
                .with(RUN + ".rating", "300 A")
                .with(RUN + ".sensed", "at the source");
        WiringFinding drop = check(van, 10).result().findings().get(0);
        assertThat(drop.rule()).isEqualTo(WiringRule.DROP);
        assertThat(drop.remedy()).isEqualTo("sensed at the bank, drop 10 %");
    }

    /** A factory alternator held to 30 A through a DC-DC charger needs nothing special: 6 AWG and a 40 A fuse. */
    @Test
    void factoryAlternatorHeldToThirtyAmps() {
        Van van = new Van()
                .with("trip.timetable.all days", "00:00 drive highway, aboard")
                .with("trip.days", "1")
                .with("battery.start", "20 %")
                .with("factory-alternator.preset", "factory 180 A class")
                .with("factory-alternator.charger", "26 A")
                .with("factory-alternator.cable", "9 mΩ")
                .with("circuits.in.from", "start battery")
                .with("circuits.in.to", "DC-DC charger")
                .with("circuits.in.length", "4 m")
                .with("circuits.in.conductor", "6 AWG")
                .with("circuits.in.protection", "post fuse")
                .with("circuits.in.rating", "40 A");
        WiringResult result = check(van, 30).result();
        assertThat(result.rows().get(0).mostA()).isBetween(25.0, 31.0);
        assertThat(result.findings()).isEmpty();
    }

    /** Several big packs in parallel pass 10 kA; an automotive bolt-down fuse before them does not break that. */
    @Test
    void strongBanksNeedAStrongFuse() {
        Van van = idling().with("battery.strings", "3")
                .with(RUN + ".protection", "bolt-down fuse")
                .with(RUN + ".interrupt", "2 kA");
        Checked checked = check(van, 10);
        WiringFinding finding = checked.result().findings().get(0);
        assertThat(finding.rule()).isEqualTo(WiringRule.INTERRUPT);
        assertThat(finding.remedy()).startsWith("protection class T fuse");
        assertThat(finding.measured()).contains("above 10 kA a rating of 20 kA is asked");
    }

    /** Below 10 kA the rating is held against the short itself, and 20 kA is not asked; ABYC E-11 as quoted by trade articles. */
    @ParameterizedTest
    @CsvSource({"9.9 kA, 10 kA, false, false", "9.9 kA, 9 kA, true, false", "10.1 kA, 15 kA, true, true"})
    void aboveTenKiloamperesTwentyAreAsked(String bankShort, String rating, boolean found, boolean twenty) {
        Van van = idling().with(RUN + ".fault-current", bankShort)
                .with(RUN + ".protection", "class T fuse")
                .with(RUN + ".protection-near", "bank")
                .with(RUN + ".interrupt", rating);
        List<String> words = check(van, 10).result().findings().stream()
                .filter(finding -> finding.rule() == WiringRule.INTERRUPT)
                .map(WiringFinding::measured)
                .toList();
        assertThat(words).hasSize(found ? 1 : 0);
        assertThat(words.stream().anyMatch(w -> w.contains("20 kA is asked"))).isEqualTo(twenty);
    }

    /** An alternator that can give more than the bank may take leaves the bank's protection to end it. */
    @Test
    void chargeLimitOfTheBank() {
        Van van = idling().with("battery.capacity", "200 Ah").with("battery.charge-limit", "100 A");
        Checked checked = check(van, 10);
        assertThat(rules(checked.result())).contains(WiringRule.CHARGE_LIMIT);
        assertThat(checked.changes()).containsEntry("second-alternator.cap", "100 A");
    }

    /** Fuse at the alternator alone, far away, field on when opened, way back by the body: each by its own rule. */
    @Test
    void placeOpeningAndWayBack() {
        Van van = idling().with(RUN + ".protection", "class T fuse")
                .with(RUN + ".protection-near", "second alternator")
                .with(RUN + ".opened", "under load")
                .with(RUN + ".return", "body");
        Checked checked = check(van, 10);
        assertThat(rules(checked.result()))
                .contains(WiringRule.WRONG_END, WiringRule.FIELD_OFF, WiringRule.ENGINE_GROUND);
        RunPlan.Maker maker = new RunPlan.Maker(60);
        WiringFix fix = WiringFix.of(van.values(), checked, false, variant -> maker.plan(variant, Van.dark(10)));
        assertThat(fix.changes())
                .containsEntry(RUN + ".protection-near", "bank")
                .containsEntry(RUN + ".opened", "after field-off")
                .containsEntry(RUN + ".return", "cable");
        assertThat(fix.after().findings()).isEmpty();
        assertThat(rules(
                        check(van.with(RUN + ".protection-near", "bank").with(RUN + ".protection-distance", "2 ft"), 10)
                                .result()))
                .contains(WiringRule.DISTANCE);
    }

    /**
     * Source: 33 CFR 183.455. Protection stands within 7 in of its source, within 40 in where the conductor is sheathed; from
     * a battery ABYC E-11 allows 72 in of sheathed conductor.
     */
    @ParameterizedTest
    @CsvSource({"no, 7.0 in, false", "no, 7.1 in, true", "yes, 72.0 in, false", "yes, 72.1 in, true"})
    void protectionStandsNearItsSource(String sheathed, String distance, boolean found) {
        Van van = idling().with(RUN + ".sheathed", sheathed)
                .with(RUN + ".protection-near", "bank")
                .with(RUN + ".protection-distance", distance);
        assertThat(rules(check(van, 10).result()).contains(WiringRule.DISTANCE)).isEqualTo(found);
    }
}
