package ampdays.benchmark;

import ampdays.results.RunResult;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Values;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.sim.SkyCompletion;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The year of {@link SimulatorBenchmark} without one of its components: the difference is what that one costs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 2, jvmArgsAppend = "-XX:+UseSerialGC")
public class ComponentBenchmark {
    /** Path of what is left out; nothing at first. */
    @Param({
        "",
        "cooling",
        "refrigerator",
        "solar",
        "factory-alternator",
        "second-alternator",
        "shore-charger",
        "loads.laptops inverter",
        "cooling refrigerator solar factory-alternator second-alternator shore-charger loads.laptops inverter"
    })
    private String without;

    private RunPlan plan;

    /** Makes the plan of the van that is left. */
    @Setup
    public void prepare() throws ScenarioException {
        Values values = SimulatorBenchmark.values();
        for (String path : without.split(" ", -1)) {
            values = path.isEmpty() ? values : values.without(path);
        }
        plan = new RunPlan.Maker(60)
                .plan(VariantBuilder.build("year", values), SkyCompletion.complete(SimulatorBenchmark.weather()));
    }

    @Benchmark
    public RunResult yearWithout() {
        return Simulator.run(plan);
    }
}
