package ampdays.sun;

/** Sunlight above the atmosphere. */
public final class Extraterrestrial {
    /** W/m², the solar constant that the reference tables use. */
    public static final double SOLAR_CONSTANT_WM2 = 1366.1;

    private Extraterrestrial() {}

    /**
     * Irradiance on a plane facing the sun outside the atmosphere. Leaves out the year's own quarter-day drift: one value
     * holds for a whole calendar day, which is within 0.05 % of the day's true course.
     *
     * <p>{@code B = 2π (n − 1)/365}; {@code I0 = 1366.1 (1.00011 + 0.034221 cos B + 0.00128 sin B + 0.000719 cos 2B +
     * 0.000077 sin 2B)}. Source: J. W. Spencer, 1971, Fourier series representation of the position of the sun, Search 2
     * (5), 172 (printed through the reference library's documentation). Test: {@code ExtraterrestrialTest}.
     *
     * @param dayOfYear 1 to 366, of the UTC date; other values continue the series periodically
     * @return W/m², 1321 to 1414
     */
    public static double normalWm2(int dayOfYear) {
        double b = 2 * Math.PI * (dayOfYear - 1) / 365;
        return SOLAR_CONSTANT_WM2
                * (1.00011
                        + 0.034221 * Math.cos(b)
                        + 0.00128 * Math.sin(b)
                        + 0.000719 * Math.cos(2 * b)
                        + 0.000077 * Math.sin(2 * b));
    }
}
