package ampdays.cli;

import ampdays.chart.ChartModel;
import ampdays.chart.LinesChart;
import ampdays.chart.LinesChart.Line;
import ampdays.chart.LinesChart.Panel;
import ampdays.chart.LinesChart.XAxis;
import ampdays.weather.WeatherSeries;
import ampdays.weather.WeatherSummary;
import ampdays.weather.WeatherSummary.Month;
import ampdays.weather.WeatherSummary.Week;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Charts of a weather series: its months, and the mean day of its hottest week. */
final class WeatherCharts {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

    private WeatherCharts() {}

    /** Charts by file name; without whole months or a whole week, fewer. */
    static SortedMap<String, ChartModel> of(WeatherSeries series, WeatherSummary summary) {
        SortedMap<String, ChartModel> charts = new TreeMap<>();
        if (summary.months().size() > 1) {
            charts.put("months", months(series, summary.months()));
        }
        summary.hottestWeek().ifPresent(week -> charts.put("hottest-week", week(series, week)));
        return charts;
    }

    private static ChartModel months(WeatherSeries series, List<Month> months) {
        XAxis axis = XAxis.months(
                months.get(0).month(), months.get(months.size() - 1).month());
        return new LinesChart(
                "The weather by month",
                series.source(),
                axis,
                List.of(
                        new Panel(
                                "air temperature, °C",
                                false,
                                List.of(line("mean high", months, Month::maxC), line("mean low", months, Month::minC))),
                        new Panel("sun, kWh/m² a day", true, List.of(line("sun", months, Month::ghiKwhM2)))));
    }

    private static Line line(String label, List<Month> months, ToDoubleFunction<Month> value) {
        return new Line(
                label,
                months.stream().map(m -> m.month() - 0.5).toList(),
                months.stream().map(value::applyAsDouble).toList());
    }

    private static ChartModel week(WeatherSeries series, Week week) {
        int end = week.firstRow() + 7 * 86_400 / series.info().stepSeconds();
        double[] air = new double[24];
        double[] ghi = new double[24];
        int[] rows = new int[24];
        for (int row = week.firstRow(); row < end; row++) {
            int hour = series.localStart(row).getHour();
            air[hour] += series.airC(row);
            ghi[hour] += series.ghiWm2(row);
            rows[hour]++;
        }
        List<Double> hours = new ArrayList<>();
        List<Double> meanAir = new ArrayList<>();
        List<Double> meanGhi = new ArrayList<>();
        for (int hour = 0; hour < 24; hour++) {
            if (rows[hour] > 0) {
                hours.add(hour + 0.5);
                meanAir.add(air[hour] / rows[hour]);
                meanGhi.add(ghi[hour] / rows[hour]);
            }
        }
        return new LinesChart(
                "The mean day of the hottest week, from " + DAY.format(week.firstDay()),
                series.source(),
                XAxis.dayByHour(),
                List.of(
                        new Panel("air temperature, °C", false, List.of(new Line("air", hours, meanAir))),
                        new Panel("sun on the level, W/m²", true, List.of(new Line("sun", hours, meanGhi)))));
    }
}
