package ampdays.cli;

import ampdays.io.InputException;
import ampdays.io.InputProblem;
import ampdays.io.ScenarioReader;
import ampdays.io.WeatherReader;
import ampdays.scenario.Scenario;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Variant;
import ampdays.sim.OtherWeather;
import ampdays.sim.RunPlan;
import ampdays.sim.SkyCompletion;
import ampdays.sim.SunFit;
import ampdays.study.Planner;
import ampdays.study.Sky;
import ampdays.trip.Trip;
import ampdays.weather.MinuteWeather;
import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** A scenario with its weather, ready to be planned and run. */
final class Loaded {
    private final Path path;
    private final ScenarioFile file;
    private final Map<String, WeatherSeries> weather = new TreeMap<>();
    private final Map<WeatherKey, WeatherSeries> otherWeather = new ConcurrentHashMap<>();
    private final Set<String> remarks = new LinkedHashSet<>();

    private record WeatherKey(String name, Sky sky) {}

    private Loaded(Path path, ScenarioFile file) {
        this.path = path;
        this.file = file;
    }

    /** Reads a scenario and every weather file that it names. */
    static Loaded read(Path path) throws IOException, InputException {
        Optional<Loaded> ahead = ReadAhead.take(path);
        return ahead.isPresent() ? ahead.get() : readNow(path);
    }

    static Loaded readNow(Path path) throws IOException, InputException {
        Loaded loaded = new Loaded(path, ScenarioReader.read(path));
        for (Variant variant : loaded.scenario().variants()) {
            loaded.readWeather(variant);
            loaded.remarkDirt(variant);
        }
        return loaded;
    }

    private void readWeather(Variant variant) throws IOException, InputException {
        if (weather.containsKey(variant.weather())) {
            return;
        }
        Path file = path.toAbsolutePath().resolveSibling(variant.weather()).normalize();
        WeatherSeries asRead = WeatherReader.read(file);
        WeatherSeries series = complete(file, asRead);
        series.notes().forEach(note -> remarks.add(series.source() + ": " + note));
        SunFit.warning(asRead).ifPresent(remarks::add);
        weather.put(variant.weather(), series);
    }

    private void remarkDirt(Variant variant) {
        WeatherSeries series = weather.get(variant.weather());
        boolean grows =
                variant.design().solar().map(s -> s.dirt().perDayShare() > 0).orElse(false);
        if (grows && !series.knowsRain()) {
            remarks.add(series.source() + ": no rain is in the file, so solar.dirt-a-day has no effect.");
        }
    }

    private static WeatherSeries complete(Path file, WeatherSeries series) throws InputException {
        try {
            return SkyCompletion.complete(series);
        } catch (IllegalArgumentException e) {
            throw new InputException(List.of(new InputProblem(file.toString(), 0, 0, e.getMessage())));
        }
    }

    ScenarioFile file() {
        return file;
    }

    Scenario scenario() {
        return file.scenario();
    }

    /** What the reader derived, repaired or doubts, in plain words. */
    List<String> remarks() {
        return List.copyOf(remarks);
    }

    /** Plans of all variants, in their order; parts in common are shared. */
    List<RunPlan> plans(int stepSeconds) throws InputException {
        RunPlan.Maker maker = new RunPlan.Maker(stepSeconds);
        List<RunPlan> plans = new ArrayList<>();
        for (Variant variant : scenario().variants()) {
            plans.add(plan(maker, variant));
        }
        return plans;
    }

    /** Plans of changed designs, also under another sky. */
    Planner planner(int stepSeconds) {
        return sky -> {
            RunPlan.Maker maker = new RunPlan.Maker(stepSeconds);
            return variant -> maker.plan(variant, weather(variant.weather(), sky));
        };
    }

    private WeatherSeries weather(String name, Sky sky) {
        return otherWeather.computeIfAbsent(new WeatherKey(name, sky), key -> {
            WeatherSeries series = weather.get(name);
            WeatherSeries lit = sky.clear() ? OtherWeather.withoutCloud(series) : series;
            return sky.coolerNights() ? OtherWeather.coolerNights(lit, Sky.COOLER_NIGHTS_K) : lit;
        });
    }

    /** Refuses weather that does not cover the trip of a variant. */
    void requireCoverage() throws InputException {
        for (Variant variant : scenario().variants()) {
            Trip trip = variant.trip();
            long start = trip.start().atStartOfDay(trip.zone()).toEpochSecond();
            long end =
                    trip.start().plusDays(trip.days()).atStartOfDay(trip.zone()).toEpochSecond();
            try {
                MinuteWeather.requireCovers(weather.get(variant.weather()), start, end);
            } catch (IllegalArgumentException e) {
                throw problem(e);
            }
        }
    }

    private InputException problem(IllegalArgumentException e) {
        return new InputException(List.of(new InputProblem(path.toString(), 0, 0, e.getMessage())));
    }

    RunPlan plan(RunPlan.Maker maker, Variant variant) throws InputException {
        try {
            return maker.plan(variant, weather.get(variant.weather()));
        } catch (IllegalArgumentException e) {
            throw problem(e);
        }
    }
}
