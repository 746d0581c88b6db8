package ampdays.pv;

import ampdays.units.Require;

/**
 * The panels on the roof and their controller.
 *
 * @param ratedW power at standard test conditions, W
 * @param panel make and place
 * @param dirt light lost to dirt
 * @param mismatchShare power lost to mismatch and tolerance, 0 to 1
 * @param wiringShare power lost between panels and controller, 0 to 1
 * @param partShade what shade on some cells does
 * @param controller between panels and battery
 */
public record SolarSpec(
        double ratedW,
        PanelSpec panel,
        Dirt dirt,
        double mismatchShare,
        double wiringShare,
        PartShade partShade,
        SolarController controller) {
    public SolarSpec {
        Require.positive("solar power", ratedW);
        Require.share("mismatch", mismatchShare);
        Require.share("wiring loss", wiringShare);
    }

    /** Roof that the panels cover, m². */
    public double areaM2() {
        return ratedW / (1000 * panel.efficiency());
    }

    /** The same with all that a rated watt's best point does not depend on made equal. */
    public SolarSpec perWatt() {
        PanelSpec likePanel = new PanelSpec(
                panel.mounting(), panel.gammaPerK(), panel.lowLightShare(), 0.2, panel.tiltDeg(), panel.azimuthDeg());
        SolarController likeController =
                new SolarController(controller.pulseWidth(), controller.trackingShare(), 1, 1, 1);
        return new SolarSpec(1, likePanel, dirt, mismatchShare, wiringShare, partShade, likeController);
    }
}
