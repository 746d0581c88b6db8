package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.ScenarioReader;
import ampdays.io.WeatherReader;
import ampdays.log.Signal;
import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import ampdays.results.Reconciliation;
import ampdays.results.Reconciliation.Cause;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.sim.SkyCompletion;
import ampdays.weather.WeatherSeries;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Vans that differ from the promise in known ways, logged with the noise of a meter: the gap must come back to its causes,
 * and the values to their truth. The truth of the shares is the same division with the true values in place of the log.
 */
class ReconcileTruthTest {
    private static final int CASES = Integer.getInteger("ampdays.cases", 4);

    private static Values promised;
    private static WeatherSeries desert;

    @BeforeAll
    static void read() throws Exception {
        Values demo =
                ScenarioReader.read(Path.of("scenarios/desert-survey.yaml")).base();
        promised = demo.with("trip.days", "4")
                .with("trip.field days", "1-2")
                .with("battery.capacity", "800 Ah")
                .with("loads.laptops.when", "away")
                .with("second-alternator.preset", "large frame")
                .with("second-alternator.rated", "270 A")
                .with("second-alternator.cap", "200 A");
        desert = SkyCompletion.complete(WeatherReader.read(Path.of("weather-profiles/low-desert-summer.csv")));
    }

    static Planner planner() {
        return sky -> {
            RunPlan.Maker maker = new RunPlan.Maker(60);
            return variant -> maker.plan(variant, desert);
        };
    }

    private static Variant built(Values values) {
        try {
            return VariantBuilder.build("test", values);
        } catch (ScenarioException e) {
            throw new IllegalStateException(e.problems().toString(), e);
        }
    }

    private static RunPlan plan(Values values) {
        return new RunPlan.Maker(60).plan(built(values), desert);
    }

    private static double leftWh(Values values, int steps) {
        RunPlan plan = plan(values);
        MinuteLog run = Simulator.record(plan, 0, steps);
        double lowest = 1;
        double unservedWh = 0;
        for (int step = 0; step < run.rows(); step++) {
            lowest = Math.min(lowest, run.get(Channel.STATE_OF_CHARGE, step) / 100);
            unservedWh += run.get(Channel.UNSERVED, step) / 60;
        }
        return lowest * plan.variant().bankWh() - unservedWh;
    }

    private static Values with(Values values, Map<Cause, Map<String, Double>> deviations, int set, List<Cause> causes) {
        Values changed = values;
        for (int i = 0; i < causes.size(); i++) {
            if ((set & (1 << i)) != 0) {
                for (Map.Entry<String, Double> change :
                        deviations.get(causes.get(i)).entrySet()) {
                    changed = changed.with(change.getKey(), change.getValue());
                }
            }
        }
        return changed;
    }

    /** Use, sun, bank and charger always differ, and of the second alternator one of cap, cable and output. */
    private static Map<Cause, Map<String, Double>> deviations(SplittableRandom random) {
        Map<Cause, Map<String, Double>> all = new EnumMap<>(Cause.class);
        all.put(
                Cause.USE,
                Map.of(
                        "loads.lights.draw", random.nextDouble(5, 25),
                        "loads.alarms and monitors.draw", random.nextDouble(0.8, 3),
                        "loads.laptops.use", random.nextDouble(2, 6),
                        "cabin.set.asleep", random.nextDouble(24, 28),
                        "cabin.set.awake", random.nextDouble(25, 29)));
        all.put(Cause.SUN, Map.of("solar.power", 400 * random.nextDouble(0.5, 0.9)));
        all.put(Cause.BANK, Map.of("battery.capacity", 800 * random.nextDouble(0.6, 0.95)));
        all.put(Cause.SETTINGS, Map.of("factory-alternator.charger", 40 * random.nextDouble(0.4, 0.9)));
        switch (random.nextInt(3)) {
            case 0 ->
                all.put(
                        Cause.SETTINGS,
                        Map.of(
                                "factory-alternator.charger", 40 * random.nextDouble(0.4, 0.9),
                                "second-alternator.cap", 200 * random.nextDouble(0.25, 0.45)));
            case 1 -> all.put(Cause.CABLE, Map.of("second-alternator.cable", 0.002 * random.nextDouble(6, 12)));
            default -> all.put(Cause.HEAT, Map.of("second-alternator.rated", 270 * random.nextDouble(0.4, 0.6)));
        }
        return all;
    }

    private static Reconciliation reconciled(Values truth, long seed) {
        return reconciled(promised, truth, Set.of(), seed);
    }

    private static Reconciliation reconciled(Values promise, Values truth, Set<Signal> lacking, long seed) {
        RunPlan plan = plan(promise);
        LoggedTrip trip = LoggedTrip.of(
                SyntheticLog.without(lacking, plan(truth), seed),
                plan,
                plan.clock().date(0));
        MinuteLog run = Simulator.record(plan, 0, plan.clock().steps());
        return Reconcile.of(promise, trip, run, planner());
    }

