package ampdays.results;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The definitions of docs/MODEL.md, section 15; no outside source. */
class FateTest {
    @ParameterizedTest
    @CsvSource({
        "true, NaN, 0.01, HOLDS",
        "true, NaN, NaN, HOLDS",
        "false, 3.2, -0.1, EMPTY",
        "false, 0.4, NaN, EMPTY",
        "false, NaN, -0.01, FALLS",
        "false, NaN, NaN, UNKNOWN"
    })
    void aBankFallsOnlyWhereItsTrendIsKnown(boolean holds, double daysToEmpty, double trend, Fate fate) {
        assertThat(Fate.of(holds, daysToEmpty, trend)).isEqualTo(fate);
    }
}
