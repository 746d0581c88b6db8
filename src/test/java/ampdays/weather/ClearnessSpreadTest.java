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

    /**
     * Source: M. E. Herzog, 1985, closed form for the exponent of Bendt et al. (1981), as in J. A. Duffie and W. A. Beckman,
     * Solar Engineering of Thermal Processes, section 2.9 (constants from memory). It is a fit; it stays within 3 % here.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.4, 0.5, 0.6, 0.7})
    void exponentAgreesWithTheClosedForm(double mean) {
        double most = 0.6313 + 0.267 * mean - 11.9 * Math.pow(mean - 0.75, 8);
        double xi = (most - 0.05) / (most - mean);
        double gamma = -1.498 + (1.184 * xi - 27.182 * Math.exp(-1.5 * xi)) / (most - 0.05);
        assertThat(ClearnessSpread.around(mean).gamma()).isCloseTo(gamma, within(0.03 * Math.abs(gamma)));
    }

    /** Definition, by sums over 100,000 midpoints: the standard deviation is the one told, narrowed or not. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.3, 0.4325, 0.6, 0.75})
    void hasTheSpreadItTells(double mean) {
        ClearnessSpread paper = ClearnessSpread.around(mean);
        ClearnessSpread narrow = paper.narrowedTo(0.04);
        assertThat(narrow.standardDeviation()).isCloseTo(0.04, within(1e-9));
        assertThat(paper.narrowedTo(0.39).standardDeviation()).isEqualTo(paper.standardDeviation());
        for (ClearnessSpread spread : new ClearnessSpread[] {paper, narrow}) {
            double sum = 0;
            double squares = 0;
            for (int i = 0; i < 100_000; i++) {
                double clear = spread.quantile((i + 0.5) / 100_000);
                sum += clear / 100_000;
                squares += clear * clear / 100_000;
            }
            assertThat(sum).isCloseTo(mean, within(1e-5));
            assertThat(Math.sqrt(squares - sum * sum)).isCloseTo(spread.standardDeviation(), within(1e-4));
        }
    }
}
