package ampdays.wiring;

/** Loss of a run of two conductors, there and back. Reference: CableRunTest (table cable_voltage_drop, trade cases). */
public final class CableRun {
    private CableRun() {}

    /**
     * Resistance of the loop, Ω: twice the one-way length, and the joints on it.
     *
     * @param oneWayM length one way, m
     * @param ohmPerKm of the conductor at its temperature, Ω/km
     * @param joints how many joints the current passes there and back
     * @param jointOhm resistance of each, Ω
     */
    public static double loopOhm(double oneWayM, double ohmPerKm, int joints, double jointOhm) {
        return 2 * oneWayM * ohmPerKm / 1000 + joints * jointOhm;
    }

    /** Drop, V (Ohm's law). */
    public static double dropV(double loopOhm, double currentA) {
        return loopOhm * currentA;
    }

    /** Drop over the nominal voltage, share. */
    public static double dropShare(double dropV, double systemV) {
        return dropV / systemV;
    }

    /** Heat of the whole run, W (Joule's law). */
    public static double lossW(double loopOhm, double currentA) {
        return loopOhm * currentA * currentA;
    }
}
