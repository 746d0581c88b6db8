package ampdays.sim;

import ampdays.wiring.Place;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What flowed in each circuit in each step, and the air around it. A load that runs some of the time counts with its whole
 * current in every step in which it may run, since cables and breakers feel that and not the mean.
 */
public final class CircuitLog {
    private final TripClock clock;
    private final List<float[]> currentA;
    private final Map<Place, float[]> airC;
    private final double secondMostA;
    private final BankTerminals bank;

    CircuitLog(
            TripClock clock, List<float[]> currentA, Map<Place, float[]> airC, double secondMostA, BankTerminals bank) {
        this.clock = clock;
        this.bank = bank;
        this.currentA = List.copyOf(currentA);
        this.airC = new EnumMap<>(airC);
        this.secondMostA = secondMostA;
    }

    public BankTerminals bank() {
        return bank;
    }

    public TripClock clock() {
        return clock;
    }

    /** Size of the current in a circuit, A, by its place in the list asked for. */
    public double currentA(int circuit, int step) {
        return currentA.get(circuit)[step];
    }

    public double airC(Place place, int step) {
        return airC.get(place)[step];
    }

    /** Most that the second alternator could have given in any step, A; 0 without one. */
    public double secondMostA() {
        return secondMostA;
    }
}
