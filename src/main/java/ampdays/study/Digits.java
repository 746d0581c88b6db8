package ampdays.study;

/** How many digits a sample deserves, and how large it must be for one more. Test: {@code SamplingTest}. */
public final class Digits {
    private Digits() {}

    /**
     * The smallest power of ten to which an estimate can be rounded so that half of it is no less than what the estimate may be
     * off by.
     *
     * @param halfWidth what it may be off by, above zero
     */
    public static double unit(double halfWidth) {
        return Math.pow(10, Math.ceil(Math.log10(2 * halfWidth) - 1e-9));
    }

    /**
     * How many samples it takes until half a unit is no less than what the estimate may be off by, when that falls with the
     * square root of their number. Even points do better where luck in the weather is not what decides.
     */
    public static double samplesFor(double unit, double halfWidth, int samples) {
        double ratio = halfWidth / (unit / 2);
        return samples * ratio * ratio;
    }
}
