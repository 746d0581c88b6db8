package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.ScenarioReader;
import ampdays.io.WeatherReader;
import ampdays.results.Channel;
import ampdays.results.FailureOutcome;
import ampdays.results.FailureOutcome.Addition;
import ampdays.results.FailureOutcome.Impossible;
import ampdays.results.FailureOutcome.Use;
import ampdays.results.FailureReport;
import ampdays.results.FailureReport.NotApplying;
import ampdays.scenario.Failure;
import ampdays.scenario.Failure.Change;
import ampdays.scenario.FailureKind;
import ampdays.scenario.Scenario;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.SingleChange;
import ampdays.scenario.SingleChanges;
import ampdays.scenario.TripMoment;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.OtherWeather;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.sim.SkyCompletion;
import ampdays.sim.TripCut;
import ampdays.sim.Van;
import ampdays.weather.WeatherSeries;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Failures for which the answer is known beforehand: closed forms, identities and definitions named beside the checks. */
class FailuresTest {
    private static Planner planner(WeatherSeries series) {
        return sky -> {
            RunPlan.Maker maker = new RunPlan.Maker(60);
            WeatherSeries under = sky.warmerK() == 0 ? series : OtherWeather.warmer(series, sky.warmerK());
            return variant -> maker.plan(variant, under);
        };
    }

    private static FailureReport report(Van van, WeatherSeries series, boolean additions, Failure... failures) {
        Variant variant = van.variant();
        Scenario scenario = new Scenario("test", "Test", "", List.of(variant));
        return Failures.of(scenario, variant, van.values(), List.of(failures), planner(series), additions);
    }

    private static FailureOutcome outcome(Van van, WeatherSeries series, Failure failure) {
        FailureReport report = report(van, series, false, failure);
        assertThat(report.notApplying()).isEmpty();
        return report.outcomes().get(0);
    }

    private static Failure change(String path, String text, String from, String until) throws Exception {
        return new Failure(
                "own",
                Optional.empty(),
                List.of(new Change(path, text)),
                Optional.of(TripMoment.parse(from)),
                until.isEmpty() ? Optional.empty() : Optional.of(TripMoment.parse(until)));
    }

    /** A bank that loses nothing, a lamp on it day and night, and a hook-up that never ends. */
    private static Van hookedUp() {
        return new Van()
                .lossless()
                .with("trip.timetable.all days", "00:00 park open hook-up, away")
                .with("battery.capacity", "200 Ah")
                .with("shore-charger.preset", "50 A class")
                .load("lamp", "10 A", "always");
    }

    /** Closed form, energy / power: 80 % of 200 Ah at 10 A is 16 h; to the cut-out at 10 %, 18 h. */
    @Test
    void withoutTheHookUpTheBankLastsItsChargeOverTheCurrent() throws Exception {
        Van van = hookedUp().with("battery.cut-out", "10 %");
        FailureOutcome lost = outcome(van, Van.dark(25), change("shore-charger", "none", "day 3 12:00", ""));
        assertThat(lost.times().reserveH()).isCloseTo(16, within(0.03));
        assertThat(lost.times().cutOutH()).isCloseTo(18, within(0.03));
        assertThat(lost.otherwise().reserveH()).isNaN();
        assertThat(lost.leftH()).isEqualTo(7.5 * 24);
        assertThat(lost.survived()).isFalse();
        assertThat(lost.alarm().orElseThrow().words()).isEqualTo("bank at the reserve");
        assertThat(lost.sign().orElseThrow().words()).isEqualTo("shore gives less than half of what it would");
        assertThat(lost.uses())
                .singleElement()
                .satisfies(lamp -> assertThat(lamp.servedShare()).isCloseTo(18 / (7.5 * 24), within(0.004)));
    }

    /** Closed form: a hook-up that comes back before the 16 h are over is survived. */
    @Test
    void whatEndsInTimeIsSurvived() throws Exception {
        Failure brief = change("shore-charger", "none", "day 3 12:00", "day 4 03:00");
        assertThat(outcome(hookedUp(), Van.dark(25), brief).survived()).isTrue();
        Failure longer = change("shore-charger", "none", "day 3 12:00", "day 4 05:00");
        assertThat(outcome(hookedUp(), Van.dark(25), longer).survived()).isFalse();
    }

    /** Closed form: after 24 h at 5 A there are 280 of 400 Ah; one string of two has 140, 100 of them above the reserve. */
    @Test
    void oneStringOfTwoLastsHalfAsLong() {
        Van van = new Van().lossless().with("battery.strings", "2").load("lamp", "5 A", "always");
        FailureOutcome lost = outcome(van, Van.dark(25), Failure.of(FailureKind.STRING_LOST));
        assertThat(lost.times().reserveH()).isCloseTo(20, within(0.05));
        assertThat(lost.otherwise().reserveH()).isCloseTo(40, within(0.05));
    }

