package ampdays.scenario;

import ampdays.units.QuantityException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One value that a scenario may set, declared once for reader, messages, reference page and schema.
 *
 * @param path such as {@code battery.capacity}; {@code *} stands for a name that the designer gives
 * @param kind what its text may be
 * @param fallback what holds when it is not said
 * @param mark where that fallback comes from
 * @param help one line
 */
public record Parameter(String path, Kind kind, Fallback fallback, Mark mark, String help) {
    private static final Pattern MARKED =
            Pattern.compile("(.*?)\\s+\\(\\s*(\\w+)\\s*(?:[:;,]\\s*(.*?)\\s*)?\\)", Pattern.DOTALL);

    /** The last part of the path. */
    public String key() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    public String section() {
        return path.contains(".") ? path.substring(0, path.indexOf('.')) : "";
    }

    /**
     * Reads what a person wrote for it: {@code 400 Ah (datasheet: page 3)}.
     *
     * @throws QuantityException with a message that follows the path
     */
    public Value read(String written, Origin origin) throws QuantityException {
        String text = written.strip();
        if (kind instanceof Kind.Text) {
            kind.read(text);
            return Value.word(text, origin);
        }
        Optional<Mark> said = Optional.empty();
        String note = "";
        Matcher marked = MARKED.matcher(text);
        if (marked.matches()) {
            said = Mark.of(marked.group(2));
            if (said.isEmpty()) {
                throw new QuantityException("\"" + text + "\" has the mark \"" + marked.group(2) + "\". Marks are "
                        + String.join(", ", Mark.labels()) + "." + Kind.didYouMean(marked.group(2), Mark.labels()));
            }
            note = marked.group(3) == null ? "" : marked.group(3);
            text = marked.group(1).strip();
        }
        Kind.Reading reading = kind.read(text);
        return new Value(text, reading.number(), reading.dimension(), said, note, origin);
    }
}
