package ampdays.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlaneOfArrayTest {
    private record Sun(double cosZenith, double east, double north) {
        static Sun at(double zenithDeg, double azimuthDeg) {
            double zenith = Math.toRadians(zenithDeg);
            double azimuth = Math.toRadians(azimuthDeg);
            return new Sun(
                    Math.cos(zenith), Math.sin(zenith) * Math.sin(azimuth), Math.sin(zenith) * Math.cos(azimuth));
        }

        double incidenceOn(Plane plane) {
            return plane.incidenceCosine(cosZenith, east, north);
        }
    }

    private static double hayDavies(ReferenceTable.Row row, Plane plane, Sun sun) {
        double dhiWm2 = row.number("dhi_Wm2");
        double dniWm2 = row.number("dni_Wm2");
        double extraWm2 = row.number("dni_extra_Wm2");
        return PlaneOfArray.circumsolarWm2(dhiWm2, dniWm2, extraWm2, sun.incidenceOn(plane), sun.cosZenith())
                + PlaneOfArray.evenSkyWm2(dhiWm2, dniWm2, extraWm2, plane.skyView());
    }

    /**
     * Source: table poa_transposition, flat and tilted, isotropic and Hay-Davies. Angles have 10 digits; near the horizon
     * the circumsolar part divides by the cosine of the zenith, which takes 1e-5 W/m².
     */
    @Test
    void agreesWithTheTable() {
        for (var row : ReferenceTable.rows("poa_transposition")) {
            Sun sun = Sun.at(row.number("apparent_zenith_deg"), row.number("azimuth_deg"));
            Plane flat = Plane.of(0, 0);
            Plane tilted = Plane.of(row.number("tilt_deg"), row.number("surface_azimuth_deg"));
            double dniWm2 = row.number("dni_Wm2");
            double dhiWm2 = row.number("dhi_Wm2");
            double ghiWm2 = row.number("ghi_Wm2");
            double albedo = row.number("albedo");
            double[][] madeAndExpected = {
                {PlaneOfArray.beamWm2(dniWm2, sun.incidenceOn(flat)), row.number("flat_poa_beam")},
                {PlaneOfArray.isotropicSkyWm2(dhiWm2, flat.skyView()), row.number("flat_poa_sky_isotropic")},
                {hayDavies(row, flat, sun), row.number("flat_poa_sky_haydavies")},
                {PlaneOfArray.groundWm2(ghiWm2, albedo, flat.groundView()), row.number("flat_poa_ground")},
                {PlaneOfArray.beamWm2(dniWm2, sun.incidenceOn(tilted)), row.number("poa_beam")},
                {PlaneOfArray.groundWm2(ghiWm2, albedo, tilted.groundView()), row.number("poa_ground")},
                {PlaneOfArray.isotropicSkyWm2(dhiWm2, tilted.skyView()), row.number("poa_sky_isotropic")},
                {hayDavies(row, tilted, sun), row.number("poa_sky_haydavies")},
            };
            for (int i = 0; i < madeAndExpected.length; i++) {
                assertThat(madeAndExpected[i][0])
                        .as("value " + i + " of " + row)
                        .isCloseTo(madeAndExpected[i][1], within(1e-5));
            }
            assertThat(Math.toDegrees(Math.acos(sun.incidenceOn(tilted))))
                    .as(row.toString())
                    .isCloseTo(row.number("aoi_deg"), within(1e-5));
        }
    }

    /**
     * Source: expected values of the reference library's own tests: 32.2 N 111 W, 24 June 2014, tilt 40 degrees south.
     * Printed to 4 decimals.
     */
    @ParameterizedTest
    @CsvSource({
        "79.73860422, 316.1949056, 40.46149818, 82.85457044, 66.71410338, 35.728402, 27.1775, 0, 3.731058",
        "1042.48031487, 939.95469881, 118.45831879, 10.56413562, 144.76567754, 104.601328, 102.9949, 72.8130, 48.778813",
        "257.20751138, 646.22886049, 62.03376265, 72.41687122, 287.04104128, 54.777191, 33.1909, 5.2071, 12.035025"
    })
    void publishedValues(
            double ghiWm2,
            double dniWm2,
            double dhiWm2,
            double zenithDeg,
            double azimuthDeg,
            double isotropicWm2,
            double hayDaviesWm2,
            double circumsolarWm2,
            double groundSandWm2) {
        double extraWm2 = 1321.1655834833093;
        Plane plane = Plane.of(40, 180);
        Sun sun = Sun.at(zenithDeg, azimuthDeg);
        double aroundSunWm2 =
                PlaneOfArray.circumsolarWm2(dhiWm2, dniWm2, extraWm2, sun.incidenceOn(plane), sun.cosZenith());
        assertThat(PlaneOfArray.isotropicSkyWm2(dhiWm2, plane.skyView())).isCloseTo(isotropicWm2, within(1e-5));
        assertThat(aroundSunWm2).isCloseTo(circumsolarWm2, within(1e-4));
        assertThat(aroundSunWm2 + PlaneOfArray.evenSkyWm2(dhiWm2, dniWm2, extraWm2, plane.skyView()))
                .isCloseTo(hayDaviesWm2, within(1e-4));
        assertThat(PlaneOfArray.groundWm2(ghiWm2, 0.4, plane.groundView())).isCloseTo(groundSandWm2, within(1e-5));
    }

    /** Source: expected values of the reference library's own tests. */
    @Test
    void singlePublishedValues() {
        Plane tilted = Plane.of(40, 180);
        assertThat(PlaneOfArray.isotropicSkyWm2(100, tilted.skyView())).isCloseTo(88.30222, within(1e-5));
        assertThat(PlaneOfArray.groundWm2(900, 0.25, tilted.groundView())).isCloseTo(26.32, within(0.005));
        assertThat(Math.toDegrees(Math.acos(Sun.at(30, 60).incidenceOn(Plane.of(90, 0)))))
                .isCloseTo(75.5224878, within(1e-7));
        assertThat(Sun.at(30, 180).incidenceOn(Plane.of(30, 180))).isCloseTo(1, within(1e-12));
    }

    /** Source: geometry; the mean over 3600 headings of the beam on an upright face, by direct summation. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 20, 45, 70, 89.5})
    void meanOverAllHeadings(double zenithDeg) {
        Sun sun = Sun.at(zenithDeg, 123);
        double sum = 0;
        for (int i = 0; i < 3600; i++) {
            sum += PlaneOfArray.beamWm2(1, sun.incidenceOn(Plane.of(90, i / 10.0)));
        }
        assertThat(PlaneOfArray.meanUprightCosine(sun.cosZenith())).isCloseTo(sum / 3600, within(1e-6));
    }
}
