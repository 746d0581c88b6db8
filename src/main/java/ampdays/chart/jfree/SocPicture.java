package ampdays.chart.jfree;

import ampdays.chart.SocChart;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.IntStream;

/** Draws a {@link SocChart}. */
record SocPicture(SocChart chart) implements Picture {
    private static final double LEFT = 56;
    private static final double TOP = 92;

    /** Between words and the lines beside them. */
    private static final double CLEAR = 10;

    /** Marks that each line gets on its way. */
    private static final int MARKS_PER_LINE = 5;

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        return 490;
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, chart.title(), chart.subtitle());
        List<SocChart.Line> lines = chart.lines();
        double room = EndOfLine.room(
                pen,
                lines.stream().map(SocChart.Line::label).toList(),
                lines.stream().map(SocChart.Line::outcome).toList());
        Rectangle2D area = new Rectangle2D.Double(LEFT, TOP, width() - LEFT - room, height() - TOP - 36);
        Axes axes = new Axes(pen.style());
        Panel panel = new Panel(area, axes.tripDays(chart.days()), axes.percent());
        chart.nights().forEach(night -> panel.shade(pen.graphics(), night.fromDay(), night.toDay(), Style.NIGHT));
        for (int i = lines.size() - 1; i >= 0; i--) {
            panel.line(lines.get(i).day(), lines.get(i).percent(), i);
        }
        panel.draw(pen.graphics());

        pen.write(chart.yLabel(), 16, TOP - 14, pen.style().label(), Style.WORDS);
        pen.write(
                "shaded: no sun",
                area.getMaxX() - pen.room("shaded: no sun", pen.style().small()),
                TOP - 14,
                pen.style().small(),
                Style.WORDS);
        reserve(pen, panel);
        for (int i = 0; i < lines.size(); i++) {
            marks(pen, panel, i);
        }
        EndOfLine.draw(
                pen,
                area,
                room,
                IntStream.range(0, lines.size())
                        .mapToObj(i -> new EndOfLine(
                                lines.get(i).label(),
                                lines.get(i).outcome(),
                                i,
                                area.getMaxX(),
                                panel.y(lines.get(i).endPercent())))
                        .toList());
    }

    private void reserve(Pen pen, Panel panel) {
        double y = panel.y(chart.reservePercent());
        Rectangle2D area = panel.area();
        pen.line(area.getMinX(), y, area.getMaxX(), y, Style.INK, Style.thinDashed());
        double room = pen.room(chart.reserveLabel(), pen.style().small());
        Rectangle2D words = new Rectangle2D.Double(area.getMinX() + 6 - CLEAR, y + 2, room + 2 * CLEAR, 16);
        pen.write(
                chart.reserveLabel(),
                freeX(words, panel) + CLEAR,
                y + 15,
                pen.style().small(),
                Style.INK);
    }

    /** Where a label stands when it goes to the right until no line crosses it; where that is nowhere, it stays. */
    private double freeX(Rectangle2D label, Panel panel) {
        Rectangle2D place = (Rectangle2D) label.clone();
        while (place.getMaxX() < panel.area().getMaxX()) {
            if (chart.lines().stream().noneMatch(line -> crosses(line, place, panel))) {
                return place.getX();
            }
            place.setRect(place.getX() + 8, place.getY(), place.getWidth(), place.getHeight());
        }
        return label.getX();
    }

    private static boolean crosses(SocChart.Line line, Rectangle2D place, Panel panel) {
        return IntStream.range(1, line.day().size())
                .anyMatch(i -> place.intersectsLine(
                        panel.x(line.day().get(i - 1)),
                        panel.y(line.percent().get(i - 1)),
                        panel.x(line.day().get(i)),
                        panel.y(line.percent().get(i))));
    }

    /** Marks on the way, staggered so that lines lying on each other show all of theirs; a ring where it is empty. */
    private void marks(Pen pen, Panel panel, int look) {
        SocChart.Line line = chart.lines().get(look);
        double stagger = (look + 0.5) / chart.lines().size();
        Marks.along(pen.graphics(), panel, line.day(), line.percent(), look, MARKS_PER_LINE, stagger);
        if (!Double.isNaN(line.emptyDay())) {
            Graphics2D g = pen.graphics();
            double x = panel.x(line.emptyDay());
            double y = panel.y(chart.reservePercent());
            Ellipse2D ring = new Ellipse2D.Double(x - 5.5, y - 5.5, 11, 11);
            g.setColor(Color.WHITE);
            g.fill(ring);
            g.setColor(Style.line(look));
            g.setStroke(new BasicStroke(2.4f));
            g.draw(ring);
        }
    }
}
