package ampdays.pv;

/** What a panel's front loses when light comes in aslant. */
public final class IncidenceAngle {
    private IncidenceAngle() {}

    /**
     * Share of the beam that gets through, against a beam straight on.
     *
     * <p>{@code 1 − b0 (1/cos aoi − 1)}, within 0 to 1. Source: A. F. Souka and H. H. Safwat, 1966, Solar Energy 10, 170,
     * and ASHRAE standard 93 (both from memory), as function {@code iam.ashrae} of the reference library named in the
     * heading of table iam. Test: {@code IncidenceAngleTest}.
     *
     * @param incidenceCosine cosine of the angle of incidence, −1 to 1
     * @param b0 0.05 for a glass front
     * @return 0 to 1; 0 when the sun is behind the panel
     */
    public static double ashrae(double incidenceCosine, double b0) {
        if (incidenceCosine <= 0) {
            return 0;
        }
        double share = 1 - b0 * (1 / incidenceCosine - 1);
        return share < 0 ? 0 : share > 1 ? 1 : share;
    }
}
