package ampdays.alternator;

import ampdays.heat.TwoNodeSteps;

/**
 * Alternators of several vans side by side while their engines stand still: what {@link Alternator#open} does then, one
 * number of each in every array, to the last bit the same. {@link #commit} makes the end of a step the start of the next.
 */
public final class RestingAlternators {
    private final TwoNodeSteps nodes;
    private double[] windingC;
    private double[] caseC;
    private double[] nextWindingC;
    private double[] nextCaseC;

    public RestingAlternators(int vans) {
        nodes = new TwoNodeSteps(vans);
        windingC = new double[vans];
        caseC = new double[vans];
        nextWindingC = new double[vans];
        nextCaseC = new double[vans];
    }

    /** Takes a machine's state over. */
    public void load(int van, Alternator alternator) {
        nodes.set(van, alternator.atRest);
        windingC[van] = alternator.windingC;
        caseC[van] = alternator.caseC;
    }

    /** Gives a machine its state back. */
    public void store(int van, Alternator alternator) {
        alternator.windingC = windingC[van];
        alternator.caseC = caseC[van];
    }

    /** One step in the air under the bonnet, °C. */
    public void step(double underBonnetC) {
        nodes.rest(underBonnetC, windingC, caseC, nextWindingC, nextCaseC);
    }

    /** Makes the end of the step the start of the next. */
    public void commit() {
        double[] before = windingC;
        windingC = nextWindingC;
        nextWindingC = before;
        before = caseC;
        caseC = nextCaseC;
        nextCaseC = before;
    }

    /** Case at the start of the step; after {@link #commit}, at its end, °C. */
    public double[] caseC() {
        return caseC;
    }
}
