package ampdays.scenario;

import ampdays.load.ClockWindow;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.List;

/** When to pre-cool, from a text such as {@code surplus sun, 14:00-17:00}. */
record PreCoolTimes(boolean surplusSun, boolean driving, List<ClockWindow> windows) {
    static final List<String> WORDS = List.of("surplus sun", "driving");

    static PreCoolTimes parse(String text) throws QuantityException {
        boolean surplusSun = false;
        boolean driving = false;
        List<ClockWindow> windows = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            String word = part.strip();
            if (word.matches("\\d{1,2}:.*-.*")) {
                windows.add(LoadTimes.window(word));
            } else if (word.equals(WORDS.get(0))) {
                surplusSun = true;
            } else if (word.equals(WORDS.get(1))) {
                driving = true;
            } else {
                throw new QuantityException("\"" + word + "\" is no time to pre-cool. Write "
                        + String.join(", ", WORDS) + ", or clock times like 14:00-17:00."
                        + Kind.didYouMean(word, WORDS));
            }
        }
        return new PreCoolTimes(surplusSun, driving, List.copyOf(windows));
    }
}
