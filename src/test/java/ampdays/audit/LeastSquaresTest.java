package ampdays.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class LeastSquaresTest {
    /** Agreement asked for: eleven digits, as the certified values have fifteen and the hard set costs some. */
    private static final Percentage ELEVEN_DIGITS = Percentage.withPercentage(1e-9);

    /**
     * NIST Statistical Reference Datasets, linear regression, Norris: measurements y and x of ozone monitors, certified
     * estimates, their standard deviations and that of the residuals.
     */
    @Test
    void certifiedValuesOfNorris() {
        double[] y = {
            0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3,
            448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6,
            228.9, 668.4, 449.2, 0.2
        };
        double[] x = {
            0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0,
            447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3,
            229.2, 669.1, 448.9, 0.5
        };
        LeastSquares fit = unweighted(Arrays.stream(x).mapToObj(v -> new double[] {1, v}), y);
        double scatter = Math.sqrt(squares(fit, y.length) / fit.degreesOfFreedom());
        assertThat(fit.degreesOfFreedom()).isEqualTo(34);
        assertThat(scatter).isCloseTo(0.884796396144373, ELEVEN_DIGITS);
        assertThat(fit.value(0)).isCloseTo(-0.262323073774029, ELEVEN_DIGITS);
        assertThat(fit.value(1)).isCloseTo(1.00211681802045, ELEVEN_DIGITS);
        assertThat(scatter * fit.uncertainty(0)).isCloseTo(0.232818234301152, ELEVEN_DIGITS);
        assertThat(scatter * fit.uncertainty(1)).isCloseTo(0.429796848199937e-3, ELEVEN_DIGITS);
    }

    /**
     * NIST Statistical Reference Datasets, linear regression, Longley: sixteen years, six predictors that nearly say the
     * same (higher difficulty). Eight digits are asked for.
     */
    @Test
    void certifiedValuesOfLongley() {
        double[][] table = {
            {60323, 83.0, 234289, 2356, 1590, 107608, 1947},
            {61122, 88.5, 259426, 2325, 1456, 108632, 1948},
            {60171, 88.2, 258054, 3682, 1616, 109773, 1949},
            {61187, 89.5, 284599, 3351, 1650, 110929, 1950},
            {63221, 96.2, 328975, 2099, 3099, 112075, 1951},
            {63639, 98.1, 346999, 1932, 3594, 113270, 1952},
            {64989, 99.0, 365385, 1870, 3547, 115094, 1953},
            {63761, 100.0, 363112, 3578, 3350, 116219, 1954},
            {66019, 101.2, 397469, 2904, 3048, 117388, 1955},
            {67857, 104.6, 419180, 2822, 2857, 118734, 1956},
            {68169, 108.4, 442769, 2936, 2798, 120445, 1957},
            {66513, 110.8, 444546, 4681, 2637, 121950, 1958},
            {68655, 112.6, 482704, 3813, 2552, 123366, 1959},
            {69564, 114.2, 502601, 3931, 2514, 125368, 1960},
            {69331, 115.7, 518173, 4806, 2572, 127852, 1961},
            {70551, 116.9, 554894, 4007, 2827, 130081, 1962}
        };
        double[] certified = {
            -3482258.63459582,
            15.0618722713733,
            -0.358191792925910e-01,
            -2.02022980381683,
            -1.03322686717359,
            -0.511041056535807e-01,
            1829.15146461355
        };
        double[] deviations = {
            890420.383607373,
            84.9149257747669,
            0.334910077722432e-01,
            0.488399681651699,
            0.214274163161675,
            0.226073200069370,
            455.478499142212
        };
        double[] y = Arrays.stream(table).mapToDouble(row -> row[0]).toArray();
        LeastSquares fit = unweighted(
                Arrays.stream(table).map(row -> {
                    double[] x = row.clone();
                    x[0] = 1;
                    return x;
                }),
                y);
        double scatter = Math.sqrt(squares(fit, y.length) / fit.degreesOfFreedom());
        assertThat(fit.rank()).isEqualTo(certified.length);
        for (int j = 0; j < certified.length; j++) {
            assertThat(fit.value(j)).isCloseTo(certified[j], Percentage.withPercentage(1e-6));
            assertThat(scatter * fit.uncertainty(j)).isCloseTo(deviations[j], Percentage.withPercentage(1e-6));
        }
    }

    private static double squares(LeastSquares fit, int observations) {
        return IntStream.range(0, observations)
                .mapToDouble(i -> fit.residual(i) * fit.residual(i))
                .sum();
    }

    /** Identity: an observation with half the uncertainty counts as four of the same. */
    @Test
    void weightsCountAsRepeats() {
        double[][] once = {{1, 0}, {1, 1}, {1, 3}};
        LeastSquares weighted = new LeastSquares(once, new double[] {1, 4, 6}, new double[] {1, 0.5, 1});
        double[][] repeated = {{1, 0}, {1, 1}, {1, 1}, {1, 1}, {1, 1}, {1, 3}};
        LeastSquares plain = unweighted(Arrays.stream(repeated), new double[] {1, 4, 4, 4, 4, 6});
        for (int j = 0; j < 2; j++) {
            assertThat(weighted.value(j)).isCloseTo(plain.value(j), within(1e-12));
            assertThat(weighted.uncertainty(j)).isCloseTo(plain.uncertainty(j), within(1e-12));
        }
        double weightedSquares = squares(weighted, 3) + 3 * weighted.residual(1) * weighted.residual(1);
        assertThat(weightedSquares).isCloseTo(squares(plain, 6), within(1e-12));
    }

    /** Identities: leverages sum to the rank; two columns that are alike hide each other and nothing else. */
    @Test
    void whatIsNotObservedIsNotKnown() {
        double[][] x = {{1, 0, 0, 0}, {1, 1, 1, 0}, {1, 1, 1, 1}, {1, 0, 0, 1}};
        LeastSquares fit = unweighted(Arrays.stream(x), new double[] {1, 4, 6, 3});
        assertThat(fit.rank()).isEqualTo(3);
        assertThat(new boolean[] {fit.known(0), fit.known(1), fit.known(2), fit.known(3)})
                .containsExactly(true, false, false, true);
        assertThat(fit.value(0)).isCloseTo(1, within(1e-12));
        assertThat(fit.value(3)).isCloseTo(2, within(1e-12));
        double leverages = 0;
        for (int i = 0; i < x.length; i++) {
            leverages += fit.leverage(i);
        }
        assertThat(leverages).isCloseTo(3, within(1e-12));
    }

    private static LeastSquares unweighted(Stream<double[]> x, double[] y) {
        double[] u = new double[y.length];
        Arrays.fill(u, 1);
        return new LeastSquares(x.toArray(double[][]::new), y, u);
    }
}
