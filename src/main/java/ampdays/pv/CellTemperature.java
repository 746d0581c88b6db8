package ampdays.pv;

/** How warm the cells of a panel get. */
public final class CellTemperature {
    private CellTemperature() {}

    /**
     * Cell temperature in the steady state. Leaves out the panel's own thermal inertia (some five minutes), night sky
     * cooling and the power drawn.
     *
     * <p>{@code Tm = G exp(a + b v) + Ta}, {@code Tc = Tm + G/1000 dT}. Source: D. L. King, W. E. Boyson and J. A.
     * Kratochvil, 2004, Photovoltaic array performance model, Sandia report SAND2004-3535, equations 11 and 12 (equation
     * numbers from memory). Test: {@code CellTemperatureTest}.
     *
     * @param poaWm2 irradiance on the panel, without loss by incidence, 0 to 1400
     * @param airC air temperature, −40 to 60
     * @param windMs wind at 10 m height, 0 to 10 m/s: the caller caps it (also the speed of the road), the fit ends there
     * @param mounting how the panel sits on its support
     * @return °C
     */
    public static double sandiaC(double poaWm2, double airC, double windMs, Mounting mounting) {
        double backC = poaWm2 * Math.exp(mounting.a() + mounting.bPerMs() * windMs) + airC;
        return backC + poaWm2 / 1000 * mounting.cellOverBackK();
    }
}
