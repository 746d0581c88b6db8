package ampdays.benchmark;

import ampdays.results.RunResult;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.Fleet;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.sim.SkyCompletion;
import ampdays.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.List;
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

/** Fourteen summer days of the van of {@link SimulatorBenchmark} with many banks: one by one and side by side. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(
        value = 1,
        jvmArgsAppend = {
            "-XX:+UseSerialGC",
            "-XX:+UseTransparentHugePages",
            "-XX:LoopUnrollLimit=240",
            "-XX:LoopMaxUnroll=8",
            "-XX:Tier4BackEdgeThreshold=10000000"
        })
public class FleetBenchmark {
    @Param({"24", "64", "128"})
    private int vans;

    private List<RunPlan> plans;

    /** Makes the plans, which share all but the bank. */
    @Setup
    public void prepare() throws ScenarioException {
        RunPlan.Maker maker = new RunPlan.Maker(60);
        WeatherSeries weather = SkyCompletion.complete(SimulatorBenchmark.weather());
        plans = new ArrayList<>();
        for (int van = 0; van < vans; van++) {
            plans.add(maker.plan(
                    VariantBuilder.build(
                            "van",
                            SimulatorBenchmark.values()
                                    .with("trip.start", "2025-07-01")
                                    .with("trip.days", "14")
                                    .with("battery.capacity", 1000 + 10 * van + " Ah")),
                    weather));
        }
    }

    @Benchmark
    public List<RunResult> oneByOne() {
        return plans.stream().map(Simulator::run).toList();
    }

    @Benchmark
    public List<RunResult> sideBySide() {
        return Fleet.run(plans);
    }
}
