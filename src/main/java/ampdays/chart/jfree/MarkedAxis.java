package ampdays.chart.jfree;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** An axis with marks where we say, in words that we say: the same on every machine. */
final class MarkedAxis extends NumberAxis {
    private static final long serialVersionUID = 1;

    private final double[] at;
    private final String[] words;

    MarkedAxis(double from, double to, List<Double> at, List<String> words, Style style) {
        this.at = at.stream().mapToDouble(Double::doubleValue).toArray();
        this.words = words.toArray(String[]::new);
        setRange(from, to);
        setAxisLineVisible(false);
        setTickMarksVisible(false);
        setTickLabelFont(style.small());
        setTickLabelPaint(Style.WORDS);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
        TextAnchor anchor = RectangleEdge.isTopOrBottom(edge) ? TextAnchor.TOP_CENTER : TextAnchor.CENTER_RIGHT;
        List<NumberTick> ticks = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            ticks.add(new NumberTick(at[i], words[i], anchor, TextAnchor.CENTER, 0));
        }
        return ticks;
    }
}
