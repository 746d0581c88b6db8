package ampdays.io;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/**
 * YAML text to nodes with places. Inside round brackets the signs that YAML itself would read ({@code :}, {@code ,} and
 * {@code #}) are plain text, so that {@code 0.4 A (measured: meter, two readings)} needs no quotes.
 */
final class YamlText {
    private static final Pattern BRACKETS = Pattern.compile("\\([^()\\n]*\\)");
    private static final String SIGNS = ":,#";
    private static final char FIRST_STAND_IN = '\uE000';

    private YamlText() {}

    /** The map that the text is; everything wrong with it goes to the list, and then there is none. */
    static Optional<MappingNode> map(String file, String text, List<InputProblem> problems) {
        String clean = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<InputProblem> tabs = tabs(file, clean);
        if (!tabs.isEmpty()) {
            problems.addAll(tabs);
            return Optional.empty();
        }
        try {
            LoadSettings settings = LoadSettings.builder()
                    .setSchema(new CoreSchema())
                    .setLabel(file)
                    .build();
            Optional<Node> root = new Compose(settings).composeString(hideSigns(clean));
            if (root.isEmpty()) {
                problems.add(new InputProblem(file, 1, 1, "The file is empty."));
            } else if (root.get() instanceof MappingNode map) {
                return Optional.of(map);
            } else {
                problems.add(new InputProblem(
                        file, 1, 1, "The file is not a list of keys with values. Write lines like: title: My van."));
            }
        } catch (MarkedYamlEngineException e) {
            Optional<Mark> mark = e.getProblemMark().or(e::getContextMark);
            problems.add(new InputProblem(
                    file,
                    mark.map(m -> m.getLine() + 1).orElse(0),
                    mark.map(m -> m.getColumn() + 1).orElse(0),
                    "YAML cannot be read here: " + showSigns(e.getProblem()) + ". " + repair(e.getProblem())));
        } catch (YamlEngineException e) {
            String first = e.getMessage().lines().findFirst().orElse("");
            problems.add(new InputProblem(file, 0, 0, "YAML cannot be read: " + first + "."));
        } catch (StackOverflowError e) {
            problems.add(new InputProblem(file, 0, 0, "Brackets or indentation are nested thousands deep."));
        }
        return Optional.empty();
    }

    private static List<InputProblem> tabs(String file, String text) {
        List<InputProblem> problems = new ArrayList<>();
        String[] lines = text.split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            String indent = lines[i].substring(
                    0, lines[i].length() - lines[i].stripLeading().length());
            if (indent.contains("\t") && !lines[i].isBlank()) {
                problems.add(new InputProblem(
                        file,
                        i + 1,
                        indent.indexOf('\t') + 1,
                        "A tab stands here; YAML wants spaces. Write two spaces."));
            }
        }
        return problems;
    }

    private static String repair(String problem) {
        return problem.startsWith("mapping values are not allowed")
                ? "Put text that contains a colon in quotes, and check the indentation."
                : "Check brackets, quotes and indentation here and in the line above.";
    }

    private static String hideSigns(String text) {
        return BRACKETS.matcher(text).replaceAll(found -> {
            String inside = found.group();
            for (int i = 0; i < SIGNS.length(); i++) {
                inside = inside.replace(SIGNS.charAt(i), (char) (FIRST_STAND_IN + i));
            }
            return Matcher.quoteReplacement(inside);
        });
    }

    private static String showSigns(String text) {
        String shown = text;
        for (int i = 0; i < SIGNS.length(); i++) {
            shown = shown.replace((char) (FIRST_STAND_IN + i), SIGNS.charAt(i));
        }
        return shown;
    }

    /** The text of a scalar as it was written. */
    static String text(ScalarNode node) {
        return showSigns(node.getValue());
    }

    static int line(Node node) {
        return node.getStartMark().map(m -> m.getLine() + 1).orElse(0);
    }

    static int column(Node node) {
        return node.getStartMark().map(m -> m.getColumn() + 1).orElse(0);
    }
}