    /** Identity: from the first minute on the trip is that of the changed design, to the last bit. */
    @Test
    void fromTheFirstMinuteItIsTheChangedDesign() throws Exception {
        Van van = hookedUp();
        Planner planner = planner(Van.dark(25));
        Failure failure = change("loads.lamp.draw", "60 A", "day 1", "");
        FailureCase place = new FailureCase(failure, 0, 14_400, 0, 10, 0);
        SingleChange asItIs = FailureCase.unchanged(van.values(), van.variant());
        RunPlan during = planner.under(Sky.AS_IT_IS).apply(place.during(asItIs, new VariantBuilder()));
        RunPlan before = planner.under(Sky.AS_IT_IS).apply(place.before(asItIs, new VariantBuilder()));
        TripCut start = TripCut.start().goOn(before, 0).end();
        assertThat(start.goOn(during, 14_400).result()).isEqualTo(Simulator.run(during));
        assertThat((double) Aftermath.of(start, during, 14_400, before, false)
                        .milestones()
                        .reserve())
                .isCloseTo(outcome(van, Van.dark(25), failure).times().reserveH() * 60, within(1e-9));
    }

    /** Identity: what lies beyond the trip's end is not run, and the trip is as it was. */
    @Test
    void afterTheEndNothingHappens() throws Exception {
        Van van = hookedUp();
        FailureReport report = report(van, Van.dark(25), true, change("shore-charger", "none", "day 11", ""));
        assertThat(report.outcomes()).isEmpty();
        assertThat(report.notApplying()).containsExactly(new NotApplying("own", "it begins after the trip's 10 days"));
        RunPlan plan = planner(Van.dark(25)).under(Sky.AS_IT_IS).apply(van.variant());
        assertThat(report.undisturbed()).isEqualTo(Simulator.run(plan));
    }

    /** Definition: a design cannot lose what it has not. */
    @ParameterizedTest
    @CsvSource({
        "STRING_LOST, the bank is one string",
        "SECOND_ALTERNATOR_DIES, there is no second alternator",
        "FACTORY_ALTERNATOR_DIES, the factory alternator does not charge the bank",
        "PANEL_BREAKER_OPENS, there are no panels",
        "COOLING_BREAKER_OPENS, there is no air conditioner",
        "HOOK_UP_LOST, there is no shore charger",
        "INVERTER_LEFT_ON, there is no inverter",
        "UNDER_TREES, there are no panels",
        "CLOSED_BOX, there is no refrigerator",
        "PROTECTION_OPENS, nothing charges the bank on this trip",
        "COLD_MORNING, the coldest hour of the trip has 12 °C",
        "HEAT_WAVE, the warmest hour of the trip has 12 °C; 6 K more is no heat"
    })
    void whatIsNotThereDoesNotFail(FailureKind kind, String why) {
        FailureReport report = report(new Van(), Van.dark(12), false, Failure.of(kind));
        assertThat(report.outcomes()).isEmpty();
        assertThat(report.notApplying()).containsExactly(new NotApplying(kind.label(), why));
    }

    /** Definition: a cold morning has -5 °C, and only from the evening before to noon is the air any colder. */
    @Test
    void theColdMorningHasFrost() {
        Van van = new Van();
        FailureMoments.Found found = found(van, Van.dark(3), Failure.of(FailureKind.COLD_MORNING));
        FailureCase place = found.place().orElseThrow();
        assertThat(place.warmerK()).isCloseTo(-8, within(1e-9));
        FailureOutcome cold = outcome(
                van.with("trip.timetable.all days", "00:00 park open hook-up, away")
                        .with("shore-charger.preset", "50 A class")
                        .with("battery.heat-conductance", "500 W/K")
                        .with("battery.start", "30 %")
                        .with("battery.charge-rate", "0.02 C")
                        .with("battery.tail", "0.01 C")
                        .with("cabin.insulation", "0 mm")
                        .load("lamp", "1 A", "always"),
                Van.dark(3),
                new Failure(
                        "frost",
                        Optional.of(FailureKind.COLD_MORNING),
                        List.of(),
                        Optional.of(new TripMoment(2, 1080)),
                        Optional.of(new TripMoment(3, 720))));
        assertThat(cold.sign().orElseThrow().words()).isEqualTo("the bank takes no charge");
    }

