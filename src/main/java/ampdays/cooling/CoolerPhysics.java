package ampdays.cooling;

/** Equations of an air conditioner beside its temperature curves. */
public final class CoolerPhysics {
    /** Range of the curves: indoor wet bulb and outdoor dry bulb, °C; inputs are held to it. */
    static final double LEAST_WET_BULB_C = 12.78;

    static final double MOST_WET_BULB_C = 23.89;
    static final double LEAST_OUTDOOR_C = 18;
    static final double MOST_OUTDOOR_C = 46.11;

    private CoolerPhysics() {}

    /** Indoor wet bulb held to the range of the curves, °C. */
    public static double heldWetBulbC(double wetBulbC) {
        return wetBulbC < LEAST_WET_BULB_C ? LEAST_WET_BULB_C : wetBulbC > MOST_WET_BULB_C ? MOST_WET_BULB_C : wetBulbC;
    }

    /** Outdoor air held to the range of the curves, °C. */
    public static double heldOutdoorC(double outdoorC) {
        return outdoorC < LEAST_OUTDOOR_C ? LEAST_OUTDOOR_C : outdoorC > MOST_OUTDOOR_C ? MOST_OUTDOOR_C : outdoorC;
    }

    /**
     * Share of the cooling that lowers the temperature; the rest takes moisture out:
     * 0.75 + 0.05 (dry bulb - wet bulb - 7.22 K), from 0.5 to 1.
     *
     * <p>A straight line through the rating point (26.7 °C dry, 19.4 °C wet: 0.75), common practice, no source.
     */
    public static double sensibleShare(double dryBulbC, double wetBulbC) {
        double share = 0.75 + 0.05 * (dryBulbC - wetBulbC - 7.22);
        return share < 0.5 ? 0.5 : share > 1 ? 1 : share;
    }

    /**
     * Input of a variable-speed unit at part load, share of its full-load input at the same temperatures: between two
     * published curves, C (ductless unit, laboratory data) 0.100754583 - 0.131544809 x + 1.030916234 x² and D
     * (multi-split reference set) 0.4628123 - 1.0402406 x + 2.17490997 x² - 0.5974817 x³, by {@code blend} (0 = C, 1 =
     * D). No measured curve of a small roof unit is at hand: the blend is a guess whose range is the two curves.
     *
     * <p>Below the turn-down the unit cycles: input = input(turn-down) (x/turn-down)/PLF with PLF = 1 - Cd (1 -
     * x/turn-down), the form of AHRI 210/240 (from memory). Reference: CoolingTest against the printed values of
     * both curves.
     *
     * @param load share of full capacity asked for, 0 to 1
     * @param turnDown lowest share that it can run at, above 0 to 1
     * @param cyclingLoss degradation coefficient Cd, 0 to 0.5
     */
    public static double partLoadInput(double load, double blend, double turnDown, double cyclingLoss) {
        if (load >= turnDown) {
            return blendedInput(load, blend);
        }
        double share = load / turnDown;
        double partLoadFactor = 1 - cyclingLoss * (1 - share);
        return blendedInput(turnDown, blend) * share / partLoadFactor;
    }

    static double blendedInput(double x, double blend) {
        double c = 0.100754583 + x * (-0.131544809 + x * 1.030916234);
        double d = 0.4628123 + x * (-1.0402406 + x * (2.17490997 - x * 0.5974817));
        return c + (d - c) * blend;
    }
}
