package ampdays.cli;

import ampdays.io.InputException;
import ampdays.io.InputProblem;
import ampdays.io.ScenarioReader;
import ampdays.io.WeatherReader;
import ampdays.report.Material;
import ampdays.results.Account;
import ampdays.results.Lifted;
import ampdays.results.RunResult;
import ampdays.scenario.Grid;
import ampdays.scenario.PricedPart;
import ampdays.scenario.Scenario;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.OtherWeather;
import ampdays.sim.RunPlan;
import ampdays.sim.SkyCompletion;
import ampdays.sim.SunFit;
import ampdays.study.Lift;
import ampdays.study.Planner;
import ampdays.study.Sky;
import ampdays.trip.Trip;
import ampdays.weather.MinuteWeather;
import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.TreeSet;
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

    /**
     * An option by its name.
     *
     * @throws UsageException when the scenario has none of that name
     */
    Variant option(String name) throws UsageException {
        return scenario().variant(name).orElseThrow(() -> UsageException.unknownOption(name, path, scenario()));
    }

    /** Days of the longest trip of all options. */
    int longestTripDays() {
        return scenario().variants().stream()
                .mapToInt(variant -> variant.trip().days())
                .max()
                .orElseThrow();
    }

    private void readWeather(Variant variant) throws IOException, InputException {
        if (weather.containsKey(variant.weather())) {
            return;
        }
        Path file = weatherFile(variant.weather());
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

    /** A file that the scenario names, by its path from the scenario. */
    Path weatherFile(String name) {
        return path.toAbsolutePath().resolveSibling(name).normalize();
    }

    private static WeatherSeries complete(Path file, WeatherSeries series) throws InputException {
        try {
            return SkyCompletion.complete(series);
        } catch (IllegalArgumentException e) {
            throw new InputException(List.of(new InputProblem(file.toString(), 0, 0, e.getMessage())));
        }
    }

    /**
     * The same scenario with one design only: an option with values changed by PATH=VALUE.
     *
     * @throws UsageException when a value does not fit, or the changed design is impossible
     */
    Loaded changed(String option, List<String> assignments) throws IOException, InputException, UsageException {
        Values values = file.values(option).orElseThrow();
        StringJoiner name = new StringJoiner(", ").add(option);
        for (String assignment : assignments) {
            int equals = assignment.indexOf('=');
            if (equals < 1) {
                throw new UsageException(
                        "--set \"" + assignment + "\" has no \"=\" between path and value. Write it like:"
                                + " --set battery.capacity=\"300 Ah\".");
            }
            String path = assignment.substring(0, equals).strip();
            String value = assignment.substring(equals + 1).strip();
            try {
                values = values.with(path, value);
            } catch (IllegalArgumentException e) {
                throw new UsageException("--set " + e.getMessage());
            }
            name.add(path + " " + value);
        }
        Variant variant;
        try {
            variant = VariantBuilder.build(name.toString(), values);
        } catch (ScenarioException e) {
            throw new UsageException("--set makes a design that cannot be: " + e.getMessage());
        }
        Scenario one =
                new Scenario(scenario().name(), scenario().title(), scenario().notes(), List.of(variant));
        Loaded changed = new Loaded(
                path,
                new ScenarioFile(
                        one,
                        file.base(),
                        List.of(new ScenarioFile.Option(variant.name(), values)),
                        List.of(),
                        file.failures()));
        changed.readWeather(variant);
        changed.remarkDirt(variant);
        return changed;
    }

    /** The same with other prices of parts. */
    Loaded priced(Map<PricedPart, Double> prices, String currency, String source) {
        return with(file.priced(prices, currency, source));
    }

    /** Designs whose weather files are read already. */
    Loaded with(ScenarioFile designs) {
        Loaded other = new Loaded(path, designs);
        other.weather.putAll(weather);
        other.remarks.addAll(remarks);
        return other;
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

    /** What a better part would bring an option. */
    Lifted lift(String option, RunResult result) {
        return Lift.of(
                        scenario().variant(option).orElseThrow(),
                        file.values(option).orElseThrow(),
                        result,
                        planner(Outputs.STEP_SECONDS))
                .told();
    }

    private WeatherSeries weather(String name, Sky sky) {
        return otherWeather.computeIfAbsent(new WeatherKey(name, sky), key -> {
            WeatherSeries series = weather.get(name);
            WeatherSeries lit = sky.clear() ? OtherWeather.withoutCloud(series) : series;
            WeatherSeries cooler = sky.coolerNights() ? OtherWeather.coolerNights(lit, Sky.COOLER_NIGHTS_K) : lit;
            return sky.warmerK() == 0 ? cooler : OtherWeather.warmer(cooler, sky.warmerK());
        });
    }

    /** The weather of a variant, as it is simulated. */
    WeatherSeries series(Variant variant) {
        return weather.get(variant.weather());
    }

    /** Refuses weather that does not cover the trip of a variant. */
    void requireCoverage() throws InputException {
        for (Variant variant : scenario().variants()) {
            requireCoverage(variant);
        }
    }

    void requireCoverage(Variant variant) throws InputException {
        Trip trip = variant.trip();
        long start = trip.start().atStartOfDay(trip.zone()).toEpochSecond();
        long end = trip.start().plusDays(trip.days()).atStartOfDay(trip.zone()).toEpochSecond();
        try {
            MinuteWeather.requireCovers(weather.get(variant.weather()), start, end);
        } catch (IllegalArgumentException e) {
            throw problem(e);
        }
    }

    /** Tries the corners of a grid, reads all weather that it needs, and tells which uses its designs have. */
    SortedSet<String> prepare(Grid grid) throws IOException, InputException, UsageException {
        VariantBuilder builder = new VariantBuilder();
        SortedSet<String> uses = new TreeSet<>();
        for (List<Integer> places : grid.samples()) {
            uses.addAll(prepare(grid, places, builder));
        }
        return uses;
    }

    /** The same where corners may be impossible as long as one is not; fit for grids that name one weather file. */
    SortedSet<String> prepareSome(Grid grid) throws IOException, InputException, UsageException {
        SortedSet<String> uses = new TreeSet<>();
        List<UsageException> impossible = new ArrayList<>();
        VariantBuilder builder = new VariantBuilder();
        for (List<Integer> places : grid.samples()) {
            try {
                uses.addAll(prepare(grid, places, builder));
            } catch (UsageException e) {
                impossible.add(e);
            }
        }
        if (impossible.size() == grid.samples().size()) {
            throw impossible.get(0);
        }
        return uses;
    }

    private SortedSet<String> prepare(Grid grid, List<Integer> places, VariantBuilder builder)
            throws IOException, InputException, UsageException {
        try {
            Variant variant = grid.variant(file, places, builder);
            prepare(variant);
            return uses(variant);
        } catch (ScenarioException e) {
            throw new UsageException("With " + grid.words(places) + ": " + e.getMessage());
        }
    }

    /** What asks for energy in a design, by name. */
    static SortedSet<String> uses(Variant variant) {
        SortedSet<String> uses = new TreeSet<>();
        variant.design().loads().forEach(load -> uses.add(load.name()));
        variant.design().cooler().ifPresent(c -> uses.add(Account.COOLING.label()));
        variant.design().refrigerator().ifPresent(r -> uses.add(Account.REFRIGERATOR.label()));
        return uses;
    }

    /** Reads the weather that a changed design names, and refuses it if it does not cover the trip. */
    private void prepare(Variant variant) throws IOException, InputException {
        readWeather(variant);
        remarkDirt(variant);
        requireCoverage(variant);
    }

    /** Tells whether two scenarios give the same results: a digest of all their values and of their weather files. */
    String fingerprint() throws IOException {
        MessageDigest digest = sha256();
        for (Variant variant : scenario().variants()) {
            digest.update(bytes(variant.name()));
            for (Values.Listed listed :
                    file.values(variant.name()).orElseThrow().listing()) {
                digest.update(bytes(listed.path() + "=" + listed.value().text() + '\n'));
            }
        }
        for (String name : weather.keySet()) {
            digest.update(bytes(name));
            digest.update(Files.readAllBytes(weatherFile(name)));
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** Every file that was read for this scenario, with the SHA-256 digest of its bytes. */
    List<Material.InputFile> inputs() throws IOException, InputException {
        List<Material.InputFile> inputs = new ArrayList<>();
        for (Path part : ScenarioReader.files(path)) {
            inputs.add(input("scenario", part.getFileName().toString(), part));
        }
        for (String name : weather.keySet()) {
            inputs.add(input("weather", weatherFile(name).getFileName().toString(), weatherFile(name)));
        }
        return inputs;
    }

    static Material.InputFile input(String what, String name, Path file) throws IOException {
        return new Material.InputFile(what, name, HexFormat.of().formatHex(sha256().digest(Files.readAllBytes(file))));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private InputException problem(IllegalArgumentException e) {
        return problem(e.getMessage());
    }

    /** What is wrong with the scenario as a whole. */
    InputException problem(String message) {
        return new InputException(List.of(new InputProblem(path.toString(), 0, 0, message)));
    }

    RunPlan plan(RunPlan.Maker maker, Variant variant) throws InputException {
        try {
            return maker.plan(variant, weather.get(variant.weather()));
        } catch (IllegalArgumentException e) {
            throw problem(e);
        }
    }
}
