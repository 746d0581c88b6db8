package ampdays.commission.bench;

import ampdays.pv.CellTemperature;
import ampdays.pv.PvModule;
import ampdays.pv.SolarController;
import ampdays.pv.SolarSpec;

/** Power of the panels in light in their own plane. */
final class SolarPhysics {
    private SolarPhysics() {}

    /**
     * Power from the controller into a bank that takes all of it, W. The same chain as a run's, but for the way from sky to
     * panel, which is that of {@link PanelSun}. Reference: VanReadingsTest.
     *
     * @param planeWm2 light in the plane of the panels, W/m²
     * @param workingShare share of it that gets through the front, 0 to 1
     * @param airC air, °C
     * @param windMs wind over the panels, m/s
     * @param busV voltage of the bank, V
     */
    static double intoBankW(
            SolarSpec solar, double planeWm2, double workingShare, double airC, double windMs, double busV) {
        double cellC =
                CellTemperature.sandiaC(planeWm2, airC, windMs, solar.panel().mounting());
        SolarController controller = solar.controller();
        double kept = (1 - solar.mismatchShare())
                * (1 - solar.wiringShare())
                * controller.trackingShare()
                * (1 - solar.dirt().startShare());
        double bestW = kept
                * PvModule.dcW(
                        planeWm2 * workingShare,
                        cellC,
                        solar.ratedW(),
                        solar.panel().gammaPerK(),
                        solar.panel().lowLightShare());
        double atControllerW = controller.pulseWidth() ? controller.heldA(bestW, cellC, busV) * busV : bestW;
        return Math.min(atControllerW * controller.conversionShare(), controller.mostA() * busV);
    }
}
