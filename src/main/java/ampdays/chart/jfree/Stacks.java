package ampdays.chart.jfree;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Bars upon each other, up or down from the zero line of a panel. */
final class Stacks {
    private static final double BAR_SHARE = 0.86;

    private Stacks() {}

    /** Where a bar stands on the horizontal axis, between its neighbours. */
    record Place(double from, double to) {}

    /**
     * Draws the stacks of all places.
     *
     * @param heights by name, then by place; not negative; a name may have none
     * @param direction 1 for up, -1 for down
     */
    static void draw(
            Pen pen, Panel panel, List<Place> places, List<List<Double>> heights, List<String> names, int direction) {
        double[] sum = new double[places.size()];
        for (int i = 0; i < names.size(); i++) {
            List<Rectangle2D> bars = new ArrayList<>();
            for (int at = 0; at < heights.get(i).size(); at++) {
                double height = heights.get(i).get(at);
                if (height > 0) {
                    bars.add(bar(panel, places.get(at), direction * sum[at], direction * (sum[at] + height)));
                    sum[at] += height;
                }
            }
            if (!bars.isEmpty()) {
                pen.fill(bars, Style.fill(names.get(i), i));
            }
        }
    }

    /** One bar between two values. */
    static Rectangle2D bar(Panel panel, Place place, double from, double to) {
        double rim = (1 - BAR_SHARE) / 2 * (place.to - place.from);
        double left = panel.x(place.from + rim);
        double right = panel.x(place.to - rim);
        double top = Math.min(panel.y(from), panel.y(to));
        double bottom = Math.max(panel.y(from), panel.y(to));
        return new Rectangle2D.Double(left, top, right - left, bottom - top);
    }
}
