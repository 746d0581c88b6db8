package ampdays.io;

import ampdays.io.ScenarioWalk.Entry;
import ampdays.scenario.Failure;
import ampdays.scenario.Failure.Change;
import ampdays.scenario.FailureKind;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.TripMoment;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.units.Nearest;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads the failures that a scenario keeps under names: {@code kind}, {@code from}, {@code until}, and changes by path. */
final class ScenarioFailures {
    private static final String KIND = "kind";
    private static final String FROM = "from";
    private static final String UNTIL = "until";
    private static final String EXAMPLE =
            "Write lines like: regulator dies: {second-alternator: none, from: day 3 14:00}.";

    private final ScenarioWalk walk;
    private final ScenarioFile file;

    private ScenarioFailures(ScenarioWalk walk, ScenarioFile file) {
        this.walk = walk;
        this.file = file;
    }

    /** The scenario with its failures; what is wrong becomes a problem of the walk. */
    static ScenarioFile read(ScenarioWalk walk, Entry failures, ScenarioFile file) {
        if (!(failures.value() instanceof MappingNode map) || map.getValue().isEmpty()) {
            walk.problem(failures.key(), "failures is not a list of named failures. " + EXAMPLE);
            return file;
        }
        ScenarioFailures reader = new ScenarioFailures(walk, file);
        List<Failure> read = new ArrayList<>();
        walk.entries(map).forEach((name, entry) -> reader.failure(name, entry).ifPresent(read::add));
        return new ScenarioFile(file.scenario(), file.base(), file.options(), file.sweeps(), read);
    }

    private Optional<Failure> failure(String name, Entry entry) {
        String of = "Failure \"" + name + "\": ";
        if (name.isEmpty() || !(entry.value() instanceof MappingNode map)) {
            walk.problem(entry.key(), of + "it says nothing that fails. " + EXAMPLE);
            return Optional.empty();
        }
        Optional<FailureKind> kind = Optional.empty();
        Optional<TripMoment> from = Optional.empty();
        Optional<TripMoment> until = Optional.empty();
        List<Change> changes = new ArrayList<>();
        for (Map.Entry<String, Entry> line : walk.entries(map).entrySet()) {
            Node at = line.getValue().value();
            if (!(at instanceof ScalarNode scalar)) {
                walk.problem(at, of + line.getKey() + " is not one value. Write each change by its path.");
                return Optional.empty();
            }
            String text = YamlText.text(scalar).strip();
            try {
                switch (line.getKey()) {
                    case KIND -> kind = Optional.of(kind(text));
                    case FROM -> from = Optional.of(moment(FROM, text));
                    case UNTIL -> until = Optional.of(moment(UNTIL, text));
                    default -> changes.add(change(line.getKey(), text));
                }
            } catch (IllegalArgumentException e) {
                walk.problem(at, of + e.getMessage());
                return Optional.empty();
            }
        }
        Failure read = new Failure(name, kind, changes, from, until);
        Optional<String> wrong = wrong(read);
        wrong.ifPresent(message -> walk.problem(entry.key(), of + message));
        return wrong.isPresent() ? Optional.empty() : Optional.of(read);
    }

    private static FailureKind kind(String text) {
        return FailureKind.of(text)
                .orElseThrow(() -> new IllegalArgumentException("kind \"" + text + "\" is not known."
                        + Nearest.of(text, FailureKind.labels())
                                .map(near -> " Did you mean " + near + "?")
                                .orElse(" Kinds: " + String.join("; ", FailureKind.labels()) + ".")));
    }

    private TripMoment moment(String key, String text) {
        TripMoment moment;
        try {
            moment = TripMoment.parse(text);
        } catch (QuantityException e) {
            throw new IllegalArgumentException(key + " " + e.getMessage(), e);
        }
        int days = file.scenario().variants().get(0).trip().days();
        if (moment.day() > days) {
            throw new IllegalArgumentException(
                    key + " \"" + text + "\" lies after the last day of the trip, day " + days + ".");
        }
        return moment;
    }

    private Change change(String path, String text) {
        String section = path.contains(".") ? path.substring(0, path.indexOf('.')) : path;
        boolean ofTheTrip =
                List.of("title", "notes", "weather", "place", "prices").contains(section)
                        || (section.equals("trip") && !path.startsWith("trip.timetable"));
        if (ofTheTrip) {
            throw new IllegalArgumentException(path + " belongs to the whole trip and cannot change within it.");
        }
        file.base().with(path, text);
        return new Change(path, text);
    }

    /** What is wrong with a failure as a whole. */
    private Optional<String> wrong(Failure failure) {
        if (failure.kind().isEmpty() && failure.changes().isEmpty()) {
            return Optional.of("it says nothing that fails. Name a kind, or changes by path.");
        }
        if (failure.kind().isEmpty() && failure.from().isEmpty()) {
            return Optional.of("it does not say when. Write from: day 3, or from: day 3 14:00.");
        }
        if (failure.from().isPresent()
                && failure.until().isPresent()
                && failure.until().get().compareTo(failure.from().get()) <= 0) {
            return Optional.of("it ends before it begins: from "
                    + failure.from().get() + " until " + failure.until().get() + ".");
        }
        Optional<String> first = Optional.empty();
        for (Variant variant : file.scenario().variants()) {
            Values values = file.values(variant.name()).orElseThrow();
            Optional<String> whyNot = failure.whyNot(values);
            if (whyNot.isEmpty()) {
                return unbuildable(failure, values);
            }
            first = first.isEmpty() ? whyNot : first;
        }
        return first.map(why -> why + ", so it cannot fail.");
    }

    private static Optional<String> unbuildable(Failure failure, Values values) {
        try {
            VariantBuilder.build(failure.name(), failure.during(values));
            return Optional.empty();
        } catch (ScenarioException e) {
            return Optional.of("it makes a design that cannot be: " + e.getMessage());
        }
    }
}
