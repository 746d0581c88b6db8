package ampdays.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DayMemoryTest {
    private static final int DAYS = 40_000;

    /**
     * Source: C. W. Richardson and D. A. Wright, 1984, WGEN, USDA ARS-8, prints the correlations M0 and M1 of highs, lows and
     * sun, and the matrices A and B that follow from them (as also used by open models of crops and rivers; from memory).
     * Three decimals in M0 and M1 leave 0.003.
     */
    @Test
    void matricesFollowFromCorrelations() {
        DayMemory memory = new DayMemory(
                new double[][] {{1, 0.633, 0.186}, {0.633, 1, -0.193}, {0.186, -0.193, 1}},
                new double[][] {{0.621, 0.445, 0.087}, {0.563, 0.674, -0.100}, {0.015, -0.091, 0.251}});
        double[][] kept = {{0.567, 0.086, -0.002}, {0.253, 0.504, -0.050}, {-0.006, -0.039, 0.244}};
        double[][] fresh = {{0.781, 0, 0}, {0.328, 0.637, 0}, {0.238, -0.341, 0.873}};
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                assertThat(memory.kept()[row][column]).isCloseTo(kept[row][column], within(0.003));
                assertThat(memory.fresh()[row][column]).isCloseTo(fresh[row][column], within(0.003));
            }
        }
    }

    /** Identity (Matalas 1967): a long series has the correlations it was made from; 40,000 remembering days leave 0.03. */
    @Test
    void longSeriesHaveTheCorrelations() {
        DayMemory memory = DayMemory.usual();
        Gaussians gaussians = new Gaussians(1);
        double[][] sameDay = new double[4][4];
        double[][] dayBefore = new double[4][4];
        double[] yesterday = memory.first(gaussians);
        for (int day = 0; day < DAYS; day++) {
            double[] today = memory.next(yesterday, gaussians);
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < 4; j++) {
                    sameDay[i][j] += today[i] * today[j] / DAYS;
                    dayBefore[i][j] += today[i] * yesterday[j] / DAYS;
                }
            }
            yesterday = today;
        }
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                assertThat(sameDay[i][j]).isCloseTo(memory.onOneDay(i, j), within(0.03));
                assertThat(dayBefore[i][j]).isCloseTo(memory.withTheDayBefore(i, j), within(0.03));
            }
        }
    }
}
