package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.ScenarioReader;
import ampdays.io.WeatherReader;
import ampdays.results.Causes;
import ampdays.results.Causes.Remedy;
import ampdays.results.Causes.Share;
import ampdays.results.Limit;
import ampdays.results.RunResult;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.SingleChange;
import ampdays.scenario.SingleChanges;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.OtherWeather;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.sim.SkyCompletion;
import ampdays.sim.Van;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Causes of designs for which the answer is known beforehand, and of the demo. */
class WhyTest {
    private static ScenarioFile demo;
    private static WeatherSeries desert;

    @BeforeAll
    static void read() throws Exception {
        demo = ScenarioReader.read(Path.of("scenarios/desert-survey.yaml"));
        desert = SkyCompletion.complete(WeatherReader.read(Path.of("weather-profiles/low-desert-summer.csv")));
    }

    private static Planner planner(WeatherSeries series) {
        return sky -> {
            RunPlan.Maker maker = new RunPlan.Maker(60);
            WeatherSeries lit = sky.clear() ? OtherWeather.withoutCloud(series) : series;
            WeatherSeries under = sky.coolerNights() ? OtherWeather.coolerNights(lit, Sky.COOLER_NIGHTS_K) : lit;
            return variant -> maker.plan(variant, under);
        };
    }

    private static Variant built(Values values) {
        try {
            return VariantBuilder.build("test", values);
        } catch (ScenarioException e) {
            throw new IllegalStateException(e.problems().toString(), e);
        }
    }

    private static RunResult run(Variant variant, WeatherSeries series) {
        return Simulator.run(new RunPlan.Maker(60).plan(variant, series));
    }

    private static Causes causes(Values values, WeatherSeries series) {
        Variant variant = built(values);
        return new Why(variant, values, run(variant, series), planner(series)).causes(() -> {});
    }

    private static double share(Causes causes, String cause) {
        return causes.shares().stream()
                .filter(share -> share.cause().equals(cause))
                .mapToDouble(Share::share)
                .findFirst()
                .orElseThrow();
    }

    /** A week of June at 80° north, where the sun never sets: 35 °C, a sky without cloud. */
    private static WeatherSeries midnightSun() {
        int rows = 24 * 20;
        double[] air = new double[rows];
        Arrays.fill(air, 35);
        double[] dew = new double[rows];
        double[] light = new double[rows];
        double[] wind = new double[rows];
        Arrays.fill(wind, 3);
        double[] pressure = new double[rows];
        Arrays.fill(pressure, 101_325);
        long start = LocalDate.of(2025, 6, 10).toEpochDay() * 86_400;
        SeriesInfo info = new SeriesInfo("midnight sun", 80, 0, 0, 0, start, 3600, false, 0.5, List.of());
        return OtherWeather.withoutCloud(WeatherSeries.of(info, light, light, light, air, dew, wind, pressure));
    }

    /**
     * By construction: a van whose bank loses nothing and feeds the air conditioner alone, where no night is dark and no
     * cloud in the sky. Cooling is all of it.
     */
    @Test
    void coolingAloneIsTheCause() {
        Values van = new Van()
                .lossless()
                .with("place.latitude", "80°")
                .with("trip.start", "2025-06-15")
                .with("trip.timetable.all days", "00:00 park open, awake")
                .with("cooling.preset", "variable-speed roof unit")
                .with("cabin.set.awake", "24 °C")
                .values();
        Causes causes = causes(van, midnightSun());
        assertThat(share(causes, "cooling")).isCloseTo(1, within(1e-12));
        assertThat(causes.shares())
                .filteredOn(s -> !s.cause().equals("cooling"))
                .allSatisfy(share -> assertThat(share.share()).isCloseTo(0, within(1e-12)));
    }

    /** By construction: one load on a bank that loses nothing has no other cause than itself. */
    @Test
    void aLoadAloneIsLeftToTheOtherUses() {
        Values van = new Van()
                .lossless()
                .with("place.latitude", "80°")
                .with("trip.start", "2025-06-15")
                .load("lamp", "10 A", "always")
                .values();
        Causes causes = causes(van, midnightSun());
        assertThat(share(causes, "other uses")).isCloseTo(1, within(1e-12));
        assertThat(causes.drawWh()).isGreaterThan(causes.usableWh());
    }

    /** What a progress bar counts: as many pieces as were told before. */
    @Test
    void everyPieceOfWorkIsCounted() {
        Variant variant = built(demo.base());
        Why why = new Why(variant, demo.base(), run(variant, desert), planner(desert));
        AtomicInteger done = new AtomicInteger();
        why.causes(done::incrementAndGet);
        assertThat(done.get()).isEqualTo(why.pieces()).isGreaterThan(30);
    }

    /** By construction: light that is that of a clear sky already has no cloud in it. */
    @Test
    void aClearSkyHasNoCloud() {
        assertThat(share(causes(demo.base(), OtherWeather.withoutCloud(desert)), "cloud and haze"))
                .isZero();
        assertThat(share(causes(demo.base(), desert), "cloud and haze")).isPositive();
    }

    /** By construction: what loses nothing has no losses to take away. */
    @Test
    void losslessCablesAndConvertersLoseNothing() {
        assertThat(share(causes(Factor.lossless(demo.base()), desert), "losses of cables and converters"))
                .isZero();
    }

