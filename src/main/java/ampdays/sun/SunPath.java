package ampdays.sun;

import java.time.Instant;
import java.time.LocalDate;
import java.util.stream.IntStream;

/**
 * The sun's way over one place, in equal steps: made once and shared by everything that looks up. Each value holds for the
 * middle of its step. The direction is kept as its three components (up, east, north), so that a plane needs three
 * multiplications and no angle.
 */
public final class SunPath {
    private static final int NODE_SECONDS = 3 * 3600;
    private static final int DAY_SECONDS = 86_400;
    /** Elevation moves the sun by less than 1e-6 degrees. */
    private static final double SEA_LEVEL_M = 0;
    /** Sine of −2 degrees: further down, refraction cannot bring the sun above the horizon. */
    private static final double LOWEST_REFRACTED_UP = -0.0349;

    private static final double LIFTS_PER_UNIT = 1024;

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
     * The path for given refraction. Every three hours the sun is placed by the full algorithm of {@link SunPosition};
     * between these it turns evenly about the pole while its declination changes evenly, which costs less than 0.001
     * degrees; each step is then lifted by refraction. Test: {@code SunPathTest}.
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
        path.fillDirections(latitudeDeg, longitudeDeg, startEpochSecond, stepSeconds);
        path.refract(pressurePa, airC);
        path.fillExtraterrestrial(startEpochSecond, stepSeconds);
        return path;
    }

    /** True directions: the sun turns about the pole, evenly between nodes, at a declination that changes evenly. */
    private void fillDirections(double latitudeDeg, double longitudeDeg, long startEpochSecond, int stepSeconds) {
        double sinLatitude = Math.sin(Math.toRadians(latitudeDeg));
        double cosLatitude = Math.cos(Math.toRadians(latitudeDeg));
        Node before = null;
        Node after = null;
        long nodes = 0;
        for (int i = 0; i < cosZenith.length; i++) {
            double at = (i + 0.5) * stepSeconds / NODE_SECONDS;
            while (nodes < at + 1 || nodes < 2) {
                before = after;
                after = Node.at(startEpochSecond + nodes * NODE_SECONDS, latitudeDeg, longitudeDeg);
                nodes++;
            }
            double share = at - (nodes - 2);
            double polar = before.polar + share * (after.polar - before.polar);
            double turn = after.hourAngle - before.hourAngle;
            double hourAngle = before.hourAngle + share * (turn < 0 ? turn + 2 * Math.PI : turn);
            double equatorial = Math.sqrt(1 - polar * polar);
            double meridian = equatorial * Math.cos(hourAngle);
            cosZenith[i] = polar * sinLatitude + meridian * cosLatitude;
            north[i] = polar * cosLatitude - meridian * sinLatitude;
            east[i] = -equatorial * Math.sin(hourAngle);
        }
    }

    /** The sun at one instant: sine of its declination, and hour angle in radians, both as seen from the place. */
    private record Node(double polar, double hourAngle) {
        static Node at(long epochSecond, double latitudeDeg, double longitudeDeg) {
            SunPosition sun =
                    SunPosition.at(Instant.ofEpochSecond(epochSecond), latitudeDeg, longitudeDeg, SEA_LEVEL_M);
            double zenith = Math.toRadians(sun.zenithDeg());
            double azimuth = Math.toRadians(sun.azimuthDeg());
            double latitude = Math.toRadians(latitudeDeg);
            double up = Math.cos(zenith);
            double toNorth = Math.sin(zenith) * Math.cos(azimuth);
            double toEast = Math.sin(zenith) * Math.sin(azimuth);
            return new Node(
                    up * Math.sin(latitude) + toNorth * Math.cos(latitude),
                    Math.atan2(-toEast, up * Math.cos(latitude) - toNorth * Math.sin(latitude)));
        }
    }

    /** Lifts the sun wherever it is near or above the horizon; the lift is so small that two terms of its series do. */
    private void refract(double pressurePa, double airC) {
        double[] lifts = liftsByHeight(pressurePa, airC);
        for (int i = 0; i < cosZenith.length; i++) {
            double up = cosZenith[i];
            double at = (up - LOWEST_REFRACTED_UP) * LIFTS_PER_UNIT;
            if (at < 0) {
                continue;
            }
            int entry = (int) at;
            double lift = lifts[entry] + (at - entry) * (lifts[entry + 1] - lifts[entry]);
            double level = Math.sqrt(1 - up * up);
            double cosLift = 1 - lift * lift / 2;
            double shrink = level > 0 ? cosLift - up / level * lift : 1;
            cosZenith[i] = up * cosLift + level * lift;
            east[i] *= shrink;
            north[i] *= shrink;
        }
    }

    /** Lift in radians by equal steps of the sine of the sun's height; straight lines between are right to 0.0001 degrees. */
    private static double[] liftsByHeight(double pressurePa, double airC) {
        double[] lifts = new double[(int) ((1 - LOWEST_REFRACTED_UP) * LIFTS_PER_UNIT) + 2];
        for (int entry = 0; entry < lifts.length; entry++) {
            double up = LOWEST_REFRACTED_UP + entry / LIFTS_PER_UNIT;
            double elevationDeg = Math.toDegrees(Math.asin(up < 1 ? up : 1));
            lifts[entry] = Math.toRadians(Refraction.deg(elevationDeg, pressurePa, airC));
        }
        return lifts;
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
