package ampdays.chart;

import ampdays.results.Fate;
import java.util.ArrayList;
import java.util.List;

/**
 * Days to empty over two knobs.
 *
 * @param xs values along the horizontal axis, rising
 * @param ys values along the vertical axis, rising
 * @param days by row of {@code ys}, then by place in {@code xs}; not a number when never empty within the trip
 * @param tiles likewise: what a design is shown as
 * @param notes sentences below the map: where more is not better
 */
public record HeatMap(
        String title,
        String subtitle,
        String xLabel,
        String yLabel,
        List<Double> xs,
        List<Double> ys,
        List<List<Double>> days,
        List<List<Tile>> tiles,
        List<String> notes)
        implements ChartModel {
    public HeatMap {
        xs = List.copyOf(xs);
        ys = List.copyOf(ys);
        days = List.copyOf(days);
        tiles = List.copyOf(tiles);
        notes = List.copyOf(notes);
        if (xs.size() < 2 || ys.size() < 2 || days.size() != ys.size() || tiles.size() != ys.size()) {
            throw new IllegalArgumentException("a heat map needs two values or more each way, and a row for each");
        }
    }

    /** What a design is shown as. */
    public enum Tile {
        /** By its days to empty. */
        DAYS(""),
        HOLDS("holds"),
        FALLS("not empty, but falling"),
        UNKNOWN("not empty, trip too short to tell more"),
        IMPOSSIBLE("impossible");

        private final String words;

        Tile(String words) {
            this.words = words;
        }

        static Tile of(Fate fate) {
            return switch (fate) {
                case EMPTY -> DAYS;
                case FALLS -> FALLS;
                case UNKNOWN -> UNKNOWN;
                case HOLDS -> HOLDS;
                case IMPOSSIBLE -> IMPOSSIBLE;
            };
        }

        /** For the key of the map. */
        public String words() {
            return words;
        }
    }

    /** A piece of a contour line, straight between two places. */
    public record Segment(double x1, double y1, double x2, double y2) {}

    /**
     * Where the days are at a level, linear between the designs that were run; nothing next to designs that are never
     * empty. Marching squares (W. E. Lorensen and H. E. Cline, Marching Cubes, 1987, in the plane; from memory): where a
     * level passes between both pairs of opposite corners, the mean of the four decides which are joined. Test:
     * {@code HeatMapTest}.
     */
    public List<Segment> contour(double level) {
        List<Segment> segments = new ArrayList<>();
        for (int row = 0; row + 1 < ys.size(); row++) {
            for (int column = 0; column + 1 < xs.size(); column++) {
                square(row, column, level, segments);
            }
        }
        return segments;
    }

    private void square(int row, int column, double level, List<Segment> segments) {
        double[] x = {xs.get(column), xs.get(column + 1), xs.get(column + 1), xs.get(column)};
        double[] y = {ys.get(row), ys.get(row), ys.get(row + 1), ys.get(row + 1)};
        double[] z = {
            days.get(row).get(column),
            days.get(row).get(column + 1),
            days.get(row + 1).get(column + 1),
            days.get(row + 1).get(column)
        };
        List<double[]> crossings = new ArrayList<>();
        for (int from = 0; from < 4; from++) {
            int to = (from + 1) % 4;
            if ((z[from] < level) != (z[to] < level)) {
                double share = (level - z[from]) / (z[to] - z[from]);
                crossings.add(new double[] {x[from] + share * (x[to] - x[from]), y[from] + share * (y[to] - y[from])});
            }
        }
        double mean = (z[0] + z[1] + z[2] + z[3]) / 4;
        if (Double.isNaN(mean)) {
            return;
        }
        boolean aroundSecondCorner = crossings.size() == 4 && (mean < level) == (z[0] < level);
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            double[] a = crossings.get(i + (aroundSecondCorner ? 0 : crossings.size() == 4 ? 1 : 0));
            double[] b =
                    crossings.get((i + (aroundSecondCorner ? 1 : crossings.size() == 4 ? 2 : 1)) % crossings.size());
            segments.add(new Segment(a[0], a[1], b[0], b[1]));
        }
    }

    /** The least and the most days in the map; empty when no design is ever empty. */
    public List<Double> range() {
        List<Double> all = days.stream()
                .flatMap(List::stream)
                .filter(Double::isFinite)
                .sorted()
                .toList();
        return all.isEmpty() ? List.of() : List.of(all.get(0), all.get(all.size() - 1));
    }
}
