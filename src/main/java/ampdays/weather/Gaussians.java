package ampdays.weather;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** Normal variates of mean 0 and spread 1 from a seed, the same on every machine. */
final class Gaussians {
    private final RandomGenerator random;

    Gaussians(long seed) {
        random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }

    /** The next variate, by the transformation of G. E. P. Box and M. E. Muller (1958). */
    double next() {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()));
        return radius * StrictMath.cos(2 * Math.PI * random.nextDouble());
    }

    /** The next value of a series that correlates by {@code memory} with its last value. */
    double after(double last, double memory) {
        return memory * last + StrictMath.sqrt(1 - memory * memory) * next();
    }
}
