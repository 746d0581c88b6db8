package ampdays.wiring;

/**
 * What fuses and breakers hold for hours, by temperature. Nothing holds more than its rating here, although a cold one
 * does. Reference: ProtectionTest.
 */
public final class Hold {
    /** Kelvin above calibration, and share held: a maker's family of thermal breakers calibrated at 40 °C. */
    private static final double[] ABOVE_K = {0, 10, 15, 20, 25, 30};

    private static final double[] HELD = {1, 0.96, 0.92, 0.85, 0.80, 0.69};

    /** Published slope of fuses, and of slow ones, per kelvin; a distributor's note. */
    private static final double FUSE_PER_K = 0.002;

    private static final double SLOW_FUSE_PER_K = 0.005;

    private static final double ALTITUDE_FROM_M = 2000;
    private static final double ALTITUDE_SPAN_M = 20_000;

    private Hold() {}

    /**
     * Share of the rating held. Beyond what the family of thermal breakers is published for, its last slope goes on (guess).
     *
     * @param calibratedC air that the rating is told for, °C
     * @param ownC temperature of the unit, °C; may be infinite
     * @param elevationM height above the sea, m; matters to fuses
     * @return 0 to 1
     */
    static double share(ProtectionKind kind, double calibratedC, double ownC, double elevationM) {
        double aboveK = ownC - calibratedC;
        double share = switch (kind) {
            case THERMAL_BREAKER -> thermal(aboveK);
            case MAGNETIC_BREAKER -> 1;
            case BLADE_FUSE, CLASS_T_FUSE -> (1 - FUSE_PER_K * aboveK) * thinAirShare(elevationM);
            case BOLT_DOWN_FUSE, STRIP_FUSE, POST_FUSE -> (1 - SLOW_FUSE_PER_K * aboveK) * thinAirShare(elevationM);
        };
        double most = kind.isBreaker() ? 1 : thinAirShare(elevationM);
        return share > most ? most : share > 0 ? share : 0;
    }

    private static double thermal(double aboveK) {
        int last = ABOVE_K.length - 1;
        for (int i = 1; i <= last; i++) {
            if (aboveK <= ABOVE_K[i] || i == last) {
                double slope = (HELD[i] - HELD[i - 1]) / (ABOVE_K[i] - ABOVE_K[i - 1]);
                return HELD[i - 1] + slope * (aboveK - ABOVE_K[i - 1]);
            }
        }
        return 1;
    }

    /**
     * Share that fuses keep in thin air: {@code 1 − (A − 2000)/20000} above 2,000 m; a published rule (30 A at 3,000 m is
     * 28.5 A).
     */
    static double thinAirShare(double elevationM) {
        double above = elevationM - ALTITUDE_FROM_M;
        return above > 0 ? 1 - above / ALTITUDE_SPAN_M : 1;
    }
}
