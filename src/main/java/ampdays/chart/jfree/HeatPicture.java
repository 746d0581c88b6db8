package ampdays.chart.jfree;

import ampdays.chart.HeatMap;
import ampdays.chart.HeatMap.Segment;
import ampdays.chart.HeatMap.Tile;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Draws a {@link HeatMap}: a tile for each design, lines at whole days, and what is never empty in hatches. */
record HeatPicture(HeatMap map) implements Picture {
    private static final double LEFT = 70;
    private static final double TOP = 122;
    private static final double TALL = 400;
    private static final double RIGHT = 40;
    private static final double BELOW = 62;
    private static final int SHADES = 32;
    private static final double KEY_LINE = 18;

    /** Tiles overlap by this much, so that no ground shows between them. */
    private static final double OVERLAP = 0.4;

    /** Few days dark, many light: the ends and the middles of a map of even lightness (viridis, S. van der Walt and N. Smith, 2015). */
    private static final List<Color> RAMP = List.of(
            new Color(0x440154), new Color(0x3B528B), new Color(0x21918C), new Color(0x5EC962), new Color(0xFDE725));

    /** How designs without days are shown, in the order of the key. */
    private record Kind(Tile tile, Style.Fill fill) {}

    private static final List<Kind> KINDS = List.of(
            new Kind(Tile.HOLDS, new Style.Fill(Color.WHITE, Style.Hatch.RISING)),
            new Kind(Tile.FALLS, new Style.Fill(Style.GREY, Style.Hatch.FALLING)),
            new Kind(Tile.UNKNOWN, new Style.Fill(new Color(0xC4CAD2), Style.Hatch.RISING)),
            new Kind(Tile.IMPOSSIBLE, new Style.Fill(Color.WHITE, Style.Hatch.NONE)));

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        return (int) (TOP + TALL + BELOW) + new Notes(map.notes()).height();
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, map.title(), map.subtitle());
        Rectangle2D area = new Rectangle2D.Double(LEFT, TOP, width() - LEFT - RIGHT, TALL);
        List<Double> xEdges = edges(map.xs());
        List<Double> yEdges = edges(map.ys());
        Axes axes = new Axes(pen.style());
        Panel panel = new Panel(
                area,
                axes.numbers(xEdges.get(0), xEdges.get(xEdges.size() - 1), 10, false),
                axes.numbers(yEdges.get(0), yEdges.get(yEdges.size() - 1), 8, false));
        panel.draw(pen.graphics());
        tiles(pen, panel, xEdges, yEdges);
        contours(pen, panel, area);
        legend(pen);
        pen.write(map.yLabel(), 16, TOP - 12, pen.style().label(), Style.WORDS);
        pen.write(map.xLabel(), LEFT, TOP + TALL + BELOW - 14, pen.style().label(), Style.WORDS);
        new Notes(map.notes()).write(pen, LEFT, TOP + TALL + BELOW - 4);
    }

    /** Halfway between neighbours, and as far beyond the outer ones. */
    private static List<Double> edges(List<Double> at) {
        List<Double> edges = new ArrayList<>();
        int last = at.size() - 1;
        edges.add(at.get(0) - (at.get(1) - at.get(0)) / 2);
        for (int i = 0; i < last; i++) {
            edges.add((at.get(i) + at.get(i + 1)) / 2);
        }
        edges.add(at.get(last) + (at.get(last) - at.get(last - 1)) / 2);
        return edges;
    }

    private void tiles(Pen pen, Panel panel, List<Double> xEdges, List<Double> yEdges) {
        List<Path2D> shades = new ArrayList<>();
        for (int i = 0; i < SHADES; i++) {
            shades.add(new Path2D.Double());
        }
        Map<Tile, List<Rectangle2D>> others = new EnumMap<>(Tile.class);
        for (int row = 0; row < map.ys().size(); row++) {
            for (int column = 0; column < map.xs().size(); column++) {
                double left = panel.x(xEdges.get(column));
                double top = panel.y(yEdges.get(row + 1));
                Rectangle2D area = new Rectangle2D.Double(
                        left, top, panel.x(xEdges.get(column + 1)) - left, panel.y(yEdges.get(row)) - top);
                Tile tile = map.tiles().get(row).get(column);
                if (tile != Tile.DAYS) {
                    others.computeIfAbsent(tile, t -> new ArrayList<>()).add(area);
                } else {
                    shades.get(shade(map.days().get(row).get(column)))
                            .append(
                                    new Rectangle2D.Double(
                                            left, top, area.getWidth() + OVERLAP, area.getHeight() + OVERLAP),
                                    false);
                }
            }
        }
        Graphics2D g = pen.graphics();
        for (int i = 0; i < SHADES; i++) {
            g.setColor(color((i + 0.5) / SHADES));
            g.fill(shades.get(i));
        }
        KINDS.forEach(kind -> hatched(pen, others.getOrDefault(kind.tile(), List.of()), kind.fill()));
    }

    /** Tiles in one surface, ruled from side to side, so that no seams show between them. */
    private static void hatched(Pen pen, List<Rectangle2D> tiles, Style.Fill fill) {
        if (tiles.isEmpty()) {
            return;
        }
        Path2D whole = new Path2D.Double();
        tiles.forEach(tile -> whole.append(tile, false));
        Graphics2D g = pen.graphics();
        g.setColor(fill.color());
        g.fill(whole);
        if (fill.hatch() == Style.Hatch.NONE) {
            return;
        }
        var clip = g.getClip();
        g.clip(whole);
        Rectangle2D box = whole.getBounds2D();
        g.setColor(fill.color().equals(Color.WHITE) ? Style.GREEN : Color.WHITE);
        g.setStroke(new BasicStroke(0.8f));
        boolean rising = fill.hatch() == Style.Hatch.RISING;
        for (double x = box.getMinX() - box.getHeight(); x < box.getMaxX(); x += 7) {
            g.draw(new Line2D.Double(
                    x,
                    rising ? box.getMaxY() : box.getMinY(),
                    x + box.getHeight(),
                    rising ? box.getMinY() : box.getMaxY()));
        }
        g.setClip(clip);
    }

    /** The middle one for all where the key would tell the least and the most days apart by nothing. */
    private int shade(double days) {
        List<Double> range = map.range();
        double span = range.get(1) - range.get(0);
        double share = allAlike() ? 0.5 : (days - range.get(0)) / span;
        return Math.min(SHADES - 1, (int) (share * SHADES));
    }

    private boolean allAlike() {
        return shown(map.range().get(0)).equals(shown(map.range().get(1)));
    }

    private static String shown(double days) {
        return String.format(Locale.ROOT, "%.1f", days);
    }

    private static Color color(double share) {
        double at = share * (RAMP.size() - 1);
        int low = Math.min(RAMP.size() - 2, (int) at);
        double part = at - low;
        Color a = RAMP.get(low);
        Color b = RAMP.get(low + 1);
        return new Color(
                mix(a.getRed(), b.getRed(), part),
                mix(a.getGreen(), b.getGreen(), part),
                mix(a.getBlue(), b.getBlue(), part));
    }

    private static int mix(int a, int b, double part) {
        return (int) Math.round(a + part * (b - a));
    }

    private void contours(Pen pen, Panel panel, Rectangle2D area) {
        if (map.range().isEmpty()) {
            return;
        }
        int first = (int) Math.ceil(map.range().get(0));
        int last = (int) Math.floor(map.range().get(1));
        int step = Math.max(1, (last - first + 9) / 10);
        for (int day = first; day <= last; day += step) {
            List<Segment> segments = map.contour(day);
            for (Segment s : segments) {
                pen.line(
                        panel.x(s.x1()),
                        panel.y(s.y1()),
                        panel.x(s.x2()),
                        panel.y(s.y2()),
                        Color.WHITE,
                        new BasicStroke(1.6f));
            }
            if (!segments.isEmpty()) {
                List<Segment> byHeight = segments.stream()
                        .sorted(Comparator.comparingDouble(Segment::y1))
                        .toList();
                label(pen, panel, area, byHeight.get(byHeight.size() / 2), day);
            }
        }
    }

    private static void label(Pen pen, Panel panel, Rectangle2D area, Segment at, int day) {
        Font font = pen.style().small();
        String words = day == 1 ? "1 day" : day + " days";
        double room = pen.room(words, font);
        double x = Math.max(area.getMinX() + 2, Math.min(area.getMaxX() - room - 2, panel.x(at.x1()) - room / 2));
        double y = Math.max(area.getMinY() + 14, Math.min(area.getMaxY() - 4, panel.y(at.y1()) + 4));
        Graphics2D g = pen.graphics();
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(x - 3, y - 11, room + 6, 15));
        pen.write(words, x, y, font, Style.INK);
    }

    private void legend(Pen pen) {
        Graphics2D g = pen.graphics();
        Font font = pen.style().small();
        double x = LEFT;
        double y = 64;
        if (!map.range().isEmpty()) {
            String least = shown(map.range().get(0));
            String most = shown(map.range().get(1));
            for (int i = 0; i < SHADES; i++) {
                g.setColor(color(((allAlike() ? SHADES / 2 : i) + 0.5) / SHADES));
                g.fill(new Rectangle2D.Double(x + i * 4, y, 4 + OVERLAP, 14));
            }
            String words = (allAlike() ? least : least + " to " + most) + " days; lines at whole days";
            pen.write(words, x + SHADES * 4 + 8, y + 12, font, Style.WORDS);
            x += SHADES * 4 + 28 + pen.room(words, font);
        }
        for (Kind kind : KINDS) {
            if (kind.tile() == Tile.HOLDS || map.tiles().stream().anyMatch(row -> row.contains(kind.tile()))) {
                double wide = 54 + pen.room(kind.tile().words(), font);
                if (x + wide > width()) {
                    x = LEFT;
                    y += KEY_LINE;
                }
                key(pen, x, y, kind);
                x += wide;
            }
        }
    }

    private static void key(Pen pen, double x, double y, Kind kind) {
        Rectangle2D box = new Rectangle2D.Double(x, y, 26, 14);
        hatched(pen, List.of(box), kind.fill());
        pen.graphics().setColor(Style.ZERO);
        pen.graphics().setStroke(Style.thin());
        pen.graphics().draw(box);
        pen.write(kind.tile().words(), x + 34, y + 12, pen.style().small(), Style.WORDS);
    }
}
