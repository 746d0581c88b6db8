package ampdays.io;

import ampdays.io.ScenarioWalk.Entry;
import ampdays.scenario.Grid;
import ampdays.scenario.Knob;
import ampdays.scenario.KnobText;
import ampdays.scenario.ScenarioFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads the sweeps that a scenario keeps under names: knobs with their values, and {@code together: yes}. */
final class ScenarioSweeps {
    private static final String TOGETHER = "together";

    private final ScenarioWalk walk;
    private final ScenarioFile file;

    private ScenarioSweeps(ScenarioWalk walk, ScenarioFile file) {
        this.walk = walk;
        this.file = file;
    }

    /** The scenario with its sweeps; what is wrong becomes a problem of the walk. */
    static ScenarioFile read(ScenarioWalk walk, Entry sweeps, ScenarioFile file) {
        if (!(sweeps.value() instanceof MappingNode map)) {
            walk.problem(
                    sweeps.key(),
                    "sweeps is not a list of named sweeps. Write lines like: bank: {battery.capacity: 200..800 Ah step"
                            + " 100 Ah}.");
            return file;
        }
        ScenarioSweeps reader = new ScenarioSweeps(walk, file);
        List<ScenarioFile.Sweep> read = new ArrayList<>();
        walk.entries(map).forEach((name, entry) -> reader.sweep(name, entry, read));
        return new ScenarioFile(file.scenario(), file.base(), file.options(), read, file.failures());
    }

    private void sweep(String name, Entry entry, List<ScenarioFile.Sweep> read) {
        if (!(entry.value() instanceof MappingNode map) || map.getValue().isEmpty()) {
            walk.problem(
                    entry.key(),
                    "The sweep \"" + name + "\" varies nothing. Write paths with values, like"
                            + " {battery.capacity: 200..800 Ah step 100 Ah}.");
            return;
        }
        List<Knob> knobs = new ArrayList<>();
        boolean together = false;
        for (Map.Entry<String, Entry> line : walk.entries(map).entrySet()) {
            Node value = line.getValue().value();
            String text =
                    value instanceof ScalarNode scalar ? YamlText.text(scalar).strip() : "";
            if (line.getKey().equals(TOGETHER)) {
                together = text.equals("yes");
                if (!text.matches("yes|no")) {
                    walk.problem(value, "together is \"" + text + "\". Choices: yes; no.");
                }
                continue;
            }
            if (line.getKey().equals("vary") || value instanceof MappingNode) {
                walk.problem(
                        line.getValue().key(),
                        "Sweep \"" + name + "\": " + line.getKey()
                                + " is no path with values. Whole paths stand directly"
                                + " under the sweep's name, like " + name
                                + ": {battery.capacity: 200..800 Ah step 100 Ah}.");
                return;
            }
            try {
                knobs.add(KnobText.read(line.getKey() + "=" + text, file));
            } catch (IllegalArgumentException e) {
                walk.problem(value, "Sweep \"" + name + "\": " + e.getMessage());
                return;
            }
        }
        try {
            read.add(new ScenarioFile.Sweep(name, new Grid(knobs, together)));
        } catch (IllegalArgumentException e) {
            walk.problem(entry.key(), "Sweep \"" + name + "\": " + e.getMessage());
        }
    }
}
