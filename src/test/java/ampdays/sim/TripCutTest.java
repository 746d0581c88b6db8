package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.Account;
import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import ampdays.results.RunResult;
import ampdays.sim.TripCut.Recorded;
import ampdays.sim.TripCut.Stretch;
import ampdays.weather.WeatherSeries;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Trips that are cut and go on. Source: identities, and closed forms named beside the checks. */
class TripCutTest {
    private static Stream<RunPlan> vans() {
        Stream<RunPlan> full = Stream.of("variable-speed roof unit", "fixed-speed roof unit")
                .map(cooling -> FullVan.with(cooling)
                        .with("cooling.pre-cool.to", "20 °C")
                        .with("cooling.pre-cool.when", "surplus sun")
                        .with("loads.roof fan.airflow", "400 m³/h")
                        .with("cooling.shed", "first")
                        .plan(FullVan.weather()));
        Stream<RunPlan> lead = Stream.of(new Van()
                .with("battery.preset", "lead-acid AGM 12 V")
                .with("battery.start", "90 %")
                .with("solar.preset", "framed panels")
                .with("solar.power", "600 W")
                .load("lamp", "12 A", "19:00-06:00")
                .plan(FullVan.weather()));
        Stream<RunPlan> random = Stream.of(1L, 2L, 3L, 4L, 5L, 6L, 7L, 8L)
                .map(seed -> RandomVan.withSecondAlternator(RandomVan.any(seed), seed)
                        .plan(RandomVan.weather(seed)));
        return Stream.of(full, lead, random).flatMap(s -> s);
    }

    /** Identity: a trip that is cut anywhere, also several times, and goes on as it was is the trip, to the last bit. */
    @ParameterizedTest
    @MethodSource("vans")
    void goingOnAsItWasChangesNothing(RunPlan plan) {
        int steps = plan.clock().steps();
        MinuteLog whole = Simulator.record(plan, 0, steps);
        for (int at : new int[] {1, 397, 431, 1187, 1440, 2001, 2700, 4321}) {
            int again = Math.min(steps, at + 777);
            Recorded first = TripCut.start().goOnRecorded(plan, at);
            Recorded second = first.stretch().end().goOnRecorded(plan, again);
            Recorded third = second.stretch().end().goOnRecorded(plan, steps);
            assertSame(whole, first.log());
            assertSame(whole, second.log());
            assertSame(whole, third.log());
        }
    }

    private static void assertSame(MinuteLog whole, MinuteLog part) {
        for (Channel channel : Channel.values()) {
            for (int row = 0; row < part.rows(); row++) {
                double expected = whole.get(channel, part.firstStep() + row);
                if (Double.compare(part.get(channel, row), expected) != 0) {
                    assertThat(part.get(channel, row))
                            .as(channel + " at step " + (part.firstStep() + row))
                            .isEqualTo(expected);
                }
            }
        }
    }

    /** Identity: the whole trip in one stretch is the trip, and the stretches' sums are those of the trip. */
    @ParameterizedTest
    @MethodSource("vans")
    void stretchesAddUp(RunPlan plan) {
        RunResult whole = Simulator.run(plan);
        int steps = plan.clock().steps();
        assertThat(TripCut.start().goOn(plan, steps).result()).isEqualTo(whole);
        Stretch first = TripCut.start().goOn(plan, 2345);
        RunResult second = first.end().goOn(plan, steps).result();
        for (Account account : Account.values()) {
            assertThat(first.result().energy().wh(account) + second.energy().wh(account))
                    .as(account.label())
                    .isCloseTo(
                            whole.energy().wh(account),
                            within(1e-9 * whole.energy().wh(Account.THROUGHPUT)));
        }
        Double daysToEmpty = Double.isNaN(first.result().daysToEmpty())
                ? second.daysToEmpty()
                : first.result().daysToEmpty();
        assertThat(daysToEmpty).isEqualTo((Double) whole.daysToEmpty());
    }

    /** Identity: what changes before the first step is the changed design's own run, to the last bit. */
    @Test
    void aChangeAtTheStartIsTheChangedDesign() {
        WeatherSeries weather = FullVan.weather();
        RunPlan changed = FullVan.variableSpeed().with("solar", "none").plan(weather);
        RunPlan before = FullVan.variableSpeed().plan(weather);
        Stretch nothing = TripCut.start().goOn(before, 0);
        assertThat(nothing.end().goOn(changed, changed.clock().steps()).result())
                .isEqualTo(Simulator.run(changed));
    }

