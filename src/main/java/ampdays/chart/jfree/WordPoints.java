package ampdays.chart.jfree;

import ampdays.chart.LinesChart;
import ampdays.chart.LinesChart.Place;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * What a panel of lines shows where words stand along it: a point on a stem for each value, those of one word side by side,
 * since nothing lies between two words.
 */
final class WordPoints {
    /** Room below for a second line of words. */
    static final double SECOND_LINE = 15;

    private static final double MOST_APART = 26;
    private static final double SHARE = 0.8;
    private static final double GAP = 8;

    private final Pen pen;
    private final Panel panel;
    private final double apart;
    private final int looks;

    WordPoints(Pen pen, Panel panel, int words, int looks) {
        this.pen = pen;
        this.panel = panel;
        this.looks = looks;
        this.apart = Math.min(MOST_APART, SHARE * panel.area().getWidth() / words / looks);
    }

    void draw(LinesChart.Line line, List<Double> y, int look) {
        for (int i = 0; i < y.size(); i++) {
            if (Double.isFinite(y.get(i))) {
                double x = x(line.x().get(i), look);
                pen.line(x, panel.y(0), x, panel.y(y.get(i)), Style.line(look), Style.lineStroke(look));
                Marks.draw(pen.graphics(), look, x, panel.y(y.get(i)));
            }
        }
    }

    double x(double at, int look) {
        return panel.x(at) + (look - (looks - 1) / 2.0) * apart;
    }

    /** The words below a panel, in two lines where one is too short. */
    static void words(Pen pen, Rectangle2D area, List<Place> named) {
        double slot = area.getWidth() / named.size();
        Font font = pen.style().small();
        for (int i = 0; i < named.size(); i++) {
            String word = named.get(i).word();
            String first = start(pen, word, font, slot - GAP);
            centred(pen, pen.fit(first, font, slot - GAP), area.getX() + (i + 0.5) * slot, area.getMaxY() + 16, font);
            String rest = word.substring(first.length()).strip();
            centred(
                    pen,
                    pen.fit(rest, font, slot - GAP),
                    area.getX() + (i + 0.5) * slot,
                    area.getMaxY() + 16 + SECOND_LINE,
                    font);
        }
    }

    private static void centred(Pen pen, String text, double x, double baseline, Font font) {
        double wide = font.getStringBounds(text, pen.graphics().getFontRenderContext())
                .getWidth();
        pen.write(text, x - wide / 2, baseline, font, Style.WORDS);
    }

    /** As many whole words as there is room for, but one at least. */
    private static String start(Pen pen, String text, Font font, double room) {
        String start = text;
        while (pen.room(start, font) > room && start.contains(" ")) {
            start = start.substring(0, start.lastIndexOf(' '));
        }
        return start;
    }
}
