package ampdays.pv;

import ampdays.units.Require;

/**
 * The panels on the roof and their controller.
 *
 * @param ratedW power at standard test conditions, W
 * @param mounting how they sit on the roof
 * @param gammaPerK change of power with cell temperature, 1/K (negative)
 * @param panelEfficiency power per area at standard conditions over 1,000 W/m², 0 to 1; tells the roof they cover
 * @param dirtShare light lost to dirt, 0 to 1
 * @param mismatchShare power lost to mismatch and tolerance, 0 to 1
 * @param wiringShare power lost between panels and controller, 0 to 1
 * @param trackingShare how well the controller finds the best point, 0 to 1
 * @param conversionShare output over input of the controller, 0 to 1
 * @param controllerA output current of the controller at most, A
 */
public record SolarSpec(
        double ratedW,
        Mounting mounting,
        double gammaPerK,
        double panelEfficiency,
        double dirtShare,
        double mismatchShare,
        double wiringShare,
        double trackingShare,
        double conversionShare,
        double controllerA) {
    public SolarSpec {
        Require.positive("solar power", ratedW);
        Require.within("temperature coefficient", gammaPerK, -0.01, 0);
        Require.within("panel efficiency", panelEfficiency, 0.03, 0.5);
        Require.share("dirt", dirtShare);
        Require.share("mismatch", mismatchShare);
        Require.share("wiring loss", wiringShare);
        Require.within("tracking", trackingShare, 0.3, 1);
        Require.within("conversion", conversionShare, 0.3, 1);
        Require.positive("controller current", controllerA);
    }
}
