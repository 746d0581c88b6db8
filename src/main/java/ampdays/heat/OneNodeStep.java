package ampdays.heat;

/**
 * One heat node in one environment, advanced by the exact solution for constant inputs: T = Ts + (T0 - Ts) exp(-t/τ),
 * Ts = Te + Q/k, τ = C/k. Reference: HeatNodesTest.
 */
public final class OneNodeStep {
    final double kPerW;
    final double remains;

    /**
     * @param heatJK heat capacity, J/K, above 0
     * @param conductanceWK conductance to the environment, W/K, above 0
     * @param stepS length of the step, s
     */
    public OneNodeStep(double heatJK, double conductanceWK, double stepS) {
        this.kPerW = 1 / conductanceWK;
        this.remains = Math.exp(-stepS * conductanceWK / heatJK);
    }

    /** Temperature at the end of the step, °C. */
    public double nextC(double fromC, double environmentC, double heatW) {
        double restC = environmentC + heatW * kPerW;
        return restC + (fromC - restC) * remains;
    }
}
