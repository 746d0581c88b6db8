package ampdays.cli;

import ampdays.scenario.Fallback;
import ampdays.scenario.Mark;
import ampdays.scenario.Parameter;
import ampdays.scenario.Presets.Preset;
import ampdays.scenario.Registry;
import ampdays.scenario.Section;
import ampdays.scenario.Value;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.Column.Overflow;
import picocli.CommandLine.Help.TextTable;

/** Prints presets: a list by kind, or all that one of them says. */
final class PresetsScreen {
    private static final int WIDTH = 100;
    private static final List<String> HEADS = List.of("key", "value", "usual range", "mark", "note");
    private static final int GAP = 2;

    private final PrintWriter out;

    PresetsScreen(PrintWriter out) {
        this.out = out;
    }

    void list(Map<String, List<Preset>> byKind) {
        int widest = byKind.values().stream()
                .flatMap(List::stream)
                .mapToInt(p -> p.name().length())
                .max()
                .orElse(0);
        byKind.forEach((kind, presets) -> {
            out.println(kind + ": " + section(kind).help());
            presets.forEach(p ->
                    out.println("  " + p.name() + " ".repeat(widest - p.name().length()) + "  " + firstSentence(p)));
            out.println();
        });
        out.println("All that one of them says, with the lines for a scenario: ampdays presets KIND NAME");
    }

    private static Section section(String kind) {
        return Registry.section(kind).orElseThrow();
    }

    private static String firstSentence(Preset preset) {
        int end = preset.about().indexOf(". ");
        return end < 0 ? preset.about() : preset.about().substring(0, end + 1);
    }

    void show(String kind, Preset preset) {
        out.println(kind + ": " + preset.name());
        out.println(preset.about());
        out.println();
        table(preset.values().entrySet().stream()
                .map(entry -> List.of(
                        key(kind, entry.getKey()),
                        entry.getValue().text(),
                        preset.range(entry.getKey()),
                        entry.getValue().mark().map(Mark::label).orElse(""),
                        entry.getValue().note()))
                .toList());
        out.println();
        out.println("In a scenario; take away the # where you know better:");
        out.println();
        lines(kind, preset);
    }

    /** Columns as wide as their content; the last one takes what is left of the line, and is wrapped. */
    private void table(List<List<String>> rows) {
        Column[] columns = new Column[HEADS.size()];
        int left = WIDTH;
        for (int column = 0; column < columns.length; column++) {
            int at = column;
            int widest =
                    rows.stream().mapToInt(row -> row.get(at).length()).max().orElse(0);
            int width = column == columns.length - 1
                    ? left
                    : Math.max(HEADS.get(column).length(), widest) + GAP;
            columns[column] = new Column(width, 0, Overflow.WRAP);
            left -= width;
        }
        TextTable table = TextTable.forColumns(Help.defaultColorScheme(Ansi.OFF), columns);
        table.indentWrappedLines = 0;
        table.addRowValues(HEADS.toArray(new String[0]));
        rows.forEach(row -> table.addRowValues(row.toArray(new String[0])));
        out.print(table);
    }

    /** The preset as a scenario names it, with what it leaves to the designer and, as remarks, what it says. */
    private void lines(String kind, Preset preset) {
        out.println(kind + ":");
        out.println("  preset: " + preset.name());
        for (Parameter parameter : section(kind).parameters()) {
            if (parameter.fallback() instanceof Fallback.Required
                    && !preset.written().containsKey(parameter.path())) {
                out.println("  " + key(kind, parameter.path()) + ": …  # yours to say. " + parameter.help());
            }
        }
        preset.values()
                .forEach((path, value) -> out.println("  # " + key(kind, path) + ": " + value.text() + marked(value)));
    }

    private static String marked(Value value) {
        return value.mark().map(m -> " (" + m.label() + ")").orElse("");
    }

    private static String key(String kind, String path) {
        return path.substring(kind.length() + 1);
    }
}
