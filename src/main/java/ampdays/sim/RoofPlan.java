package ampdays.sim;

import ampdays.pv.CellTemperature;
import ampdays.pv.PvModule;
import ampdays.pv.SolarSpec;
import ampdays.trip.Vehicle;
import ampdays.weather.MinuteWeather;

/**
 * What one rated watt of panel on the roof could give in each step, and how warm its cells are. It does not depend
 * on how many watts there are, so it is shared by options that differ in that.
 */
final class RoofPlan {
    private static final double LEAST_DAYLIGHT_WM2 = 0.01;

    private final double[] possibleWPerW;
    private final double[] cellC;

    private RoofPlan(int steps) {
        possibleWPerW = new double[steps];
        cellC = new double[steps];
    }

    static RoofPlan of(SkyPlan sky, TripClock clock, SolarSpec solar) {
        RoofPlan plan = new RoofPlan(clock.steps());
        double[] dirt = solar.dirt().ofDays(sky.dailyRainMm());
        double kept = (1 - solar.mismatchShare())
                * (1 - solar.wiringShare())
                * solar.controller().trackingShare();
        for (int day = 0; day < dirt.length; day++) {
            plan.layOut(sky, clock, solar, day, kept * (1 - dirt[day]));
        }
        return plan;
    }

    private void layOut(SkyPlan sky, TripClock clock, SolarSpec solar, int day, double kept) {
        MinuteWeather weather = sky.weather();
        PanelLight light = new PanelLight(sky, solar);
        double gammaPerK = solar.panel().gammaPerK();
        double lowLight = solar.panel().lowLightShare();
        int end = clock.firstStepOfDay(day + 1);
        for (int i = clock.firstStepOfDay(day); i < end; i++) {
            if (weather.ghiWm2(i) < LEAST_DAYLIGHT_WM2) {
                cellC[i] = weather.airC(i);
                continue;
            }
            Vehicle vehicle = clock.vehicle(i);
            light.fall(i, clock.shade(i), vehicle);
            cellC[i] = CellTemperature.sandiaC(
                    light.totalWm2(),
                    weather.airC(i),
                    AirSpeed.overPanelsMs(vehicle, weather.windMs(i)),
                    solar.panel().mounting());
            possibleWPerW[i] =
                    PvModule.dcW(light.effectiveWm2(), cellC[i], 1, gammaPerK, lowLight) * light.keptShare() * kept;
        }
    }

    double possibleWPerW(int step) {
        return possibleWPerW[step];
    }

    double cellC(int step) {
        return cellC[step];
    }
}
