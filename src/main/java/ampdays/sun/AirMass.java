package ampdays.sun;

/** Length of the light's way through the atmosphere, in atmospheres overhead. */
public final class AirMass {
    /** Pa, the pressure to which absolute air mass refers. */
    public static final double SEA_LEVEL_PA = 101_325;

    private AirMass() {}

    /**
     * Relative air mass at sea level.
     *
     * <p>{@code m = 1/(cos z + 0.50572 (96.07995 − z)^−1.6364)}, z in degrees. Source: F. Kasten and A. T. Young, 1989,
     * Revised optical air mass tables and approximation formula, Applied Optics 28, 4735, equation 3 (equation number
     * from memory). Test: {@code AirMassTest}.
     *
     * @param apparentZenithDeg refracted zenith angle, 0 to 90 degrees
     * @return 1 to about 38; not a number when the sun is below the horizon
     */
    public static double kastenYoung(double apparentZenithDeg) {
        if (apparentZenithDeg > 90) {
            return Double.NaN;
        }
        return 1
                / (Math.cos(Math.toRadians(apparentZenithDeg))
                        + 0.50572 * Math.pow(96.07995 - apparentZenithDeg, -1.6364));
    }

    /**
     * Air pressure of the standard atmosphere. Leaves out weather, which moves it by some 3 %.
     *
     * <p>{@code p = 100 ((44331.514 − h)/11880.516)^(1/0.1902632)}. Source: function {@code alt2pres} of the
     * reference library named in the heading of table airmass_pressure; it is the troposphere of the 1976 standard
     * atmosphere. Test: {@code AirMassTest}.
     *
     * @param elevationM metres above the sea, −500 to 11,000; negative below it
     * @return Pa
     */
    public static double standardPressurePa(double elevationM) {
        return 100 * Math.pow((44_331.514 - elevationM) / 11_880.516, 1 / 0.1902632);
    }

    /**
     * Air mass corrected for the air that lies below the place. Test: {@code AirMassTest}.
     *
     * @param relative air mass at sea level
     * @param pressurePa air pressure at the place
     * @return relative air mass times pressure over 101,325 Pa
     */
    public static double absolute(double relative, double pressurePa) {
        return relative * pressurePa / SEA_LEVEL_PA;
    }
}
