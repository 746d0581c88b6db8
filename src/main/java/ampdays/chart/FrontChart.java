package ampdays.chart;

import ampdays.results.Bounded;
import ampdays.results.SweepTable;
import ampdays.study.Front;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Designs by price, by what they are good for and by mass, those that no other beats apart from the rest. What they are good for
 * are shares of many trips, or the nights of one.
 *
 * @param currency of the prices
 * @param measures what the points are measured by, a panel for each
 * @param front the cheapest first
 * @param others all other designs that were held against them
 */
public record FrontChart(
        String title, String subtitle, String currency, List<String> measures, List<Point> front, List<Point> others)
        implements ChartModel {
    private static final String MASS = "mass of the parts, kg";

    public FrontChart {
        measures = List.copyOf(measures);
        front = List.copyOf(front);
        others = List.copyOf(others);
        if (front.isEmpty()) {
            throw new IllegalArgumentException("a chart of a front needs a design in it");
        }
    }

    /**
     * One design.
     *
     * @param measured for each measure, with its bounds where it is an estimate
     */
    public record Point(double price, boolean holds, List<Measured> measured) {
        public Point {
            measured = List.copyOf(measured);
        }
    }

    /** A number and its bounds, which are itself where it is no estimate. */
    public record Measured(double value, double low, double high) {}

    /** Of a front that has a design. */
    public static FrontChart of(Front front, String title) {
        SweepTable table = front.table();
        return new FrontChart(
                "What more money and mass buy",
                front.isByChance()
                        ? title
                                + String.format(
                                        Locale.ROOT,
                                        "; %,d trips, bars: 95 %% sure; numbers: rows of front.csv",
                                        front.trips())
                        : title + "; numbers: rows of front.csv",
                table.currency(),
                front.isByChance()
                        ? List.of(
                                "trips on which the bank is never empty, %",
                                "trips with all nights comfortable, %", MASS)
                        : List.of("comfortable nights", MASS),
                front.rows().stream().map(row -> point(front, row)).toList(),
                front.beaten().stream().map(row -> point(front, row)).distinct().toList());
    }

    private static Point point(Front front, int row) {
        SweepTable table = front.table();
        Stream<Measured> good = front.isByChance()
                ? Stream.of(
                        percent(front.chances().get(row).neverEmpty()),
                        percent(front.chances().get(row).comfortable()))
                : Stream.of(exact(table.comfortableNights().get(row)));
        return new Point(
                table.prices().get(row),
                table.holds(row),
                Stream.concat(good, Stream.of(exact(table.massesKg().get(row)))).toList());
    }

    private static Measured exact(double value) {
        return new Measured(value, value, value);
    }

    private static Measured percent(Bounded share) {
        return new Measured(100 * share.value(), 100 * share.low(), 100 * share.high());
    }
}
