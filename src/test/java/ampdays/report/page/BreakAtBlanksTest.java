package ampdays.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where a line may end: a number is not parted from the sign of its unit: typesetters' practice, no source. */
class BreakAtBlanksTest {
    private static List<String> pieces(String text) {
        BreakAtBlanks breaker = new BreakAtBlanks();
        breaker.setText(text);
        List<String> pieces = new ArrayList<>();
        int from = 0;
        for (int to = breaker.next(); to >= 0; to = breaker.next()) {
            pieces.add(text.substring(from, to));
            from = to;
        }
        return pieces;
    }

    @Test
    void aNumberKeepsTheSignOfItsUnit() {
        assertThat(pieces("passes 90 °F (32 °C), lowest charge 42 %, 5 Jul"))
                .containsExactly("passes ", "90 °F ", "(32 °C), ", "lowest ", "charge ", "42 %, ", "5 ", "Jul");
    }

    @Test
    void otherBlanksAndHyphensBreak() {
        assertThat(pieces("in % of two-speed units, -5 °C"))
                .containsExactly("in ", "% ", "of ", "two-", "speed ", "units, ", "-5 °C");
        assertThat(pieces(" °C")).containsExactly(" ", "°C");
        assertThat(pieces("")).isEmpty();
    }
}
