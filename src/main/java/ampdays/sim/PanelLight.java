package ampdays.sim;

import ampdays.pv.IncidenceAngle;
import ampdays.pv.PanelSpec;
import ampdays.pv.PartShade;
import ampdays.pv.SolarSpec;
import ampdays.sun.Plane;
import ampdays.sun.PlaneOfArray;
import ampdays.sun.SunPath;
import ampdays.trip.Shade;
import ampdays.trip.Vehicle;
import ampdays.weather.MinuteWeather;

/**
 * Light on the panels in one step. Tilted panels lie flat while the vehicle moves. What is shaded by the timetable's trees
 * warms the cells by the light that gets through, but works only where whole bypass groups are lit ({@link PartShade}).
 */
final class PanelLight {
    /** Glass front (ASHRAE incidence model). */
    private static final double INCIDENCE_B0 = 0.05;

    private static final Plane FLAT = Plane.of(0, 0);

    private final MinuteWeather weather;
    private final SunPath sun;
    private final Plane raised;
    private final PartShade partShade;
    private final boolean heldByBattery;
    private double totalWm2;
    private double effectiveWm2;
    private double keptShare;

    PanelLight(SkyPlan sky, SolarSpec solar) {
        PanelSpec panel = solar.panel();
        weather = sky.weather();
        sun = sky.sun();
        raised = Plane.of(panel.tiltDeg(), panel.azimuthDeg());
        partShade = solar.partShade();
        heldByBattery = solar.controller().pulseWidth();
    }

    /** Works out the light of a step in daylight. */
    void fall(int step, Shade shade, Vehicle vehicle) {
        Plane plane = vehicle.moves() ? FLAT : raised;
        double cosZenith = sun.cosZenith(step);
        double dniWm2 = weather.dniWm2(step);
        double dhiWm2 = weather.dhiWm2(step);
        double extraWm2 = sun.extraterrestrialWm2(step);
        double incidence = plane.incidenceCosine(cosZenith, sun.east(step), sun.north(step));
        double beamWm2 = PlaneOfArray.beamWm2(dniWm2, incidence);
        double aroundSunWm2 = PlaneOfArray.circumsolarWm2(dhiWm2, dniWm2, extraWm2, incidence, cosZenith);
        double evenWm2 = PlaneOfArray.evenSkyWm2(dhiWm2, dniWm2, extraWm2, plane.skyView()) * shade.diffuseShare()
                + PlaneOfArray.groundWm2(
                        weather.ghiWm2(step) * shade.beamShare(), CabinPlan.ALBEDO, plane.groundView());
        totalWm2 = (beamWm2 + aroundSunWm2) * shade.beamShare() + evenWm2;
        double sunnyWm2 = (beamWm2 * IncidenceAngle.ashrae(incidence, INCIDENCE_B0) + aroundSunWm2)
                * partShade.litShare(shade.beamShare());
        effectiveWm2 = sunnyWm2 + evenWm2;
        keptShare = partShade.furnitureShare() > 0 && sunnyWm2 > 0 && cosZenith > 0
                ? partShade.keptShare(cosZenith, evenWm2 / effectiveWm2, heldByBattery)
                : 1;
    }

    /** What warms the panels. */
    double totalWm2() {
        return totalWm2;
    }

    /** What reaches the cells of groups that work. */
    double effectiveWm2() {
        return effectiveWm2;
    }

    /** Share of the panels' power that roof furniture leaves. */
    double keptShare() {
        return keptShare;
    }
}
