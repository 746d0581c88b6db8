package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Broken lines, by their definition. */
class ParagraphTest {
    private static List<String> lines(String text, String indent) {
        StringWriter out = new StringWriter();
        Paragraph.print(new PrintWriter(out), text, indent);
        return out.toString().lines().toList();
    }

    @Test
    void aLineFillsItsWidthAndNoMore() {
        String full = "a".repeat(49) + " " + "b".repeat(50);
        assertThat(lines(full, "  ")).containsExactly(full);
        assertThat(lines(full + "b", "  ")).containsExactly("a".repeat(49), "  " + "b".repeat(51));
    }

    @Test
    void blanksBeforeTheFirstWordStayAndFurtherLinesAreSetIn() {
        assertThat(lines("  " + "word ".repeat(30).strip(), "    "))
                .hasSize(2)
                .satisfies(
                        lines -> assertThat(lines.get(0)).startsWith("  word").hasSizeLessThanOrEqualTo(100))
                .satisfies(lines -> assertThat(lines.get(1)).startsWith("    word"));
    }
}