    private static FailureMoments.Found found(Van van, WeatherSeries series, Failure failure) {
        RunPlan plan = planner(series).under(Sky.AS_IT_IS).apply(van.variant());
        int steps = plan.clock().steps();
        return new FailureMoments(
                        plan.clock(), TripCut.start().goOnRecorded(plan, steps).log())
                .find(failure);
    }

    /** Definition: while it lasts the air is 6 K warmer to the last digit that is kept, before and after it is the same. */
    @Test
    void theHeatWaveIsAsLongAsItLasts() throws Exception {
        Van van = new Van();
        WeatherSeries series = Van.dark(30);
        Failure wave = new Failure(
                "wave",
                Optional.of(FailureKind.HEAT_WAVE),
                List.of(),
                Optional.of(TripMoment.parse("day 2 06:00")),
                Optional.of(TripMoment.parse("day 4 18:00")));
        FailureCase place = found(van, series, wave).place().orElseThrow();
        SingleChange asItIs = FailureCase.unchanged(van.values(), van.variant());
        Planner planner = planner(series);
        RunPlan before = planner.under(Sky.AS_IT_IS).apply(place.before(asItIs, new VariantBuilder()));
        RunPlan during = planner.under(place.sky()).apply(place.during(asItIs, new VariantBuilder()));
        TripCut cut = TripCut.start().goOn(before, place.fromStep()).end();
        Aftermath after = Aftermath.of(cut, during, place.untilStep(), before, true);
        assertThat(after.get(Channel.OUTSIDE_AIR, 1440 + 360)).isEqualTo(36);
        assertThat(after.get(Channel.OUTSIDE_AIR, 3 * 1440 + 18 * 60 - 1)).isEqualTo(36);
        assertThat(after.get(Channel.OUTSIDE_AIR, 3 * 1440 + 18 * 60)).isEqualTo(30);
        assertThat(after.get(Channel.CABIN_AIR, 3 * 1440)).isGreaterThan(35);
    }

    /** Closed form: an inverter that idles at 20 W takes 20 W from a bank that has nothing else to do. */
    @Test
    void anInverterLeftOnTakesItsIdleDraw() {
        Van van = new Van()
                .lossless()
                .with("inverter.preset", "2,000 W class")
                .with("inverter.running", "in use")
                .load("kettle", "100 W", "awake")
                .with("loads.kettle.on", "inverter");
        FailureOutcome left = outcome(van, Van.dark(25), Failure.of(FailureKind.INVERTER_LEFT_ON));
        List<Double> soc = left.curve().socPercent();
        double hours = 24
                * (left.curve().day().get(soc.size() - 1) - left.curve().day().get(0));
        double usedWh = (soc.get(0) - soc.get(soc.size() - 1)) / 100 * 400 * 13.2;
        assertThat(usedWh / hours).isCloseTo(20, within(0.5));
    }

    /** By definition, run anew: with the change the failure is no worse than nothing, and with a step less it is. */
    @Test
    void eachAdditionMakesGoodAndOneStepLessDoesNot() throws Exception {
        ScenarioFile demo = ScenarioReader.read(Path.of("scenarios/desert-survey.yaml"));
        WeatherSeries desert =
                SkyCompletion.complete(WeatherReader.read(Path.of("weather-profiles/low-desert-summer.csv")));
        Variant variant = demo.scenario().variant("second alternator").orElseThrow();
        Values values = demo.values("second alternator").orElseThrow();
        Failure failure = Failure.of(FailureKind.SECOND_ALTERNATOR_DIES);
        List<Failure> failures = List.of(failure);
        FailureReport report = Failures.of(demo.scenario(), variant, values, failures, planner(desert), true);
        FailureOutcome outcome = report.outcomes().get(0);
        assertThat(outcome.worse()).isNotEmpty();
        assertThat(outcome.additions()).isNotEmpty().extracting(Addition::price).isSorted();
        assertThat(outcome.sign().orElseThrow().words()).startsWith("second alternator gives");
        assertThat(outcome.sign().orElseThrow().afterH()).isBetween(6.5, 6.7);

        Planner planner = planner(desert);
        FailureCase place = new FailureCase(failure, 1440, 14 * 1440, 1, 14, 0);
        Aftermath without = aftermath(place, FailureCase.unchanged(values, variant), planner, false);
        int checked = 0;
        for (List<SingleChange> steps : SingleChanges.of(values, variant.trip())) {
            List<String> words = steps.stream().map(SingleChange::words).toList();
            for (Addition addition : outcome.additions()) {
                int found = words.indexOf(addition.change());
                for (int step = Math.max(0, found - 1); step <= found; step++) {
                    Aftermath with = aftermath(place, steps.get(step), planner, true);
                    assertThat(FailureGood.isGood(with, without))
                            .as(words.get(step))
                            .isEqualTo(step == found);
                }
                checked += found >= 0 ? 1 : 0;
            }
        }
        assertThat(checked).isEqualTo(outcome.additions().size());

        ForkJoinPool one = new ForkJoinPool(1);
        try {
            assertThat(one.submit(() -> Failures.of(demo.scenario(), variant, values, failures, planner(desert), true))
                            .get())
                    .isEqualTo(report);
        } finally {
            one.shutdown();
        }
    }

