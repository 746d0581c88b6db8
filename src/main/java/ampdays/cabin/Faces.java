package ampdays.cabin;

import ampdays.units.Require;

/**
 * Which way the upright faces look: the two long sides across the heading, front and rear along it. All four stand
 * upright; a raked windscreen is left out.
 *
 * @param headingDeg where the front points while nothing else is said, degrees clockwise from north; NaN = any
 * @param sideWallShare share of the walls on the two sides together, 0 to 1; the rest is half front, half rear
 * @param frontGlassShare share of the glass at the front, 0 to 1
 * @param sideGlassShare share of the glass on the two sides together, 0 to 1; what is left is at the rear
 */
public record Faces(double headingDeg, double sideWallShare, double frontGlassShare, double sideGlassShare) {
    public Faces {
        if (!Double.isNaN(headingDeg)) {
            Require.within("heading", headingDeg, 0, 360);
        }
        Require.share("walls on the sides", sideWallShare);
        Require.share("glass at the front", frontGlassShare);
        Require.share("glass on the sides", sideGlassShare);
        if (frontGlassShare + sideGlassShare > 1) {
            throw new IllegalArgumentException("glass at the front and on the sides is more than all glass");
        }
    }

    /**
     * Mean cosine of incidence over the walls, behind-the-sun faces counting as 0: geometry. Reference: FacesTest.
     *
     * @param forward the sun's horizontal component along the heading, -1 to 1
     * @param right the same to the right of it
     */
    public double wallCosine(double forward, double right) {
        return (1 - sideWallShare) / 2 * (forward < 0 ? -forward : forward)
                + sideWallShare / 2 * (right < 0 ? -right : right);
    }

    /** The same over the glass. */
    public double glassCosine(double forward, double right) {
        double along = forward > 0 ? frontGlassShare * forward : (frontGlassShare + sideGlassShare - 1) * forward;
        return along + sideGlassShare / 2 * (right < 0 ? -right : right);
    }
}
