package ampdays.io;

import ampdays.io.ScenarioWalk.Entry;
import ampdays.scenario.Origin;
import ampdays.scenario.Problem;
import ampdays.scenario.Scenario;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.ScenarioFile.Option;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads scenario files. All problems of a file are told together, in the order of their places. */
public final class ScenarioReader {
    private static final String USE = "use";
    private static final String OPTIONS = "options";
    private static final String SWEEPS = "sweeps";
    private static final String FAILURES = "failures";

    private final Path path;
    private final String file;
    private final List<InputProblem> problems = new ArrayList<>();
    private final VariantBuilder builder = new VariantBuilder();
    private final Set<String> failedPaths = new HashSet<>();

    private ScenarioReader(Path path) {
        this.path = path;
        this.file = path.getFileName().toString();
    }

    /**
     * Reads and checks a scenario and builds its variants.
     *
     * @throws InputException when the scenario is wrong, with all that is wrong
     * @throws IOException when the file cannot be read at all
     */
    public static ScenarioFile read(Path path) throws IOException, InputException {
        return new ScenarioReader(path).read();
    }

    /** The files that a scenario consists of: its own, and the shared one that it uses. */
    public static List<Path> files(Path path) throws IOException, InputException {
        ScenarioReader reader = new ScenarioReader(path);
        List<Path> files = new ArrayList<>(List.of(path));
        Entry use = reader.entries(path, reader.file).get(USE);
        if (use != null && use.value() instanceof ScalarNode scalar) {
            reader.within(YamlText.text(scalar).strip()).ifPresent(files::add);
        }
        return files;
    }

    private ScenarioFile read() throws IOException, InputException {
        Map<String, Entry> entries = entries(path, file);
        Entry options = entries.remove(OPTIONS);
        Entry use = entries.remove(USE);
        Entry sweeps = entries.remove(SWEEPS);
        Entry failures = entries.remove(FAILURES);
        Values base = Values.empty(PresetReader.presets());
        if (use != null) {
            base = shared(use, base);
        }
        ScenarioWalk walk = new ScenarioWalk(file, problems);
        base = walk.map(entries, "", base);
        List<Option> read = options == null ? List.of() : options(walk, options, base);
        failedPaths.addAll(walk.failedPaths());
        List<Variant> variants = build(base, read);
        refuseIfWrong();
        String name = file.replaceFirst("\\.[^.]+$", "");
        String title = base.word("title");
        Scenario scenario = new Scenario(name, title.isEmpty() ? name : title, base.word("notes"), variants);
        ScenarioFile whole = new ScenarioFile(scenario, base, read, List.of(), List.of());
        if (sweeps != null) {
            whole = ScenarioSweeps.read(walk, sweeps, whole);
            refuseIfWrong();
        }
        if (failures != null) {
            whole = ScenarioFailures.read(walk, failures, whole);
            refuseIfWrong();
        }
        return whole;
    }

    /** Top-level entries of a file; stops when it is not YAML at all. */
    private Map<String, Entry> entries(Path from, String label) throws IOException, InputException {
        String text;
        try {
            text = Files.readString(from, StandardCharsets.UTF_8);
        } catch (CharacterCodingException e) {
            problems.add(new InputProblem(label, 0, 0, "The file is not UTF-8 text. Save it as UTF-8."));
            throw new InputException(problems);
        }
        Optional<MappingNode> root = YamlText.map(label, text, problems);
        refuseIfWrong();
        return new LinkedHashMap<>(new ScenarioWalk(label, problems).entries(root.orElseThrow()));
    }

    private Values shared(Entry use, Values values) throws IOException, InputException {
        ScenarioWalk here = new ScenarioWalk(file, problems);
        if (!(use.value() instanceof ScalarNode scalar)) {
            here.problem(use.value(), "use is not a file. Write the path of one shared file, like parts/van.yaml.");
            return values;
        }
        String written = YamlText.text(scalar).strip();
        Optional<Path> found = within(written);
        if (found.isEmpty()) {
            here.problem(
                    scalar,
                    "use \"" + written + "\" is no file below the scenario's own folder. Write its path "
                            + "from there, like parts/van.yaml.");
            return values;
        }
        String label = found.get().getFileName().toString();
        Map<String, Entry> entries = entries(found.get(), label);
        ScenarioWalk walk = new ScenarioWalk(label, problems);
        for (String key : List.of(USE, OPTIONS, SWEEPS, FAILURES)) {
            Entry refused = entries.remove(key);
            if (refused != null) {
                walk.problem(refused.key(), key + " may only stand in the scenario itself, not in a shared file.");
            }
        }
        Values changed = walk.map(entries, "", values);
        failedPaths.addAll(walk.failedPaths());
        return changed;
    }

