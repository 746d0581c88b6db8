package ampdays.sim;

import ampdays.cooling.RefrigeratorSpec;
import ampdays.results.Milestones;
import ampdays.trip.People;

/** Watches when a run first comes to what; keeps a few numbers whatever the trip's length. */
final class MilestoneWatch implements Recorder {
    /** Heat is dangerous to many from here, °C; practice. */
    private static final double HOT_C = 32;

    private static final double HOTTER_C = 35;
    private static final double HOTTEST_C = 40;

    /** Least that counts as not delivered, W. */
    private static final double NOTABLE_W = 0.5;

    private final TripClock clock;
    private final double reserveShare;
    private final double warmC;
    private int reserve = -1;
    private int cutOut = -1;
    private int unserved = -1;
    private int over32C = -1;
    private int over35C = -1;
    private int over40C = -1;
    private int warmRefrigerator = -1;
    private int chargeRefused = -1;
    private int hotSteps;

    MilestoneWatch(RunPlan plan) {
        clock = plan.clock();
        reserveShare = clock.trip().reserveShare();
        warmC = plan.variant()
                .design()
                .refrigerator()
                .map(RefrigeratorSpec::insideC)
                .map(insideC -> insideC + Milestones.WARM_REFRIGERATOR_K)
                .orElse(Double.POSITIVE_INFINITY);
    }

    @Override
    public void minute(Minute m, RunState state) {
        double soc = state.bank.soc();
        double airC = state.cabin.airC();
        reserve = first(reserve, m, soc <= reserveShare || soc <= state.bank.outOfReachShare());
        cutOut = first(cutOut, m, state.bank.loadsCut());
        unserved = first(unserved, m, m.unservedW > NOTABLE_W);
        over32C = first(over32C, m, airC > HOT_C);
        over35C = first(over35C, m, airC > HOTTER_C);
        over40C = first(over40C, m, airC > HOTTEST_C);
        warmRefrigerator =
                first(warmRefrigerator, m, state.refrigerator != null && state.refrigerator.insideC() > warmC);
        chargeRefused = first(chargeRefused, m, state.bank.chargingStopped());
        hotSteps += airC > HOT_C && clock.people(m.step) != People.AWAY ? 1 : 0;
    }

    private static int first(int known, Minute m, boolean now) {
        return known < 0 && now ? m.step : known;
    }

    Milestones milestones() {
        return new Milestones(
                reserve,
                cutOut,
                unserved,
                over32C,
                over35C,
                over40C,
                warmRefrigerator,
                chargeRefused,
                hotSteps * clock.stepSeconds() / 3600.0);
    }
}
