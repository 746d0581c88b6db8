package ampdays.sun;

/**
 * A flat surface under the sky: its tilt and heading, with the constants that every minute needs. The sun's direction
 * comes in as its three components (up, east, north), as {@link SunPath} gives them.
 */
public final class Plane {
    private final double cosTilt;
    private final double eastWeight;
    private final double northWeight;

    private Plane(double tiltDeg, double azimuthDeg) {
        double tilt = Math.toRadians(tiltDeg);
        double azimuth = Math.toRadians(azimuthDeg);
        cosTilt = Math.cos(tilt);
        eastWeight = Math.sin(tilt) * Math.sin(azimuth);
        northWeight = Math.sin(tilt) * Math.cos(azimuth);
    }

    /**
     * A plane.
     *
     * @param tiltDeg 0 lies flat, 90 stands upright, up to 180
     * @param azimuthDeg heading of its outward side, clockwise from north
     */
    public static Plane of(double tiltDeg, double azimuthDeg) {
        if (!(tiltDeg >= 0 && tiltDeg <= 180)) {
            throw new IllegalArgumentException("The tilt of a plane is 0 to 180 degrees, not " + tiltDeg + ".");
        }
        if (!(azimuthDeg >= -360 && azimuthDeg <= 360)) {
            throw new IllegalArgumentException("The heading of a plane is 0 to 360 degrees, not " + azimuthDeg + ".");
        }
        return new Plane(tiltDeg, azimuthDeg);
    }

    /**
     * Cosine of the angle between the sun and the plane's normal: {@code cos z cos b + sin z sin b cos(az − azp)}.
     *
     * @param cosZenith the sun's upward component
     * @param sunEast the sun's component towards east, {@code sin z sin az}
     * @param sunNorth the sun's component towards north, {@code sin z cos az}
     * @return −1 to 1; negative when the sun is behind the plane
     */
    public double incidenceCosine(double cosZenith, double sunEast, double sunNorth) {
        return cosZenith * cosTilt + sunEast * eastWeight + sunNorth * northWeight;
    }

    /** Share of the sky dome that the plane sees, {@code (1 + cos b)/2}. */
    public double skyView() {
        return (1 + cosTilt) / 2;
    }

    /** Share of the ground that the plane sees, {@code (1 − cos b)/2}. */
    public double groundView() {
        return (1 - cosTilt) / 2;
    }
}
