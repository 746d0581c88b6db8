package ampdays.pv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import ampdays.sun.AirMass;
import ampdays.sun.ClearSky;
import ampdays.sun.Plane;
import ampdays.sun.PlaneOfArray;
import ampdays.sun.SunPath;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** From time and place to the watts of a panel, every link in one chain. */
class ClearSkyToDcTest {
    /**
     * Source: table chain_clear_sky_to_dc. 0.5 % as its heading says; near the horizon a few watts per square metre, which
     * on this 400 W panel are 1 W, because there 0.02 degrees of the sun's height are several per cent of the beam.
     */
    @Test
    void agreesWithTheTable() {
        for (var row : ReferenceTable.rows("chain_clear_sky_to_dc")) {
            double elevationM = row.number("altitude_m");
            double turbidity = row.number("linke_turbidity");
            long instant = Instant.parse(row.text("time_utc")).getEpochSecond();
            SunPath path = SunPath.of(
                    row.number("latitude_deg"), row.number("longitude_deg"), elevationM, instant - 150, 60, 3);
            int now = 2;
            double cosZenith = path.cosZenith(now);
            if (cosZenith <= 0) {
                continue;
            }
            double extraWm2 = path.extraterrestrialWm2(now);
            double airMass = AirMass.absolute(
                    AirMass.kastenYoung(Math.toDegrees(Math.acos(cosZenith))), AirMass.standardPressurePa(elevationM));
            double ghiWm2 = ClearSky.ineichenGhiWm2(cosZenith, airMass, turbidity, elevationM, extraWm2);
            double dniWm2 = ClearSky.ineichenDniWm2(ghiWm2, cosZenith, airMass, turbidity, elevationM, extraWm2);
            double dhiWm2 = ghiWm2 - dniWm2 * cosZenith;
            Plane plane = Plane.of(row.number("tilt_deg"), row.number("surface_azimuth_deg"));
            double incidence = plane.incidenceCosine(cosZenith, path.east(now), path.north(now));
            double beamWm2 = PlaneOfArray.beamWm2(dniWm2, incidence);
            double skyAndGroundWm2 = PlaneOfArray.circumsolarWm2(dhiWm2, dniWm2, extraWm2, incidence, cosZenith)
                    + PlaneOfArray.evenSkyWm2(dhiWm2, dniWm2, extraWm2, plane.skyView())
                    + PlaneOfArray.groundWm2(ghiWm2, 0.2, plane.groundView());
            double effectiveWm2 = beamWm2 * IncidenceAngle.ashrae(incidence, 0.05) + skyAndGroundWm2;
            double cellC = CellTemperature.sandiaC(
                    beamWm2 + skyAndGroundWm2, row.number("temp_air_C"), row.number("wind_ms"), Mounting.FEET_WITH_GAP);
            double expectedW = row.number("pdc_400W_W");
            double nearHorizonW = row.number("apparent_zenith_deg") > 80 ? 1 : 0.1;
            assertThat(PvModule.dcW(effectiveWm2, cellC, 400, -0.0035, 0))
                    .as(row.toString())
                    .isCloseTo(expectedW, within(0.005 * expectedW + nearHorizonW));
        }
    }
}
