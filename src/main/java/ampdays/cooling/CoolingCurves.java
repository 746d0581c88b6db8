package ampdays.cooling;

/**
 * Published sets of biquadratic curves c1 + c2 x + c3 x² + c4 y + c5 y² + c6 x y of capacity and energy-input ratio,
 * relative to the rating point, x = indoor wet bulb, y = outdoor dry bulb, °C. Source: the curve sets of public
 * building-energy example inputs (window unit; packaged unit), each also carried by two model libraries. Reference:
 * CoolingTest against table dx_cooling_curves.
 */
public enum CoolingCurves {
    /** Set A, a window unit. */
    WINDOW,
    /** Set B, a packaged unit. */
    PACKAGED,
    /**
     * Split units of one speed: fits to makers' data, published for degrees Fahrenheit. Source: D. Cutler et al., 2013,
     * NREL/TP-5500-56354, as carried identically in several public building-energy codes. Their input grows most with heat.
     */
    SPLIT;

    private static final Biquadratic WINDOW_CAPACITY =
            new Biquadratic(1, 0, 0.942587793, 0.009543347, 0.00068377, -0.011042676, 0.000005249, -0.00000972);
    private static final Biquadratic WINDOW_INPUT =
            new Biquadratic(1, 0, 0.342414409, 0.034885008, -0.0006237, 0.004977216, 0.000437951, -0.000728028);
    private static final Biquadratic PACKAGED_CAPACITY =
            new Biquadratic(1, 0, 0.766956, 0.0107756, -0.0000414703, 0.00134961, -0.000261144, 0.000457488);
    private static final Biquadratic PACKAGED_INPUT =
            new Biquadratic(1, 0, 0.297145, 0.0430933, -0.000748766, 0.00597727, 0.000482112, -0.000956448);
    private static final Biquadratic SPLIT_CAPACITY =
            new Biquadratic(1.8, 32, 3.670270705, -0.098652414, 0.000955906, 0.006552414, -0.0000156, -0.000131877);
    private static final Biquadratic SPLIT_INPUT =
            new Biquadratic(1.8, 32, -3.302695861, 0.137871531, -0.001056996, -0.012573945, 0.000214638, -0.000145054);

    /** A curve of two temperatures in degrees of its own, {@code perK} for each kelvin and {@code zero} at 0 °C. */
    record Biquadratic(double perK, double zero, double c1, double c2, double c3, double c4, double c5, double c6) {
        double at(double wetBulbC, double outdoorC) {
            double x = perK * wetBulbC + zero;
            double y = perK * outdoorC + zero;
            return c1 + x * (c2 + c3 * x + c6 * y) + y * (c4 + c5 * y);
        }
    }

    Biquadratic capacity() {
        return switch (this) {
            case WINDOW -> WINDOW_CAPACITY;
            case PACKAGED -> PACKAGED_CAPACITY;
            case SPLIT -> SPLIT_CAPACITY;
        };
    }

    Biquadratic input() {
        return switch (this) {
            case WINDOW -> WINDOW_INPUT;
            case PACKAGED -> PACKAGED_INPUT;
            case SPLIT -> SPLIT_INPUT;
        };
    }

    /** Capacity relative to the rating. */
    public double capacityFactor(double wetBulbC, double outdoorC) {
        return capacity().at(wetBulbC, outdoorC);
    }

    /** Input per cooling, relative to the rating. */
    public double inputFactor(double wetBulbC, double outdoorC) {
        return input().at(wetBulbC, outdoorC);
    }
}
