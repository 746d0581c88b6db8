package ampdays.study;

/**
 * The sky that a run goes under.
 *
 * @param clear without cloud
 * @param coolerNights with nights cooler by {@link #COOLER_NIGHTS_K}
 */
public record Sky(boolean clear, boolean coolerNights) {
    /** How much cooler a cooler night is, K: some 460 m higher up in the standard atmosphere (6.5 K/km). */
    public static final double COOLER_NIGHTS_K = 3;

    /** As the weather file says. */
    public static final Sky AS_IT_IS = new Sky(false, false);

    Sky without(Sky other) {
        return new Sky(clear || other.clear, coolerNights || other.coolerNights);
    }
}
