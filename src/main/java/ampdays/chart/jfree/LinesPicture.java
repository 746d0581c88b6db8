package ampdays.chart.jfree;

import ampdays.chart.LinesChart;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws a {@link LinesChart}. */
record LinesPicture(LinesChart chart) implements Picture {
    private static final double LEFT = 56;
    private static final double TOP = 92;
    private static final double GAP = 44;
    private static final double TALL_ALONE = 320;
    private static final double TALL = 190;
    private static final int MARKS_PER_LINE = 3;
    private static final int MOST_MARKED_DATES = 24;
    private static final double ROOM_PER_DATE = 70;

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        int panels = chart.panels().size();
        double words = chart.x().label().isEmpty() ? 34 : 54;
        double tall = chart.panels().stream().mapToDouble(this::tall).sum();
        return (int) (TOP + tall + (panels - 1) * GAP + words + (isOfWords() ? WordPoints.SECOND_LINE : 0));
    }

    private boolean isOfWords() {
        return chart.x().marks() == LinesChart.Marks.WORDS;
    }

    private double tall(LinesChart.Panel panel) {
        return valuesTall() + BandedScale.tall(panel);
    }

    private double valuesTall() {
        return chart.panels().size() == 1 ? TALL_ALONE : TALL;
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, chart.title(), chart.subtitle());
        List<String> names = chart.panels().stream()
                .flatMap(panel -> panel.lines().stream().map(LinesChart.Line::label))
                .toList();
        double room = EndOfLine.room(pen, names, List.of());
        double top = TOP;
        for (int i = 0; i < chart.panels().size(); i++) {
            LinesChart.Panel panel = chart.panels().get(i);
            Rectangle2D area = new Rectangle2D.Double(LEFT, top, width() - LEFT - room, tall(panel));
            boolean last = i == chart.panels().size() - 1;
            panel(pen, panel, area, room, last);
            top += tall(panel) + GAP;
        }
        pen.write(chart.x().label(), LEFT, height() - 14, pen.style().label(), Style.WORDS);
    }

    private void panel(Pen pen, LinesChart.Panel model, Rectangle2D area, double room, boolean last) {
        Axes axes = new Axes(pen.style());
        Optional<BandedScale> banded = model.bands().map(bands -> new BandedScale(model, bands, valuesTall()));
        Panel panel = new Panel(
                area,
                xAxis(axes, area.getWidth()),
                banded.map(scale -> scale.axis(axes)).orElseGet(() -> yAxis(axes, model)));
        if (!last) {
            panel.withoutWordsBelow();
        }
        banded.ifPresent(scale -> scale.draw(pen, panel));
        List<LinesChart.Line> lines = model.lines();
        List<List<Double>> places = new ArrayList<>();
        for (int look = 0; look < lines.size(); look++) {
            int of = look;
            places.add(
                    banded.map(scale -> scale.places(of)).orElse(lines.get(look).y()));
            if (!isOfWords()) {
                panel.line(lines.get(look).x(), places.get(look), look);
            }
        }
        panel.draw(pen.graphics());
        pen.write(model.yLabel(), 16, area.getMinY() - 14, pen.style().label(), Style.WORDS);

        List<EndOfLine> ends = new ArrayList<>();
        WordPoints points = new WordPoints(pen, panel, chart.x().named().size(), lines.size());
        for (int look = 0; look < lines.size(); look++) {
            LinesChart.Line line = lines.get(look);
            List<Double> y = places.get(look);
            int end = lastValue(y);
            if (end < 0) {
                continue;
            }
            double x = isOfWords()
                    ? points.x(line.x().get(end), look)
                    : panel.x(line.x().get(end));
            if (isOfWords()) {
                points.draw(line, y, look);
            } else {
                marks(pen, panel, line, y, look, lines.size());
            }
            if (!line.label().isEmpty()) {
                ends.add(new EndOfLine(line.label(), "", look, x, panel.y(y.get(end))));
            }
        }
        if (isOfWords() && last) {
            WordPoints.words(pen, area, chart.x().named());
        }
        EndOfLine.draw(pen, area, room, ends);
    }

    /** At each date where they are few, else here and there. */
    private void marks(Pen pen, Panel panel, LinesChart.Line line, List<Double> y, int look, int looks) {
        boolean each = chart.x().marks() == LinesChart.Marks.DATES && y.size() <= MOST_MARKED_DATES;
        for (int i = 0; each && i < y.size(); i++) {
            if (Double.isFinite(y.get(i))) {
                Marks.draw(pen.graphics(), look, panel.x(line.x().get(i)), panel.y(y.get(i)));
            }
        }
        if (!each) {
            Marks.along(pen.graphics(), panel, line.x(), y, look, MARKS_PER_LINE, (look + 0.5) / looks);
        }
    }

    private MarkedAxis yAxis(Axes axes, LinesChart.Panel model) {
        double[] values = model.lines().stream()
                .flatMap(line -> line.y().stream())
                .mapToDouble(Double::doubleValue)
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        double low = values.length == 0 ? 0 : values[0];
        double high = values.length == 0 ? 1 : values[values.length - 1];
        return axes.numbers(model.fromZero() ? Math.min(0, low) : low, high, valuesTall() > 200 ? 6 : 4, true);
    }

    private static int lastValue(List<Double> y) {
        int end = y.size() - 1;
        while (end >= 0 && !Double.isFinite(y.get(end))) {
            end--;
        }
        return end;
    }

    private MarkedAxis xAxis(Axes axes, double wide) {
        LinesChart.XAxis x = chart.x();
        return switch (x.marks()) {
            case NUMBERS -> axes.numbers(x.from(), x.to(), 10, false);
            case MONTHS -> axes.months(x.from(), x.to());
            case HOURS -> axes.hours();
            case DATES -> axes.named(x.from(), x.to(), x.named(), (int) (wide / ROOM_PER_DATE));
            case WORDS -> axes.named(x.from(), x.to(), List.of(), 1);
        };
    }
}
