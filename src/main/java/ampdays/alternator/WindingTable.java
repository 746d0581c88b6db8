package ampdays.alternator;

import java.util.function.DoubleUnaryOperator;

/**
 * A current at one rotor speed, as a table over winding temperature: read without exponential, root or division in every
 * step. Straight between lines 2 K apart, held at -60 and 260 °C; it differs from an output curve by less than 0.2 % of
 * its end value (OutputCurveTest).
 */
final class WindingTable {
    private static final double FIRST_C = -60;
    private static final double STEP_K = 2;
    private static final int LAST = 160;

    private final double[] currentA = new double[LAST + 1];

    /** @param byWindingC current, A, by winding temperature, °C */
    WindingTable(DoubleUnaryOperator byWindingC) {
        for (int i = 0; i <= LAST; i++) {
            currentA[i] = byWindingC.applyAsDouble(FIRST_C + i * STEP_K);
        }
    }

    double currentA(double windingC) {
        double place = (windingC - FIRST_C) * (1 / STEP_K);
        if (!(place > 0)) {
            return currentA[0];
        }
        int i = (int) place;
        return i >= LAST ? currentA[LAST] : currentA[i] + (place - i) * (currentA[i + 1] - currentA[i]);
    }
}
