package ampdays.alternator;

/** The charger between the factory alternator and the house bank: constant efficiency behind a cable. */
public final class DcDcCharger {
    private DcDcCharger() {}

    /**
     * Output power that an input current gives: P = η I (U - Rc I). Reference: AlternatorPhysicsTest.
     *
     * @param inputA current from the take-off point, A, from 0
     * @param sourceV voltage there, V
     * @param cableOhm resistance of the run, both ways, Ω
     * @param efficiency output over input of the charger, 0 to 1
     */
    public static double outputW(double inputA, double sourceV, double cableOhm, double efficiency) {
        return efficiency * inputA * (sourceV - cableOhm * inputA);
    }

    /**
     * Input current for an output power, A: the smaller root of the same equation; the current of largest power when
     * the cable cannot carry so much.
     */
    public static double inputA(double outputW, double sourceV, double cableOhm, double efficiency) {
        double root = sourceV * sourceV - 4 * cableOhm * outputW / efficiency;
        return root < 0 ? sourceV / (2 * cableOhm) : (sourceV - Math.sqrt(root)) / (2 * cableOhm);
    }
}
