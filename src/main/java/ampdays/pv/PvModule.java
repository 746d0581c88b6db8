package ampdays.pv;

/** Power of a panel held at its best working point. */
public final class PvModule {
    private PvModule() {}

    /**
     * Direct-current power from effective irradiance and cell temperature. Leaves out the lower efficiency in weak light,
     * dirt, mismatch and wiring.
     *
     * <p>{@code P = P0 G/1000 (1 + γ (Tc − 25))}. Source: A. P. Dobos, 2014, National Renewable Energy Laboratory report
     * NREL/TP-6A20-62641, module model. Test: {@code PvModuleTest}.
     *
     * @param effectiveWm2 irradiance that reaches the cells, 0 to 1400
     * @param cellC cell temperature, −40 to 110
     * @param ratedW power at 1000 W/m² and 25 °C
     * @param gammaPerK change of power per kelvin as a share, −0.002 to −0.005
     * @return W, at least 0
     */
    public static double dcW(double effectiveWm2, double cellC, double ratedW, double gammaPerK) {
        double powerW = ratedW * effectiveWm2 / 1000 * (1 + gammaPerK * (cellC - 25));
        return powerW > 0 ? powerW : 0;
    }
}
