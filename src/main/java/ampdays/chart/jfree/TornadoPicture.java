package ampdays.chart.jfree;

import ampdays.chart.TornadoChart;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/** Draws a {@link TornadoChart}. */
record TornadoPicture(TornadoChart chart) implements Picture {
    private static final double TOP = 78;
    private static final double PITCH = 30;
    private static final double THICK = 16;
    private static final double MARGIN = 0.04;
    private static final double MOST_WORDS = 210;

    /** Of the arrow at the end of a bar whose true end is not known. */
    private static final double TIP = 10;

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        return (int) (TOP + PITCH * chart.bars().size() + 56);
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, chart.title(), chart.subtitle());
        List<TornadoChart.Bar> bars = chart.bars();
        double names = pen.roomFor(
                bars.stream().map(TornadoChart.Bar::label).toList(), pen.style().label(), 60, 340);
        double leftEnds = roomFor(pen, this::leftWords);
        double rightEnds = roomFor(pen, this::rightWords) + TIP;
        double left = 16 + names + 12 + leftEnds;
        Rectangle2D area = new Rectangle2D.Double(left, TOP, width() - left - rightEnds - 16, PITCH * bars.size());
        double low = answers().min().orElseThrow();
        double high = answers().max().orElseThrow();
        double margin = MARGIN * Math.max(high - low, 1e-6);
        Axes axes = new Axes(pen.style());
        Panel panel = new Panel(
                        area,
                        axes.numbers(low - margin, high + margin, 7, false),
                        axes.numbers(0, bars.size(), 1, false))
                .uprightGrid();
        panel.draw(pen.graphics());
        pen.write(chart.xLabel(), left, area.getMaxY() + 40, pen.style().label(), Style.WORDS);
        for (int i = 0; i < bars.size(); i++) {
            double middle = TOP + PITCH * (i + 0.5);
            pen.write(
                    pen.fit(bars.get(i).label(), pen.style().label(), names),
                    16,
                    middle + 4.5,
                    pen.style().label(),
                    Style.INK);
            bar(pen, panel, bars.get(i), middle);
        }
        double usual = panel.x(chart.usual());
        pen.line(usual, TOP - 6, usual, area.getMaxY(), Style.INK, Style.thin());
    }

    private double roomFor(Pen pen, Function<TornadoChart.Bar, String> words) {
        List<String> all = chart.bars().stream().map(words).toList();
        return 8 + pen.roomFor(all, pen.style().small(), 30, MOST_WORDS);
    }

    private String leftWords(TornadoChart.Bar bar) {
        return lowIsLeft(bar) ? chart.lowWords(bar) : chart.highWords(bar);
    }

    private String rightWords(TornadoChart.Bar bar) {
        return lowIsLeft(bar) ? chart.highWords(bar) : chart.lowWords(bar);
    }

    private boolean lowIsLeft(TornadoChart.Bar bar) {
        return bar.atLow() < bar.atHigh() || (bar.atLow() == bar.atHigh() && bar.atLow() <= chart.usual());
    }

    private DoubleStream answers() {
        return DoubleStream.concat(
                DoubleStream.of(chart.usual()),
                chart.bars().stream().flatMapToDouble(bar -> DoubleStream.of(bar.atLow(), bar.atHigh())));
    }

    private void bar(Pen pen, Panel panel, TornadoChart.Bar bar, double middle) {
        Graphics2D g = pen.graphics();
        double usual = panel.x(chart.usual());
        double atLow = panel.x(bar.atLow());
        double atHigh = panel.x(bar.atHigh());
        boolean sameSide = (atLow - usual) * (atHigh - usual) > 0;
        Shape high = side(usual, atHigh, middle, sameSide ? THICK / 2 : THICK, chart.isCapped(bar.atHigh()));
        Shape low = side(usual, atLow, middle, THICK, chart.isCapped(bar.atLow()));
        g.setColor(Style.line(1));
        g.fill(low);
        g.setColor(Color.WHITE);
        g.fill(high);
        g.setColor(Style.line(1));
        g.setStroke(Style.thin());
        g.draw(low);
        g.draw(high);
        double leftEnd = Math.min(usual, Math.min(atLow, atHigh));
        boolean pointed = chart.isCapped(Math.max(bar.atLow(), bar.atHigh()));
        double rightEnd = Math.max(usual, Math.max(atLow, atHigh)) + (pointed ? TIP : 0);
        double wide = pen.style()
                .small()
                .getStringBounds(leftWords(bar), g.getFontRenderContext())
                .getWidth();
        pen.write(leftWords(bar), leftEnd - wide - 6, middle + 4, pen.style().small(), Style.WORDS);
        pen.write(rightWords(bar), rightEnd + 6, middle + 4, pen.style().small(), Style.WORDS);
    }

    /** From the usual answer to that of an end, with a tip where the answer goes on beyond it. */
    private static Shape side(double usual, double end, double middle, double thick, boolean pointed) {
        Path2D side = new Path2D.Double();
        side.moveTo(usual, middle - thick / 2);
        side.lineTo(end, middle - thick / 2);
        if (pointed) {
            side.lineTo(end + TIP, middle);
        }
        side.lineTo(end, middle + thick / 2);
        side.lineTo(usual, middle + thick / 2);
        side.closePath();
        return side;
    }
}
