package ampdays.report.page;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The sheet that a page is laid out for. */
public enum Paper {
    A4("A4"),
    LETTER("letter");

    private final String word;

    Paper(String word) {
        this.word = word;
    }

    /** As a style sheet names it. */
    public String word() {
        return word;
    }

    public static Optional<Paper> of(String written) {
        return Stream.of(values())
                .filter(paper -> paper.word.toLowerCase(Locale.ROOT).equals(written.toLowerCase(Locale.ROOT)))
                .findFirst();
    }
}
