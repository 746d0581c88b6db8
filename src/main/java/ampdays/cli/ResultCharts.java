package ampdays.cli;

import ampdays.chart.CabinChart;
import ampdays.chart.ChartModel;
import ampdays.chart.DayChart;
import ampdays.chart.DaysBars;
import ampdays.chart.DriveChart;
import ampdays.chart.EnergyBalance;
import ampdays.chart.EnergyDays;
import ampdays.chart.OperatingPoints;
import ampdays.chart.SocChart;
import ampdays.results.RunResult;
import ampdays.sim.RunPlan;
import ampdays.study.Comparison;
import ampdays.study.Comparison.Option;
import ampdays.study.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Which charts a comparison gets, by file name: those that somebody would open. */
final class ResultCharts {
    private final Comparison comparison;
    private final List<Option> options;
    private final List<RunPlan> plans;
    private final SortedMap<String, ChartModel> charts = new TreeMap<>();
    private final Set<String> kinds = new LinkedHashSet<>();

    private ResultCharts(Comparison comparison, List<RunPlan> plans) {
        this.comparison = comparison;
        this.options = comparison.options();
        this.plans = plans;
    }

    /** @param plans one per option, in their order */
    static ResultCharts of(Comparison comparison, List<RunPlan> plans) {
        ResultCharts made = new ResultCharts(comparison, plans);
        made.ofAll();
        made.options.forEach(option -> made.put("day", option, DayChart.of(comparison, option)));
        made.baseAndBest().forEach(made::inDetail);
        made.ofAlternators();
        return made;
    }

    SortedMap<String, ChartModel> byName() {
        return charts;
    }

    /** Names of the charts, those of single options as one with an ellipsis in place of the option. */
    Set<String> kinds() {
        return kinds;
    }

    private void ofAll() {
        put("state-of-charge", SocChart.of(comparison));
        if (options.size() > 1) {
            put("days-to-empty", DaysBars.of(comparison));
        }
    }

    private void inDetail(Option option) {
        put("energy-balance", option, EnergyBalance.of(comparison, option));
        put("energy-days", option, EnergyDays.of(comparison, option));
        put("cabin", option, CabinChart.of(comparison, option));
    }

    private List<Option> baseAndBest() {
        List<Option> two = new ArrayList<>(options.subList(0, 1));
        List<Option> others = options.subList(1, options.size());
        if (!others.isEmpty()) {
            List<RunResult> results = others.stream().map(Option::result).toList();
            two.add(others.get(results.indexOf(Verdict.best(results))));
        }
        return two;
    }

    /** Of options with the same alternators the first alone that has energy from them. */
    private void ofAlternators() {
        List<RunPlan> shown = new ArrayList<>();
        for (int i = 0; i < options.size(); i++) {
            RunPlan plan = plans.get(i);
            if (options.get(i).alternators().isPresent() && shown.stream().noneMatch(plan::sameAlternators)) {
                shown.add(plan);
                put("alternator-day", options.get(i), DriveChart.of(comparison, options.get(i)));
                put("alternator-points", options.get(i), OperatingPoints.of(comparison, options.get(i)));
            }
        }
    }

    private void put(String name, ChartModel chart) {
        kinds.add(name);
        charts.put(name, chart);
    }

    private void put(String kind, Option option, ChartModel chart) {
        kinds.add(kind + "-…");
        charts.put(kind + "-" + Outputs.fileName(option.result().option()), chart);
    }
}