    private static Aftermath aftermath(FailureCase place, SingleChange design, Planner planner, boolean fails)
            throws Exception {
        RunPlan before = planner.under(Sky.AS_IT_IS).apply(place.before(design, new VariantBuilder()));
        RunPlan during = planner.under(Sky.AS_IT_IS)
                .apply(fails ? place.during(design, new VariantBuilder()) : place.before(design, new VariantBuilder()));
        TripCut cut = TripCut.start().goOn(before, place.fromStep()).end();
        return Aftermath.of(cut, during, place.untilStep(), before, false);
    }

    /** Definition: nothing goes on behind an open protection, though the van has every source. */
    @Test
    void behindAnOpenProtectionNothingGoesOn() {
        Van van = hookedUp().with("battery.start", "40 %").with("trip.days", "3");
        FailureOutcome open = outcome(van, Van.dark(25), Failure.of(FailureKind.PROTECTION_OPENS));
        assertThat(open.uses()).extracting(Use::servedShare).containsOnly(0.0);
        assertThat(open.uses()).extracting(Use::otherwiseShare).containsOnly(1.0);
        assertThat((open.untilEpochSecond() - open.fromEpochSecond()) / 3600).isEqualTo(12);
    }

    private static Van cooled() {
        return hookedUp()
                .with("trip.days", "4")
                .with("cooling.preset", "variable-speed roof unit")
                .with("cabin.set.awake", "26 °C")
                .with("cabin.set.away", "off")
                .with("shore-charger.rated", "120 A");
    }

    private static Failure onDayTwo(FailureKind kind) {
        return new Failure("own", Optional.of(kind), List.of(), Optional.of(new TripMoment(2, 0)), Optional.empty());
    }

    /**
     * Definition: with the hook-up the cooling left on for the pet keeps the cabin at 26 °C though nobody is home; without it
     * the bank cools on until it cuts the loads off, and only then the cabin passes 32 °C.
     */
    @Test
    void withoutTheHookUpThePetIsCooledAsLongAsTheBankLasts() {
        FailureOutcome lost = outcome(cooled(), Van.dark(40), onDayTwo(FailureKind.HOOK_UP_LOST));
        assertThat(lost.otherwise().over32H()).isNaN();
        assertThat(lost.otherwise().cutOutH()).isNaN();
        assertThat(lost.times().cutOutH()).isPositive();
        assertThat(lost.times().over32H())
                .isBetween(lost.times().cutOutH(), lost.times().cutOutH() + 3);
        assertThat(lost.alarm().orElseThrow().words()).isEqualTo("bank at the reserve");
    }

    /** Definition: without the air conditioner cooling gets nothing of what it would, and the rest goes on. */
    @Test
    void behindAnOpenBreakerTheAirConditionerGetsNothing() {
        Van van = cooled().with("cabin.set.away", "26 °C");
        FailureOutcome open = outcome(van, Van.dark(40), onDayTwo(FailureKind.COOLING_BREAKER_OPENS));
        assertThat(open.uses()).filteredOn(Use::goesShort).singleElement().satisfies(use -> {
            assertThat(use.name()).isEqualTo("cooling");
            assertThat(use.servedShare()).isZero();
            assertThat(use.otherwiseShare()).isEqualTo(1);
        });
        assertThat(open.uses()).filteredOn(Use::goesOn).extracting(Use::name).containsExactly("lamp");
        assertThat((open.untilEpochSecond() - open.fromEpochSecond()) / 3600).isEqualTo(24);
        assertThat(open.times().over32H()).isLessThan(3);
        assertThat(open.otherwise().over32H()).isNaN();
    }

