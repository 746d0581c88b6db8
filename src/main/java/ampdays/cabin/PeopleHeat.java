package ampdays.cabin;

/**
 * Heat and moisture of people: ASHRAE Handbook of Fundamentals 2013, chapter 18, table 1, as reproduced. Awake "seated,
 * very light work", asleep "seated at rest, night"; the table's shift from sensible to latent above 24 °C (20 % at 27
 * °C) is taken as linear. Reference: CabinPhysicsTest.
 */
public final class PeopleHeat {
    private static final double SENSIBLE_W = 70;
    private static final double AWAKE_LATENT_W = 45;
    private static final double ASLEEP_LATENT_W = 35;
    private static final double SHIFT_PER_K = 0.2 / 3;

    private PeopleHeat() {}

    /** Sensible heat of one person, W, at a cabin temperature, °C. */
    public static double sensibleW(double cabinC) {
        return SENSIBLE_W * (1 - shift(cabinC));
    }

    /** Latent heat of one person, W. */
    public static double latentW(double cabinC, boolean asleep) {
        return (asleep ? ASLEEP_LATENT_W : AWAKE_LATENT_W) + SENSIBLE_W * shift(cabinC);
    }

    private static double shift(double cabinC) {
        double shift = SHIFT_PER_K * (cabinC - 24);
        return shift < 0 ? 0 : shift > 1 ? 1 : shift;
    }
}
