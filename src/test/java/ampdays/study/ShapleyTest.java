package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shares of causes against games whose Shapley value is known. */
class ShapleyTest {
    /** What remains, so that what a set takes away is the worth of that set in the game. */
    private static double[] remains(double[] worth) {
        return Arrays.stream(worth).map(w -> -w).toArray();
    }

    /** The glove game, a textbook case (from memory): one left glove, two right ones, a pair is worth 1: 2/3, 1/6, 1/6. */
    @Test
    void gloves() {
        double[] worth = new double[8];
        for (int set = 0; set < 8; set++) {
            worth[set] = (set & 1) != 0 && (set & 6) != 0 ? 1 : 0;
        }
        assertThat(Shapley.shares(remains(worth)))
                .containsExactly(new double[] {2 / 3.0, 1 / 6.0, 1 / 6.0}, within(1e-15));
    }

    /**
     * The airport game of S. C. Littlechild and G. Owen, 1973, A simple expression for the Shapley value in a special case,
     * Management Science 20, 370 (from memory): a runway costs what the largest aircraft needs, and each stretch of it is
     * paid in equal parts by those who need it. For 12, 18, 30: 12/3, 12/3 + 6/2, 12/3 + 6/2 + 12.
     */
    @Test
    void airport() {
        double[] needs = {12, 18, 30};
        double[] cost = new double[8];
        for (int set = 0; set < 8; set++) {
            for (int i = 0; i < 3; i++) {
                cost[set] = (set & (1 << i)) != 0 ? Math.max(cost[set], needs[i]) : cost[set];
            }
        }
        assertThat(Shapley.shares(remains(cost))).containsExactly(new double[] {4, 7, 19}, within(1e-12));
    }

    /** Efficiency, an axiom of the value: the shares add up to what all causes together take away. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void sharesClose(long seed) {
        double[] v = new Random(seed).doubles(32, -50, 50).toArray();
        assertThat(Arrays.stream(Shapley.shares(v)).sum()).isCloseTo(v[0] - v[31], within(1e-12));
    }
}
