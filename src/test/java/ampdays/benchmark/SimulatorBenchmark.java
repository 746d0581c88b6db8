package ampdays.benchmark;

import ampdays.io.PresetReader;
import ampdays.results.RunResult;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.sim.SkyCompletion;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A year of minutes of a van with every component: making its plan, and running it for totals only. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
public class SimulatorBenchmark {
    private Variant variant;
    private WeatherSeries weather;
    private RunPlan plan;

    /** Makes the van, its weather and its plan. */
    @Setup
    public void prepare() throws ScenarioException {
        variant = VariantBuilder.build("year", values());
        weather = SkyCompletion.complete(weather());
        plan = new RunPlan.Maker(60).plan(variant, weather);
    }

    @Benchmark
    public RunPlan planOfAYear() {
        return new RunPlan.Maker(60).plan(variant, weather);
    }

    @Benchmark
    public RunResult yearOfMinutes() {
        return Simulator.run(plan);
    }

    static Values values() {
        return Values.empty(PresetReader.presets())
                .with("title", "a year with every component")
                .with("place.latitude", "33.4°")
                .with("place.longitude", "-112°")
                .with("place.elevation", "340 m")
                .with("place.zone", "America/Phoenix")
                .with("weather", "made.csv")
                .with("trip.start", "2025-01-01")
                .with("trip.days", "365")
                .with("trip.reserve", "20 %")
                .with("trip.all days", "others")
                .with("trip.timetable.all days", """
                        06:30 drive town, aboard
                        07:15 park sun, away
                        16:00 idle, awake
                        16:30 drive highway, aboard
                        17:30 park part-shade, awake
                        21:00 park shade hook-up, awake
                        22:00 park open, asleep""")
                .with("cabin.preset", "high-roof van, insulated")
                .with("cabin.set.asleep", "24 °C")
                .with("cabin.set.awake", "27 °C")
                .with("cooling.preset", "variable-speed roof unit")
                .with("refrigerator.preset", "90 L compressor")
                .with("battery.preset", "lithium iron phosphate 12 V")
                .with("battery.capacity", "400 Ah")
                .with("battery.start", "100 %")
                .with("solar.preset", "framed panels")
                .with("solar.power", "600 W")
                .with("factory-alternator.preset", "factory 180 A class")
                .with("factory-alternator.charger", "40 A")
                .with("second-alternator.preset", "large frame")
                .with("shore-charger.preset", "50 A class")
                .with("inverter.preset", "2,000 W class")
                .with("loads.monitors.draw", "0.4 A")
                .with("loads.monitors.when", "always")
                .with("loads.lights.draw", "1.5 A")
                .with("loads.lights.when", "19:00-22:30")
                .with("loads.fan.draw", "3 A")
                .with("loads.fan.when", "awake")
                .with("loads.laptops.draw", "110 W")
                .with("loads.laptops.use", "4 h/day")
                .with("loads.laptops.when", "awake")
                .with("loads.laptops.on", "inverter")
                .with("loads.pump.draw", "5 A")
                .with("loads.pump.use", "12 min/day")
                .with("loads.pump.when", "occupied");
    }

    /** An invented year: hot summers, mild winters, every third day cloudy. */
    static WeatherSeries weather() {
        int rows = 8760;
        double[] ghi = new double[rows];
        double[] air = new double[rows];
        double[] unknown = new double[rows];
        double[] dew = new double[rows];
        double[] wind = new double[rows];
        double[] pressure = new double[rows];
        Arrays.setAll(
                air,
                i -> 23
                        - 11 * Math.cos(2 * Math.PI * (i / 24 - 15) / 365)
                        - 7 * Math.cos(2 * Math.PI * (i % 24 - 4) / 24));
        Arrays.setAll(ghi, i -> {
            double height = Math.sin(Math.PI * (i % 24 - 5.5) / 13);
            double clear = 800 - 250 * Math.cos(2 * Math.PI * (i / 24 - 5) / 365);
            return height <= 0 ? 0 : height * clear * (i / 24 % 3 == 2 ? 0.5 : 1);
        });
        Arrays.fill(unknown, Double.NaN);
        Arrays.fill(dew, 7);
        Arrays.fill(wind, 3);
        Arrays.fill(pressure, 97_500);
        long start = LocalDate.of(WeatherSeries.NOMINAL_YEAR, 1, 1).toEpochDay() * 86_400 + 7 * 3600;
        SeriesInfo info = new SeriesInfo("made", 33.4, -112, 340, -7, start, 3600, true, 1, List.of());
        return WeatherSeries.of(info, ghi, unknown, unknown, air, dew, wind, pressure);
    }
}
