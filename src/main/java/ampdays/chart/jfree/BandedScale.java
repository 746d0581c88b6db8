package ampdays.chart.jfree;

import ampdays.chart.LinesChart;
import ampdays.chart.LinesChart.Bands;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * The vertical axis of a {@link LinesChart.Panel} with bands above its values. In a band every line that comes there has a
 * lane of its own, so that none hides another.
 */
final class BandedScale {
    private static final double LANE = 10;
    private static final double RIM = 6;

    /** Its name stands clear of the mark below. */
    private static final double THINNEST = 32;

    private static final int VALUE_STEPS = 4;

    /** From below: what is nearly good is darker than what is good; ruled to either side for prints in black and white. */
    private static final Style.Fill LESS = new Style.Fill(new Color(0xDFE2E6), Style.Hatch.FALLING);

    private static final Style.Fill BEST = new Style.Fill(new Color(0xDDEFE8), Style.Hatch.RISING);

    private final LinesChart.Panel model;
    private final Bands bands;
    private final double perPoint;

    /** @param valuesTall room for the values, points */
    BandedScale(LinesChart.Panel model, Bands bands, double valuesTall) {
        this.model = model;
        this.bands = bands;
        this.perPoint = bands.from() / (valuesTall - RIM);
    }

    /** Room that the bands of a panel take above its values, points. */
    static double tall(LinesChart.Panel model) {
        double tall = 0;
        for (int band = 0; band < model.bands().map(b -> b.names().size()).orElse(0); band++) {
            tall += thick(model, band);
        }
        return tall;
    }

    private static double thick(LinesChart.Panel model, int band) {
        return Math.max(THINNEST, LANE * inBand(model, band).size() + 2 * RIM);
    }

    /** The lines that come into a band, by their places. */
    private static List<Integer> inBand(LinesChart.Panel model, int band) {
        List<Integer> looks = new ArrayList<>();
        for (int look = 0; look < model.lines().size(); look++) {
            if (model.lines().get(look).bands().contains(band)) {
                looks.add(look);
            }
        }
        return looks;
    }

    MarkedAxis axis(Axes axes) {
        return axes.upTo(
                bands.from(), VALUE_STEPS, -RIM * perPoint, bottom(bands.names().size()));
    }

    /** Where the values of a line lie on that axis. */
    List<Double> places(int look) {
        LinesChart.Line line = model.lines().get(look);
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < line.y().size(); i++) {
            int band = line.bands().get(i);
            places.add(band == Bands.NONE ? line.y().get(i) : lane(band, look));
        }
        return places;
    }

    private double lane(int band, int look) {
        List<Integer> looks = inBand(model, band);
        double lanes = looks.size() / 2.0 - looks.indexOf(look) - 0.5;
        return (bottom(band) + bottom(band + 1)) / 2 + lanes * LANE * perPoint;
    }

    private double bottom(int band) {
        double bottom = bands.from();
        for (int below = 0; below < band; below++) {
            bottom += thick(model, below) * perPoint;
        }
        return bottom;
    }

    /** The ground of the bands, and their names left of them. */
    void draw(Pen pen, Panel panel) {
        Rectangle2D area = panel.area();
        for (int band = 0; band < bands.names().size(); band++) {
            double top = panel.y(bottom(band + 1));
            double low = panel.y(bottom(band));
            boolean best = band == bands.names().size() - 1;
            pen.fill(List.of(new Rectangle2D.Double(area.getX(), top, area.getWidth(), low - top)), best ? BEST : LESS);
            String name = bands.names().get(band);
            double wide = pen.style()
                    .small()
                    .getStringBounds(name, pen.graphics().getFontRenderContext())
                    .getWidth();
            pen.write(
                    name,
                    area.getX() - 6 - wide,
                    (top + low) / 2 + 4,
                    pen.style().small(),
                    Style.INK);
        }
    }
}
