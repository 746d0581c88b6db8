package ampdays.study;

/**
 * The sky that a run goes under.
 *
 * @param clear without cloud
 * @param coolerNights with nights cooler by {@link #COOLER_NIGHTS_K}
 * @param warmerK with all air warmer by so much, K
 */
public record Sky(boolean clear, boolean coolerNights, double warmerK) {
    /** How much cooler a cooler night is, K: some 460 m higher up in the standard atmosphere (6.5 K/km). */
    public static final double COOLER_NIGHTS_K = 3;

    /** As the weather file says. */
    public static final Sky AS_IT_IS = new Sky(false, false);

    /** As the weather file says, but for a cloud or warm nights taken away. */
    Sky(boolean clear, boolean coolerNights) {
        this(clear, coolerNights, 0);
    }

    /** Warmer by so much, K; below 0 cooler. */
    public static Sky warmer(double byK) {
        return new Sky(false, false, byK);
    }

    Sky without(Sky other) {
        return new Sky(clear || other.clear, coolerNights || other.coolerNights);
    }
}
