package ampdays.chart.jfree;

import ampdays.chart.BreakEven;
import ampdays.chart.BreakEven.Cell;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Draws a {@link BreakEven}: a tile for each place, shaded and ruled by its winner, with the winner's number; where none
 * holds, white, with the number and the days that the best one lasts.
 */
record BreakEvenPicture(BreakEven map) implements Picture {
    private static final double LEFT = 70;
    private static final double TOP = 92;
    private static final double TALLEST = 420;
    private static final double TALLEST_ROW = 48;
    private static final double LINE = 22;

    /** Light enough for the number in them to be read, and told apart by their lines where colours are lost. */
    private static final List<Style.Fill> FILLS = List.of(
            new Style.Fill(new Color(0xDDE1E6), Style.Hatch.NONE),
            new Style.Fill(new Color(0xF6D488), Style.Hatch.RISING),
            new Style.Fill(new Color(0x9CCBE8), Style.Hatch.NONE),
            new Style.Fill(new Color(0x8FD3BD), Style.Hatch.FALLING),
            new Style.Fill(new Color(0xE9B08A), Style.Hatch.CROSS),
            new Style.Fill(new Color(0xE3BFD2), Style.Hatch.RISING),
            new Style.Fill(new Color(0xF4EE9C), Style.Hatch.FALLING),
            new Style.Fill(new Color(0xB8BCC4), Style.Hatch.NONE));

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        return (int) (TOP + tall() + 60 + LINE * (shown().size() + 1));
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, map.title(), map.subtitle());
        double wide = (width() - LEFT - 40) / map.xs().size();
        double bottom = TOP + tall();
        double tall = tall() / map.ys().size();
        Font font = pen.style().label();
        for (int row = 0; row < map.ys().size(); row++) {
            double top = bottom - (row + 1) * tall;
            String mark = plain(map.ys().get(row));
            pen.write(mark, LEFT - 10 - pen.room(mark, font), top + tall / 2 + 4, font, Style.WORDS);
            for (int column = 0; column < map.xs().size(); column++) {
                tile(
                        pen,
                        map.cells().get(row).get(column),
                        new Rectangle2D.Double(LEFT + column * wide, top, wide, tall));
            }
        }
        for (int column = 0; column < map.xs().size(); column++) {
            String mark = plain(map.xs().get(column));
            pen.write(mark, LEFT + (column + 0.5) * wide - pen.room(mark, font) / 2, bottom + 18, font, Style.WORDS);
        }
        pen.write(map.yLabel(), 16, TOP - 14, font, Style.WORDS);
        pen.write(map.xLabel(), LEFT, bottom + 38, font, Style.WORDS);
        key(pen);
    }

    private double tall() {
        return Math.min(TALLEST, TALLEST_ROW * map.ys().size());
    }

    private static void tile(Pen pen, Cell cell, Rectangle2D at) {
        Rectangle2D inner =
                new Rectangle2D.Double(at.getX() + 0.5, at.getY() + 0.5, at.getWidth() - 1, at.getHeight() - 1);
        if (cell.holds()) {
            pen.fill(List.of(inner), fill(cell.option()));
        }
        pen.graphics().setColor(Style.GRID);
        pen.graphics().setStroke(Style.thin());
        pen.graphics().draw(at);
        Font font = cell.holds() ? pen.style().heading() : pen.style().small();
        String words = cell.words();
        double room = pen.room(words, font);
        if (room + 8 > at.getWidth() || at.getHeight() < 16) {
            return;
        }
        double x = at.getCenterX() - room / 2;
        if (cell.holds()) {
            pen.graphics().setColor(Color.WHITE);
            pen.graphics().fill(new Rectangle2D.Double(x - 4, at.getCenterY() - 8, room + 8, 16));
        }
        pen.write(words, x, at.getCenterY() + 4.5, font, cell.holds() ? Style.INK : Style.WORDS);
    }

    private static Style.Fill fill(int option) {
        return FILLS.get(option % FILLS.size());
    }

    /** The options that win anywhere. */
    private List<Integer> shown() {
        Set<Integer> shown = new TreeSet<>();
        map.cells().forEach(row -> row.forEach(cell -> shown.add(cell.option())));
        shown.remove(-1);
        return new ArrayList<>(shown);
    }

    private void key(Pen pen) {
        Font font = pen.style().label();
        double y = TOP + tall() + 54;
        for (int option : shown()) {
            pen.fill(List.of(new Rectangle2D.Double(LEFT, y, 26, 14)), fill(option));
            String words = option + 1 + "  " + map.options().get(option);
            pen.write(pen.fit(words, font, width() - LEFT - 36), LEFT + 36, y + 12, font, Style.INK);
            y += LINE;
        }
        pen.write(
                "Filled: the cheapest option that holds. White: none holds; the one that lasts longest, and how long.",
                LEFT,
                y + 12,
                font,
                Style.WORDS);
    }

    private static String plain(double value) {
        return (value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value))
                .replace('-', '\u2212');
    }
}
