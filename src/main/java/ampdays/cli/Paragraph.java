package ampdays.cli;

import java.io.PrintWriter;

/** A text broken into lines that fit a terminal. */
final class Paragraph {
    /** What every screen of results ends with. */
    static final String ESTIMATES =
            "Estimates, not a code check; have the installation inspected by a licensed person.";

    static final int WIDTH = 100;

    private Paragraph() {}

    /** @param indent of every line but the first */
    static void print(PrintWriter out, String text, String indent) {
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > WIDTH) {
                out.println(line);
                line = new StringBuilder(indent);
                line.append(word);
            } else {
                line.append(line.isEmpty() ? "" : " ").append(word);
            }
        }
        out.println(line);
    }
}
