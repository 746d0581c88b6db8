package ampdays.io;

import ampdays.scenario.Kind;
import ampdays.scenario.Origin;
import ampdays.scenario.Parameter;
import ampdays.scenario.Registry;
import ampdays.scenario.TimetableLine;
import ampdays.scenario.Value;
import ampdays.scenario.Values;
import ampdays.units.Nearest;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Walks the nodes of one file and sets the values found there; what is wrong goes to the list of problems. */
final class ScenarioWalk {
    private final String file;
    private final List<InputProblem> problems;
    private final Set<String> failedPaths = new HashSet<>();

    ScenarioWalk(String file, List<InputProblem> problems) {
        this.file = file;
        this.problems = problems;
    }

    /** Paths whose value was refused, so that nobody calls them missing as well. */
    Set<String> failedPaths() {
        return failedPaths;
    }

    /** An entry of a map with the place of its key. */
    record Entry(ScalarNode key, Node value) {}

    /** The entries of a map by key; keys that are no text or stand twice are problems. */
    Map<String, Entry> entries(MappingNode map) {
        Map<String, Entry> entries = new LinkedHashMap<>();
        for (NodeTuple tuple : map.getValue()) {
            if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
                problem(tuple.getKeyNode(), "A key must be a plain word or words.");
                continue;
            }
            String name = YamlText.text(key).strip();
            Entry first = entries.putIfAbsent(name, new Entry(key, tuple.getValueNode()));
            if (first != null) {
                problem(
                        key,
                        "\"" + name + "\" stands twice; the first is in line " + YamlText.line(first.key())
                                + ". Keep one.");
            }
        }
        return entries;
    }

    /** Sets what a map below a path says. */
    Values map(MappingNode map, String path, Values values) {
        return map(entries(map), path, values);
    }

    Values map(Map<String, Entry> entries, String path, Values values) {
        Values changed = values;
        for (Map.Entry<String, Entry> entry : entries.entrySet()) {
            String name = entry.getKey();
            if (name.isEmpty() || name.contains(".")) {
                problem(
                        entry.getValue().key(),
                        "The key \"" + name + "\" "
                                + (name.isEmpty()
                                        ? "is empty."
                                        : "has a dot. Dots make paths, which belong in options."));
            } else {
                changed = set(path.isEmpty() ? name : path + "." + name, entry.getValue(), changed);
            }
        }
        return changed;
    }

    /** Sets what one option changes; its keys may be paths. */
    Values option(MappingNode map, Values values) {
        Values changed = values;
        for (Map.Entry<String, Entry> entry : entries(map).entrySet()) {
            String path = entry.getKey();
            if (path.equals("title") || path.equals("notes")) {
                problem(entry.getValue().key(), path + " belongs to the whole scenario, not to an option.");
            } else {
                changed = set(path, entry.getValue(), changed);
            }
        }
        return changed;
    }

    private Values set(String path, Entry entry, Values values) {
        Optional<Parameter> parameter = Registry.parameter(path);
        boolean group = Registry.isGroup(path);
        if (parameter.isEmpty() && !group) {
            unknown(path, entry);
            return values;
        }
        if (entry.value() instanceof MappingNode map && group) {
            Values marked = Registry.section(path).isPresent() || path.matches("(loads|circuits)\\.[^.]+")
                    ? values.with(path, Value.word("", origin(entry.key())))
                    : values;
            return map(map, path, marked);
        }
        if (entry.value() instanceof SequenceNode list && parameter.isPresent()) {
            if (parameter.get().kind() instanceof Kind.Timetable) {
                return timetable(path, list, values);
            }
        }
        if (!(entry.value() instanceof ScalarNode scalar)) {
            failedPaths.add(path);
            problem(
                    entry.value(),
                    path + " is a " + (entry.value() instanceof MappingNode ? "map" : "list") + ". "
                            + expected(path, parameter));
            return values;
        }
        return scalar(path, entry, scalar, parameter, values);
    }

    private Values scalar(String path, Entry entry, ScalarNode scalar, Optional<Parameter> parameter, Values values) {
        String text = YamlText.text(scalar).strip();
        if (text.equals(Values.NONE) && Values.isComponent(path)) {
            return values.without(path);
        }
        if (text.isEmpty() || parameter.isEmpty()) {
            failedPaths.add(path);
            problem(
                    text.isEmpty() ? entry.key() : scalar,
                    path + (text.isEmpty() ? " has no value. " : " is \"" + text + "\". ") + expected(path, parameter));
            return values;
        }
        try {
            return values.with(path, parameter.get().read(text, origin(scalar)));
        } catch (QuantityException e) {
            failedPaths.add(path);
            problem(scalar, path + " " + e.getMessage());
            return values;
        }
    }

    private static String expected(String path, Optional<Parameter> parameter) {
        if (parameter.isPresent()) {
            return parameter.get().kind().advice();
        }
        List<String> keys = new ArrayList<>(Registry.children(path));
        boolean named = keys.remove("*");
        return "Write its values below it" + (named ? ", each under a name" : " (" + String.join(", ", keys) + ")")
                + (Values.isComponent(path) ? ", {} for its defaults, or none." : ".");
    }

    private Values timetable(String path, SequenceNode list, Values values) {
        List<String> lines = new ArrayList<>();
        Optional<TimetableLine> before = Optional.empty();
        boolean sound = true;
        for (Node item : list.getValue()) {
            try {
                if (!(item instanceof ScalarNode scalar)) {
                    throw new QuantityException(
                            "has a line that is not plain text. Write a line like: - 07:10 park sun, away.");
                }
                String line = YamlText.text(scalar).strip();
                lines.add(line);
                before = Optional.of(TimetableLine.parseAfter(before, line));
            } catch (QuantityException e) {
                sound = false;
                problem(item, path + " " + e.getMessage());
            }
        }
        if (lines.isEmpty() && sound) {
            sound = false;
            problem(list, path + " has no line. Write a line like: - 07:10 park sun, away.");
        }
        if (!sound) {
            failedPaths.add(path);
            return values;
        }
        return values.with(path, Value.word(String.join("\n", lines), origin(list)));
    }

    private void unknown(String path, Entry entry) {
        boolean isWhole = YamlText.text(entry.key()).contains(".");
        boolean cutByComma =
                entry.value() instanceof ScalarNode s && s.getValue().isEmpty();
        problem(
                entry.key(),
                (isWhole ? Registry.unknownWholePath(path) : Registry.unknownPath(path))
                        + (cutByComma ? " In braces a comma ends a value: put text with a comma in quotes." : ""));
        int dot = path.lastIndexOf('.');
        Nearest.of(path.substring(dot + 1), Registry.children(dot < 0 ? "" : path.substring(0, dot)))
                .ifPresent(meant -> failedPaths.add(path.substring(0, dot + 1) + meant));
    }

    private Origin origin(Node node) {
        return new Origin(file, YamlText.line(node), YamlText.column(node));
    }

    void problem(Node node, String message) {
        problems.add(new InputProblem(file, YamlText.line(node), YamlText.column(node), message));
    }
}
