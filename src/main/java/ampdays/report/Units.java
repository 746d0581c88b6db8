package ampdays.report;

import ampdays.chart.ChartModel;
import ampdays.chart.Fahrenheit;
import ampdays.units.UnitSystem;

/** Charts in the units of the document; where both are wanted, degrees Fahrenheit stand in brackets behind. */
final class Units {
    private Units() {}

    static ChartModel of(ChartModel chart, UnitSystem units) {
        return switch (units) {
            case METRIC -> chart;
            case US -> Fahrenheit.of(chart);
            case BOTH -> Fahrenheit.beside(chart);
        };
    }
}
