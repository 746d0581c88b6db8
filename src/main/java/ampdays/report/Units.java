package ampdays.report;

import ampdays.chart.ChartModel;
import ampdays.chart.Fahrenheit;
import ampdays.units.UnitSystem;

/** Charts in the units of the document; where both are wanted, charts have the metric ones. */
final class Units {
    private Units() {}

    static ChartModel of(ChartModel chart, UnitSystem units) {
        return units == UnitSystem.US ? Fahrenheit.of(chart) : chart;
    }
}
