package ampdays.chart;

import ampdays.results.AlternatorDay;
import ampdays.results.AlternatorDay.Drive;
import ampdays.results.Series;
import ampdays.study.Comparison;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/**
 * The alternators of one option on the day on which they gave most: temperatures, currents, and what ruled the charge, in
 * one column for each drive.
 *
 * @param temperatures names of the lines above
 * @param currents names of the lines below
 * @param limits what ruled, the longest first
 * @param bothDegrees whether its temperatures are marked in degrees Fahrenheit beside those in degrees Celsius
 */
public record DriveChart(
        String title,
        String subtitle,
        String temperatureLabel,
        String currentLabel,
        String limitLabel,
        double coolestC,
        double warmestC,
        double highestA,
        List<String> temperatures,
        List<String> currents,
        List<Rule> limits,
        List<Column> columns,
        boolean bothDegrees)
        implements ChartModel {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);

    public DriveChart {
        temperatures = List.copyOf(temperatures);
        currents = List.copyOf(currents);
        limits = List.copyOf(limits);
        columns = List.copyOf(columns);
    }

    /**
     * One limit.
     *
     * @param words how long it ruled
     */
    public record Rule(String name, String words) {}

    /**
     * One drive.
     *
     * @param fromHour hours of the clock
     * @param hour places of all lines, hours of the clock
     * @param temperatureC in the order of the names
     * @param currentA in the order of the names
     * @param ruled stretches of each limit, in their order
     */
    public record Column(
            double fromHour,
            double toHour,
            List<Double> hour,
            List<List<Double>> temperatureC,
            List<List<Double>> currentA,
            List<List<Span>> ruled) {}

    /** A stretch, hours of the clock. */
    public record Span(double fromHour, double toHour) {}

    /**
     * The day of one option.
     *
     * @param option one with alternators that gave energy
     */
    public static DriveChart of(Comparison comparison, Comparison.Option option) {
        AlternatorDay day = option.alternators().orElseThrow().day();
        List<String> temperatures = names(day, Drive::temperatureC);
        List<String> currents = names(day, Drive::currentA);
        Map<String, Double> hours = new LinkedHashMap<>();
        day.drives().stream()
                .flatMap(drive -> drive.limits().stream())
                .forEach(ruled -> hours.merge(ruled.limit().label(), ruled.toHour() - ruled.fromHour(), Double::sum));
        List<Rule> rules = hours.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .map(entry -> new Rule(entry.getKey(), Math.round(60 * entry.getValue()) + " min"))
                .toList();
        double[] temperaturesC = values(day, Drive::temperatureC);
        double[] currentsA = values(day, Drive::currentA);
        return new DriveChart(
                option.result().option()
                        + (option.alternators().orElseThrow().work().size() > 1
                                ? ": the alternators on the day on which they give most"
                                : ": the alternator on the day on which it gives most"),
                comparison.title() + ", " + day.date().format(DATE)
                        + (day.drives().size() < day.drivesOfDay()
                                ? ", the longest " + day.drives().size() + " of " + day.drivesOfDay() + " drives"
                                : ""),
                "temperature, °C",
                "current, A",
                "what limits the charge while the engine is on",
                temperaturesC[0],
                temperaturesC[temperaturesC.length - 1],
                currentsA[currentsA.length - 1],
                temperatures,
                currents,
                rules,
                day.drives().stream()
                        .map(drive -> column(drive, temperatures, currents, rules))
                        .toList(),
                false);
    }

    private static Column column(Drive drive, List<String> temperatures, List<String> currents, List<Rule> rules) {
        return new Column(
                drive.fromHour(),
                drive.toHour(),
                Words.list(drive.hour()),
                temperatures.stream()
                        .map(name -> Words.list(drive.temperatureC().get(name)))
                        .toList(),
                currents.stream()
                        .map(name -> Words.list(drive.currentA().get(name)))
                        .toList(),
                rules.stream()
                        .map(rule -> drive.limits().stream()
                                .filter(ruled -> ruled.limit().label().equals(rule.name()))
                                .map(ruled -> new Span(ruled.fromHour(), ruled.toHour()))
                                .toList())
                        .toList());
    }

    private static List<String> names(AlternatorDay day, Function<Drive, Map<String, Series>> lines) {
        return new ArrayList<>(lines.apply(day.drives().get(0)).keySet());
    }

    private static double[] values(AlternatorDay day, Function<Drive, Map<String, Series>> lines) {
        return day.drives().stream()
                .flatMap(drive -> lines.apply(drive).values().stream())
                .flatMapToDouble(series -> DoubleStream.of(series.toArray()))
                .sorted()
                .toArray();
    }
}
