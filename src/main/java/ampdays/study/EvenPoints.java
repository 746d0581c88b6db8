package ampdays.study;

import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points that fill a unit cube more evenly than random ones: the Sobol sequence, moved by a random vector and wrapped around,
 * so that each seed gives another set of points and the mean over seeds is free of bias.
 *
 * <p>The sequence: S. Joe and F. Y. Kuo (2008), Constructing Sobol sequences with better two-dimensional projections, SIAM
 * Journal on Scientific Computing 30, their direction numbers. The shift: R. Cranley and T. N. L. Patterson (1976),
 * Randomization of number theoretic methods for multiple integration, SIAM Journal on Numerical Analysis 13. Test: {@code
 * EvenPointsTest}.
 */
final class EvenPoints {
    private EvenPoints() {}

    /**
     * The first points of the sequence.
     *
     * @param dimensions 1 to 1000
     * @return for each point its coordinates, from 0 up to but without 1
     */
    static double[][] of(int count, int dimensions, long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        double[] shift = random.doubles(dimensions).toArray();
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimensions);
        double[][] points = new double[count][];
        for (int i = 0; i < count; i++) {
            points[i] = sequence.nextVector();
            for (int d = 0; d < dimensions; d++) {
                double moved = points[i][d] + shift[d];
                points[i][d] = moved >= 1 ? moved - 1 : moved;
            }
        }
        return points;
    }

    /**
     * One of some, each as likely as another.
     *
     * @param place a coordinate of a point, from 0 up to but without 1
     */
    static <T> T chosen(List<T> from, double place) {
        return from.get((int) (place * from.size()));
    }
}
