package ampdays.sim;

import ampdays.results.CabinHistory.Sleep;
import java.util.ArrayList;
import java.util.List;

/** Every stretch asleep and how long the cabin was out of the comfort band in it. */
final class SleepLog {
    private final double lowC;
    private final double highC;
    private final double dayPerStep;
    private final List<Sleep> sleeps = new ArrayList<>();
    private int from = -1;
    private int tooWarm;
    private int tooCold;

    SleepLog(double lowC, double highC, double stepSeconds) {
        this.lowC = lowC;
        this.highC = highC;
        this.dayPerStep = stepSeconds / 86_400;
    }

    void step(int step, boolean asleep, double cabinC) {
        if (asleep) {
            from = from < 0 ? step : from;
            tooWarm += cabinC > highC ? 1 : 0;
            tooCold += cabinC < lowC ? 1 : 0;
        } else if (from >= 0) {
            end(step);
        }
    }

    /** @param steps how many steps the trip had */
    List<Sleep> list(int steps) {
        if (from >= 0) {
            end(steps);
        }
        return sleeps;
    }

    private void end(int step) {
        sleeps.add(
                new Sleep(from * dayPerStep, step * dayPerStep, 24 * tooWarm * dayPerStep, 24 * tooCold * dayPerStep));
        from = -1;
        tooWarm = 0;
        tooCold = 0;
    }
}
