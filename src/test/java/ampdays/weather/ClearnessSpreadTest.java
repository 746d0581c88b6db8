package ampdays.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClearnessSpreadTest {
    /** Definition: the mean over all days is the one asked for; 1e-5 is the error of 100,000 midpoints at the steep end. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.3, 0.43, 0.5, 0.6, 0.7, 0.75})
    void hasTheMeanAskedFor(double mean) {
        ClearnessSpread spread = ClearnessSpread.around(mean);
        double sum = 0;
        for (int i = 0; i < 100_000; i++) {
            sum += spread.quantile((i + 0.5) / 100_000);
        }
        assertThat(sum / 100_000).isCloseTo(mean, within(1e-5));
        assertThat(spread.quantile(0)).isCloseTo(0.05, within(1e-9));
    }

    /** Source: Bendt et al. 1981: in clear months days crowd towards the clear end, so the median is above the mean. */
    @Test
    void leansTowardsTheClearEndInClearMonths() {
        assertThat(ClearnessSpread.around(0.7).quantile(0.5)).isGreaterThan(0.7);
        assertThat(ClearnessSpread.around(0.25).quantile(0.5)).isLessThan(0.25);
    }

    /** Definition: no month is clearer than its clearest day can be. */
    @Test
    void refusesMoreLightThanAClearSkyGives() {
        assertThatThrownBy(() -> ClearnessSpread.around(0.95))
                .hasMessageStartingWith("A month's light is 0.95 of that outside the atmosphere");
    }
}
