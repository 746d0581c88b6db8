package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.battery.BankSpec;
import ampdays.load.LoadSpec;
import ampdays.results.Account;
import ampdays.results.DayTotals;
import ampdays.results.RunResult;
import ampdays.trip.People;
import ampdays.weather.WeatherSeries;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every van in every weather. Source: conservation of energy and charge, limits, monotony (identities). */
class KernelPropertiesTest {

    static LongStream sixtySeeds() {
        return LongStream.range(0, 60);
    }

    static LongStream thirtySeeds() {
        return LongStream.range(200, 230);
    }

    static LongStream twentySeeds() {
        return LongStream.range(100, 120);
    }

    /**
     * Any van in any weather: every limit is kept in every minute, energy and charge are kept, served and unserved is what
     * was asked, used and curtailed is the possible sun.
     */
    @ParameterizedTest
    @MethodSource("sixtySeeds")
    void whateverTheVanAndTheWeather(long seed) {
        Van van = RandomVan.any(seed);
        RunPlan plan = (seed % 2 == 0 ? RandomVan.withSecondAlternator(van, seed) : van).plan(RandomVan.weather(seed));
        LimitWatch limits = new LimitWatch(plan);
        double[] inAndOutAh = new double[2];
        RunResult run = Simulator.run(plan, (m, state) -> {
            limits.minute(m, state);
            inAndOutAh[m.bankA > 0 ? 0 : 1] += m.bankA / 60;
        });
        assertThat(limits.brokenAtStep()).as("first step that breaks a limit").isEqualTo(LimitWatch.NONE);
        ledgersClose(run);
        chargeIsKept(plan, run, inAndOutAh[0], inAndOutAh[1]);
        usesAddUp(run);
        constantPowerLoadsAreServedOrNot(plan, run);
        sunIsUsedOrCurtailed(plan, run);
    }

    private static void ledgersClose(RunResult run) {
        assertThat(run.ledgerResidualWh())
                .isCloseTo(0, within(1e-9 * run.energy().wh(Account.THROUGHPUT)));
        for (DayTotals day : run.days()) {
            assertThat(day.energy().residualWh())
                    .isCloseTo(0, within(1e-9 * day.energy().wh(Account.THROUGHPUT)));
        }
        assertThat(run.limitHours().values().stream().mapToDouble(h -> h).sum())
                .isCloseTo(24 * run.tripDays(), within(1e-6));
    }

    /** What went in times its efficiency, less what came out and drained, is the change of charge. */
    private static void chargeIsKept(RunPlan plan, RunResult run, double inAh, double outAh) {
        BankSpec bank = plan.variant().design().bank();
        double endSoc = run.days().get(run.days().size() - 1).endSoc();
        double keptAh = ((BankSpec.Lithium) bank.chemistry()).coulombicEfficiency() * inAh
                + outAh
                - standbyA(bank) * 24 * run.tripDays();
        assertThat(run.lowestSoc()).isPositive();
        assertThat((endSoc - bank.startShare()) * bank.capacityAh()).isCloseTo(keptAh, within(1e-6));
    }

    private static double standbyA(BankSpec bank) {
        return bank.electronicsA() + bank.capacityAh() * bank.selfDischargePerMonth() / 720;
    }

    private static void usesAddUp(RunResult run) {
        double throughputWh = run.energy().wh(Account.THROUGHPUT) + run.energy().unservedWh();
        assertThat(sum(run.servedWhByUse())).isCloseTo(run.energy().servedWh(), within(1e-9 * throughputWh));
        assertThat(sum(run.unservedWhByUse())).isCloseTo(run.energy().unservedWh(), within(1e-8 * throughputWh));
    }

    private static double sum(Map<?, Double> sums) {
        return sums.values().stream().mapToDouble(wh -> wh).sum();
    }