    /**
     * Closed form, time to empty at a constant load = energy / power: 200 Ah of a bank that loses nothing, 10 A, and a hook-up
     * until it is taken away at noon of the third day; the reserve is 80 % of 200 Ah away: 16 h.
     */
    @Test
    void withoutItsSourceABankEmptiesAfterItsChargeOverTheCurrent() {
        Van van = new Van()
                .lossless()
                .with("trip.timetable.all days", "00:00 park open hook-up, away")
                .with("battery.capacity", "200 Ah")
                .with("shore-charger.preset", "50 A class")
                .load("lamp", "10 A", "always");
        WeatherSeries weather = Van.dark(25);
        int noon = 2 * 1440 + 720;
        Stretch before = TripCut.start().goOn(van.plan(weather), noon);
        RunPlan lost = van.with("shore-charger", "none").plan(weather);
        Stretch after = before.end().goOn(lost, lost.clock().steps());
        assertThat(before.result().lowestSoc()).isCloseTo(1, within(1e-3));
        assertThat(after.milestones().reserve() + 1 - noon).isBetween(16 * 60 - 2, 16 * 60 + 1);
        assertThat(before.milestones().then(after.milestones()).reserve())
                .isEqualTo(after.milestones().reserve());
        assertThat(after.result().daysToEmpty()).isCloseTo(2.5 + 16.0 / 24, within(2.0 / 1440));
    }

    /** Definition: a string of two that goes takes half of the charge with it; the state of charge stays. */
    @Test
    void aLostStringTakesItsChargeWithIt() {
        Van two = new Van().lossless().with("battery.strings", "2").load("lamp", "10 A", "always");
        WeatherSeries weather = Van.dark(25);
        Stretch before = TripCut.start().goOn(two.plan(weather), 600);
        RunPlan one = two.with("battery.strings", "1")
                .with("battery.capacity", "200 Ah")
                .plan(weather);
        Recorded after = before.end().goOnRecorded(one, 1200);
        double atCut = 1 - 100.0 / 400;
        assertThat(after.log().get(Channel.STATE_OF_CHARGE, 0)).isCloseTo(100 * atCut, within(0.1));
        assertThat(after.log().get(Channel.STATE_OF_CHARGE, 599)).isCloseTo(100 * (atCut - 100.0 / 200), within(0.1));
    }

    /** Definition: an open protection gives and takes nothing; once reset the bank goes on with the charge it had. */
    @ParameterizedTest
    @ValueSource(strings = {"lithium iron phosphate 12 V", "lead-acid AGM 12 V"})
    void anOpenProtectionGivesAndTakesNothing(String preset) {
        Van van = new Van()
                .with("battery.preset", preset)
                .with("battery.capacity", "200 Ah")
                .with("solar.preset", "framed panels")
                .with("solar.power", "300 W")
                .load("lamp", "2 A", "always");
        RunPlan works = van.plan(FullVan.weather());
        RunPlan open = van.with("battery.protection", "open").plan(FullVan.weather());
        Stretch before = TripCut.start().goOn(works, 1800);
        Recorded during = before.end().goOnRecorded(open, 2520);
        Recorded after = during.stretch().end().goOnRecorded(works, 2600);
        double night = 0;
        for (int row = 0; row < during.log().rows(); row++) {
            assertThat(during.log().get(Channel.BANK_CURRENT, row)).isZero();
            night += during.log().get(Channel.SOLAR, row) > 0 ? 0 : during.log().get(Channel.LOADS, row);
        }
        assertThat(night).isZero();
        assertThat(during.stretch().milestones().chargeRefused()).isEqualTo(1800);
        assertThat(after.log().get(Channel.BANK_CURRENT, 0)).isNotZero();
        assertThat(after.stretch().milestones().chargeRefused()).isEqualTo(-1);
    }

    @Test
    void anotherTimeIsRefused() {
        Stretch ten = TripCut.start().goOn(new Van().plan(Van.dark(20)), 100);
        RunPlan other = new Van().with("trip.days", "9").plan(Van.dark(20));
        assertThatThrownBy(() -> ten.end().goOn(other, 200)).hasMessageContaining("same time");
    }
}
