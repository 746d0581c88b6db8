package ampdays.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.report.Block;
import ampdays.report.Part;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Typesetters' practice; no outside source. */
class RunTest {
    private static final Block HEAD = new Block.Heading("Bigger bank");
    private static final Block POINTS = new Block.Points(List.of(new Block.Point("", "One.")));

    private static Block sheet(int rows) {
        return new Block.Sheet(
                "Circuits",
                List.of(new Block.Column("Circuit", false)),
                Collections.nCopies(rows, new Block.Row(List.of("pump"), false)),
                Block.Form.PLAIN,
                List.of());
    }

    @Test
    void aHeadingStandsWithItsTable() {
        Block sheet = sheet(9);
        assertThat(Run.of(new Part("wiring", "Wiring", List.of(HEAD, sheet, POINTS, HEAD, POINTS))))
                .containsExactly(
                        new Run(List.of(HEAD, sheet), true),
                        new Run(List.of(POINTS), false),
                        new Run(List.of(HEAD, POINTS), true));
    }

    @Test
    void aLongTableGoesOnOverThePage() {
        assertThat(Run.of(new Part("values", "Values", List.of(sheet(24), sheet(25)))))
                .extracting(Run::isKept)
                .containsExactly(true, false);
    }
}
