package ampdays.chart;

import ampdays.results.SweepTable;
import ampdays.study.Front;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Designs by price, comfortable nights and mass, those that no other beats apart from the rest.
 *
 * @param currency of the prices
 * @param front the cheapest first
 * @param others all other designs that could be run
 */
public record FrontChart(String title, String subtitle, String currency, List<Point> front, List<Point> others)
        implements ChartModel {
    public FrontChart {
        front = List.copyOf(front);
        others = List.copyOf(others);
        if (front.isEmpty()) {
            throw new IllegalArgumentException("a chart of a front needs a design in it");
        }
    }

    /** One design. */
    public record Point(double price, double massKg, double nights, boolean holds) {}

    /** Of a front that has a design. */
    public static FrontChart of(Front front, String title) {
        SweepTable table = front.table();
        return new FrontChart(
                "What more money and mass buy",
                title,
                table.currency(),
                front.rows().stream().map(row -> point(table, row)).toList(),
                IntStream.range(0, table.rows())
                        .filter(row -> table.isPossible(row) && !front.rows().contains(row))
                        .mapToObj(row -> point(table, row))
                        .distinct()
                        .toList());
    }

    private static Point point(SweepTable table, int row) {
        return new Point(
                table.prices().get(row),
                table.massesKg().get(row),
                table.comfortableNights().get(row),
                table.holds().get(row));
    }
}
