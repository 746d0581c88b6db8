package ampdays.battery;

/**
 * Equal strings side by side on one ladder of links; sources and loads hang on the first string. Kirchhoff's laws: seen
 * from string i on, R(i) = r ∥ (ρ + R(i + 1)), and the last is r alone.
 *
 * <p>Leaves out that strings drift apart in charge, which evens the currents out over hours, and different ages or
 * temperatures. Reference: ParallelStringsTest.
 */
final class ParallelStrings {
    private ParallelStrings() {}

    /**
     * Resistance of the bank at its first string, Ω.
     *
     * @param count strings, from 1
     * @param stringOhm r, resistance of one string, Ω, above 0
     * @param linkOhm ρ, plus and minus link between two neighbours, Ω, from 0
     */
    static double bankOhm(int count, double stringOhm, double linkOhm) {
        double ohm = stringOhm;
        for (int i = 1; i < count; i++) {
            ohm = 1 / (1 / stringOhm + 1 / (linkOhm + ohm));
        }
        return ohm;
    }

    /** Share of the bank's current that the first string carries, 1/count when the links have no resistance. */
    static double nearestShare(int count, double stringOhm, double linkOhm) {
        return bankOhm(count, stringOhm, linkOhm) / stringOhm;
    }
}
