package ampdays.cli;

import ampdays.io.PresetReader;
import ampdays.io.PresetsJson;
import ampdays.scenario.Presets;
import ampdays.scenario.Presets.Preset;
import ampdays.units.Nearest;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the generic classes that come along, or shows one of them with all that it says. */
@Command(
        mixinStandardHelpOptions = true,
        description = {
            "List the generic classes of vans, air conditioners, refrigerators, inverters, banks, panels, alternators"
                    + " and shore chargers.",
            "",
            "With a kind, list those of that kind; with a name as well, show every value of that one with its range,"
                    + " its mark, and the lines for a scenario.",
            "",
            "Example:  ampdays presets second-alternator large frame",
            ""
        })
final class PresetsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "KIND",
            description = "A section of the scenario file, such as cooling or battery.")
    private String kind;

    @Parameters(index = "1..*", paramLabel = "NAME", description = "The name of a preset; it needs no quotes.")
    private List<String> words = List.of();

    @Option(names = "--json", description = "Print one JSON document, and nothing else, on standard output.")
    private boolean json;

    @Override
    public Integer call() throws IOException, UsageException {
        Map<String, List<Preset>> chosen = chosen(PresetReader.presets());
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            PresetsJson.write(out, chosen);
        } else if (words.isEmpty()) {
            new PresetsScreen(out).list(chosen);
        } else {
            new PresetsScreen(out).show(kind, chosen.get(kind).get(0));
        }
        out.flush();
        return Exit.DONE;
    }

    private Map<String, List<Preset>> chosen(Presets presets) throws UsageException {
        Map<String, List<Preset>> chosen = new LinkedHashMap<>();
        if (kind == null) {
            presets.bySection().keySet().forEach(section -> chosen.put(section, presets.of(section)));
            return chosen;
        }
        if (!presets.bySection().containsKey(kind)) {
            throw unknown(
                    "There is no kind of preset \"" + kind + "\".",
                    "Kinds",
                    kind,
                    presets.bySection().keySet());
        }
        if (words.isEmpty()) {
            chosen.put(kind, presets.of(kind));
            return chosen;
        }
        String name = String.join(" ", words);
        Preset preset = presets.find(kind, name)
                .orElseThrow(() -> unknown(
                        "There is no preset \"" + name + "\" of the kind " + kind + ".",
                        "Presets",
                        name,
                        presets.bySection().get(kind).keySet()));
        chosen.put(kind, List.of(preset));
        return chosen;
    }

    private static UsageException unknown(String problem, String what, String written, Collection<String> known) {
        return new UsageException(problem + " " + what + ": "
                + String.join("; ", known) + "."
                + Nearest.of(written, known)
                        .map(w -> " Did you mean " + w + "?")
                        .orElse(""));
    }
}
