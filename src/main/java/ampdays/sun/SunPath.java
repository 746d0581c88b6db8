package ampdays.sun;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.stream.IntStream;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.Grena3;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * The sun's way over one place, in equal steps: made once and shared by everything that looks up. Each value holds for the
 * middle of its step. The direction is kept as its three components (up, east, north), so that a plane needs three
 * multiplications and no angle.
 */
public final class SunPath {
    private static final int NODE_SECONDS = 300;
    private static final int DAY_SECONDS = 86_400;
    private static final int CHEAP_FROM_YEAR = 2010;
    private static final int CHEAP_UNTIL_YEAR = 2110;
    /** Elevation moves the sun by less than 1e-6 degrees. */
    private static final double SEA_LEVEL_M = 0;

    private final double[] cosZenith;
    private final double[] east;
    private final double[] north;
    private final double[] extraterrestrialWm2;

    private SunPath(int steps) {
        cosZenith = new double[steps];
        east = new double[steps];
        north = new double[steps];
        extraterrestrialWm2 = new double[steps];
    }

    /** The path under the standard atmosphere of that elevation and 12 °C. */
    public static SunPath of(
            double latitudeDeg,
            double longitudeDeg,
            double elevationM,
            long startEpochSecond,
            int stepSeconds,
            int steps) {
        double pressurePa = AirMass.standardPressurePa(elevationM);
        return of(latitudeDeg, longitudeDeg, pressurePa, SunPosition.MEAN_AIR_C, startEpochSecond, stepSeconds, steps);
    }

    /**
     * The path for given refraction. Every five minutes the sun is placed by a cheap algorithm (R. Grena, 2012, Five new
     * algorithms for the computation of sun position from 2010 to 2110, Solar Energy 86, 1323, algorithm 3; outside those
     * years by the full one, which takes ten times as long) and lifted by refraction; between these, the direction is
     * interpolated linearly and brought back to length 1, which costs at most 0.002 degrees (0.006 within a degree of the
     * horizon). Test: {@code SunPathTest}.
     *
     * @param latitudeDeg north positive, −90 to 90
     * @param longitudeDeg east positive, −180 to 180
     * @param pressurePa air pressure, enters refraction only
     * @param airC air temperature, enters refraction only
     * @param startEpochSecond beginning of the first step
     * @param stepSeconds length of a step, 1 to 86,400
     * @param steps number of steps
     */
    static SunPath of(
            double latitudeDeg,
            double longitudeDeg,
            double pressurePa,
            double airC,
            long startEpochSecond,
            int stepSeconds,
            int steps) {
        if (!(latitudeDeg >= -90 && latitudeDeg <= 90 && longitudeDeg >= -180 && longitudeDeg <= 180)) {
            throw new IllegalArgumentException("Latitude is -90 to 90 and longitude -180 to 180 degrees, not "
                    + latitudeDeg + " and " + longitudeDeg + ".");
        }
        if (stepSeconds < 1 || stepSeconds > DAY_SECONDS || steps < 0) {
            throw new IllegalArgumentException(
                    "A sun path has steps of 1 second to 1 day, not " + steps + " steps of " + stepSeconds + " s.");
        }
        SunPath path = new SunPath(steps);
        int nodes = Math.toIntExact((long) steps * stepSeconds / NODE_SECONDS + 2);
        double[][] unit = nodes(latitudeDeg, longitudeDeg, pressurePa, airC, startEpochSecond, nodes);
        path.interpolate(unit, stepSeconds);
        path.fillExtraterrestrial(startEpochSecond, stepSeconds);
        return path;
    }