    /**
     * Closed form, charge = current x time, 80 % of it above the reserve: three days at 3 A and one at 10 A take 456 Ah, that
     * is 600 Ah in steps of 100 Ah; one day at 3 A and three at 6 A take 504 Ah, that is 700 Ah. The later one is named first.
     */
    @Test
    void ofTheBankIsAddedWhatTheChargeTakes() throws Exception {
        Van van = new Van().lossless().with("trip.days", "4").load("lamp", "3 A", "always");
        FailureReport report = report(
                van,
                Van.dark(25),
                true,
                change("loads.lamp.draw", "10 A", "day 4", ""),
                change("loads.lamp.draw", "6 A", "day 2", ""));
        assertThat(report.outcomes())
                .extracting(outcome -> outcome.additions().stream()
                        .map(Addition::change)
                        .filter(change -> change.endsWith("more bank"))
                        .toList())
                .containsExactly(List.of("200 Ah more bank"), List.of("300 Ah more bank"));
    }

    /**
     * Identity: a failure comes out the same alone as among others that strike before and after it, last longer or less long,
     * have another sky or take something else for granted; so does what makes it good.
     */
    @Test
    void othersBesideItDoNotShow() throws Exception {
        Van van = cooled().with("battery.capacity", "120 Ah")
                .with("solar.preset", "framed panels")
                .with("solar.power", "400 W");
        Failure[] failures = {
            change("shore-charger", "none", "day 4 02:00", "day 4 14:00"),
            onDayTwo(FailureKind.HOOK_UP_LOST),
            onDayTwo(FailureKind.UNDER_TREES),
            change("loads.lamp.draw", "90 A", "day 3", "day 3 09:00"),
            Failure.of(FailureKind.HEAT_WAVE),
            change("shore-charger", "none", "day 1", "day 2")
        };
        FailureReport together = report(van, Van.dark(36), true, failures);
        assertThat(together.outcomes())
                .anySatisfy(outcome -> assertThat(outcome.additions()).isNotEmpty());
        assertThat(together.outcomes()).hasSameSizeAs(failures);
        for (int i = 0; i < failures.length; i++) {
            FailureOutcome alone =
                    report(van, Van.dark(36), true, failures[i]).outcomes().get(0);
            assertThat(together.outcomes().get(i)).isEqualTo(alone);
        }
    }

    private static Van ownSecond(String cutBackTo) {
        return new Van()
                .lossless()
                .with("trip.days", "3")
                .with("battery.capacity", "100 Ah")
                .with("second-alternator.preset", "small frame")
                .with("second-alternator.cut-back-to", cutBackTo)
                .load("lamp", "2 A", "always");
    }

    private static Failure[] regulatorAndLamp() throws Exception {
        return new Failure[] {
            change("second-alternator.cut-back-from", "125 °C", "day 2", ""),
            change("loads.lamp.draw", "6 A", "day 2", "")
        };
    }

    /**
     * Definition: a temperature to cut back from above that where nothing is left is no design; that failure does not apply,
     * and the other comes out as alone.
     */
    @Test
    void aFailureThatContradictsTheDesignDoesNotApply() throws Exception {
        Failure[] failures = regulatorAndLamp();
        FailureReport report = report(ownSecond("120 °C"), Van.dark(25), true, failures);
        assertThat(report.notApplying())
                .containsExactly(new NotApplying(
                        "own",
                        "the design cannot be with it: second-alternator.cut-back-to is not above"
                                + " second-alternator.cut-back-from, 125 °C. Write a higher temperature"));
        assertThat(report.outcomes())
                .isEqualTo(report(ownSecond("120 °C"), Van.dark(25), true, failures[1])
                        .outcomes());
    }

    /** Definition: larger alternators cut back to 120 °C, so that they contradict the one failure, not the other. */
    @Test
    void aChangeThatContradictsAFailureIsToldAndTheRestGoesOn() throws Exception {
        FailureReport report = report(
                ownSecond("140 °C"),
                Van.dark(25),
                true,
                new Failure(
                        "regulator and lamp",
                        Optional.empty(),
                        List.of(
                                new Change("second-alternator.cut-back-from", "125 °C"),
                                new Change("loads.lamp.draw", "6 A")),
                        Optional.of(TripMoment.parse("day 2")),
                        Optional.empty()),
                regulatorAndLamp()[1]);
        assertThat(report.outcomes().get(0).impossible())
                .containsExactly(new Impossible(
                        "a second alternator, medium frame of 200 A",
                        "second-alternator.cut-back-to is not above second-alternator.cut-back-from, 125 °C."
                                + " Write a higher temperature"));
        assertThat(report.outcomes().get(1).impossible()).isEmpty();
        assertThat(report.outcomes().get(0).tried())
                .isEqualTo(report.outcomes().get(1).tried() - 1);
        assertThat(report.outcomes())
                .allSatisfy(outcome -> assertThat(outcome.additions())
                        .extracting(Addition::change)
                        .anySatisfy(change -> assertThat(change).endsWith("more bank")));
    }
}
