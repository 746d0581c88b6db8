package ampdays.chart.jfree;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Small shapes that tell lines apart where colour does not. */
final class Marks {
    private static final double[][][] POLYGONS = {
        {{0, -5}, {4.6, 3.4}, {-4.6, 3.4}},
        {{0, -5}, {5, 0}, {0, 5}, {-5, 0}},
        {{0, 5}, {4.6, -3.4}, {-4.6, -3.4}},
        {
            {-1.6, -4.6},
            {1.6, -4.6},
            {1.6, -1.6},
            {4.6, -1.6},
            {4.6, 1.6},
            {1.6, 1.6},
            {1.6, 4.6},
            {-1.6, 4.6},
            {-1.6, 1.6},
            {-4.6, 1.6},
            {-4.6, -1.6},
            {-1.6, -1.6}
        },
        {{-5, -5}, {5, 5}, {5, -5}, {-5, 5}},
        {{-2, -5}, {2, -5}, {2, 5}, {-2, 5}},
    };

    private Marks() {}

    static void draw(Graphics2D g, int look, double x, double y) {
        Shape shape = shape(look % (POLYGONS.length + 2), x, y);
        g.setColor(Style.line(look));
        g.fill(shape);
        g.setColor(Color.WHITE);
        g.setStroke(Style.thin());
        g.draw(shape);
    }

    /**
     * Draws marks at even distances along a line.
     *
     * @param stagger place of the first within its share of the way, 0 to 1
     */
    static void along(Graphics2D g, Panel panel, List<Double> x, List<Double> y, int look, int count, double stagger) {
        double first = x.get(0);
        double period = (x.get(x.size() - 1) - first) / count;
        int at = 0;
        for (int mark = 0; mark < count; mark++) {
            double wanted = first + (mark + stagger) * period;
            while (at < x.size() - 1 && x.get(at) < wanted) {
                at++;
            }
            if (Double.isFinite(y.get(at))) {
                draw(g, look, panel.x(x.get(at)), panel.y(y.get(at)));
            }
        }
    }

    private static Shape shape(int look, double x, double y) {
        if (look == 0) {
            return new Ellipse2D.Double(x - 4.4, y - 4.4, 8.8, 8.8);
        }
        if (look == 1) {
            return new Rectangle2D.Double(x - 4, y - 4, 8, 8);
        }
        double[][] corners = POLYGONS[look - 2];
        Path2D path = new Path2D.Double();
        path.moveTo(x + corners[0][0], y + corners[0][1]);
        for (int i = 1; i < corners.length; i++) {
            path.lineTo(x + corners[i][0], y + corners[i][1]);
        }
        path.closePath();
        return path;
    }
}
