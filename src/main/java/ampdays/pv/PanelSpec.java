package ampdays.pv;

import ampdays.units.Require;

/**
 * The panels' make and place.
 *
 * @param mounting how they sit on the roof
 * @param gammaPerK change of power with cell temperature, 1/K (negative)
 * @param lowLightShare power missing at 200 W/m² as a share of the rated power, 0 to 0.05
 * @param efficiency power per area at standard conditions over 1,000 W/m², 0 to 1; tells the roof they cover
 * @param tiltDeg tilt while parked, degrees; 0 lies flat
 * @param azimuthDeg heading of the tilted front, degrees clockwise from north
 */
public record PanelSpec(
        Mounting mounting,
        double gammaPerK,
        double lowLightShare,
        double efficiency,
        double tiltDeg,
        double azimuthDeg) {
    public PanelSpec {
        Require.within("temperature coefficient", gammaPerK, -0.01, 0);
        Require.within("low light", lowLightShare, 0, 0.05);
        Require.within("panel efficiency", efficiency, 0.03, 0.5);
        Require.within("tilt", tiltDeg, 0, 90);
        Require.within("azimuth", azimuthDeg, 0, 360);
    }
}
