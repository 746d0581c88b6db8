package ampdays.study;

/** Divides what several causes do together among them. */
final class Shapley {
    private Shapley() {}

    /**
     * What each cause takes away, on average over all orders in which the causes may be taken away one after the other.
     *
     * <p>{@code φi = Σ over S without i of |S|! (n − |S| − 1)!/n! (v(S) − v(S with i))}. Their sum is {@code v(none) −
     * v(all)}, a cause that changes nothing gets nothing, and causes that do the same get the same. Source: L. S. Shapley,
     * 1953, A value for n-person games, Contributions to the Theory of Games II, Princeton. Test: {@code ShapleyTest}.
     *
     * @param v what remains when a set of causes is taken away, by the set as bits: the first entry with all causes at work,
     *     the last with none; its length is a power of two
     * @return one share for each cause, in the unit of {@code v}
     */
    static double[] shares(double[] v) {
        int causes = Integer.numberOfTrailingZeros(v.length);
        double[] shares = new double[causes];
        for (int cause = 0; cause < causes; cause++) {
            int bit = 1 << cause;
            for (int set = 0; set < v.length; set++) {
                if ((set & bit) == 0) {
                    shares[cause] += weight(Integer.bitCount(set), causes) * (v[set] - v[set | bit]);
                }
            }
        }
        return shares;
    }

    /** {@code s! (n − s − 1)!/n!}: the share of all orders in which just these s causes go before. */
    private static double weight(int before, int causes) {
        double weight = 1.0 / causes;
        for (int i = 1; i <= before; i++) {
            weight *= (double) i / (causes - i);
        }
        return weight;
    }
}