    /** What each got and did not get is its watts times its hours, told from the timetable. */
    private static void constantPowerLoadsAreServedOrNot(RunPlan plan, RunResult run) {
        double throughputWh = run.energy().wh(Account.THROUGHPUT) + run.energy().unservedWh();
        for (LoadSpec load : plan.variant().design().loads()) {
            if (load.drawW() > 0) {
                double gotWh = run.servedWhByUse().get(load.name());
                double missedWh = run.unservedWhByUse().getOrDefault(load.name(), 0.0);
                assertThat(gotWh + missedWh)
                        .as(load.name())
                        .isCloseTo(load.drawW() * hours(load, plan.clock()), within(1e-8 * throughputWh));
            }
        }
    }

    private static void sunIsUsedOrCurtailed(RunPlan plan, RunResult run) {
        double possibleWh = 0;
        for (int step = 0; plan.roof() != null && step < plan.clock().steps(); step++) {
            possibleWh += plan.roof().possibleWPerW(step) / 60;
        }
        possibleWh *= plan.variant().design().solar().map(s -> s.ratedW()).orElse(0.0);
        double curtailedWh = run.energy().curtailedWh();
        assertThat(run.energy().wh(Account.SOLAR) + curtailedWh).isCloseTo(possibleWh, within(1e-9 * possibleWh));
        assertThat(sum(run.curtailedWhByCause())).isCloseTo(curtailedWh, within(1e-9 * possibleWh));
    }

    /** Hours of use over the trip: the minutes allowed, at most the daily use. */
    private static double hours(LoadSpec load, TripClock clock) {
        double sum = 0;
        for (int day = 0; day < clock.trip().days(); day++) {
            int minutes = 0;
            for (int step = clock.firstStepOfDay(day); step < clock.firstStepOfDay(day + 1); step++) {
                minutes += mayRun(load, clock, step) ? 1 : 0;
            }
            double allowedH = minutes / 60.0;
            sum += load.useHoursPerDay() < allowedH ? load.useHoursPerDay() : allowedH;
        }
        return sum;
    }

    private static boolean mayRun(LoadSpec load, TripClock clock, int step) {
        boolean onOccasion = switch (load.occasion()) {
            case ALWAYS -> true;
            case AWAKE -> clock.people(step) == People.AWAKE;
            case ASLEEP -> clock.people(step) == People.ASLEEP;
            case PARKED -> !clock.vehicle(step).engineRuns();
            default -> throw new IllegalStateException("no random van has " + load.occasion());
        };
        int minute = clock.minuteOfDay(step);
        return onOccasion
                && (load.windows().isEmpty() || load.windows().stream().anyMatch(w -> w.holds(minute)));
    }

    /** Whoever never runs the engine gets nothing from a second alternator: not a watt-hour, in no account, on no day. */
    @ParameterizedTest
    @MethodSource("twentySeeds")
    void withoutAnEngineASecondAlternatorIsWorthNothing(long seed) {
        WeatherSeries weather = RandomVan.weather(seed);
        RunResult without = RandomVan.parked(seed).run(weather);
        RunResult with =
                RandomVan.withSecondAlternator(RandomVan.parked(seed), seed).run(weather);
        assertThat(with.days()).isEqualTo(without.days());
        assertThat(with.limitHours()).isEqualTo(without.limitHours());
        assertThat(with.curtailedWhByCause()).isEqualTo(without.curtailedWhByCause());
        assertThat(with.servedWhByUse()).isEqualTo(without.servedWhByUse());
        assertThat(with.unservedWhByUse()).isEqualTo(without.unservedWhByUse());
        assertThat(with.findings()).isEqualTo(without.findings());
        assertThat(days(with)).isEqualTo(days(without));
        assertThat(with.fuelLitres() + with.engineChargingHours()).isZero();
    }

    private static double days(RunResult run) {
        return Double.isNaN(run.daysToEmpty()) ? Double.POSITIVE_INFINITY : run.daysToEmpty();
    }

