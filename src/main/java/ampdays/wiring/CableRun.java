package ampdays.wiring;

/** Drop of a run of two conductors, there and back. Reference: CableRunTest (table cable_voltage_drop, trade cases). */
public final class CableRun {
    private CableRun() {}

    /**
     * Resistance of one of its conductors, Ω.
     *
     * @param oneWayM length one way, m
     * @param ohmPerKm of the conductor at its temperature, Ω/km
     */
    public static double wayOhm(double oneWayM, double ohmPerKm) {
        return oneWayM * ohmPerKm / 1000;
    }

    /**
     * Resistance of the loop, Ω: twice the one-way length, and the joints on it.
     *
     * @param jointsOhm resistance of all joints that the current passes there and back, Ω
     */
    public static double loopOhm(double oneWayM, double ohmPerKm, double jointsOhm) {
        return 2 * wayOhm(oneWayM, ohmPerKm) + jointsOhm;
    }

    /** Drop, V (Ohm's law). */
    public static double dropV(double loopOhm, double currentA) {
        return loopOhm * currentA;
    }

    /** Drop over the nominal voltage, share. */
    public static double dropShare(double dropV, double nominalV) {
        return dropV / nominalV;
    }
}