    /** Identity: shares close, as numbers and as printed. */
    @Test
    void sharesAddUp() {
        for (ScenarioFile.Option option : demo.options()) {
            Causes causes = causes(option.values(), desert);
            double[] shares = causes.shares().stream().mapToDouble(Share::share).toArray();
            assertThat(Arrays.stream(shares).sum()).as(option.name()).isCloseTo(1, within(1e-12));
            assertThat(Arrays.stream(WhyText.percents(shares)).sum()).isEqualTo(100);
        }
    }

    /** By definition: in a van in which a limit rules, it rules no longer when lifted. */
    @ParameterizedTest
    @CsvSource({
        "START_RAMP, second-alternator.preset, small frame",
        "ROTOR_SPEED, second-alternator.preset, small frame",
        "ALTERNATOR_HEAT, second-alternator.preset, small frame",
        "REGULATOR_CAP, second-alternator.preset, small frame",
        "BELT, factory-alternator.belt, 500 W",
        "CHARGER_RATING, factory-alternator.charger, 20 A",
        "CHARGER_HEAT, factory-alternator.charger-derate-from, 30 °C",
        "CHARGE_LIMIT, battery.charge-rate, 0.06 C",
        "TOO_COLD, battery.charge-cold, 30 °C"
    })
    void aLiftedLimitRulesNoLonger(Limit limit, String path, String value) {
        Values values = demo.base().with(path, value);
        assertThat(hours(run(built(values), desert), limit)).isPositive();
        assertThat(hours(run(built(Factor.lifted(limit, values)), desert), limit))
                .isZero();
    }

    /** By common sense: half the resistance, or twice the bank, and the limit rules for a shorter time. */
    @ParameterizedTest
    @CsvSource({"CABLE, factory-alternator.cable, 60 mΩ", "FULL, battery.capacity, 10 Ah"})
    void aMovedLimitRulesLess(Limit limit, String path, String value) {
        Values values = demo.base().with(path, value);
        double hours = hours(run(built(values), desert), limit);
        assertThat(hours).isPositive();
        assertThat(hours(run(built(Factor.lifted(limit, values)), desert), limit))
                .isLessThan(hours);
    }

    /** By definition: with a second alternator the limit is that one's cable. */
    @Test
    void theCableThatRulesIsHalved() {
        Values values = demo.base().with("second-alternator.preset", "large frame");
        Values lifted = Factor.lifted(Limit.CABLE, values);
        assertThat(lifted.number("second-alternator.cable")).isEqualTo(values.number("second-alternator.cable") / 2);
        assertThat(lifted.number("factory-alternator.cable")).isEqualTo(values.number("factory-alternator.cable"));
    }

    @Test
    void limitsThatNoPartLiftsAndThoseThatAreNoCause() {
        assertThat(Arrays.stream(Limit.values()).filter(limit -> !Factor.isLiftable(limit)))
                .containsExactly(Limit.ENGINE_OFF, Limit.SOLAR_CONTROLLER);
        assertThat(Arrays.stream(Limit.values()).filter(limit -> !Factor.isCause(limit)))
                .containsExactly(Limit.ENGINE_OFF, Limit.SOLAR_CONTROLLER, Limit.CABLE, Limit.ACCEPTANCE, Limit.FULL);
    }

    private static double hours(RunResult result, Limit limit) {
        return result.limitHours().getOrDefault(limit, 0.0);
    }

    /** By definition, run anew: the change turns the design, and no smaller step of its kind does. */
    @Test
    void eachChangeTurnsAndOneStepLessDoesNot() throws ScenarioException {
        RunResult before = run(built(demo.base()), desert);
        List<Remedy> turning = causes(demo.base(), desert).remedies().stream()
                .filter(Remedy::turns)
                .toList();
        assertThat(turning).extracting(Remedy::price).isSorted();
        int checked = 0;
        for (List<SingleChange> steps :
                SingleChanges.of(demo.base(), built(demo.base()).trip())) {
            List<String> words = steps.stream().map(SingleChange::words).toList();
            for (Remedy remedy : turning) {
                int found = words.indexOf(remedy.change());
                for (int step = 0; step <= found; step++) {
                    RunResult then = run(steps.get(step).variant(), desert);
                    boolean turned = then.holds() && then.comfortableNights() >= before.comfortableNights();
                    assertThat(turned).as(words.get(step)).isEqualTo(step == found);
                }
                checked += found >= 0 ? 1 : 0;
            }
        }
        assertThat(checked).isEqualTo(turning.size()).isPositive();
    }

    /** The same by hand, through the scenario's own keys. */
    @Test
    void theSolarChangeByHand() {
        Remedy solar = causes(demo.base(), desert).remedies().stream()
                .filter(remedy -> remedy.change().contains("more solar"))
                .findFirst()
                .orElseThrow();
        assertThat(solar.change()).isEqualTo("400 W more solar");
        assertThat(run(built(demo.base().with("solar.power", "800 W")), desert).holds())
                .isTrue();
        assertThat(run(built(demo.base().with("solar.power", "700 W")), desert).holds())
                .isFalse();
    }

    /** One core and all cores give the same, in every digit. */
    @Test
    void theNumberOfCoresDoesNotShow() throws Exception {
        ForkJoinPool one = new ForkJoinPool(1);
        try {
            Causes alone = one.submit(() -> causes(demo.base(), desert)).get();
            assertThat(causes(demo.base(), desert)).isEqualTo(alone);
        } finally {
            one.shutdown();
        }
    }
}
