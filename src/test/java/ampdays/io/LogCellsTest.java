package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Cells of lines; quotation marks as in RFC 4180, section 2, rules 5 to 7, and blanks around cells as common practice. */
class LogCellsTest {
    static Stream<Arguments> lines() {
        return Stream.of(
                Arguments.of("a,b,c", List.of("a", "b", "c")),
                Arguments.of("a,,c,", List.of("a", "", "c", "")),
                Arguments.of("", List.of("")),
                Arguments.of(" a\t, b c ,\u2003d", List.of("a", "b c", "d")),
                Arguments.of("\"a,b\",c", List.of("a,b", "c")),
                Arguments.of("  \" a \"  ,c", List.of("a", "c")),
                Arguments.of("\"say \"\"yes\"\"\",\"\"", List.of("say \"yes\"", "")),
                Arguments.of("a\"\"b,c", List.of("a\"\"b", "c")),
                Arguments.of("a,\"never closed, b", List.of("a", "never closed, b")),
                Arguments.of("a,\"", List.of("a", "")));
    }

    @ParameterizedTest
    @MethodSource("lines")
    void cellsAreCutOut(String line, List<String> cells) {
        assertThat(LogCells.of(line, ',')).isEqualTo(cells);
    }

    /** By logic: what one line had does not show in the next, also when it had many cells. */
    @Test
    void aLineTakesThePlaceOfTheOneBefore() {
        LogCells cells = new LogCells(';');
        cells.take(String.join(";", Collections.nCopies(100, "\"1,5\"")));
        assertThat(cells.size()).isEqualTo(100);
        assertThat(cells.number(99, true, "A")).isEqualTo(1.5);
        cells.take("12.5 A; ;-3");
        assertThat(cells.size()).isEqualTo(3);
        assertThat(cells.number(0, false, "A")).isEqualTo(12.5);
        assertThat(cells.isEmpty(1)).isTrue();
        assertThat(cells.text(1)).isEmpty();
        assertThat(cells.number(1, false, "A")).isNaN();
        assertThat(cells.number(2, false, "A")).isEqualTo(-3);
        assertThat(cells.number(2, false, "A")).isEqualTo(Double.parseDouble(cells.text(2)));
    }
}
