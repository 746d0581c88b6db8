package ampdays.pv;

import ampdays.units.Require;

/**
 * The controller between panels and battery.
 *
 * @param pulseWidth whether it only switches, so that the battery's voltage holds the panels; else it tracks their best point
 * @param trackingShare how well it finds the best point, 0 to 1
 * @param conversionShare output over input, 0 to 1
 * @param mostA output current at most, A
 * @param stringV best voltage of a string of panels at 25 °C, V; it holds back a pulse-width controller only
 */
public record SolarController(
        boolean pulseWidth, double trackingShare, double conversionShare, double mostA, double stringV) {
    public SolarController {
        Require.within("tracking", trackingShare, 0.3, 1);
        Require.within("conversion", conversionShare, 0.3, 1);
        Require.notNegative("controller current", mostA);
        Require.positive("string voltage", stringV);
    }

    /**
     * Current that panels give through a pulse-width controller.
     *
     * @param bestW what they could give at their best point, W
     * @param cellC their cell temperature, °C
     * @param busV voltage of the battery, V
     * @return A, before the controller's limit
     */
    public double heldA(double bestW, double cellC, double busV) {
        return PulseWidth.currentA(bestW, PulseWidth.bestV(stringV, cellC), busV);
    }
}
