package ampdays.pv;

import ampdays.units.Require;

/**
 * Dirt on the panels: a share of the light at the start, which dry days raise and rain resets.
 *
 * @param startShare light lost at the start of the trip, 0 to 1
 * @param perDayShare added each dry day; 0 keeps the start share, whatever the rain
 * @param mostShare beyond which it does not grow
 * @param dampDays days, the rainy one among them, on which the ground stays damp and no dust rises, at least 1
 */
public record Dirt(double startShare, double perDayShare, double mostShare, int dampDays) {
    /** Rain of a day above which panels are clean, mm (Kimber 2006, as in the reference library). */
    private static final double CLEANING_MM = 6;

    public Dirt {
        Require.share("dirt", startShare);
        Require.share("daily dirt", perDayShare);
        Require.share("most dirt", mostShare);
        Require.within("damp days", dampDays, 1, 366);
    }

    /** Dirt that stays as it is. */
    public static Dirt constant(double share) {
        return new Dirt(share, 0, 1, 1);
    }

    /**
     * Dirt of each day. A day of unknown rain neither adds nor cleans.
     *
     * <p>Source: A. Kimber, L. Mitchell, S. Nogradi and H. Wenger, 2006, The effect of soiling on large grid-connected
     * photovoltaic systems in California and the southwest region of the United States, 4th World Conference on
     * Photovoltaic Energy Conversion, in daily steps. Test: {@code DirtTest}.
     *
     * @param rainMm rain of each day, NaN where unknown
     * @return share of the light lost on each day
     */
    public double[] ofDays(double[] rainMm) {
        double[] shares = new double[rainMm.length];
        double share = startShare;
        int damp = 0;
        for (int day = 0; day < shares.length; day++) {
            if (perDayShare > 0 && rainMm[day] > CLEANING_MM) {
                share = 0;
                damp = dampDays;
            } else if (damp <= 0 && day > 0 && !Double.isNaN(rainMm[day])) {
                double grown = share + perDayShare;
                share = grown < mostShare ? grown : share > mostShare ? share : mostShare;
            }
            damp--;
            shares[day] = share;
        }
        return shares;
    }
}
