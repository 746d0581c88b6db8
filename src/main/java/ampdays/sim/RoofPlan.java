package ampdays.sim;

import ampdays.pv.CellTemperature;
import ampdays.pv.IncidenceAngle;
import ampdays.pv.PvModule;
import ampdays.pv.SolarSpec;
import ampdays.sun.PlaneOfArray;
import ampdays.sun.SunPath;
import ampdays.trip.Shade;
import ampdays.trip.Vehicle;
import ampdays.weather.MinuteWeather;

/**
 * What one rated watt of flat panel on the roof could give in each step, and how warm its cells are. It does not depend
 * on how many watts there are, so it is shared by options that differ in that.
 */
final class RoofPlan {
    /** Glass front (ASHRAE incidence model). */
    private static final double INCIDENCE_B0 = 0.05;

    private static final double LEAST_DAYLIGHT_WM2 = 0.01;

    private final double[] possibleWPerW;
    private final double[] cellC;

    private RoofPlan(int steps) {
        possibleWPerW = new double[steps];
        cellC = new double[steps];
    }

    static RoofPlan of(SkyPlan sky, TripClock clock, SolarSpec solar) {
        RoofPlan plan = new RoofPlan(clock.steps());
        MinuteWeather weather = sky.weather();
        SunPath sun = sky.sun();
        double kept = (1 - solar.dirtShare()) * (1 - solar.mismatchShare()) * (1 - solar.wiringShare());
        for (int i = 0; i < clock.steps(); i++) {
            double ghiWm2 = weather.ghiWm2(i);
            if (ghiWm2 < LEAST_DAYLIGHT_WM2) {
                plan.cellC[i] = weather.airC(i);
                continue;
            }
            Shade shade = clock.shade(i);
            Vehicle vehicle = clock.vehicle(i);
            double cosZenith = sun.cosZenith(i);
            double dniWm2 = weather.dniWm2(i);
            double dhiWm2 = weather.dhiWm2(i);
            double aroundSunWm2 =
                    PlaneOfArray.circumsolarWm2(dhiWm2, dniWm2, sun.extraterrestrialWm2(i), cosZenith, cosZenith);
            double evenWm2 = dhiWm2 - aroundSunWm2;
            double beamWm2 = PlaneOfArray.beamWm2(dniWm2, cosZenith) * shade.beamShare();
            double skyWm2 = aroundSunWm2 * shade.beamShare() + evenWm2 * shade.diffuseShare();
            double cellC = CellTemperature.sandiaC(
                    beamWm2 + skyWm2,
                    weather.airC(i),
                    AirSpeed.overPanelsMs(vehicle, weather.windMs(i)),
                    solar.mounting());
            double effectiveWm2 = beamWm2 * IncidenceAngle.ashrae(cosZenith, INCIDENCE_B0) + skyWm2;
            plan.cellC[i] = cellC;
            plan.possibleWPerW[i] =
                    PvModule.dcW(effectiveWm2, cellC, 1, solar.gammaPerK()) * kept * solar.trackingShare();
        }
        return plan;
    }

    double possibleWPerW(int step) {
        return possibleWPerW[step];
    }

    double cellC(int step) {
        return cellC[step];
    }
}
