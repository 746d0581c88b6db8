package ampdays.sim;

import ampdays.cabin.CabinPhysics;
import ampdays.cabin.CabinSpec;
import ampdays.cabin.Covers;
import ampdays.cabin.Faces;
import ampdays.sun.PlaneOfArray;
import ampdays.sun.SunPath;
import ampdays.trip.People;
import ampdays.trip.Shade;
import ampdays.trip.Stretch;
import ampdays.weather.MinuteWeather;

/**
 * What sun and sky bring into the cabin in each step, through opaque faces and through glass. Where the heading is not
 * known, and while driving, upright faces see the mean over all headings.
 */
final class CabinPlan {
    /** Light thrown back by open ground; between sand 0.40 and asphalt 0.12. */
    static final double ALBEDO = 0.20;

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
        Heading heading = new Heading();
        for (int i = 0; i < clock.steps(); i++) {
            Stretch now = clock.stretch(i);
            Shade shade = now.shade();
            double filmWm2K = CabinPhysics.filmWm2K(AirSpeed.alongSkinMs(now.vehicle(), weather.windMs(i)));
            double skyLossWm2 = EMITTANCE * CabinPhysics.SKY_LOSS_WM2 * shade.diffuseShare();
            double roofWm2 = 0;
            double wallWm2 = 0;
            double glassWm2 = 0;
            if (weather.ghiWm2(i) > 0) {
                double cosZenith = sun.cosZenith(i);
                double dniWm2 = weather.dniWm2(i);
                double dhiWm2 = weather.dhiWm2(i);
                double i0Wm2 = sun.extraterrestrialWm2(i);
                double aroundSunWm2 = PlaneOfArray.circumsolarWm2(dhiWm2, dniWm2, i0Wm2, cosZenith, cosZenith);
                double evenWm2 = (dhiWm2 - aroundSunWm2) * shade.diffuseShare();
                double beamWm2 = PlaneOfArray.beamWm2(dniWm2, cosZenith) + aroundSunWm2;
                roofWm2 = beamWm2 * shade.beamShare() + evenWm2;
                double wallCosine = PlaneOfArray.meanUprightCosine(cosZenith);
                double glassCosine = wallCosine;
                heading.turn(headingDeg(now, cabin.faces()));
                if (heading.known() && cosZenith > 0) {
                    double forward = heading.forward(sun.east(i), sun.north(i));
                    double right = heading.right(sun.east(i), sun.north(i));
                    wallCosine = cabin.faces().wallCosine(forward, right);
                    glassCosine = cabin.faces().glassCosine(forward, right);
                }
                double perCosineWm2 = PlaneOfArray.beamWm2(dniWm2, 1)
                        + PlaneOfArray.circumsolarWm2(dhiWm2, dniWm2, i0Wm2, 1, cosZenith);
                double beamPerCosineWm2 = perCosineWm2 * shade.beamShare();
                double restWm2 = evenWm2 * UPRIGHT_VIEW + PlaneOfArray.groundWm2(roofWm2, ALBEDO, UPRIGHT_VIEW);
                wallWm2 = beamPerCosineWm2 * wallCosine + restWm2;
                glassWm2 = beamPerCosineWm2 * glassCosine + restWm2;
            }
            double openRoofK = CabinPhysics.solAirExcessK(cabin.solarAbsorptance(), roofWm2, skyLossWm2, filmWm2K);
            double wallK = CabinPhysics.solAirExcessK(cabin.solarAbsorptance(), wallWm2, 0, filmWm2K);
            double underPanelsK = roof == null ? 0 : roof.cellC(i) - weather.airC(i);
            plan.faceGainW[i] = openRoofWK * openRoofK + coveredWK * underPanelsK + wallWK * wallK;
            double passes = covered(now, cabin.covers()) ? cabin.covers().passShare() : 1;
            plan.glassGainW[i] = glassM2 * passes * glassWm2;
        }
        return plan;
    }

    /** Whether the windows are covered: as the timetable says, else by the design's rule. */
    static boolean covered(Stretch now, Covers covers) {
        return switch (now.windows()) {
            case COVERED -> true;
            case UNCOVERED -> false;
            case BY_RULE ->
                switch (covers.used()) {
                    case PARKED -> !now.vehicle().moves();
                    case ASLEEP_AND_AWAY ->
                        !now.vehicle().moves() && (now.people() == People.ASLEEP || now.people() == People.AWAY);
                    case ALWAYS -> true;
                };
        };
    }

    /** As the timetable says, else as the design says; NaN while driving. */
    private static double headingDeg(Stretch now, Faces faces) {
        if (now.vehicle().moves()) {
            return Double.NaN;
        }
        return Double.isNaN(now.headingDeg()) ? faces.headingDeg() : now.headingDeg();
    }

    /** The unit vector of a heading, worked out anew only when it changes. */
    private static final class Heading {
        private double deg = Double.NaN;
        private double toNorth;
        private double toEast;

        void turn(double headingDeg) {
            if (headingDeg != deg) {
                deg = headingDeg;
                toNorth = Math.cos(Math.toRadians(headingDeg));
                toEast = Math.sin(Math.toRadians(headingDeg));
            }
        }

        boolean known() {
            return !Double.isNaN(deg);
        }

        double forward(double sunEast, double sunNorth) {
            return sunNorth * toNorth + sunEast * toEast;
        }

        double right(double sunEast, double sunNorth) {
            return sunEast * toNorth - sunNorth * toEast;
        }
    }

    double faceGainW(int step) {
        return faceGainW[step];
    }

    double glassGainW(int step) {
        return glassGainW[step];
    }
}
