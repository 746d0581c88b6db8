package ampdays.alternator;

import ampdays.heat.OneNodeSteps;
import java.util.Arrays;

/**
 * Factory alternators with their chargers in several vans of one make side by side while their engines stand still: what
 * {@link FactoryUnit#open} does then, to the last bit the same.
 */
public final class RestingFactoryUnits {
    private final boolean inEngineBay;
    private final RestingAlternators alternators;
    private final OneNodeSteps chargerNodes;
    private final double[] bonnetC;
    private final double[] noHeatW;
    private double[] chargerC;
    private double[] nextChargerC;

    /** @param one of the units */
    public RestingFactoryUnits(int vans, FactoryUnit one) {
        this.inEngineBay = one.inEngineBay;
        this.alternators = new RestingAlternators(vans);
        this.chargerNodes = new OneNodeSteps(vans);
        bonnetC = new double[vans];
        noHeatW = new double[vans];
        chargerC = new double[vans];
        nextChargerC = new double[vans];
    }

    /** Takes a unit's state over. */
    public void load(int van, FactoryUnit unit) {
        alternators.load(van, unit.alternator);
        chargerNodes.set(van, unit.chargerNode);
        chargerC[van] = unit.chargerC;
    }

    /** Gives a unit its state back. */
    public void store(int van, FactoryUnit unit) {
        alternators.store(van, unit.alternator);
        unit.chargerC = chargerC[van];
    }

    /**
     * One step.
     *
     * @param underBonnetC air under the bonnets, °C
     * @param cabinC air in each cabin, °C
     */
    public void step(double underBonnetC, double[] cabinC) {
        alternators.step(underBonnetC);
        if (inEngineBay) {
            Arrays.fill(bonnetC, underBonnetC);
        }
        chargerNodes.next(chargerC, inEngineBay ? bonnetC : cabinC, noHeatW, nextChargerC);
    }

    /** Makes the end of the step the start of the next. */
    public void commit() {
        alternators.commit();
        double[] before = chargerC;
        chargerC = nextChargerC;
        nextChargerC = before;
    }

    /** Cases of the alternators at the start of the step; after {@link #commit}, at its end, °C. */
    public double[] caseC() {
        return alternators.caseC();
    }
}
