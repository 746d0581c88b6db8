package ampdays.cabin;

/** The cabin's heat balance: sol-air faces, glass, air changes. */
public final class CabinPhysics {
    /** Film inside a wall, m² K/W (ISO 6946: 0.13, horizontal heat flow). */
    static final double INNER_FILM_M2KW = 0.13;

    /** Film outside at which transmittances are stated, W/(m² K): ASHRAE Handbook of Fundamentals, sol-air example. */
    static final double OUTER_FILM_WM2K = 17;

    /** Long-wave loss to the open sky of a horizontal face, W/m²: 4 K at the standard film (ASHRAE, the same). */
    public static final double SKY_LOSS_WM2 = 4 * OUTER_FILM_WM2K;

    static final double AIR_J_M3K = 1200;

    /** ASHRAE prints 0.000145 (L/s)²/(cm⁴ K) and 0.000174 (L/s)²/(cm⁴ (m/s)²): times 100 in SI units. */
    private static final double STACK_M2S2K = 0.0145;

    private static final double WIND = 0.0174;
    private static final double LEAST_FILM_WM2K = 10;

    private CabinPhysics() {}

    /**
     * Transmittance of an insulated face, W/(m² K): series of films and foam, plus what the ribs add.
     *
     * @param thicknessM foam, m, from 0
     * @param conductivityWmK W/(m K)
     * @param bridgeWm2K W/(m² K)
     */
    public static double transmittanceWm2K(double thicknessM, double conductivityWmK, double bridgeWm2K) {
        return 1 / (INNER_FILM_M2KW + thicknessM / conductivityWmK + 1 / OUTER_FILM_WM2K) + bridgeWm2K;
    }

    /**
     * Outer film by wind: h = 5.7 + 3.8 v (McAdams, from memory), not below 10 W/(m² K): in a calm, radiation and the
     * hot skin's own draught carry about that much (from memory).
     *
     * @param windMs air speed at the skin, m/s
     */
    public static double filmWm2K(double windMs) {
        double film = 5.7 + 3.8 * windMs;
        return film < LEAST_FILM_WM2K ? LEAST_FILM_WM2K : film;
    }

    /**
     * Sol-air excess: how much warmer than the air outside an opaque face behaves, K:
     * te - to = α I / ho - ε ΔR / ho.
     *
     * <p>Source: ASHRAE Handbook of Fundamentals, sol-air temperature (equations 28 to 30 of its cooling-load chapter,
     * as reproduced); ΔR is 0 for vertical faces. Reference: CabinPhysicsTest (1,000 W/m², α 0.9: +49 K on a roof; α
     * 0.3: +14 K at the standard film).
     *
     * @param absorptance α, 0 to 1
     * @param irradianceWm2 on the face
     * @param skyLossWm2 ε ΔR of the face
     * @param filmWm2K ho
     */
    public static double solAirExcessK(double absorptance, double irradianceWm2, double skyLossWm2, double filmWm2K) {
        return (absorptance * irradianceWm2 - skyLossWm2) / filmWm2K;
    }

    /** Conductance of all faces and glass, without air changes, W/K. */
    public static double envelopeWK(CabinSpec cabin, boolean covered) {
        double u = faceWm2K(cabin);
        return u * (cabin.roofM2() + cabin.wallM2())
                + cabin.floorUWm2K() * cabin.floorM2()
                + glassWm2K(cabin, covered) * cabin.glassM2();
    }

    /** Transmittance of the glass, W/(m² K); covers are a resistance in series. */
    public static double glassWm2K(CabinSpec cabin, boolean covered) {
        return covered ? 1 / (1 / cabin.glassUWm2K() + cabin.covers().resistanceM2KW()) : cabin.glassUWm2K();
    }

    /** Transmittance of roof and walls, W/(m² K). */
    public static double faceWm2K(CabinSpec cabin) {
        return transmittanceWm2K(cabin.insulationM(), cabin.insulationWmK(), cabin.bridgeWm2K());
    }

    /**
     * Outside air that warmth and wind drive through the gaps of a standing van, m³/s: Q = A √(Cs |ΔT| + Cw v²).
     *
     * <p>Source: M. H. Sherman and D. T. Grimsrud, 1980, Infiltration-pressurization correlation, LBL-10163, with the
     * coefficients of the ASHRAE Handbook of Fundamentals (ventilation and infiltration, basic model): one storey, wind
     * with some obstructions near by; from memory. Leaves out where the gaps are. Reference: CabinPhysicsTest, against
     * the pressures of warm air and wind on an orifice.
     *
     * @param leakM2 effective leakage area, m², from 0
     * @param differenceK inside less outside air, K, any sign
     * @param windMs wind at 10 m, m/s, from 0
     */
    public static double leakM3S(double leakM2, double differenceK, double windMs) {
        double warmth = STACK_M2S2K * (differenceK < 0 ? -differenceK : differenceK);
        return leakM2 * Math.sqrt(warmth + WIND * windMs * windMs);
    }

    /**
     * Conductance of air changes, W/K.
     *
     * @param densityShare air density over that at sea level
     */
    public static double airChangesWK(double volumeM3, double changesPerH, double densityShare) {
        return volumeM3 * changesPerH / 3600 * AIR_J_M3K * densityShare;
    }
}
