package ampdays.sim;

import ampdays.cabin.Cabin;
import ampdays.cabin.CabinSpec;
import ampdays.results.HeatAfterLoss;
import ampdays.weather.MinuteWeather;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How fast a parked, shut van warms when its cooling stops. Until then a cooling of any strength keeps the air from rising
 * above a temperature, so that linings and furniture are as warm as they then would be; from then on nothing cools and no
 * fan runs. Every quarter of an hour of every day is tried. Leaves out: what people, animals and appliances give off, and
 * that somebody opens a door. Test: {@code CoolingLossTest}.
 */
public final class CoolingLoss {
    private static final int TRY_EVERY_S = 900;

    /** What reaches 40 °C first is worst, then 35, then 32, then what gets warmest. */
    private static final Comparator<HeatAfterLoss> WORST_FIRST = Comparator.comparingDouble(HeatAfterLoss::minutesTo40C)
            .thenComparingDouble(HeatAfterLoss::minutesTo35C)
            .thenComparingDouble(HeatAfterLoss::minutesTo32C)
            .thenComparingDouble(heat -> -heat.cabinC(heat.cabinC().size() - 1))
            .thenComparingLong(HeatAfterLoss::epochSecond);

    private final RunPlan plan;
    private final TripClock clock;
    private final CabinSpec spec;
    private final double keptC;
    private final int watched;

    private CoolingLoss(RunPlan plan, double keptC) {
        this.plan = plan;
        this.clock = plan.clock();
        this.spec = plan.variant().design().cabin();
        this.keptC = keptC;
        this.watched = HeatAfterLoss.WATCHED_H * 3600 / clock.stepSeconds();
    }

    /**
     * The worst moment of a trip for the cooling to stop; a moment within the last hours of the trip is not tried.
     *
     * @param plan of the van as it stands, with nobody in it
     * @param keptC cabin air that is not exceeded until then, °C
     */
    public static HeatAfterLoss worst(RunPlan plan, double keptC) {
        return new CoolingLoss(plan, keptC).worst();
    }

    /** The same for a cooling that stops before a certain step. */
    static HeatAfterLoss at(RunPlan plan, double keptC, int step) {
        CoolingLoss loss = new CoolingLoss(plan, keptC);
        Cabin kept = loss.cabin(plan.sky().weather().airC(0));
        for (int i = 0; i < step; i++) {
            loss.keep(kept, i);
        }
        return loss.watch(kept, step);
    }

    private HeatAfterLoss worst() {
        Cabin kept = cabin(plan.sky().weather().airC(0));
        Cabin left = cabin(keptC);
        int every = Math.max(1, TRY_EVERY_S / clock.stepSeconds());
        HeatAfterLoss worst = null;
        for (int step = 0; step + watched <= clock.steps(); step++) {
            if (step % every == 0) {
                left.goOnFrom(kept);
                HeatAfterLoss heat = watch(left, step);
                worst = worst == null || WORST_FIRST.compare(heat, worst) < 0 ? heat : worst;
            }
            keep(kept, step);
        }
        return worst;
    }

    private void keep(Cabin kept, int step) {
        open(kept, step);
        kept.drawOff(kept.excessW(keptC));
        kept.floatFree();
    }

    private Cabin cabin(double startC) {
        MinuteWeather weather = plan.sky().weather();
        return new Cabin(
                spec,
                new double[] {0},
                plan.sky().densityShare(),
                startC,
                weather.humidityRatio(0),
                clock.stepSeconds());
    }

    private void open(Cabin cabin, int step) {
        MinuteWeather weather = plan.sky().weather();
        boolean covered = CabinPlan.covered(clock.stretch(step), spec.covers());
        double outsideC = weather.airC(step);
        cabin.open(
                0,
                false,
                covered,
                outsideC,
                plan.cabin().faceGainW(step),
                plan.cabin().glassGainW(step),
                0);
        if (spec.leakM2() > 0) {
            cabin.leak(outsideC, weather.windMs(step));
        }
    }

    private HeatAfterLoss watch(Cabin cabin, int from) {
        List<Double> cabinC = new ArrayList<>(List.of(cabin.airC()));
        for (int i = 0; i < watched; i++) {
            open(cabin, from + i);
            cabin.floatFree();
            cabinC.add(cabin.airC());
        }
        return new HeatAfterLoss(
                plan.variant().name(),
                clock.trip().zone(),
                clock.epochSecond(from),
                cabinC.get(0),
                plan.sky().weather().airC(from),
                minutesTo(32, cabinC),
                minutesTo(35, cabinC),
                minutesTo(40, cabinC),
                byMinute(cabinC));
    }

    private double minutesTo(double limitC, List<Double> cabinC) {
        for (int i = 0; i < cabinC.size(); i++) {
            if (cabinC.get(i) > limitC) {
                return i * clock.stepSeconds() / 60.0;
            }
        }
        return Double.NaN;
    }

    private List<Double> byMinute(List<Double> cabinC) {
        List<Double> minutes = new ArrayList<>();
        for (int minute = 0; minute * 60 <= watched * clock.stepSeconds(); minute++) {
            minutes.add(cabinC.get(minute * 60 / clock.stepSeconds()));
        }
        return minutes;
    }
}
