package ampdays.sim;

import ampdays.cabin.Cabins;
import ampdays.scenario.Design;

/** Which loads run in each of several vans side by side, and with them which air flows: {@link Climate#fansRun} for all. */
final class FleetLoads {
    private final LoadPlan plan;
    private final LoadPlan.Pattern[] patterns;
    private final Cabins cabins;
    private final FleetBus bus;
    private final FleetSums sums;
    private final boolean mayCool;
    private final boolean airsByWish;
    private final double wishedC;
    private final boolean[] airing;
    private final int[] pattern;
    private final int[] ventilation;

    /** What held for all in the step before. */
    private int withFans;

    private int still;
    private boolean closed;
    private boolean covered;

    FleetLoads(int vans, RunPlan plan, Cabins cabins, FleetBus bus, FleetSums sums) {
        Design design = plan.variant().design();
        this.plan = plan.loads();
        this.patterns = plan.loads().patterns();
        this.cabins = cabins;
        this.bus = bus;
        this.sums = sums;
        this.mayCool = design.cooler().isPresent();
        this.wishedC = design.cabin().airingC();
        this.airsByWish = !Double.isNaN(wishedC);
        airing = new boolean[vans];
        pattern = new int[vans];
        ventilation = new int[vans];
    }

    /** Takes a van over. */
    void load(int van, Simulator run) {
        airing[van] = run.climate.airing;
        pattern[van] = -1;
        ventilation[van] = -1;
        withFans = -1;
    }

    /** Gives a van back. */
    void store(int van, Simulator run) {
        run.climate.airing = airing[van];
        if (pattern[van] >= 0) {
            sums.storePattern(van, run.totals.served, pattern[van]);
        }
    }

    /** Sets what runs in a step. */
    void choose(int i, Scene now, double outsideC, Simulator[] runs, boolean[] aboard) {
        boolean same = asBefore(i, now);
        if (same && !airsByWish) {
            return;
        }
        double[] airC = cabins.airC();
        for (int van = 0; van < airing.length; van++) {
            if (aboard[van]) {
                boolean before = airing[van];
                airing[van] = airsByWish && Climate.airs(before, airC[van], outsideC, wishedC);
                if (!same || airing[van] != before) {
                    choose(van, runs[van]);
                }
            }
        }
    }

    private boolean asBefore(int i, Scene now) {
        int withFansNow = plan.pattern(i);
        int stillNow = plan.stillPattern(i);
        boolean closedNow = mayCool && now.wanted() && !airsByWish;
        boolean coveredNow = now.covered();
        boolean same = withFansNow == withFans && stillNow == still && closedNow == closed && coveredNow == covered;
        withFans = withFansNow;
        still = stillNow;
        closed = closedNow;
        covered = coveredNow;
        return same;
    }

    private void choose(int van, Simulator run) {
        int chosen = !airsByWish || airing[van] ? withFans : still;
        if (chosen != pattern[van]) {
            PatternHours hours = run.totals.served;
            if (pattern[van] >= 0) {
                sums.storePattern(van, hours, pattern[van]);
            }
            sums.loadPattern(van, hours, chosen);
            bus.run(van, patterns[chosen]);
            pattern[van] = chosen;
        }
        int flow = closed ? 0 : patterns[chosen].flow();
        int air = 2 * flow + (covered ? 1 : 0);
        if (air != ventilation[van]) {
            cabins.ventilate(van, run.state.cabin, flow, covered);
            ventilation[van] = air;
        }
    }
}
