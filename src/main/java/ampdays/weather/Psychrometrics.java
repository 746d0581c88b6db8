package ampdays.weather;

/** Water vapour in air. */
public final class Psychrometrics {
    /** Ratio of the molar masses of water and dry air. */
    private static final double MASS_RATIO = 0.62198;

    private Psychrometrics() {}

    /**
     * Pressure of saturated water vapour over water, also below 0 °C.
     *
     * <p>Magnus form {@code 611.2 exp(17.62 T/(243.12 + T))} Pa. Source: WMO guide to instruments and methods of observation
     * (No. 8), annex 4.B, constants from memory. Test: {@code PsychrometricsTest}.
     *
     * @param temperatureC −45 to 60 °C; within 0.4 % there
     * @return Pa
     */
    public static double saturationPa(double temperatureC) {
        return 611.2 * Math.exp(17.62 * temperatureC / (243.12 + temperatureC));
    }

    /**
     * Dew point from relative humidity: the Magnus form solved for temperature. Source and test as for
     * {@link #saturationPa}.
     *
     * @param airC air temperature
     * @param relativeHumidity share of saturation, above 0, up to 1
     * @return °C
     */
    public static double dewPointC(double airC, double relativeHumidity) {
        double x = Math.log(relativeHumidity) + 17.62 * airC / (243.12 + airC);
        return 243.12 * x / (17.62 - x);
    }

    /**
     * Mass of water per mass of dry air, {@code 0.62198 e/(p − e)} (ideal gases; the factor is that of ASHRAE Handbook of
     * Fundamentals, Psychrometrics, from memory). Test: {@code PsychrometricsTest}.
     *
     * @param dewPointC dew point, below the boiling point
     * @param pressurePa air pressure
     * @return kg/kg
     */
    public static double humidityRatio(double dewPointC, double pressurePa) {
        double vapourPa = saturationPa(dewPointC);
        return MASS_RATIO * vapourPa / (pressurePa - vapourPa);
    }
}
