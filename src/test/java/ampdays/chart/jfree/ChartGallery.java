package ampdays.chart.jfree;

import ampdays.chart.CabinChart;
import ampdays.chart.ChartModel;
import ampdays.chart.DayChart;
import ampdays.chart.DaysBars;
import ampdays.chart.DriveChart;
import ampdays.chart.EnergyBalance;
import ampdays.chart.EnergyDays;
import ampdays.chart.InventedComparison;
import ampdays.chart.LinesChart;
import ampdays.chart.OperatingPoints;
import ampdays.chart.SocChart;
import ampdays.study.Comparison;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Draws every kind of picture from invented results, to be looked at: {@code ChartGallery FOLDER [OPTIONS]}. */
public final class ChartGallery {
    private static final double NO = Double.NaN;

    private ChartGallery() {}

    public static void main(String[] args) throws IOException {
        Comparison comparison = InventedComparison.of(args.length > 1 ? Integer.parseInt(args[1]) : 5);
        SortedMap<String, ChartModel> models = comparison(comparison);
        if (args.length > 2) {
            models.put("weather-months", months());
            models.put("weather-hours", hours());
            models.put("sweep-bands", bands());
            models.put(
                    "sweep-words",
                    words(IntStream.range(0, 12)
                            .mapToObj(i -> "insulated covers " + i)
                            .toList()));
        }
        new ChartRenderer().writeAll(models, Path.of(args[0]));
    }

    static SortedMap<String, ChartModel> comparison(Comparison comparison) {
        SortedMap<String, ChartModel> models = new TreeMap<>();
        models.put("state-of-charge", SocChart.of(comparison));
        models.put("days-to-empty", DaysBars.of(comparison));
        for (int i = 0; i < comparison.options().size(); i++) {
            Comparison.Option option = comparison.options().get(i);
            String number = "-" + (i + 1);
            models.put("day" + number, DayChart.of(comparison, option));
            models.put("energy-balance" + number, EnergyBalance.of(comparison, option));
            models.put("energy-days" + number, EnergyDays.of(comparison, option));
            models.put("cabin" + number, CabinChart.of(comparison, option));
            models.put("alternator-day" + number, DriveChart.of(comparison, option));
            models.put("alternator-points" + number, OperatingPoints.of(comparison, option));
        }
        return models;
    }

    static LinesChart months() {
        List<Double> x = IntStream.range(0, 12).mapToObj(month -> month + 0.5).toList();
        return new LinesChart(
                "The year at the site",
                "invented monthly means",
                LinesChart.XAxis.months(1, 12),
                List.of(
                        new LinesChart.Panel(
                                "outside air, °C",
                                false,
                                List.of(
                                        new LinesChart.Line("mean daily high", x, wave(x, 29, 11)),
                                        new LinesChart.Line("mean", x, wave(x, 23, 10.5)),
                                        new LinesChart.Line("mean daily low", x, wave(x, 16.5, 10)))),
                        new LinesChart.Panel(
                                "sun on the flat, kWh/m² a day",
                                true,
                                List.of(new LinesChart.Line("global", x, wave(x, 5.6, 2.5))))));
    }

    static LinesChart hours() {
        List<Double> x = IntStream.range(0, 24).mapToObj(hour -> hour + 0.5).toList();
        return new LinesChart(
                "The hottest day",
                "invented hours",
                LinesChart.XAxis.dayByHour(),
                List.of(new LinesChart.Panel(
                        "outside air, °C",
                        false,
                        List.of(
                                new LinesChart.Line(
                                        "air",
                                        x,
                                        x.stream()
                                                .map(h -> 35 - 7 * Math.cos((h - 4) / 12 * Math.PI))
                                                .toList()),
                                new LinesChart.Line(
                                        "dew point",
                                        x,
                                        x.stream().map(h -> 9 + Math.sin(h)).toList())))));
    }

    /** Lines that run into the bands above the values, and one that is cut off. */
    static LinesChart bands() {
        List<Double> x = List.of(200.0, 400.0, 600.0, 800.0);
        return new LinesChart(
                "What a larger bank brings",
                "invented days",
                new LinesChart.XAxis("bank (Ah)", LinesChart.Marks.NUMBERS, 200, 800),
                List.of(new LinesChart.Panel(
                        "days to empty",
                        true,
                        List.of(
                                banded("as it is", x, List.of(1.0, 2.0, 4.0, 6.0), List.of(-1, -1, -1, -1)),
                                banded("more solar", x, List.of(3.0, 9.0, NO, NO), List.of(-1, -1, 0, 1)),
                                banded("less heat", x, List.of(2.0, 5.0, NO, NO), List.of(-1, -1, 0, 0)),
                                banded("second alternator", x, List.of(4.0, NO, NO, NO), List.of(-1, 1, 1, 1)),
                                banded("impossible from 600", x, List.of(3.0, 4.0, NO, NO), List.of(-1, -1, -1, -1))),
                        Optional.of(new LinesChart.Bands(14, List.of("falling", "holds"))))));
    }

    /** Points over words. */
    static LinesChart words(List<String> words) {
        List<Double> x =
                IntStream.range(0, words.size()).mapToObj(i -> (double) i).toList();
        return new LinesChart(
                "What words bring",
                "invented days",
                new LinesChart.XAxis(
                        "window covers",
                        LinesChart.Marks.WORDS,
                        -0.5,
                        words.size() - 0.5,
                        IntStream.range(0, words.size())
                                .mapToObj(i -> new LinesChart.Place(i, words.get(i)))
                                .toList()),
                List.of(new LinesChart.Panel(
                        "days to empty",
                        true,
                        List.of(
                                new LinesChart.Line(
                                        "one", x, x.stream().map(i -> 3 + i).toList()),
                                new LinesChart.Line(
                                        "two", x, x.stream().map(i -> 9 - i).toList())))));
    }

    private static LinesChart.Line banded(String label, List<Double> x, List<Double> y, List<Integer> bands) {
        return new LinesChart.Line(label, x, y, bands);
    }

    private static List<Double> wave(List<Double> months, double mean, double swing) {
        return months.stream()
                .map(month -> mean - swing * Math.cos((month - 0.5) / 6 * Math.PI))
                .toList();
    }
}
