package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Even points against their defining property and against integrals in closed form. */
class EvenPointsTest {
    private static double mean(double[][] points, ToDoubleFunction<double[]> f) {
        return Arrays.stream(points).mapToDouble(f).average().orElseThrow();
    }

    /** Of a power of two of points each coordinate takes every place once (property of the sequence), moved by the shift. */
    @Test
    void everyCoordinateIsSpreadOverEqualSteps() {
        double[][] points = EvenPoints.of(256, 9, 5);
        for (int d = 0; d < 9; d++) {
            int coordinate = d;
            double[] sorted = Arrays.stream(points)
                    .mapToDouble(point -> point[coordinate])
                    .sorted()
                    .toArray();
            assertThat(sorted[0]).isBetween(0.0, 1 / 256.0);
            for (int i = 1; i < sorted.length; i++) {
                assertThat(sorted[i] - sorted[i - 1]).isCloseTo(1 / 256.0, within(1e-12));
            }
        }
    }

    /**
     * A linear model, in closed form: mean Σ aᵢ/2. With equal steps a coordinate's mean is off by at most half a step, so the
     * model by half a step times Σ |aᵢ|.
     */
    @Test
    void theMeanOfALinearModelIsKnown() {
        double[] a = {3, -1, 0.5, 7, 2};
        for (long seed = 0; seed < 20; seed++) {
            double mean = mean(EvenPoints.of(1024, 5, seed), u -> {
                double sum = 0;
                for (int i = 0; i < a.length; i++) {
                    sum += a[i] * u[i];
                }
                return sum;
            });
            assertThat(mean).isCloseTo(11.5 / 2, within(13.5 / 2048));
        }
    }

    /**
     * Π (1 + (uᵢ − ½)) over four coordinates has the mean 1 and the variance (13/12)⁴ − 1 = 0.377: 1,024 independent points
     * would be off by 0.019 as a rule (standard deviation), even ones by less than a tenth of it.
     */
    @Test
    void pointsAreMoreEvenThanChance() {
        double sumOfSquares = 0;
        for (long seed = 0; seed < 20; seed++) {
            double off =
                    mean(EvenPoints.of(1024, 4, seed), u -> (0.5 + u[0]) * (0.5 + u[1]) * (0.5 + u[2]) * (0.5 + u[3]))
                            - 1;
            sumOfSquares += off * off;
        }
        assertThat(Math.sqrt(sumOfSquares / 20)).isLessThan(0.0019);
    }

    @Test
    void theSeedDecides() {
        assertThat(EvenPoints.of(4, 3, 1)).isDeepEqualTo(EvenPoints.of(4, 3, 1));
        assertThat(EvenPoints.of(4, 3, 1)[0]).isNotEqualTo(EvenPoints.of(4, 3, 2)[0]);
    }
}
