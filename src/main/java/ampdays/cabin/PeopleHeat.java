package ampdays.cabin;

import java.util.Arrays;

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

    /**
     * Share of the sensible heat that people give off as moisture instead, 0 to 1.
     *
     * @param cabinC air, °C
     */
    public static double shiftShare(double cabinC) {
        double share = SHIFT_PER_K * (cabinC - 24);
        return share > 0 ? (share < 1 ? share : 1) : 0;
    }

    /** Sensible and latent heat of so many people in each of several cabins, W, by the air in it, °C. */
    static void of(int people, boolean asleep, double[] cabinC, double[] sensibleW, double[] latentW) {
        if (people == 0) {
            Arrays.fill(sensibleW, 0);
            Arrays.fill(latentW, 0);
            return;
        }
        double restLatentW = latentW(0, asleep);
        for (int i = 0; i < cabinC.length; i++) {
            double share = Math.min(Math.max(SHIFT_PER_K * (cabinC[i] - 24), 0), 1);
            sensibleW[i] = people * sensibleW(share);
            latentW[i] = people * (restLatentW + SENSIBLE_W * share);
        }
    }

    /** Sensible heat of one person, W. */
    public static double sensibleW(double shiftShare) {
        return SENSIBLE_W * (1 - shiftShare);
    }

    /** Latent heat of one person, W. */
    public static double latentW(double shiftShare, boolean asleep) {
        return (asleep ? ASLEEP_LATENT_W : AWAKE_LATENT_W) + SENSIBLE_W * shiftShare;
    }
}
