package ampdays.alternator;

import java.util.List;

/**
 * A smooth line through points that never overshoots them: cubic pieces whose slopes at the points are limited so that a
 * rising set of points gives a rising line. Flat outside the points.
 *
 * <p>Slopes inside are the weighted harmonic mean of the two neighbouring secants (0 where they differ in sign): F. N.
 * Fritsch and J. Butland, 1984, SIAM Journal on Scientific and Statistical Computing 5, 300, equation 5 (number from
 * memory); slopes at the ends from three points, held to three times the end's secant. Reference: OutputCurveTest against
 * another implementation of the same method.
 */
final class MonotoneCurve {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    private MonotoneCurve(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        this.slope = slopes(x, y);
    }

    /** @param points at least two, speeds rising */
    static MonotoneCurve through(List<OutputPoint> points) {
        return new MonotoneCurve(
                points.stream().mapToDouble(OutputPoint::rotorRpm).toArray(),
                points.stream().mapToDouble(OutputPoint::currentA).toArray());
    }

    private static double[] slopes(double[] x, double[] y) {
        int last = x.length - 1;
        double[] width = new double[last];
        double[] secant = new double[last];
        for (int i = 0; i < last; i++) {
            width[i] = x[i + 1] - x[i];
            secant[i] = (y[i + 1] - y[i]) / width[i];
        }
        double[] slope = new double[last + 1];
        if (last == 1) {
            slope[0] = secant[0];
            slope[1] = secant[0];
            return slope;
        }
        for (int i = 1; i < last; i++) {
            if (secant[i - 1] * secant[i] > 0) {
                double left = 2 * width[i] + width[i - 1];
                double right = width[i] + 2 * width[i - 1];
                slope[i] = (left + right) / (left / secant[i - 1] + right / secant[i]);
            }
        }
        slope[0] = endSlope(width[0], width[1], secant[0], secant[1]);
        slope[last] = endSlope(width[last - 1], width[last - 2], secant[last - 1], secant[last - 2]);
        return slope;
    }

    private static double endSlope(double width, double nextWidth, double secant, double nextSecant) {
        double slope = ((2 * width + nextWidth) * secant - width * nextSecant) / (width + nextWidth);
        if (slope * secant <= 0) {
            return 0;
        }
        boolean turns = secant * nextSecant < 0;
        return turns && Math.abs(slope) > 3 * Math.abs(secant) ? 3 * secant : slope;
    }

    double at(double wanted) {
        int last = x.length - 1;
        if (wanted <= x[0]) {
            return y[0];
        }
        if (wanted >= x[last]) {
            return y[last];
        }
        int i = 0;
        while (wanted > x[i + 1]) {
            i++;
        }
        double h = x[i + 1] - x[i];
        double t = (wanted - x[i]) / h;
        double u = 1 - t;
        return y[i] * (1 + 2 * t) * u * u
                + slope[i] * h * t * u * u
                + y[i + 1] * t * t * (3 - 2 * t)
                - slope[i + 1] * h * t * t * u;
    }
}
