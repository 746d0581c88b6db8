package ampdays.sun;

/** Lift of the sun's image by the air. */
final class Refraction {
    private Refraction() {}

    /**
     * Angle by which the sun appears higher than it stands. Leaves out the layering of the air, which near the horizon may
     * move the result by a tenth of a degree.
     *
     * <p>{@code (P/1010 mbar)(283/(273 + T)) 1.02/(60 tan(e + 10.3/(e + 5.11)))} degrees. Source: I. Reda and A. Andreas,
     * 2008, Solar Position Algorithm for Solar Radiation Applications, NREL/TP-560-34302, equation 42. There it is used
     * only while the sun's upper edge is above the horizon; here it is continued to 2.5 degrees below it and is 0 further
     * down, so that the sun's height has no jump near the horizon. Test: {@code SunPositionTest}.
     *
     * @param elevationDeg true height of the sun
     * @param pressurePa air pressure, 30,000 to 110,000
     * @param airC air temperature, −60 to 60
     * @return degrees, 0 to about 0.8
     */
    static double deg(double elevationDeg, double pressurePa, double airC) {
        if (elevationDeg < -2.5) {
            return 0;
        }
        double argumentDeg = elevationDeg + 10.3 / (elevationDeg + 5.11);
        return pressurePa / 101_000 * (283 / (273 + airC)) * 1.02 / (60 * Math.tan(Math.toRadians(argumentDeg)));
    }
}
