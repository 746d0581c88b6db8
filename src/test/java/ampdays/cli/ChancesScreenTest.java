package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.Bounded;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares as text: what is neither never nor always is not told as if it were. No outside source. */
class ChancesScreenTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.94   | 0.996  | 94 to 99.6 %",
                "0.991  | 0.9996 | 99.1 to 99.96 %",
                "0.00002 | 0.99998 | 0.01 to 99.99 %",
                "0.996  | 1      | 99.6 to 100 %",
                "0      | 0.004  | 0 to 0.4 %",
                "0.0004 | 0.06   | 0.04 to 6 %",
                "0.01   | 0.99   | 1 to 99 %",
            })
    void sharesNearTheirEndsKeepTheirDigits(double low, double high, String text) {
        assertThat(ChancesScreen.between(new Bounded((low + high) / 2, low, high)))
                .isEqualTo(text);
    }
}
