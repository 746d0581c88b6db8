package ampdays.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClearSkyTest {
    private static double cos(double deg) {
        return Math.cos(Math.toRadians(deg));
    }

    /** Source: table clearsky_haurwitz; zenith given to 4 decimals is the exact input, output has 10 digits. */
    @Test
    void haurwitzAgreesWithTheTable() {
        for (var row : ReferenceTable.rows("clearsky_haurwitz")) {
            assertThat(ClearSky.haurwitzGhiWm2(cos(row.number("apparent_zenith_deg"))))
                    .as(row.toString())
                    .isCloseTo(row.number("ghi_Wm2"), within(1e-6));
        }
    }

    /** Source: expected values of the reference library's own tests, five decimals. */
    @ParameterizedTest
    @CsvSource({"5, 48.62987", "10, 135.74175", "30, 487.89413", "50, 778.76669", "90, 1035.09203"})
    void haurwitzByHeightOfTheSun(double elevationDeg, double expectedWm2) {
        assertThat(ClearSky.haurwitzGhiWm2(cos(90 - elevationDeg))).isCloseTo(expectedWm2, within(1e-5));
    }

    /** Source: table clearsky_ineichen; air mass has 10 digits, hence 1e-6 W/m² in 1000. */
    @Test
    void ineichenAgreesWithTheTable() {
        for (var row : ReferenceTable.rows("clearsky_ineichen")) {
            double cosZenith = cos(row.number("apparent_zenith_deg"));
            double airMass = row.number("airmass_absolute");
            double turbidity = row.number("linke_turbidity");
            double elevationM = row.number("altitude_m");
            double extraWm2 = row.number("dni_extra_Wm2");
            double ghiWm2 = ClearSky.ineichenGhiWm2(cosZenith, airMass, turbidity, elevationM, extraWm2);
            double dniWm2 = ClearSky.ineichenDniWm2(ghiWm2, cosZenith, airMass, turbidity, elevationM, extraWm2);
            assertThat(ghiWm2).as(row.toString()).isCloseTo(row.number("ghi_Wm2"), within(1e-5));
            assertThat(dniWm2).as(row.toString()).isCloseTo(row.number("dni_Wm2"), within(1e-5));
            assertThat(ghiWm2 - dniWm2 * cosZenith).as(row.toString()).isCloseTo(row.number("dhi_Wm2"), within(1e-5));
        }
    }

    /**
     * Source: expected values of the reference library's own tests. Zenith and air mass are printed to 8 decimals, the
     * results to 5 or more; the last three rows (zenith 0) to 5.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 1, 3, 1364, 0, 1038.159219, 942.2081860, 110.2652929",
        "10, 1, 3, 1364, 2000, 1134.24312, 994.95378, 154.40493",
        "10, 1, 3, 1370, 0, 1042.72590, 946.35280, 110.75033",
        "82.85457044, 6.97935524, 3, 1364, 0, 65.49427, 321.16092, 25.54562",
        "46.0467599, 1.32355476, 3, 1364, 0, 704.69681, 888.90147, 87.73601",
        "34.86074109, 1.12008114, 3, 1364, 0, 853.02066, 922.06125, 96.42909",
        "72.41687122, 3.01614096, 3, 1364, 0, 251.99428, 655.44925, 53.99013",
    })
    void ineichenPublishedValues(
            double zenithDeg,
            double airMass,
            double turbidity,
            double extraWm2,
            double elevationM,
            double ghiExpectedWm2,
            double dniExpectedWm2,
            double dhiExpectedWm2) {
        double cosZenith = cos(zenithDeg);
        double ghiWm2 = ClearSky.ineichenGhiWm2(cosZenith, airMass, turbidity, elevationM, extraWm2);
        double dniWm2 = ClearSky.ineichenDniWm2(ghiWm2, cosZenith, airMass, turbidity, elevationM, extraWm2);
        assertThat(ghiWm2).isCloseTo(ghiExpectedWm2, within(2e-5));
        assertThat(dniWm2).isCloseTo(dniExpectedWm2, within(2e-5));
        assertThat(ghiWm2 - dniWm2 * cosZenith).isCloseTo(dhiExpectedWm2, within(2e-5));
    }

    /** Source: expected values of the reference library's own tests, sun overhead, turbidity 2, 3, 4. */
    @ParameterizedTest
    @CsvSource({"2, 1095.77075, 1014.38807", "3, 1054.17450, 942.20819", "4, 1014.15727, 861.11344"})
    void ineichenByTurbidity(double turbidity, double ghiExpectedWm2, double dniExpectedWm2) {
        double ghiWm2 = ClearSky.ineichenGhiWm2(1, 1, turbidity, 0, 1364);
        assertThat(ghiWm2).isCloseTo(ghiExpectedWm2, within(2e-5));
        assertThat(ClearSky.ineichenDniWm2(ghiWm2, 1, 1, turbidity, 0, 1364)).isCloseTo(dniExpectedWm2, within(2e-5));
    }

    /**
     * Source: table daily_clear_sky_insolation, energies of whole days by position, air mass, clear sky and Hay-Davies
     * together. 0.1 % leaves room for the cheap sun position and the interpolation, and for the calendar day that the
     * extraterrestrial value belongs to (UTC here, the day of the first minute there).
     */
    @Test
    void wholeDaysAgreeWithTheTable() {
        for (var row : ReferenceTable.rows("daily_clear_sky_insolation")) {
            double elevationM = row.number("altitude_m");
            double latitudeDeg = row.number("latitude_deg");
            double turbidity = row.number("linke_turbidity");
            double pressurePa = AirMass.standardPressurePa(elevationM);
            long start = Instant.parse(row.text("first_minute_utc")).getEpochSecond() - 30;
            SunPath path = SunPath.of(latitudeDeg, row.number("longitude_deg"), elevationM, start, 60, 1440);
            Plane plane = Plane.of(30, latitudeDeg >= 0 ? 180 : 0);
            double[] sumsWm2 = new double[5];
            for (int i = 0; i < path.steps(); i++) {
                double cosZenith = path.cosZenith(i);
                if (cosZenith <= 0) {
                    continue;
                }
                double extraWm2 = path.extraterrestrialWm2(i);
                double airMass =
                        AirMass.absolute(AirMass.kastenYoung(Math.toDegrees(Math.acos(cosZenith))), pressurePa);
                double ghiWm2 = ClearSky.ineichenGhiWm2(cosZenith, airMass, turbidity, elevationM, extraWm2);
                double dniWm2 = ClearSky.ineichenDniWm2(ghiWm2, cosZenith, airMass, turbidity, elevationM, extraWm2);
                double dhiWm2 = ghiWm2 - dniWm2 * cosZenith;
                double incidence = plane.incidenceCosine(cosZenith, path.east(i), path.north(i));
                sumsWm2[0] += ghiWm2;
                sumsWm2[1] += dniWm2;
                sumsWm2[2] += dhiWm2;
                sumsWm2[3] += ClearSky.haurwitzGhiWm2(cosZenith);
                sumsWm2[4] += PlaneOfArray.beamWm2(dniWm2, incidence)
                        + PlaneOfArray.circumsolarWm2(dhiWm2, dniWm2, extraWm2, incidence, cosZenith)
                        + PlaneOfArray.evenSkyWm2(dhiWm2, dniWm2, extraWm2, plane.skyView())
                        + PlaneOfArray.groundWm2(ghiWm2, 0.2, plane.groundView());
            }
            String[] columns = {
                "ghi_ineichen_kWhm2",
                "dni_ineichen_kWhm2",
                "dhi_ineichen_kWhm2",
                "ghi_haurwitz_kWhm2",
                "poa_tilt30_equator_facing_haydavies_kWhm2"
            };
            for (int c = 0; c < columns.length; c++) {
                double expected = row.number(columns[c]);
                assertThat(sumsWm2[c] / 60_000)
                        .as(columns[c] + " of " + row)
                        .isCloseTo(expected, within(0.001 * expected));
            }
        }
    }
}
