package ampdays.pv;

/** Power of a panel held at its best working point. */
public final class PvModule {
    private PvModule() {}

    /**
     * Direct-current power from effective irradiance and cell temperature. Leaves out dirt, mismatch and wiring.
     *
     * <p>{@code P = P0 (G/1000 (1 + γ (Tc − 25)) − e)}, with {@code e = k (1000 − G)/800}, and {@code k (1 − (1 − G/200)⁴)}
     * up to 200 W/m². Source: A. P. Dobos, 2014, National Renewable Energy Laboratory report NREL/TP-6A20-62641, module
     * model; the term for weak light: B. Marion, 2008, Comparison of predictive models for photovoltaic module performance,
     * 33rd IEEE Photovoltaic Specialists Conference (title from memory). Tests: {@code PvModuleTest},
     * {@code MeasuredModulesTest}.
     *
     * @param effectiveWm2 irradiance that reaches the cells, 0 to 1400
     * @param cellC cell temperature, −40 to 110
     * @param ratedW power at 1000 W/m² and 25 °C
     * @param gammaPerK change of power per kelvin as a share, −0.002 to −0.005
     * @param lowLightShare k: power missing at 200 W/m² as a share of the rated power, 0 to 0.03
     * @return W, at least 0
     */
    public static double dcW(double effectiveWm2, double cellC, double ratedW, double gammaPerK, double lowLightShare) {
        double missing;
        if (effectiveWm2 > 200) {
            missing = (1000 - effectiveWm2) / 800;
        } else {
            double square = (1 - effectiveWm2 / 200) * (1 - effectiveWm2 / 200);
            missing = 1 - square * square;
        }
        double power = effectiveWm2 / 1000 * (1 + gammaPerK * (cellC - 25)) - lowLightShare * missing;
        return power > 0 ? ratedW * power : 0;
    }
}
