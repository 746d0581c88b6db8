package ampdays.chart.jfree;

import ampdays.chart.VisibleText;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Writes words and simple marks on a picture, all through one Graphics2D. */
final class Pen {
    /** A sans-serif face of a reader's machine may be this much wider than ours. */
    private static final double OTHER_FACE = 1.16;

    /** The same for bold, which we only have as a thickened regular face. */
    private static final double OTHER_BOLD_FACE = 1.36;

    private static final double HATCH_PITCH = 5;
    private static final double HAIR = 0.4;

    private final Graphics2D g;
    private final Style style;

    Pen(Graphics2D g, Style style) {
        this.g = g;
        this.style = style;
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    }

    Graphics2D graphics() {
        return g;
    }

    Style style() {
        return style;
    }

    /** White ground, title and subtitle at the top left. */
    void page(Picture picture, String title, String subtitle) {
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(0, 0, picture.width(), picture.height()));
        double room = picture.width() - 32;
        write(fit(title, style.title(), room), 16, 28, style.title(), Style.INK);
        write(fit(subtitle, style.label(), room), 16, 47, style.label(), Style.WORDS);
    }

    void write(String text, double x, double baseline, Font font, Color color) {
        g.setFont(font);
        g.setColor(color);
        g.drawString(VisibleText.of(text), (float) x, (float) baseline);
    }

    /** Width to keep free for a text, whatever face it will be shown in. */
    double room(String text, Font font) {
        double ours = font.getStringBounds(text, g.getFontRenderContext()).getWidth();
        return ours * (font.isBold() ? OTHER_BOLD_FACE : OTHER_FACE);
    }

    /** The text, or as much of its start as there is room for even in another face. */
    String fit(String text, Font font, double room) {
        if (room(text, font) <= room) {
            return text;
        }
        int length = text.length();
        while (length > 1 && room(text.substring(0, length) + "…", font) > room) {
            length--;
        }
        return text.substring(0, length).strip() + "…";
    }

    /** Room for the longest of the texts, between two bounds. */
    double roomFor(List<String> texts, Font font, double least, double most) {
        double widest =
                texts.stream().mapToDouble(text -> room(text, font)).max().orElse(0);
        return Math.max(least, Math.min(most, widest));
    }

    void line(double x1, double y1, double x2, double y2, Color color, Stroke stroke) {
        g.setColor(color);
        g.setStroke(stroke);
        g.draw(new Line2D.Double(x1, y1, x2, y2));
    }

    /** Fills rectangles with a colour and rules them with its hatch; stacked ones stay a hair apart. */
    void fill(List<Rectangle2D> rectangles, Style.Fill fill) {
        Path2D surface = new Path2D.Double();
        Path2D hatch = new Path2D.Double();
        for (Rectangle2D whole : rectangles) {
            double hair = whole.getHeight() > 4 * HAIR ? HAIR : 0;
            Rectangle2D rectangle = new Rectangle2D.Double(
                    whole.getX(), whole.getY() + hair, whole.getWidth(), whole.getHeight() - 2 * hair);
            surface.append(rectangle, false);
            if (fill.hatch() == Style.Hatch.RISING || fill.hatch() == Style.Hatch.CROSS) {
                rule(hatch, rectangle, true);
            }
            if (fill.hatch() == Style.Hatch.FALLING || fill.hatch() == Style.Hatch.CROSS) {
                rule(hatch, rectangle, false);
            }
        }
        g.setColor(fill.color());
        g.fill(surface);
        g.setStroke(new BasicStroke(0.7f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        boolean white = fill.color().equals(Color.WHITE);
        g.setColor(white ? Style.INK : Color.WHITE);
        if (fill.hatch() != Style.Hatch.NONE) {
            g.draw(hatch);
        }
        if (white) {
            g.draw(surface);
        }
    }

    /** Slanting lines that end at the sides of the rectangle, in step with those of its neighbours. */
    private static void rule(Path2D lines, Rectangle2D r, boolean rising) {
        double low = r.getMinX() + (rising ? r.getMinY() : -r.getMaxY());
        double high = low + r.getWidth() + r.getHeight();
        for (double c = Math.ceil(low / HATCH_PITCH) * HATCH_PITCH; c < high; c += HATCH_PITCH) {
            double from = Math.max(r.getMinX(), rising ? c - r.getMaxY() : c + r.getMinY());
            double to = Math.min(r.getMaxX(), rising ? c - r.getMinY() : c + r.getMaxY());
            if (from < to) {
                lines.moveTo(from, rising ? c - from : from - c);
                lines.lineTo(to, rising ? c - to : to - c);
            }
        }
    }
}
