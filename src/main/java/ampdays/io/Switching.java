package ampdays.io;

import ampdays.audit.Draw;
import ampdays.units.Nearest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is on, followed through the steps of a list of readings. */
final class Switching {
    static final String ACCEPTED = "Write \"roof fan on\", \"roof fan off\", several with ; between them, \"all off\","
            + " or \"same\" for another reading of the same.";

    private static final String ALL_OFF = "all off";
    private static final Pattern ITEMS = Pattern.compile("\\s*[;,]\\s*|\\s+(?=[+\\-\u2212]\\p{L})");
    private static final Pattern SIGNED = Pattern.compile("([+\\-\u2212])\\s*(\\S.*)");
    private static final Pattern WORDED = Pattern.compile("(\\S.*?)\\s+(on|off)", Pattern.CASE_INSENSITIVE);

    /** What is on, with the line since which it is. */
    private final Map<String, Integer> on = new LinkedHashMap<>();

    private final Set<String> known = new LinkedHashSet<>();
    private boolean begun;

    /** A step that cannot be; the message says why. */
    static final class StepException extends Exception {
        private static final long serialVersionUID = 1L;

        StepException(String message) {
            super(message);
        }
    }

    /** What is on now. */
    Set<String> on() {
        return new LinkedHashSet<>(on.keySet());
    }

    /** Follows one step and returns what it switched on. */
    Set<String> step(int line, String written) throws StepException {
        String step = written.strip();
        if (step.isEmpty()) {
            throw new StepException("the step is empty. " + ACCEPTED);
        }
        if (step.startsWith("#")) {
            throw new StepException("the step is \"" + step + "\": a spreadsheet took a sign before a name for a"
                    + " formula. Write \"roof fan on\" instead of \"+roof fan\".");
        }
        boolean first = !begun;
        begun = true;
        if (step.equalsIgnoreCase("same")) {
            if (first) {
                throw new StepException(
                        "the first step is \"same\", but there is nothing before it. Write \"all off\".");
            }
            return Set.of();
        }
        return switched(line, step);
    }

    private Set<String> switched(int line, String step) throws StepException {
        Set<String> named = new LinkedHashSet<>();
        Set<String> added = new LinkedHashSet<>();
        for (String item : items(step)) {
            if (item.equalsIgnoreCase(ALL_OFF) && named.isEmpty()) {
                on.clear();
                continue;
            }
            Matcher signed = SIGNED.matcher(item);
            Matcher worded = WORDED.matcher(item);
            boolean toOn;
            String name;
            if (signed.matches()) {
                toOn = signed.group(1).equals("+");
                name = signed.group(2);
            } else if (worded.matches()) {
                toOn = worded.group(2).equalsIgnoreCase("on");
                name = worded.group(1);
            } else {
                throw new StepException("\"" + item + "\" does not say whether something goes on or off. " + ACCEPTED);
            }
            refuseName(name);
            if (!named.add(name)) {
                throw new StepException("\"" + name + "\" stands twice in this step. Name each appliance once.");
            }
            apply(line, name, toOn);
            if (toOn) {
                added.add(name);
            }
        }
        return added;
    }

    private static List<String> items(String step) {
        List<String> items = new ArrayList<>();
        for (String item : ITEMS.split(step, -1)) {
            if (!item.isBlank()) {
                items.add(item.strip());
            }
        }
        return items;
    }

    private static void refuseName(String name) throws StepException {
        if (name.equals(Draw.BASE)) {
            throw new StepException("\"" + name + "\" is what draws with everything off; it cannot be switched.");
        }
        if (name.matches(".*[.(){}\\[\\]\"'].*")) {
            throw new StepException(
                    "the name \"" + name + "\" has a dot, a quotation mark or a bracket, which a scenario"
                            + " does not take in a name. Leave it out.");
        }
    }

    private void apply(int line, String name, boolean toOn) throws StepException {
        Integer since = on.get(name);
        if (toOn && since != null) {
            throw new StepException("\"" + name + "\" is on already, since line " + since
                    + ". Switch it off in between, give a second one its own name, or write \"same\".");
        }
        if (!toOn && since == null) {
            String near = Nearest.of(name, on.keySet())
                    .map(n -> " Did you mean \"" + n + "\"?")
                    .orElse("");
            throw new StepException("\"" + name + "\" is not on, so it cannot go off. On now: "
                    + (on.isEmpty() ? "nothing" : String.join(", ", on.keySet())) + "." + near);
        }
        if (!toOn) {
            on.remove(name);
            return;
        }
        for (String other : known) {
            if (!other.equals(name) && other.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT))) {
                throw new StepException("\"" + name + "\" was written \"" + other + "\" before. Write it the same.");
            }
        }
        known.add(name);
        on.put(name, line);
    }
}
