package ampdays.cooling;

/**
 * Refrigerators with power in several vans side by side: what {@link Refrigerator#step} does while none switches, one number
 * of each in every array, to the last bit the same; one that switches takes the step by itself. {@link #step} leaves the
 * state as it was; {@link #commit} makes it the next one.
 */
public final class Refrigerators {
    /** Beyond it a coefficient of performance is left to the single unit, which holds it to 10. */
    private static final double SURE_COP = 9.9;

    private final int vans;
    private final double[] usedK;
    private final double[] foodK;
    private final double[] condenserRiseK;
    private final double[] approachK;
    private final double[] carnotShare;
    private final double[] workK;
    private final double[] wholeStep;
    private final double[] stepS;
    private final double[] askedPerRunW;
    private final double[] standingW;
    private final double[] boundC;
    private double[] insideC;
    private double[] nextInsideC;
    private double[] foodLeftS;
    private double[] nextFoodLeftS;
    /** 1 while the compressor runs, 0 while it rests. */
    private double[] on;

    private double[] nextOn;
    /** Whether warm food may be in any of them. */
    private boolean mayHoldFood;

    private boolean holdsFood;
    private final double[] warmRestC;
    private final double[] coldK;
    private final double[] calm;
    private final double[] askedW;

    public Refrigerators(int vans) {
        this.vans = vans;
        usedK = new double[vans];
        foodK = new double[vans];
        condenserRiseK = new double[vans];
        approachK = new double[vans];
        carnotShare = new double[vans];
        workK = new double[vans];
        wholeStep = new double[vans];
        stepS = new double[vans];
        askedPerRunW = new double[vans];
        standingW = new double[vans];
        boundC = new double[vans];
        insideC = new double[vans];
        nextInsideC = new double[vans];
        foodLeftS = new double[vans];
        nextFoodLeftS = new double[vans];
        on = new double[vans];
        nextOn = new double[vans];
        warmRestC = new double[vans];
        coldK = new double[vans];
        calm = new double[vans];
        askedW = new double[vans];
    }

    /** Takes a unit's state over. */
    public void load(int van, Refrigerator unit) {
        usedK[van] = unit.usedK;
        foodK[van] = unit.foodK;
        condenserRiseK[van] = unit.condenserRiseK;
        approachK[van] = unit.spec.approachK();
        carnotShare[van] = unit.spec.carnotShare();
        workK[van] = unit.workK;
        wholeStep[van] = unit.wholeStep;
        stepS[van] = unit.stepS;
        askedPerRunW[van] = unit.askedPerRunW;
        standingW[van] = unit.standingW;
        insideC[van] = unit.insideC;
        foodLeftS[van] = unit.foodLeftS;
        mayHoldFood = true;
        on[van] = unit.on ? 1 : 0;
        boundC[van] = unit.on ? unit.lowC : unit.highC;
    }

    /** Gives a unit its state back. */
    public void store(int van, Refrigerator unit) {
        unit.insideC = insideC[van];
        unit.foodLeftS = foodLeftS[van];
        unit.on = on[van] == 1;
    }

    /**
     * One step.
     *
     * @param cabinC air around each, °C
     * @param usersUp whether people are up and use them
     */
    public void step(double[] cabinC, boolean usersUp) {
        warm(cabinC, usersUp ? 1 : 0);
        cool(cabinC);
        end();
    }

    private void warm(double[] cabinC, double used) {
        for (int i = 0; i < vans; i++) {
            warmRestC[i] = cabinC[i] + used * usedK[i];
        }
        holdsFood = false;
        for (int i = 0; i < vans && mayHoldFood; i++) {
            nextFoodLeftS[i] = foodLeftS[i];
            if (foodLeftS[i] > 0) {
                warmRestC[i] += foodK[i];
                nextFoodLeftS[i] -= stepS[i];
                holdsFood = true;
            }
        }
    }

    private void cool(double[] cabinC) {
        for (int i = 0; i < vans; i++) {
            double evaporatorK = insideC[i] - approachK[i] + Refrigerator.KELVIN;
            double liftK = cabinC[i] + condenserRiseK[i] + approachK[i] - (insideC[i] - approachK[i]);
            double cop = carnotShare[i] * evaporatorK / liftK;
            coldK[i] = workK[i] * Math.max(cop, 0.2);
            calm[i] = Math.min(liftK, SURE_COP - cop);
        }
    }

    private void end() {
        for (int i = 0; i < vans; i++) {
            double restC = warmRestC[i] - on[i] * coldK[i];
            nextInsideC[i] = restC + (insideC[i] - restC) * wholeStep[i];
            nextOn[i] = on[i];
            askedW[i] = askedPerRunW[i] * (on[i] * stepS[i]) + standingW[i];
        }
        for (int i = 0; i < vans; i++) {
            double way = 2 * on[i] - 1;
            double fromBound = way * (insideC[i] - boundC[i]);
            double toBound = way * (nextInsideC[i] - boundC[i]);
            calm[i] = Math.min(calm[i], Math.min(fromBound, toBound));
        }
    }

    /** Whether a unit switched, or may have, so that the step must be its own: {@link #alone}. */
    public boolean switches(int van) {
        return !(calm[van] > 0);
    }

    /** Takes a unit that switches through the step by itself. */
    public void alone(int van, Refrigerator unit, double cabinC, boolean usersUp) {
        store(van, unit);
        unit.step(cabinC, usersUp, true);
        nextInsideC[van] = unit.insideC;
        nextFoodLeftS[van] = unit.foodLeftS;
        nextOn[van] = unit.on ? 1 : 0;
        boundC[van] = unit.on ? unit.lowC : unit.highC;
        askedW[van] = unit.askedW();
    }

    /** Makes the end of the step the start of the next. */
    public void commit() {
        double[] before = insideC;
        insideC = nextInsideC;
        nextInsideC = before;
        if (mayHoldFood) {
            before = foodLeftS;
            foodLeftS = nextFoodLeftS;
            nextFoodLeftS = before;
            mayHoldFood = holdsFood;
        }
        before = on;
        on = nextOn;
        nextOn = before;
    }

    /** Mean electrical input, W. */
    public double[] askedW() {
        return askedW;
    }
}
