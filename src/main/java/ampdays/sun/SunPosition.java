package ampdays.sun;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Where the sun stands at one instant.
 *
 * @param zenithDeg angle from the vertical, without refraction
 * @param apparentZenithDeg the same as seen through the air
 * @param azimuthDeg clockwise from north
 */
public record SunPosition(double zenithDeg, double apparentZenithDeg, double azimuthDeg) {
    /** °C, mean air temperature where no better one is given; matters only within a few degrees of the horizon. */
    static final double MEAN_AIR_C = 12;

    /** The sun's place under the standard atmosphere of that elevation and 12 °C. */
    public static SunPosition at(Instant instant, double latitudeDeg, double longitudeDeg, double elevationM) {
        return at(instant, latitudeDeg, longitudeDeg, elevationM, AirMass.standardPressurePa(elevationM), MEAN_AIR_C);
    }

    /**
     * The sun's place by the full solar position algorithm (I. Reda and A. Andreas, 2008, NREL/TP-560-34302), years −2000
     * to 6000. Test: {@code SunPositionTest}.
     *
     * @param latitudeDeg north positive
     * @param longitudeDeg east positive
     * @param elevationM metres above the sea
     * @param pressurePa air pressure, enters refraction only
     * @param airC air temperature, enters refraction only
     */
    public static SunPosition at(
            Instant instant,
            double latitudeDeg,
            double longitudeDeg,
            double elevationM,
            double pressurePa,
            double airC) {
        ZonedDateTime time = instant.atZone(ZoneOffset.UTC);
        SolarPosition position = SPA.calculateSolarPosition(
                time, latitudeDeg, longitudeDeg, elevationM, DeltaT.estimate(time.toLocalDate()));
        double zenithDeg = position.zenithAngle();
        double liftDeg = Refraction.deg(90 - zenithDeg, pressurePa, airC);
        return new SunPosition(zenithDeg, zenithDeg - liftDeg, position.azimuth());
    }
}
