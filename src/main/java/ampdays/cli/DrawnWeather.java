package ampdays.cli;

import ampdays.io.InputException;
import ampdays.io.InputProblem;
import ampdays.io.NormalsReader;
import ampdays.scenario.Origin;
import ampdays.scenario.StartWindow;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.sim.RunPlan;
import ampdays.sim.SyntheticYears;
import ampdays.study.TripWeather;
import ampdays.trip.Trip;
import ampdays.weather.MinuteWeather;
import ampdays.weather.MonthlyNormals;
import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/**
 * The weather that trips of a study go through: a year for each that is invented from monthly normals, or the years that the
 * weather file has.
 */
final class DrawnWeather implements TripWeather {
    /** Years of one seed of a study lie so far from those of the next. */
    private static final long SEEDS_APART = 1_000_000;

    private static final String NORMALS = "chances.normals";
    private static final DateTimeFormatter MONTH_DAY = DateTimeFormatter.ofPattern("MM-dd", Locale.ROOT);

    private final Loaded loaded;
    private final long seed;
    private final Map<String, SyntheticYears> invented = new HashMap<>();
    private final Map<String, List<List<LocalDate>>> starts = new HashMap<>();

    /** @throws InputException when an option has no day on which its trip can begin */
    DrawnWeather(Loaded loaded, long seed) throws IOException, InputException {
        this.loaded = loaded;
        this.seed = seed;
        for (Variant option : loaded.scenario().variants()) {
            String normals = normals(option);
            if (!normals.isEmpty() && !invented.containsKey(normals)) {
                invented.put(normals, read(option, normals));
            }
            starts.put(option.name(), possible(option));
        }
    }

    private SyntheticYears read(Variant option, String written) throws IOException, InputException {
        Path file = loaded.weatherFile(written);
        if (!Files.isRegularFile(file)) {
            Origin said = values(option).origin(NORMALS).orElseThrow();
            throw new InputException(List.of(new InputProblem(
                    said.source(),
                    said.line(),
                    said.column(),
                    NORMALS + " \"" + written + "\" is not there. Write the file's path from the scenario's folder.")));
        }
        MonthlyNormals normals = NormalsReader.read(file);
        try {
            return SyntheticYears.of(normals);
        } catch (IllegalArgumentException e) {
            throw new InputException(List.of(new InputProblem(file.toString(), 0, 0, e.getMessage())));
        }
    }

    private Values values(Variant option) {
        return loaded.file().values(option.name()).orElseThrow();
    }

    private String normals(Variant option) {
        return values(option).word(NORMALS);
    }

    private List<List<LocalDate>> possible(Variant option) throws InputException {
        StartWindow window = StartWindow.of(values(option), option.trip());
        if (!normals(option).isEmpty()) {
            return List.of(window.days(0));
        }
        WeatherSeries series = loaded.series(option);
        int from = 0;
        int to = 0;
        if (!series.info().typicalYear()) {
            from = series.localStart(0).getYear() - window.last().getYear();
            to = series.localStart(series.size() - 1).getYear() - window.first().getYear();
        }
        List<List<LocalDate>> years = new ArrayList<>();
        for (int later = from; later <= to; later++) {
            List<LocalDate> covered = window.days(later).stream()
                    .filter(day -> covers(series, option.trip(), day))
                    .toList();
            if (!covered.isEmpty()) {
                years.add(covered);
            }
        }
        if (years.isEmpty()) {
            throw loaded.problem("The weather of " + series.source() + " covers " + series.coverage() + "; no trip of "
                    + option.trip().days() + " days that begins between " + words(window.first()) + " and "
                    + words(window.last())
                    + " lies within that. Write other days under chances: first-start, last-start.");
        }
        return years;
    }

    private static boolean covers(WeatherSeries series, Trip trip, LocalDate day) {
        long start = day.atStartOfDay(trip.zone()).toEpochSecond();
        long end = day.plusDays(trip.days()).atStartOfDay(trip.zone()).toEpochSecond();
        try {
            MinuteWeather.requireCovers(series, start, end);
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    @Override
    public List<List<LocalDate>> starts(Variant option) {
        return starts.get(option.name());
    }

    @Override
    public String startWords(Variant option) {
        List<List<LocalDate>> years = starts(option);
        List<LocalDate> longest =
                years.stream().max(Comparator.comparingInt(List::size)).orElseThrow();
        String first = words(longest.get(0));
        return longest.size() == 1 && years.size() == 1
                ? "on " + first
                : "on " + longest.size() + " days from " + first + " to " + words(longest.get(longest.size() - 1))
                        + (years.size() == 1 ? "" : ", in each of " + years.size() + " years");
    }

    @Override
    public String words(Variant option) {
        String normals = normals(option);
        if (!normals.isEmpty()) {
            return "each in a year of its own, invented from "
                    + Path.of(normals).getFileName();
        }
        int years = starts(option).size();
        String file = loaded.series(option).source();
        return years == 1
                ? "all in the one year of " + file + ", so that only the day of the start changes the weather"
                : "in the weather of " + file;
    }

    @Override
    public String name(Variant option, int trip) {
        String normals = normals(option);
        return normals.isEmpty()
                ? loaded.series(option).source()
                : Path.of(normals).getFileName() + ", seed " + yearSeed(trip);
    }

    @Override
    public Function<Variant, RunPlan> of(int trip) {
        RunPlan.Maker maker = new RunPlan.Maker(Outputs.STEP_SECONDS);
        Map<String, WeatherSeries> years = new HashMap<>();
        return variant -> maker.plan(variant, weather(variant, trip, years));
    }

    private WeatherSeries weather(Variant variant, int trip, Map<String, WeatherSeries> years) {
        String normals = normals(variant);
        return normals.isEmpty()
                ? loaded.series(variant)
                : years.computeIfAbsent(normals, n -> invented.get(n).year(yearSeed(trip)));
    }

    private long yearSeed(int trip) {
        return seed * SEEDS_APART + trip;
    }

    private static String words(LocalDate day) {
        return MONTH_DAY.format(day);
    }
}