    private static double[][] nodes(
            double latitudeDeg, double longitudeDeg, double pressurePa, double airC, long startEpochSecond, int nodes) {
        double[][] unit = new double[3][nodes];
        LocalDate firstDay = LocalDate.ofInstant(Instant.ofEpochSecond(startEpochSecond), ZoneOffset.UTC);
        double deltaT = DeltaT.estimate(firstDay);
        boolean cheap = firstDay.getYear() >= CHEAP_FROM_YEAR && firstDay.getYear() < CHEAP_UNTIL_YEAR;
        for (int n = 0; n < nodes; n++) {
            Instant instant = Instant.ofEpochSecond(startEpochSecond + (long) n * NODE_SECONDS);
            ZonedDateTime time = ZonedDateTime.ofInstant(instant, ZoneOffset.UTC);
            SolarPosition sun = cheap
                    ? Grena3.calculateSolarPosition(time, latitudeDeg, longitudeDeg, deltaT)
                    : SPA.calculateSolarPosition(time, latitudeDeg, longitudeDeg, SEA_LEVEL_M, deltaT);
            double elevationDeg = 90 - sun.zenithAngle();
            double elevation = Math.toRadians(elevationDeg + Refraction.deg(elevationDeg, pressurePa, airC));
            double azimuth = Math.toRadians(sun.azimuth());
            double level = Math.cos(elevation);
            unit[0][n] = Math.sin(elevation);
            unit[1][n] = level * Math.sin(azimuth);
            unit[2][n] = level * Math.cos(azimuth);
        }
        return unit;
    }

    private void interpolate(double[][] unit, int stepSeconds) {
        double[] up = unit[0];
        double[] toEast = unit[1];
        double[] toNorth = unit[2];
        for (int i = 0; i < cosZenith.length; i++) {
            double at = (i + 0.5) * stepSeconds / NODE_SECONDS;
            int n = (int) at;
            double f = at - n;
            double u = up[n] + f * (up[n + 1] - up[n]);
            double e = toEast[n] + f * (toEast[n + 1] - toEast[n]);
            double o = toNorth[n] + f * (toNorth[n + 1] - toNorth[n]);
            double scale = 1 / Math.sqrt(u * u + e * e + o * o);
            cosZenith[i] = u * scale;
            east[i] = e * scale;
            north[i] = o * scale;
        }
    }

    private void fillExtraterrestrial(long startEpochSecond, int stepSeconds) {
        long day = Long.MIN_VALUE;
        double valueWm2 = 0;
        for (int i = 0; i < extraterrestrialWm2.length; i++) {
            long dayNow = Math.floorDiv(startEpochSecond + (long) i * stepSeconds + stepSeconds / 2, DAY_SECONDS);
            if (dayNow != day) {
                day = dayNow;
                valueWm2 = Extraterrestrial.normalWm2(LocalDate.ofEpochDay(day).getDayOfYear());
            }
            extraterrestrialWm2[i] = valueWm2;
        }
    }

    public int steps() {
        return cosZenith.length;
    }

    /** Cosine of the refracted zenith angle: the direction's upward component. Negative below the horizon. */
    public double cosZenith(int step) {
        return cosZenith[step];
    }

    /** The direction's component towards east, {@code sin z sin az}. */
    public double east(int step) {
        return east[step];
    }

    /** The direction's component towards north, {@code sin z cos az}. */
    public double north(int step) {
        return north[step];
    }

    /** Azimuth clockwise from north, 0 to 360 degrees. */
    public double azimuthDeg(int step) {
        double deg = Math.toDegrees(Math.atan2(east[step], north[step]));
        return deg < 0 ? deg + 360 : deg;
    }

    /** Normal irradiance outside the atmosphere. */
    public double extraterrestrialWm2(int step) {
        return extraterrestrialWm2[step];
    }

    /** A copy of all cosines of the refracted zenith angle. */
    public double[] cosZenith() {
        return cosZenith.clone();
    }

    /** A copy of all components towards east. */
    public double[] east() {
        return east.clone();
    }

    /** A copy of all components towards north. */
    public double[] north() {
        return north.clone();
    }

    /** A copy of all normal irradiances outside the atmosphere. */
    public double[] extraterrestrialWm2() {
        return extraterrestrialWm2.clone();
    }

    /**
     * Mean height of the sun in groups of consecutive steps, for data that hold for longer intervals.
     *
     * @param stepsPerGroup divides {@link #steps()}
     * @return mean of {@code max(cos z, 0)} in each group
     */
    public double[] meanCosZenith(int stepsPerGroup) {
        return IntStream.range(0, steps() / stepsPerGroup)
                .mapToDouble(group -> {
                    double sum = 0;
                    for (int i = group * stepsPerGroup; i < (group + 1) * stepsPerGroup; i++) {
                        sum += cosZenith[i] > 0 ? cosZenith[i] : 0;
                    }
                    return sum / stepsPerGroup;
                })
                .toArray();
    }
}
