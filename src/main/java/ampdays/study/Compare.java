package ampdays.study;

import ampdays.results.Channel;
import ampdays.results.DayProfile;
import ampdays.results.DayTotals;
import ampdays.results.MinuteLog;
import ampdays.results.RunResult;
import ampdays.results.Series;
import ampdays.scenario.Scenario;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.sim.TripClock;
import ampdays.study.Comparison.Alternators;
import ampdays.study.Comparison.Option;
import ampdays.study.Comparison.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Runs every option of a scenario and lays the results side by side. */
public final class Compare {
    private static final List<Channel> SOURCES =
            List.of(Channel.SOLAR, Channel.SHORE, Channel.SECOND_ALTERNATOR, Channel.FACTORY_ALTERNATOR);
    private static final List<Channel> USES =
            List.of(Channel.COOLING, Channel.REFRIGERATOR, Channel.LOADS, Channel.LOSSES, Channel.UNSERVED);
    private static final double LEAST_SHOWN_W = 0.5;

    private Compare() {}

    /**
     * Runs every option.
     *
     * @param plans one per variant of the scenario, in its order
     */
    public static Comparison of(Scenario scenario, List<RunPlan> plans) {
        List<Option> options = plans.parallelStream().map(Compare::option).toList();
        RunPlan first = plans.get(0);
        return new Comparison(
                scenario.name(),
                scenario.title(),
                options.get(0).result().reserveShare(),
                options.get(0).result().tripDays(),
                darkness(first),
                options);
    }

    private static Option option(RunPlan plan) {
        Simulator.WithCurves run = Simulator.runWithCurves(plan);
        DayTotals worst = worstDay(run.result());
        DayTotals ordinary = ordinaryDay(run.result(), worst);
        Optional<DayTotals> driving = DrivingDay.of(run.result());
        List<DayTotals> days = new ArrayList<>(List.of(ordinary, worst));
        driving.ifPresent(days::add);
        List<MinuteLog> logs = Simulator.recordDays(plan, days);
        return new Option(
                run.result(),
                run.soc(),
                profile("ordinary day", ordinary, plan.clock(), logs.get(0)),
                profile("worst day", worst, plan.clock(), logs.get(1)),
                run.cabin(),
                driving.map(day -> new Alternators(DrivingDay.cut(day, plan.clock(), logs.get(2)), run.alternators())));
    }

    /** The day that leaves most unserved, or on which the charge falls lowest. */
    static DayTotals worstDay(RunResult result) {
        return result.days().stream()
                .min(Comparator.comparingLong(
                                (DayTotals d) -> -Math.round(d.energy().unservedWh()))
                        .thenComparingDouble(DayTotals::lowestSoc))
                .orElseThrow();
    }

    /** The day of the middle demand; another one than the worst where there is another. */
    static DayTotals ordinaryDay(RunResult result, DayTotals worst) {
        List<DayTotals> byDemand = result.days().stream()
                .filter(d -> result.days().size() == 1 || !d.equals(worst))
                .sorted(Comparator.comparingDouble(
                        d -> d.energy().servedWh() + d.energy().unservedWh()))
                .toList();
        return byDemand.get(byDemand.size() / 2);
    }

    private static DayProfile profile(String name, DayTotals day, TripClock clock, MinuteLog log) {
        return new DayProfile(
                name,
                day.date(),
                hourly(SOURCES, day, clock, log),
                hourly(USES, day, clock, log),
                quarterSoc(day, clock, log),
                hourly(Channel.OUTSIDE_AIR, day, clock, log),
                hourly(Channel.CABIN_AIR, day, clock, log),
                asleep(day, clock));
    }

    private static Map<String, Series> hourly(List<Channel> channels, DayTotals day, TripClock clock, MinuteLog log) {
        Map<String, Series> series = new LinkedHashMap<>();
        for (Channel channel : channels) {
            Series hours = hourly(channel, day, clock, log);
            if (hours.sum() > LEAST_SHOWN_W) {
                series.put(channel.label(), hours);
            }
        }
        return series;
    }

    private static Series hourly(Channel channel, DayTotals day, TripClock clock, MinuteLog log) {
        double[] sum = new double[24];
        int[] count = new int[24];
        for (int step = day.firstStep(); step < day.firstStep() + day.steps(); step++) {
            int hour = clock.minuteOfDay(step) / 60;
            sum[hour] += log.get(channel, step - log.firstStep());
            count[hour]++;
        }
        for (int hour = 0; hour < 24; hour++) {
            sum[hour] = count[hour] == 0 ? 0 : sum[hour] / count[hour];
        }
        return Series.of(sum);
    }

    private static Series quarterSoc(DayTotals day, TripClock clock, MinuteLog log) {
        int perQuarter = 900 / clock.stepSeconds();
        double[] soc = new double[day.steps() / perQuarter];
        for (int quarter = 0; quarter < soc.length; quarter++) {
            int step = day.firstStep() + (quarter + 1) * perQuarter - 1;
            soc[quarter] = log.get(Channel.STATE_OF_CHARGE, step - log.firstStep()) / 100;
        }
        return Series.of(soc);
    }

    private static Series asleep(DayTotals day, TripClock clock) {
        double[] asleep = new double[24];
        int[] count = new int[24];
        for (int step = day.firstStep(); step < day.firstStep() + day.steps(); step++) {
            int hour = clock.minuteOfDay(step) / 60;
            asleep[hour] += clock.asleep(step) ? 1 : 0;
            count[hour]++;
        }
        for (int hour = 0; hour < 24; hour++) {
            asleep[hour] = count[hour] == 0 ? 0 : asleep[hour] / count[hour];
        }
        return Series.of(asleep);
    }

    private static List<Span> darkness(RunPlan plan) {
        TripClock clock = plan.clock();
        double dayPerStep = clock.stepSeconds() / 86_400.0;
        List<Span> spans = new ArrayList<>();
        int from = -1;
        for (int step = 0; step <= clock.steps(); step++) {
            boolean dark = step < clock.steps() && plan.sky().isDark(step);
            if (dark && from < 0) {
                from = step;
            } else if (!dark && from >= 0) {
                spans.add(new Span(from * dayPerStep, step * dayPerStep));
                from = -1;
            }
        }
        return spans;
    }
}