    /** A file in the scenario's folder or below it, links followed. */
    private Optional<Path> within(String written) throws IOException {
        try {
            Path folder = path.toAbsolutePath().getParent().toRealPath();
            Path target = folder.resolve(written);
            return Files.isRegularFile(target) && target.toRealPath().startsWith(folder)
                    ? Optional.of(target.toRealPath())
                    : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private List<Option> options(ScenarioWalk walk, Entry entry, Values base) {
        if (!(entry.value() instanceof MappingNode map)) {
            walk.problem(
                    entry.key(),
                    "options is not a list of named changes. Write lines like: more solar: " + "{solar.power: 900 W}.");
            return List.of();
        }
        List<Option> options = new ArrayList<>();
        walk.entries(map).forEach((name, change) -> {
            if (name.isEmpty() || name.equals(ScenarioFile.BASE_NAME)) {
                walk.problem(
                        change.key(),
                        "An option cannot be called \"" + name + "\"; "
                                + (name.isEmpty() ? "give it a name." : "that is the base design."));
            } else if (change.value() instanceof MappingNode changes) {
                options.add(new Option(name, walk.option(changes, base)));
            } else {
                walk.problem(
                        change.key(),
                        "The option \"" + name + "\" has no changes. Write them as paths with values, "
                                + "like {solar.power: 900 W}.");
            }
        });
        return options;
    }

    /** All variants, the base design first; what cannot be built is a problem. */
    private List<Variant> build(Values base, List<Option> options) {
        List<Variant> variants = new ArrayList<>();
        built("", ScenarioFile.BASE_NAME, base).ifPresent(variants::add);
        if (!variants.isEmpty()) {
            for (Option option : options) {
                built("Option \"" + option.name() + "\": ", option.name(), option.values())
                        .ifPresent(variants::add);
            }
        }
        return variants;
    }

    private Optional<Variant> built(String prefix, String name, Values values) {
        checkWeather(values);
        try {
            return Optional.of(builder.next(name, values));
        } catch (ScenarioException e) {
            for (Problem problem : e.problems()) {
                if (!isFollowOn(problem)) {
                    Origin origin = values.origin(problem.path()).orElse(new Origin(file, 1, 1));
                    problems.add(new InputProblem(
                            origin.source(), origin.line(), origin.column(), prefix + problem.message()));
                }
            }
            return Optional.empty();
        }
    }

    /** Whether a problem only follows from a value that was refused and told already. */
    private boolean isFollowOn(Problem problem) {
        boolean timetableRefused = failedPaths.stream().anyMatch(p -> p.startsWith("trip.timetable"));
        return failedPaths.contains(problem.path())
                || failedPaths.contains(problem.path() + ".preset")
                || (timetableRefused && problem.path().startsWith("trip"));
    }

    /** The weather file is read elsewhere; here it must only be there. */
    private void checkWeather(Values values) {
        String written = values.word("weather");
        if (written.isEmpty()) {
            return;
        }
        Origin origin = values.origin("weather").orElseThrow();
        String complaint;
        try {
            Path target = path.toAbsolutePath().resolveSibling(written);
            complaint = Path.of(written).isAbsolute()
                    ? "is a path of this machine alone. Write it relative to the scenario file."
                    : Files.isRegularFile(target)
                            ? ""
                            : "is not there. Write the file's path from the scenario's folder.";
        } catch (InvalidPathException e) {
            complaint = "is not a path. Write the file's path from the scenario's folder.";
        }
        if (!complaint.isEmpty()) {
            problems.add(new InputProblem(
                    origin.source(), origin.line(), origin.column(), "weather \"" + written + "\" " + complaint));
        }
    }

    private void refuseIfWrong() throws InputException {
        if (!problems.isEmpty()) {
            throw new InputException(problems.stream()
                    .distinct()
                    .sorted(Comparator.comparing((InputProblem p) -> !p.file().equals(file))
                            .thenComparing(InputProblem::file)
                            .thenComparingInt(InputProblem::line)
                            .thenComparingInt(InputProblem::column)
                            .thenComparing(InputProblem::message))
                    .toList());
        }
    }
}
