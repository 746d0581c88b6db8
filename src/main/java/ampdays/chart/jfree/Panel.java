package ampdays.chart.jfree;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/** One pair of axes at a place of the picture: grid, shaded stretches and lines, and where a value lies. */
final class Panel {
    private static final double LEFT = 46;
    private static final double BOTTOM = 22;

    private final Rectangle2D area;
    private final XYPlot plot;
    private final XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    private final DefaultXYDataset dataset = new DefaultXYDataset();

    /** @param area where the values lie; the words of the axes stand left of it and below */
    Panel(Rectangle2D area, ValueAxis x, ValueAxis y) {
        this.area = area;
        renderer.setDrawSeriesLineAsPath(true);
        plot = new XYPlot(dataset, x, y, renderer);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        AxisSpace below = new AxisSpace();
        below.setBottom(BOTTOM);
        plot.setFixedDomainAxisSpace(below);
        AxisSpace left = new AxisSpace();
        left.setLeft(LEFT);
        plot.setFixedRangeAxisSpace(left);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinePaint(Style.GRID);
        plot.setRangeGridlineStroke(Style.thin());
    }

    /** The horizontal axis says nothing here, because a panel below has the same. */
    Panel withoutWordsBelow() {
        plot.getDomainAxis().setTickLabelsVisible(false);
        return this;
    }

    /** The vertical axis says nothing here, because a panel to the left has the same. */
    Panel withoutWordsLeft() {
        plot.getRangeAxis().setTickLabelsVisible(false);
        return this;
    }

    /** Lines across for bars that lie: the grid stands upright and the left side has no words. */
    Panel uprightGrid() {
        plot.setRangeGridlinesVisible(false);
        plot.getRangeAxis().setTickLabelsVisible(false);
        plot.setDomainGridlinesVisible(true);
        plot.setDomainGridlinePaint(Style.GRID);
        plot.setDomainGridlineStroke(Style.thin());
        return this;
    }

    /** Shades a stretch of the horizontal axis, behind the grid. */
    void shade(Graphics2D g, double from, double to, Color color) {
        g.setColor(color);
        g.fill(new Rectangle2D.Double(x(from), area.getY(), x(to) - x(from), area.getHeight()));
    }

    /** Adds a line in the look of the place that it takes. */
    void line(List<Double> x, List<Double> y, int look) {
        int series = dataset.getSeriesCount();
        dataset.addSeries(Integer.valueOf(series), new double[][] {array(x), array(y)});
        renderer.setSeriesPaint(series, Style.line(look));
        renderer.setSeriesStroke(series, Style.lineStroke(look));
    }

    void draw(Graphics2D g) {
        Rectangle2D outer = new Rectangle2D.Double(
                area.getX() - LEFT, area.getY(), area.getWidth() + LEFT, area.getHeight() + BOTTOM);
        plot.draw(g, outer, null, null, null);
        g.setStroke(new BasicStroke(1));
    }

    Rectangle2D area() {
        return area;
    }

    double x(double value) {
        return plot.getDomainAxis().valueToJava2D(value, area, RectangleEdge.BOTTOM);
    }

    double y(double value) {
        return plot.getRangeAxis().valueToJava2D(value, area, RectangleEdge.LEFT);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
