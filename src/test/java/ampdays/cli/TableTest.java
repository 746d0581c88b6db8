package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Layout by hand; no outside source. */
class TableTest {
    private static String printed(List<String> heads, List<String> cells) {
        Table table = new Table(heads);
        table.row("power of the panels", cells);
        StringWriter out = new StringWriter();
        PrintWriter screen = new PrintWriter(out);
        table.print(screen);
        screen.flush();
        return out.toString();
    }

    @Test
    void cellsAreBrokenAtSpacesUnlessTheyAreKeptWhole() {
        assertThat(printed(List.of("days", "nights"), List.of("9.2 to over 14", "8 to 9")))
                .isEqualTo("""
                                                      days         nights
                        power of the panels    9.2 to over         8 to 9
                                                        14

                        """);
        assertThat(printed(List.of("days", "nights"), List.of(Table.whole("9.2 to over 14"), "8 to 9")))
                .isEqualTo("""
                                                       days         nights
                        power of the panels  9.2 to over 14         8 to 9

                        """);
    }

    /** 19 of the label, five times 2 and 13, leave 6 of 100; of 14 one column less fits. */
    @Test
    void columnsBeyondTheWidthOfAPageComeBelow() {
        List<String> heads = List.of("a", "b", "c", "d", "e");
        assertThat(printed(heads, List.of("1", "2", "3", "4", "5")).lines()).hasSize(3);
        String wide = Table.whole("a long cell of 20 ch");
        assertThat(printed(heads, List.of("1", "2", "3", "4", wide)).lines()).hasSize(6);
        assertThat(printed(heads, List.of("1", "2", "3", "4", wide)).lines().map(String::length))
                .allMatch(length -> length <= 100);
    }
}
