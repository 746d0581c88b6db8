package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.Causes;
import ampdays.results.Causes.Share;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How shares are rounded and told; numbers invented. */
class WhyTextTest {
    /** Largest remainders, the rule of Hamilton for seats: 41.7, 33.3, 25.0 lack one percent, which goes to the 0.7. */
    @Test
    void theLargestRemainderIsRoundedUp() {
        assertThat(WhyText.percents(new double[] {5 / 12.0, 4 / 12.0, 3 / 12.0}))
                .containsExactly(42, 33, 25);
        assertThat(WhyText.percents(new double[] {1 / 3.0, 1 / 3.0, 1 / 3.0})).containsExactly(34, 33, 33);
    }

    /** Each printed percent lies within one of its share, and together they are 100, also with causes that help. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void printedSharesAddUp(long seed) {
        double[] shares = new Random(seed).doubles(6, -0.2, 1).toArray();
        double sum = Arrays.stream(shares).sum();
        double[] ofOne = Arrays.stream(shares).map(s -> s / sum).toArray();
        int[] percents = WhyText.percents(ofOne);
        assertThat(Arrays.stream(percents).sum()).isEqualTo(100);
        for (int i = 0; i < ofOne.length; i++) {
            assertThat(Math.abs(percents[i] - 100 * ofOne[i])).isLessThan(1);
        }
    }

    @Test
    void causesAreTold() {
        Causes causes = new Causes(
                12_340,
                5_120,
                List.of(
                        new Share("cooling", 0.904),
                        new Share("other uses", 0.116),
                        new Share("cloud and haze", -0.02)),
                List.of());
        assertThat(WhyText.causes("as it is", causes))
                .isEqualTo(
                        "Why \"as it is\" does not hold: at worst the trip draws 12.3 kWh, and the bank gives 5.1 kWh down"
                                + " to the reserve. Of what it draws: cooling 90 %, other uses 12 %, cloud and haze -2 %.");
        assertThat(WhyText.remedies(causes)).isEqualTo("There is no single change to try.");
    }
}
