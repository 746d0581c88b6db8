package ampdays.alternator;

/** The electrical side of the charger between the factory alternator and the house bank: constant efficiency, a cable. */
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

    /**
     * Largest input current, A: where the cable's drop leaves the least input voltage, I = (U - Umin)/Rc, and never
     * beyond the current of largest power, U/(2 Rc); 0 when the source itself lies below the least voltage. Reference:
     * FactoryUnitTest (Ohm's law).
     *
     * @param leastInputV voltage at the charger below which it draws no more, V
     */
    public static double mostInputA(double sourceV, double leastInputV, double cableOhm) {
        double heldV = leastInputV > sourceV / 2 ? leastInputV : sourceV / 2;
        return sourceV > heldV ? (sourceV - heldV) / cableOhm : 0;
    }
}