    /** Identity: a van as promised has no gap but for the noise of its meter, one percent of the bank's 10.2 kWh. */
    @Test
    void aLogOfThePromiseHasNoGap() {
        Reconciliation found = reconciled(promised, 1);
        assertThat(found.gapWh()).isCloseTo(0, within(102.0));
        assertThat(found.unexplainedWh()).isCloseTo(0, within(102.0));
        assertThat(found.shares()).allSatisfy(share -> assertThat(share.wh()).isCloseTo(0, within(102.0)));
        assertThat(found.fitted())
                .isNotEmpty()
                .allSatisfy(value -> assertThat(value.value())
                        .isCloseTo(value.promised(), within(Math.max(2 * value.plusMinus(), 0.02 * value.promised()))));
    }

    /**
     * A cabin that was kept colder than promised, with no meter of its temperature, keeps the bank colder and so lets it take
     * less charge: no run of the promise follows the alternators, and no values are told that only bend it to the log.
     */
    @Test
    void valuesOfARunThatDoesNotFollowTheLogAreNotTold() {
        Values promise = promised.with("battery.capacity", "500 Ah");
        Values truth = promise.with("battery.capacity", "420 Ah").with("cabin.set.asleep", "23 °C");
        Reconciliation found = reconciled(promise, truth, Set.of(Signal.CABIN_TEMPERATURE), 1);
        assertThat(found.untold())
                .anySatisfy(
                        text -> assertThat(text)
                                .startsWith(
                                        "values of alternators and bank: the best run still misses the second alternator's current by"));
        assertThat(found.fitted()).noneMatch(value -> value.path().matches("(battery|second|factory).*"));
    }

    /**
     * In nine of ten cases every share within a tenth of the gap of its truth, and of each value nine in ten within their
     * 95 % intervals; all of four cases. {@code -Dampdays.cases=200} runs more cases than a build has time for.
     */
    @Test
    void knownDeviationsComeBackToTheirCauses(TestReporter report) {
        Map<String, int[]> within = new TreeMap<>();
        List<String> astray = new ArrayList<>();
        List<String> missed = new ArrayList<>();
        for (int seed = 1; seed <= CASES; seed++) {
            Map<Cause, Map<String, Double>> deviations = deviations(new SplittableRandom(seed));
            List<Cause> causes = new ArrayList<>(deviations.keySet());
            int sets = 1 << causes.size();
            Values built = with(promised, deviations, sets - 1, causes);
            Reconciliation found = reconciled(built, seed);
            String wrong = astray(found, deviations, causes);
            if (!wrong.isEmpty()) {
                astray.add(seed + " " + wrong);
            }
            for (Reconciliation.Fitted value : found.fitted()) {
                int[] counts = within.computeIfAbsent(value.path(), path -> new int[2]);
                double off = value.value() - built.number(value.path());
                boolean holds = Math.abs(off) <= value.plusMinus();
                counts[0] += holds ? 1 : 0;
                counts[1]++;
                if (!holds) {
                    missed.add(seed + " " + value + ", off by " + off);
                }
            }
        }
        within.forEach((path, counts) -> report.publishEntry(path, counts[0] + " of " + counts[1] + " within"));
        report.publishEntry(
                "shares", (CASES - astray.size()) + " of " + CASES + " cases within a tenth; not: " + astray);
        report.publishEntry("missed", missed.toString());
        assertThat(within)
                .containsKeys("loads.lights.draw", "loads.laptops.use", "cabin.set.asleep", "battery.capacity");
        assertThat(astray).hasSizeLessThanOrEqualTo(CASES / 10);
        assertThat(within)
                .allSatisfy((path, counts) -> assertThat(10 * counts[0])
                        .as(path + ", missed " + missed)
                        .isGreaterThanOrEqualTo(9 * counts[1]));
    }

    /** Empty when every share lies within a tenth of the gap of its truth. */
    private static String astray(Reconciliation found, Map<Cause, Map<String, Double>> deviations, List<Cause> causes) {
        double[] left = new double[1 << causes.size()];
        for (int set = 0; set < left.length; set++) {
            left[set] = leftWh(with(promised, deviations, set, causes), (int) Math.round(found.days() * 1440));
        }
        Map<Cause, Double> truth = new EnumMap<>(Cause.class);
        double[] shares = Shapley.shares(left);
        causes.forEach(cause -> truth.put(cause, shares[causes.indexOf(cause)]));
        double tenth = 0.1 * Math.abs(left[0] - left[left.length - 1]);
        Map<Cause, Double> told = new EnumMap<>(Cause.class);
        found.shares().forEach(share -> told.put(share.cause(), share.wh()));
        boolean holds = Arrays.stream(Cause.values())
                .allMatch(cause -> Math.abs(told.getOrDefault(cause, 0.0) - truth.getOrDefault(cause, 0.0)) <= tenth);
        return holds ? "" : found.shares() + ", truth " + truth;
    }
}
