package ampdays.cli;

import java.io.PrintWriter;

/** A text broken into lines that fit a terminal. */
final class Paragraph {
    /** What every screen of results ends with. */
    static final String ESTIMATES =
            "Estimates, not a code check; have the installation inspected by a licensed person.";

    static final int WIDTH = 100;

    private Paragraph() {}

    /**
     * Prints a text.
     *
     * @param text blanks before its first word stay
     * @param indent of every line but the first
     */
    static void print(PrintWriter out, String text, String indent) {
        String words = text.stripLeading();
        StringBuilder line = new StringBuilder(" ".repeat(text.length() - words.length()));
        boolean begins = true;
        for (String word : words.split(" ", -1)) {
            if (!begins && line.length() + 1 + word.length() > WIDTH) {
                out.println(line);
                line = new StringBuilder(indent);
                begins = true;
            }
            line.append(begins ? "" : " ").append(word);
            begins = false;
        }
        out.println(line);
    }
}
