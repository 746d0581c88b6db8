package ampdays.scenario;

import ampdays.load.ClockWindow;
import ampdays.load.Occasion;
import ampdays.units.ClockTime;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** When a load may run, from a text such as {@code awake, 19:00-22:30}. */
public record LoadTimes(Occasion occasion, List<ClockWindow> windows) {
    public LoadTimes {
        windows = List.copyOf(windows);
    }

    /** Reads such a text; the exception's message is a whole sentence. */
    public static LoadTimes parse(String text) throws QuantityException {
        Occasion occasion = null;
        List<ClockWindow> windows = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            String word = part.strip();
            boolean known = Kind.When.occasions().contains(word);
            if (known && occasion == null) {
                occasion = Occasion.valueOf(word.toUpperCase(Locale.ROOT));
            } else if (known) {
                throw new QuantityException(
                        "\"" + text + "\" names two occasions. Write one, and clock times if needed.");
            } else if (word.matches("\\d{1,2}:.*-.*")) {
                windows.add(window(word));
            } else {
                throw new QuantityException("\"" + word + "\" is no occasion. Write one of "
                        + String.join(", ", Kind.When.occasions()) + ", or clock times like 19:00-22:30."
                        + Kind.didYouMean(word.toLowerCase(Locale.ROOT), Kind.When.occasions()));
            }
        }
        return new LoadTimes(occasion == null ? Occasion.ALWAYS : occasion, List.copyOf(windows));
    }

    static ClockWindow window(String text) throws QuantityException {
        int dash = text.indexOf('-');
        int from = ClockTime.parse(text.substring(0, dash));
        int to = ClockTime.parse(text.substring(dash + 1));
        if (from == to || from == 1440) {
            throw new QuantityException(
                    "\"" + text + "\" is an empty window. Write its start and its end, like 19:00-22:30.");
        }
        return new ClockWindow(from, to);
    }
}
