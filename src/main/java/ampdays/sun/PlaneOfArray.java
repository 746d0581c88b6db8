package ampdays.sun;

/**
 * Irradiance on a plane from beam, sky and ground. The sky is either even (isotropic) or, after Hay and Davies, partly
 * gathered around the sun; that circumsolar part is returned on its own because whatever shades the beam shades it too.
 */
public final class PlaneOfArray {
    /** Cosine of 89 degrees: floor of the sun's height in the circumsolar part (edge rule of the reference library). */
    private static final double LEAST_COS_ZENITH = 0.01745;

    private PlaneOfArray() {}

    /**
     * Beam on the plane, {@code DNI max(cos aoi, 0)}. Test: {@code PlaneOfArrayTest}.
     *
     * @param dniWm2 beam irradiance on a plane facing the sun
     * @param incidenceCosine cosine of the angle of incidence
     * @return W/m²
     */
    public static double beamWm2(double dniWm2, double incidenceCosine) {
        return incidenceCosine > 0 ? dniWm2 * incidenceCosine : 0;
    }

    /**
     * Light of an even sky on the plane, {@code DHI (1 + cos b)/2}. Test: {@code PlaneOfArrayTest}.
     *
     * @param dhiWm2 diffuse horizontal irradiance
     * @param skyView share of the sky that the plane sees, 0 to 1
     * @return W/m²
     */
    public static double isotropicSkyWm2(double dhiWm2, double skyView) {
        return dhiWm2 * skyView;
    }

    /**
     * The part of the sky's light that comes from around the sun, on the plane.
     *
     * <p>{@code DHI A Rb} with {@code A = DNI/I0} and {@code Rb = max(cos aoi, 0)/max(cos z, 0.01745)}. Source: J. E. Hay
     * and J. A. Davies, 1980, Calculations of the solar radiation incident on an inclined surface, Proceedings of the
     * First Canadian Solar Radiation Data Workshop, 59. Test: {@code PlaneOfArrayTest}.
     *
     * @param dhiWm2 diffuse horizontal irradiance
     * @param dniWm2 beam irradiance on a plane facing the sun
     * @param extraterrestrialWm2 normal irradiance outside the atmosphere, above 0
     * @param incidenceCosine cosine of the angle of incidence
     * @param cosZenith cosine of the sun's zenith angle
     * @return W/m²; 0 when the sun is behind the plane
     */
    public static double circumsolarWm2(
            double dhiWm2, double dniWm2, double extraterrestrialWm2, double incidenceCosine, double cosZenith) {
        if (incidenceCosine <= 0) {
            return 0;
        }
        double floored = cosZenith > LEAST_COS_ZENITH ? cosZenith : LEAST_COS_ZENITH;
        return dhiWm2 * dniWm2 / extraterrestrialWm2 * incidenceCosine / floored;
    }

    /**
     * The even rest of the sky's light on the plane after Hay and Davies, {@code DHI (1 − A)(1 + cos b)/2}. Source and
     * test as for {@link #circumsolarWm2}.
     *
     * @param dhiWm2 diffuse horizontal irradiance
     * @param dniWm2 beam irradiance on a plane facing the sun
     * @param extraterrestrialWm2 normal irradiance outside the atmosphere, above 0
     * @param skyView share of the sky that the plane sees, 0 to 1
     * @return W/m²
     */
    public static double evenSkyWm2(double dhiWm2, double dniWm2, double extraterrestrialWm2, double skyView) {
        return dhiWm2 * (1 - dniWm2 / extraterrestrialWm2) * skyView;
    }

    /**
     * Light thrown back by the ground, {@code GHI albedo (1 − cos b)/2}; the ground counts as evenly lit. Test:
     * {@code PlaneOfArrayTest}.
     *
     * @param ghiWm2 global horizontal irradiance
     * @param albedo share that the ground reflects, 0 to 1: sand 0.40, soil 0.17, asphalt 0.12, grass 0.20
     * @param groundView share of the ground that the plane sees, 0 to 1
     * @return W/m²
     */
    public static double groundWm2(double ghiWm2, double albedo, double groundView) {
        return ghiWm2 * albedo * groundView;
    }

    /**
     * Cosine of incidence on an upright face, averaged over all headings it may have: {@code sin z/π}, because the mean of
     * {@code max(cos x, 0)} over a full turn is {@code 1/π} (geometry). Use it in place of the incidence cosine when a
     * vehicle's heading is not known. Test: {@code PlaneOfArrayTest}.
     *
     * @param cosZenith cosine of the sun's zenith angle, −1 to 1
     * @return 0 to 1/π; 0 when the sun is not above the horizon
     */
    public static double meanUprightCosine(double cosZenith) {
        return cosZenith > 0 ? Math.sqrt(1 - cosZenith * cosZenith) / Math.PI : 0;
    }
}