    private static void neverShortens(long seed, WeatherSeries weather, Van less, UnaryOperator<Van> more) {
        RunPlan.Maker maker = new RunPlan.Maker(60);
        double before = days(Simulator.run(maker.plan(less.variant(), weather)));
        double after = days(Simulator.run(maker.plan(more.apply(less).variant(), weather)));
        assertThat(after).as("seed %d", seed).isGreaterThanOrEqualTo(before);
    }

    /**
     * A larger bank with the limits that go with its size never empties sooner. In frost it might: a heavier bank stays cold
     * longer and refuses charge longer; hence weather above freezing.
     */
    @ParameterizedTest
    @MethodSource("thirtySeeds")
    void moreBankNeverShortens(long seed) {
        WeatherSeries warm = Van.weather(hour -> 30, hour -> hour >= 8 && hour < 16 ? 20 * (seed - 190) : 0);
        Van van = RandomVan.any(seed).with("battery.discharge-limit", "1000 A");
        neverShortens(seed, warm, van.with("battery.capacity", "200 Ah"), v -> v.with("battery.capacity", "300 Ah"));
    }

    /**
     * More panels never empty the bank sooner; the same roof area, because panels also change what the cabin feels. Nor does
     * a lower reserve.
     */
    @ParameterizedTest
    @MethodSource("thirtySeeds")
    void moreSunOrALowerReserveNeverShortens(long seed) {
        WeatherSeries weather = RandomVan.weather(seed);
        Van van = RandomVan.plain(seed)
                .with("solar.preset", "framed panels")
                .with("solar.power", "300 W")
                .with("solar.panel-efficiency", "20 %")
                .with("solar.controller", "60 A");
        neverShortens(
                seed,
                weather,
                van,
                v -> v.with("solar.power", "400 W").with("solar.panel-efficiency", "26.6666666666667 %"));
        neverShortens(seed, weather, van.with("trip.reserve", "20 %"), v -> v.with("trip.reserve", "15 %"));
    }

    /** Hotter weather never means less cooling energy, for a van whose bank always serves it. */
    @ParameterizedTest
    @MethodSource("twentySeeds")
    void hotterNeverNeedsLessCooling(long seed) {
        double[] coolingWh = new double[3];
        for (int i = 0; i < coolingWh.length; i++) {
            double meanC = 18.0 + seed % 10 + 6.0 * i;
            Van van = RandomVan.any(seed)
                    .with("cooling.preset", seed % 2 == 0 ? "variable-speed roof unit" : "fixed-speed roof unit")
                    .with("cabin.set.asleep", "23 °C")
                    .with("cabin.set.awake", "24 °C")
                    .with("trip.reserve", "0 %")
                    .with("battery.start", "100 %")
                    .with("battery.discharge-limit", "5000 A")
                    .with("battery.capacity", "90000 Ah");
            RunResult run = van.run(Van.weather(
                    hour -> meanC - 5 * Math.cos((hour - 3) * Math.PI / 12), hour -> hour >= 8 && hour < 16 ? 600 : 0));
            assertThat(run.energy().unservedWh()).isZero();
            coolingWh[i] = run.energy().wh(Account.COOLING);
        }
        assertThat(coolingWh).isSorted();
    }

    /** Nothing on and nothing coming in: the only thing that happens is what the bank drains itself. */
    @ParameterizedTest
    @MethodSource("twentySeeds")
    void idleVansOnlyStandBy(long seed) {
        Van van = new Van()
                .with("trip.days", Long.toString(1 + seed % 10))
                .with("battery.capacity", 10 * seed + " Ah")
                .with("battery.start", "80 %");
        BankSpec bank = van.variant().design().bank();
        RunResult run = van.run(RandomVan.weather(seed));
        double drainedShare = standbyA(bank) * 24 * run.tripDays() / bank.capacityAh();
        assertThat(run.lowestSoc()).isCloseTo(0.8 - drainedShare, within(1e-9));
        assertThat(run.energy().wh(Account.STORED)).isEqualTo(-run.energy().wh(Account.BANK_STANDBY));
        assertThat(run.energy().wh(Account.THROUGHPUT)).isCloseTo(0, within(1e-9));
    }
}
