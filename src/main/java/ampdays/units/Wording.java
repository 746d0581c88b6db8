package ampdays.units;

import java.util.List;
import java.util.Locale;

/** Names as a sentence has them. */
public final class Wording {
    private Wording() {}

    /** As at the beginning of a sentence. */
    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A list that can be read aloud. */
    public static String listed(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
