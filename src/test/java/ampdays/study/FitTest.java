package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Non-linear least squares against certified values of a standards body: NIST Statistical Reference Datasets, Misra1a (dental
 * research, monomolecular adsorption: volume over pressure), y = b1 (1 − exp(−b2 x)). Observations and certified values from
 * memory.
 */
class FitTest {
    private static final double[] X = {
        77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0
    };
    private static final double[] Y = {
        10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78
    };
    /** Certified values. */
    private static final double B1 = 238.94212918;

    private static final double B2 = 5.5015643181e-4;
    /** Certified residual standard deviation. */
    private static final double SCATTER = 1.0187876330e-1;

    private static double[] saturating(double... b) {
        double[] y = new double[X.length];
        Arrays.setAll(y, i -> b[0] * (1 - Math.exp(-b[1] * X[i])));
        return y;
    }

    private static Fit.Result fit(double[] start, double most) {
        double[] u = new double[Y.length];
        Arrays.fill(u, SCATTER);
        return Fit.of(FitTest::saturating, Y, u, start, new double[] {1, 1e-6}, new double[] {most, 1});
    }

    /**
     * Slopes are differences one percent upwards, so the search ends a little beside the least squares, and the standard error
     * is that of such slopes.
     */
    @Test
    void certifiedValuesComeOut() {
        double[] bySlopes = standard(B1, B2, 0.01);
        for (double[] start : new double[][] {{500, 0.0001}, {250, 0.0005}}) {
            Fit.Result found = fit(start, 1e4);
            assertThat(found.value(0)).isCloseTo(B1, within(0.01));
            assertThat(found.value(1)).isCloseTo(B2, within(0.0003e-4));
            assertThat(found.standard(0)).isCloseTo(bySlopes[0], within(1e-3 * bySlopes[0]));
            assertThat(found.standard(1)).isCloseTo(bySlopes[1], within(1e-3 * bySlopes[1]));
        }
    }

    /** The one percent by which standard errors miss the certified ones comes from the step of the slopes alone. */
    @Test
    void standardErrorsAreOffByTheStepOfTheSlopes() {
        double[] bySlopes = standard(B1, B2, 0.01);
        assertThat(bySlopes[0]).isCloseTo(2.7070075241, within(0.011 * 2.707));
        assertThat(bySlopes[1]).isCloseTo(7.2668688436e-6, within(0.011 * 7.267e-6));
        double[] exact = standard(B1, B2, 1e-6);
        assertThat(exact[0]).isCloseTo(2.7070075241, within(1e-5 * 2.707));
        assertThat(exact[1]).isCloseTo(7.2668688436e-6, within(1e-5 * 7.267e-6));
    }

    /** Square roots of the diagonal of s² (JᵀJ)⁻¹ by hand, the slope over b2 taken over a step of this share of it. */
    private static double[] standard(double b1, double b2, double step) {
        double aa = 0;
        double ab = 0;
        double bb = 0;
        for (double x : X) {
            double a = -Math.expm1(-b2 * x);
            double b = b1 * Math.exp(-b2 * x) * -Math.expm1(-step * b2 * x) / (step * b2);
            aa += a * a;
            ab += a * b;
            bb += b * b;
        }
        double determinant = aa * bb - ab * ab;
        return new double[] {SCATTER * Math.sqrt(bb / determinant), SCATTER * Math.sqrt(aa / determinant)};
    }

    @Test
    void boundsHold() {
        assertThat(fit(new double[] {150, 0.0008}, 200).value(0)).isLessThanOrEqualTo(200);
    }

    /** By logic: what moves nothing is not told; what moves alone is told as before. */
    @Test
    void whatMovesNothingIsNotTold() {
        double[] u = new double[Y.length];
        Arrays.fill(u, SCATTER);
        Fit.Result found = Fit.of(
                b -> saturating(b[0], b[1]),
                Y,
                u,
                new double[] {250, 0.0005, 3},
                new double[] {1, 1e-6, 0},
                new double[] {1e4, 1, 10});
        assertThat(found.standard(2)).isInfinite();
        assertThat(found.standard(0)).isCloseTo(2.707, within(0.011 * 2.707));
    }
}
