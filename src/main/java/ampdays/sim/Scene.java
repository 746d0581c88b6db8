package ampdays.sim;

import ampdays.alternator.EngineState;
import ampdays.cabin.CabinSpec;
import ampdays.trip.People;
import ampdays.trip.Stretch;
import ampdays.trip.Vehicle;

/**
 * What one line of the timetable means for a design, worked out once so that no step asks twice.
 *
 * @param shops whether it may be driving home from the shops
 * @param setC temperature wanted in the cabin, °C; NaN when none is
 * @param wanted whether one is
 * @param present people aboard
 */
record Scene(
        Vehicle vehicle,
        EngineState engine,
        boolean engineRuns,
        boolean moves,
        boolean idles,
        boolean shops,
        boolean hookUp,
        boolean asleep,
        boolean awake,
        boolean away,
        boolean covered,
        double setC,
        boolean wanted,
        int present) {
    static Scene of(Stretch line, CabinSpec cabin) {
        Vehicle vehicle = line.vehicle();
        double setC = setC(line.people(), cabin);
        return new Scene(
                vehicle,
                engine(vehicle),
                vehicle.engineRuns(),
                vehicle.moves(),
                vehicle.idles(),
                vehicle == Vehicle.TOWN,
                line.hookUp(),
                line.people() == People.ASLEEP,
                line.people() == People.AWAKE,
                line.people() == People.AWAY,
                CabinPlan.covered(line, cabin.covers()),
                setC,
                !Double.isNaN(setC),
                line.people() == People.AWAY ? 0 : cabin.people());
    }

    /** The engine's state while the vehicle does that. */
    static EngineState engine(Vehicle vehicle) {
        return switch (vehicle) {
            case PARKED -> EngineState.STOPPED;
            case IDLING -> EngineState.IDLE;
            case FAST_IDLING -> EngineState.FAST_IDLE;
            case TOWN -> EngineState.TOWN;
            case HIGHWAY -> EngineState.HIGHWAY;
        };
    }

    private static double setC(People people, CabinSpec cabin) {
        return switch (people) {
            case AWAKE -> cabin.awakeC();
            case ASLEEP -> cabin.asleepC();
            case ABOARD -> cabin.aboardC();
            case AWAY -> cabin.awayC();
        };
    }
}
