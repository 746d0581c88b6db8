package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.ScenarioReader;
import ampdays.io.WeatherReader;
import ampdays.log.Signal;
import ampdays.results.MinuteLog;
import ampdays.results.Reconciliation;
import ampdays.results.Reconciliation.Fitted;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Values;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.sim.SkyCompletion;
import ampdays.units.Dimension;
import ampdays.weather.WeatherSeries;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Loads of a van without cooling that differ from the promise in known ways, by logs of its run; true by construction. */
class FittedUseTest {
    private static final String BASE = "loads.alarms and monitors.draw";

    private static Values promised;
    private static WeatherSeries desert;

    @BeforeAll
    static void read() throws Exception {
        promised = ScenarioReader.read(Path.of("scenarios/desert-survey.yaml"))
                .base()
                .with("trip.days", "3")
                .with("trip.field days", "1-2")
                .without("cooling")
                .with("battery.capacity", "10.24 kWh")
                .with("loads.laptops.when", "away");
        desert = SkyCompletion.complete(WeatherReader.read(Path.of("weather-profiles/low-desert-summer.csv")));
    }

    private static RunPlan plan(Values values) {
        try {
            return new RunPlan.Maker(60).plan(VariantBuilder.build("test", values), desert);
        } catch (ScenarioException e) {
            throw new IllegalStateException(e.problems().toString(), e);
        }
    }

    private static Reconciliation reconciled(Values promise, Values truth, Set<Signal> lacking, long seed) {
        RunPlan plan = plan(promise);
        LoggedTrip trip = LoggedTrip.of(
                SyntheticLog.without(lacking, plan(truth), seed),
                plan,
                plan.clock().date(0));
        MinuteLog run = Simulator.record(plan, 0, plan.clock().steps());
        RunPlan.Maker maker = new RunPlan.Maker(60);
        return Reconcile.of(promise, trip, run, sky -> variant -> maker.plan(variant, desert));
    }

    private static Fitted found(Reconciliation reconciliation, String path) {
        return reconciliation.fitted().stream()
                .filter(value -> value.path().equals(path))
                .findFirst()
                .orElseThrow(
                        () -> new AssertionError(path + " in " + reconciliation.fitted() + reconciliation.untold()));
    }

    /** Known by construction; nine in ten within their 95 % intervals. A bank of 10.24 kWh at 12.8 V has 800 Ah, and 640 remain. */
    @Test
    void baseLoadDutyAndBankComeBack() {
        Map<String, Double> truths = Map.of(BASE, 2.0, "loads.laptops.use", 6.0, "battery.capacity", 640.0);
        Values truth =
                promised.with(BASE, "2 A").with("loads.laptops.use", "6 h/day").with("battery.capacity", "640 Ah");
        List<String> missed = new ArrayList<>();
        for (int seed = 1; seed <= 4; seed++) {
            Reconciliation found = reconciled(promised, truth, Set.of(), seed);
            truths.forEach((path, value) -> {
                Fitted fitted = found(found, path);
                if (Math.abs(fitted.value() - value) > fitted.plusMinus()) {
                    missed.add(fitted.toString());
                }
            });
            assertThat(found(found, BASE).label()).isEqualTo("base load: alarms and monitors");
            assertThat(found(found, BASE).promised()).isCloseTo(0.4, within(1e-9));
            assertThat(found(found, "loads.laptops.use").label()).isEqualTo("duty of laptops");
            assertThat(found(found, "battery.capacity").in()).isEqualTo(Dimension.CHARGE);
            assertThat(found(found, "battery.capacity").promised()).isCloseTo(800, within(1e-6));
        }
        assertThat(missed).hasSizeLessThanOrEqualTo(1);
    }

    /** By logic: of two loads that run at the same times only the sum is told. */
    @Test
    void loadsOfTheSameTimesAreNotToldApart() {
        Values two = promised.with("loads.heater.draw", "1 A").with("loads.heater.when", "19:00-22:30");
        Reconciliation found = reconciled(two, two.with("loads.lights.draw", "9 A"), Set.of(), 1);
        assertThat(found.fitted()).noneMatch(value -> value.path().startsWith("loads.lights"));
        assertThat(found.fitted()).noneMatch(value -> value.path().startsWith("loads.heater"));
        assertThat(found.untold())
                .anyMatch(line -> line.matches("lights and heater one by one, since they run at the same times:"
                        + " together they take (3.9[2-9]|4.0[0-8]) ± 0.09 of what was promised.*"));
    }

    /** By logic: what the refrigerator takes is not told apart from a base load without a meter of its own. */
    @Test
    void whatTheLogLacksIsSaid() {
        Reconciliation found = reconciled(promised, promised.with(BASE, "2 A"), Set.of(Signal.REFRIGERATOR_POWER), 1);
        Fitted base = found(found, BASE);
        assertThat(base.value()).isCloseTo(2, within(base.plusMinus()));
        Values cooled = promised.with("cooling.preset", "variable-speed roof unit");
        assertThat(reconciled(cooled, cooled, Set.of(Signal.COOLING_POWER), 1).untold())
                .contains("base load and duties beside the cooling: log the power that the cooling takes from the bank")
                .contains("the set point of the cooling: log the cabin temperature and the power of the cooling");
    }
}
