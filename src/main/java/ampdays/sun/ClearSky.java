package ampdays.sun;

/** Irradiance under a sky without clouds. */
public final class ClearSky {
    private ClearSky() {}

    /**
     * Global horizontal irradiance from the sun's height alone. Leaves out elevation, dust and humidity.
     *
     * <p>{@code GHI = 1098 cos z exp(−0.059/cos z)}. Source: B. Haurwitz, 1945, Insolation in relation to cloudiness and
     * cloud density, Journal of Meteorology 2, 154. Test: {@code ClearSkyTest}.
     *
     * @param cosZenith cosine of the refracted zenith angle, −1 to 1
     * @return W/m²; 0 when the sun is not above the horizon
     */
    public static double haurwitzGhiWm2(double cosZenith) {
        return cosZenith > 0 ? 1098 * cosZenith * Math.exp(-0.059 / cosZenith) : 0;
    }

    /**
     * Global horizontal irradiance from turbidity and elevation, without the later enhancement factor in air mass.
     *
     * <p>{@code fh1 = exp(−h/8000)}, {@code fh2 = exp(−h/1250)}, {@code cg1 = 5.09e−5 h + 0.868}, {@code cg2 = 3.92e−5 h
     * + 0.0387}; {@code GHI = cg1 I0 cos z exp(−cg2 AM (fh1 + fh2 (TL − 1)))}. Source: P. Ineichen and R. Perez, 2002, A
     * new airmass independent formulation for the Linke turbidity coefficient, Solar Energy 73, 151. Test:
     * {@code ClearSkyTest}.
     *
     * @param cosZenith cosine of the refracted zenith angle, −1 to 1
     * @param absoluteAirMass air mass corrected for pressure
     * @param linkeTurbidity 2 (very clear) to 7 (dusty or humid)
     * @param elevationM metres above the sea
     * @param extraterrestrialWm2 normal irradiance outside the atmosphere
     * @return W/m²; 0 when the sun is not above the horizon
     */
    public static double ineichenGhiWm2(
            double cosZenith,
            double absoluteAirMass,
            double linkeTurbidity,
            double elevationM,
            double extraterrestrialWm2) {
        if (cosZenith <= 0) {
            return 0;
        }
        double fh1 = Math.exp(-elevationM / 8000);
        double fh2 = Math.exp(-elevationM / 1250);
        double cg1 = 5.09e-5 * elevationM + 0.868;
        double cg2 = 3.92e-5 * elevationM + 0.0387;
        return cg1
                * extraterrestrialWm2
                * cosZenith
                * Math.exp(-cg2 * absoluteAirMass * (fh1 + fh2 * (linkeTurbidity - 1)));
    }

    /**
     * Beam irradiance that belongs to {@link #ineichenGhiWm2}; what remains, {@code GHI − DNI cos z}, is diffuse.
     *
     * <p>{@code b = 0.664 + 0.163/fh1}; {@code DNI = min(b I0 exp(−0.09 AM (TL − 1)), GHI (1 − (0.1 − 0.2 exp(−TL))/(0.1
     * + 0.882/fh1))/cos z)}. Source and test as there.
     *
     * @param ghiWm2 result of {@link #ineichenGhiWm2} for the same arguments
     * @param cosZenith cosine of the refracted zenith angle, −1 to 1
     * @param absoluteAirMass air mass corrected for pressure
     * @param linkeTurbidity 2 to 7
     * @param elevationM metres above the sea
     * @param extraterrestrialWm2 normal irradiance outside the atmosphere
     * @return W/m²; 0 when the sun is not above the horizon
     */
    public static double ineichenDniWm2(
            double ghiWm2,
            double cosZenith,
            double absoluteAirMass,
            double linkeTurbidity,
            double elevationM,
            double extraterrestrialWm2) {
        if (cosZenith <= 0) {
            return 0;
        }
        double fh1 = Math.exp(-elevationM / 8000);
        double b = 0.664 + 0.163 / fh1;
        double direct = b * extraterrestrialWm2 * Math.exp(-0.09 * absoluteAirMass * (linkeTurbidity - 1));
        double share = 1 - (0.1 - 0.2 * Math.exp(-linkeTurbidity)) / (0.1 + 0.882 / fh1);
        double ceiling = ghiWm2 * (share > 0 ? share : 0) / cosZenith;
        return direct < ceiling ? direct : ceiling;
    }
}
