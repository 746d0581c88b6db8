package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** One wrong file: a right one with a text replaced, and the exact messages that it gets. */
record Mistake(String name, String taken, String put, List<String> messages) {
    private static final String WHOLE = "WHOLE";

    /** The blocks of tables of mistakes: name, {@code - } what is taken out, {@code + } what is put there, the messages. */
    static Stream<Mistake> of(String... tables) {
        List<Mistake> mistakes = new ArrayList<>();
        for (String table : tables) {
            for (String block : WrongScenarioTest.resource(table).split("(?m)^=== ", -1)) {
                if (!block.isBlank()) {
                    List<String> lines = block.lines().toList();
                    mistakes.add(new Mistake(
                            lines.get(0),
                            unescaped(lines.get(1).substring(2)),
                            unescaped(lines.get(2).substring(2)),
                            lines.subList(3, lines.size())));
                }
            }
        }
        return mistakes.stream();
    }

    private static String unescaped(String text) {
        return text.replace("\\n", "\n").replace("\\t", "\t").replace("\\0", "\u0003");
    }

    /** The right text with the mistake in it, once. */
    String in(String right) {
        if (taken.equals(WHOLE)) {
            return put;
        }
        assertThat(right).contains(taken);
        int at = right.indexOf(taken);
        return right.substring(0, at) + put + right.substring(at + taken.length());
    }

    @Override
    public String toString() {
        return name;
    }
}
