package ampdays.commission.bench;

import ampdays.commission.Sunlight;
import ampdays.pv.IncidenceAngle;
import ampdays.pv.PanelSpec;
import ampdays.scenario.Problem;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Site;
import ampdays.scenario.Variant;
import ampdays.sun.AirMass;
import ampdays.sun.ClearSky;
import ampdays.sun.DiffuseSplit;
import ampdays.sun.Plane;
import ampdays.sun.PlaneOfArray;
import ampdays.sun.SunPath;
import java.util.List;
import java.util.Locale;

/**
 * Light in the plane of the panels by what was told of it.
 *
 * <p>What was read in the plane stays, near enough to square on that no loss by incidence is counted (ASHRAE b0 0.05: 1 % at
 * 35°). What was read on the level is split into beam and sky (Erbs, Klein and Duffie 1982) and brought into the plane (Hay
 * and Davies 1980) by the sun's height, as a run does it; the beam loses by incidence. A sky without a cloud is that of
 * Ineichen and Perez (2002) at a turbidity of 3. Leaves out shade, and the horizon. Reference: PanelSunTest.
 *
 * @param planeWm2 light in the plane, W/m²; NaN when nothing was told
 * @param workingShare share of it that gets through the front, 0 to 1
 * @param heightDeg height of the sun, degrees; NaN when no time was told
 * @param offShare how far the light in the plane may be off by the way it was told, as a share to either side
 */
record PanelSun(double planeWm2, double workingShare, double heightDeg, double offShare) {
    /** Lower than this panels cannot be judged; practice. */
    static final double LEAST_HEIGHT_DEG = 10;

    /** Linke turbidity of a clear day on dry land; guess, 2 very clear to 7 dusty or humid. */
    private static final double CLEAR_TURBIDITY = 3;

    private static final double GLASS_B0 = 0.05;
    /** Light thrown back by soil, grass or asphalt; practice. */
    private static final double ALBEDO = 0.20;

    /** Light meters, and those who hold them; guess. */
    private static final double METER_OFF = 0.05;
    /** The same, and the split of a level reading; guess. */
    private static final double LEVEL_OFF = 0.08;
    /** Dust and damp of a day without a cloud: turbidity 2 to 5 moves the light by 7 % to either side; guess. */
    private static final double CLEAR_SKY_OFF = 0.15;

    private static final PanelSun NONE = new PanelSun(Double.NaN, 1, Double.NaN, METER_OFF);
    private static final int INSTANT_S = 2;

    /**
     * The light on a van's panels.
     *
     * @throws ScenarioException when the sun stands too low then, or less light can come than was told
     */
    static PanelSun of(Sunlight told, Variant variant) throws ScenarioException {
        if (variant.design().solar().isEmpty() || told.kind() == Sunlight.Kind.NOT_TOLD) {
            return NONE;
        }
        if (told.kind() == Sunlight.Kind.IN_PLANE) {
            return new PanelSun(told.wm2(), 1, Double.NaN, METER_OFF);
        }
        Site site = variant.site();
        long at = told.at().orElseThrow().atZone(variant.trip().zone()).toEpochSecond();
        SunPath sun = SunPath.of(
                site.latitudeDeg(), site.longitudeDeg(), site.elevationM(), at - INSTANT_S / 2, INSTANT_S, 1);
        double heightDeg = Math.toDegrees(Math.asin(sun.cosZenith(0)));
        if (heightDeg < LEAST_HEIGHT_DEG) {
            throw refused(String.format(
                    Locale.ROOT,
                    "at %s the sun stands %.0f° %s the horizon there, too low to judge panels. Take a time with the sun at"
                            + " least %.0f° high.",
                    told.spelledTime().orElseThrow(),
                    Math.abs(heightDeg),
                    heightDeg < 0 ? "below" : "above",
                    LEAST_HEIGHT_DEG));
        }
        PanelSpec panel = variant.design().solar().orElseThrow().panel();
        return told.kind() == Sunlight.Kind.CLEAR_SKY
                ? clearSky(sun, site, panel, heightDeg)
                : level(told, sun, panel, heightDeg);
    }

    private static PanelSun level(Sunlight told, SunPath sun, PanelSpec panel, double heightDeg)
            throws ScenarioException {
        double cosZenith = sun.cosZenith(0);
        double ghiWm2 = told.wm2();
        double mostWm2 = sun.extraterrestrialWm2(0) * cosZenith;
        if (ghiWm2 > mostWm2) {
            throw refused(String.format(
                    Locale.ROOT,
                    "at %s the sun stands %.0f° high and gives %.0f W/m² on the level above the air, less than the %.0f W/m²"
                            + " that were told. Check the time, and that the meter lay level; light in the plane of the"
                            + " panels is told without the word horizontal.",
                    told.spelledTime().orElseThrow(),
                    heightDeg,
                    mostWm2,
                    ghiWm2));
        }
        double dhiWm2 = DiffuseSplit.erbsDhiWm2(ghiWm2, cosZenith, sun.extraterrestrialWm2(0));
        return inPlane(sun, panel, ghiWm2, dhiWm2, (ghiWm2 - dhiWm2) / cosZenith, heightDeg, LEVEL_OFF);
    }

    private static PanelSun clearSky(SunPath sun, Site site, PanelSpec panel, double heightDeg) {
        double cosZenith = sun.cosZenith(0);
        double extraWm2 = sun.extraterrestrialWm2(0);
        double airMass =
                AirMass.absolute(AirMass.kastenYoung(90 - heightDeg), AirMass.standardPressurePa(site.elevationM()));
        double ghiWm2 = ClearSky.ineichenGhiWm2(cosZenith, airMass, CLEAR_TURBIDITY, site.elevationM(), extraWm2);
        double dniWm2 =
                ClearSky.ineichenDniWm2(ghiWm2, cosZenith, airMass, CLEAR_TURBIDITY, site.elevationM(), extraWm2);
        return inPlane(sun, panel, ghiWm2, ghiWm2 - dniWm2 * cosZenith, dniWm2, heightDeg, CLEAR_SKY_OFF);
    }

    private static PanelSun inPlane(
            SunPath sun,
            PanelSpec panel,
            double ghiWm2,
            double dhiWm2,
            double dniWm2,
            double heightDeg,
            double offShare) {
        Plane plane = Plane.of(panel.tiltDeg(), panel.azimuthDeg());
        double cosZenith = sun.cosZenith(0);
        double extraWm2 = sun.extraterrestrialWm2(0);
        double incidence = plane.incidenceCosine(cosZenith, sun.east(0), sun.north(0));
        double beamWm2 = PlaneOfArray.beamWm2(dniWm2, incidence);
        double restWm2 = PlaneOfArray.circumsolarWm2(dhiWm2, dniWm2, extraWm2, incidence, cosZenith)
                + PlaneOfArray.evenSkyWm2(dhiWm2, dniWm2, extraWm2, plane.skyView())
                + PlaneOfArray.groundWm2(ghiWm2, ALBEDO, plane.groundView());
        double planeWm2 = beamWm2 + restWm2;
        double workingWm2 = beamWm2 * IncidenceAngle.ashrae(incidence, GLASS_B0) + restWm2;
        return new PanelSun(planeWm2, planeWm2 > 0 ? workingWm2 / planeWm2 : 1, heightDeg, offShare);
    }

    private static ScenarioException refused(String message) {
        return new ScenarioException(List.of(new Problem("at", message)));
    }
}
