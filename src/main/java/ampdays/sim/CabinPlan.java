package ampdays.sim;

import ampdays.cabin.CabinPhysics;
import ampdays.cabin.CabinSpec;
import ampdays.sun.PlaneOfArray;
import ampdays.sun.SunPath;
import ampdays.trip.Shade;
import ampdays.weather.MinuteWeather;

/**
 * What sun and sky bring into the cabin in each step, through opaque faces and through glass. The vehicle's heading is
 * not known: upright faces see the mean over all headings.
 */
final class CabinPlan {
    /** Light thrown back by open ground; between sand 0.40 and asphalt 0.12. */
    private static final double ALBEDO = 0.20;

    /** Long-wave emittance of paint; from memory. */
    private static final double EMITTANCE = 0.9;

    private static final double UPRIGHT_VIEW = 0.5;

    private final double[] faceGainW;
    private final double[] glassGainW;

    private CabinPlan(int steps) {
        faceGainW = new double[steps];
        glassGainW = new double[steps];
    }

    /**
     * @param roof temperatures of the panels, or null without panels
     * @param panelM2 roof that they cover, m²
     */
    static CabinPlan of(SkyPlan sky, TripClock clock, CabinSpec cabin, RoofPlan roof, double panelM2) {
        CabinPlan plan = new CabinPlan(clock.steps());
        MinuteWeather weather = sky.weather();
        SunPath sun = sky.sun();
        double uWm2K = CabinPhysics.faceWm2K(cabin);
        double coveredM2 = panelM2 < cabin.roofM2() ? panelM2 : cabin.roofM2();
        double openRoofWK = uWm2K * (cabin.roofM2() - coveredM2);
        double coveredWK = uWm2K * coveredM2 * cabin.panelHeatShare();
        double wallWK = uWm2K * cabin.wallM2();
        double glassM2 = cabin.glassM2() * cabin.glassSolarShare();
        for (int i = 0; i < clock.steps(); i++) {
            Shade shade = clock.shade(i);
            double filmWm2K = CabinPhysics.filmWm2K(AirSpeed.alongSkinMs(clock.vehicle(i), weather.windMs(i)));
            double skyLossWm2 = EMITTANCE * CabinPhysics.SKY_LOSS_WM2 * shade.diffuseShare();
            double roofWm2 = 0;
            double uprightWm2 = 0;
            if (weather.ghiWm2(i) > 0) {
                double cosZenith = sun.cosZenith(i);
                double dniWm2 = weather.dniWm2(i);
                double dhiWm2 = weather.dhiWm2(i);
                double i0Wm2 = sun.extraterrestrialWm2(i);
                double aroundSunWm2 = PlaneOfArray.circumsolarWm2(dhiWm2, dniWm2, i0Wm2, cosZenith, cosZenith);
                double evenWm2 = (dhiWm2 - aroundSunWm2) * shade.diffuseShare();
                double beamWm2 = PlaneOfArray.beamWm2(dniWm2, cosZenith) + aroundSunWm2;
                roofWm2 = beamWm2 * shade.beamShare() + evenWm2;
                double uprightCosine = PlaneOfArray.meanUprightCosine(cosZenith);
                double uprightBeamWm2 = PlaneOfArray.beamWm2(dniWm2, uprightCosine)
                        + PlaneOfArray.circumsolarWm2(dhiWm2, dniWm2, i0Wm2, uprightCosine, cosZenith);
                uprightWm2 = uprightBeamWm2 * shade.beamShare()
                        + evenWm2 * UPRIGHT_VIEW
                        + PlaneOfArray.groundWm2(roofWm2, ALBEDO, UPRIGHT_VIEW);
            }
            double openRoofK = CabinPhysics.solAirExcessK(cabin.solarAbsorptance(), roofWm2, skyLossWm2, filmWm2K);
            double wallK = CabinPhysics.solAirExcessK(cabin.solarAbsorptance(), uprightWm2, 0, filmWm2K);
            double underPanelsK = roof == null ? 0 : roof.cellC(i) - weather.airC(i);
            plan.faceGainW[i] = openRoofWK * openRoofK + coveredWK * underPanelsK + wallWK * wallK;
            plan.glassGainW[i] = glassM2 * uprightWm2;
        }
        return plan;
    }

    double faceGainW(int step) {
        return faceGainW[step];
    }

    double glassGainW(int step) {
        return glassGainW[step];
    }
}
