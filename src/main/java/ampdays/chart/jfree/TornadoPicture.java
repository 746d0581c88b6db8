package ampdays.chart.jfree;

import ampdays.chart.TornadoChart;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Draws a {@link TornadoChart}. */
record TornadoPicture(TornadoChart chart) implements Picture {
    private static final double TOP = 78;
    private static final double PITCH = 30;
    private static final double THICK = 16;
    private static final double MARGIN = 0.04;

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
        double ends = 8
                + pen.roomFor(
                        bars.stream()
                                .flatMap(bar -> Stream.of(bar.low(), bar.high()))
                                .toList(),
                        pen.style().small(),
                        30,
                        140);
        double left = 16 + names + 12 + ends;
        Rectangle2D area = new Rectangle2D.Double(left, TOP, width() - left - ends - 16, PITCH * bars.size());
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
        Rectangle2D high = side(usual, atHigh, middle, sameSide ? THICK / 2 : THICK);
        Rectangle2D low = side(usual, atLow, middle, THICK);
        g.setColor(Style.line(1));
        g.fill(low);
        g.setColor(Color.WHITE);
        g.fill(high);
        g.setColor(Style.line(1));
        g.setStroke(Style.thin());
        g.draw(low);
        g.draw(high);
        boolean lowIsLeft = atLow < atHigh || (atLow == atHigh && atLow <= usual);
        double leftEnd = Math.min(usual, Math.min(atLow, atHigh));
        double rightEnd = Math.max(usual, Math.max(atLow, atHigh));
        String leftWords = lowIsLeft ? bar.low() : bar.high();
        String rightWords = lowIsLeft ? bar.high() : bar.low();
        double wide = pen.style()
                .small()
                .getStringBounds(leftWords, g.getFontRenderContext())
                .getWidth();
        pen.write(leftWords, leftEnd - wide - 6, middle + 4, pen.style().small(), Style.WORDS);
        pen.write(rightWords, rightEnd + 6, middle + 4, pen.style().small(), Style.WORDS);
    }

    private static Rectangle2D side(double usual, double end, double middle, double thick) {
        return new Rectangle2D.Double(Math.min(usual, end), middle - thick / 2, Math.abs(end - usual), thick);
    }
}
