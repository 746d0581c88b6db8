package ampdays.sim;

import ampdays.cabin.CabinSpec;
import ampdays.results.Account;
import ampdays.results.AlternatorWork;
import ampdays.results.CabinHistory;
import ampdays.results.TripCurve;
import ampdays.scenario.Design;
import java.util.ArrayList;
import java.util.List;

/** What charts of the whole trip need. What it keeps does not grow with the trip but for a row for each night. */
final class TripRecorder implements Recorder {
    private final TripClock clock;
    private final CabinSpec cabin;
    private final Thinned soc;
    private final Thinned outsideC;
    private final Thinned cabinC;
    private final SleepLog sleeps;

    /** Null without the alternator. */
    private final AlternatorWatch second;

    private final AlternatorWatch factory;

    TripRecorder(RunPlan plan) {
        clock = plan.clock();
        Design design = plan.variant().design();
        cabin = design.cabin();
        soc = new Thinned(clock);
        outsideC = new Thinned(clock);
        cabinC = new Thinned(clock);
        double stepS = clock.stepSeconds();
        sleeps = new SleepLog(cabin.comfortLowC(), cabin.comfortHighC(), stepS);
        second = design.second()
                .map(spec -> new AlternatorWatch(Account.SECOND_ALTERNATOR.label(), spec, design.engine(), stepS))
                .orElse(null);
        factory = design.factory()
                .map(spec -> new AlternatorWatch(
                        Account.FACTORY_ALTERNATOR.label(), spec.alternator(), design.engine(), stepS))
                .orElse(null);
    }

    @Override
    public void minute(Minute m, RunState state) {
        soc.enter(m.step, state.bank.soc());
        outsideC.enter(m.step, m.outsideC);
        cabinC.enter(m.step, state.cabin.airC());
        sleeps.step(m.step, clock.asleep(m.step), state.cabin.airC());
        if (second != null) {
            second.step(Scene.engine(clock.vehicle(m.step)), m.secondA);
        }
        if (factory != null) {
            factory.step(Scene.engine(clock.vehicle(m.step)), state.factory.outputA());
        }
    }

    TripCurve soc() {
        return soc.curve();
    }

    CabinHistory cabin() {
        return new CabinHistory(
                outsideC.curve(),
                cabinC.curve(),
                cabin.comfortLowC(),
                cabin.comfortHighC(),
                sleeps.list(clock.steps()));
    }

    /** The second alternator first. */
    List<AlternatorWork> alternators() {
        List<AlternatorWork> work = new ArrayList<>();
        if (second != null) {
            work.add(second.work());
        }
        if (factory != null) {
            work.add(factory.work());
        }
        return work;
    }
}
