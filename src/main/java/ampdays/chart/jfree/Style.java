package ampdays.chart.jfree;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Stroke;
import java.util.List;
import java.util.Map;

/**
 * The look of all pictures: white ground, thin horizontal lines, grey words, and colours that people with colour
 * vision deficiencies tell apart (M. Okabe and K. Ito, Color Universal Design, 2008), told apart once more by
 * lightness, dashes, marks or hatches for prints in black and white.
 */
final class Style {
    static final Color INK = new Color(0x1F2937);
    static final Color WORDS = new Color(0x4B5563);
    static final Color GRID = new Color(0xDDE1E6);
    static final Color ZERO = new Color(0x6B7280);
    static final Color NIGHT = new Color(0xF1F3F6);

    static final Color BLUE = new Color(0x0072B2);
    static final Color ORANGE = new Color(0xE69F00);
    static final Color GREEN = new Color(0x009E73);
    static final Color VERMILION = new Color(0xD55E00);
    static final Color SKY = new Color(0x56B4E9);
    static final Color PURPLE = new Color(0xCC79A7);
    static final Color YELLOW = new Color(0xF0E442);
    static final Color GREY = new Color(0x8A8F98);

    private static final List<Color> LINES = List.of(INK, BLUE, ORANGE, GREEN, VERMILION, SKY, PURPLE, GREY);
    private static final float[][] DASHES = {
        {}, {}, {9, 3}, {3, 3}, {12, 3, 3, 3}, {}, {6, 2, 2, 2, 2, 2}, {2, 4},
    };

    private static final Map<String, Fill> FILLS = Map.of(
            "solar", new Fill(ORANGE, Hatch.NONE),
            "shore", new Fill(YELLOW, Hatch.CROSS),
            "factory alternator", new Fill(PURPLE, Hatch.RISING),
            "second alternator", new Fill(VERMILION, Hatch.FALLING),
            "cooling", new Fill(BLUE, Hatch.NONE),
            "refrigerator", new Fill(SKY, Hatch.RISING),
            "loads", new Fill(GREEN, Hatch.FALLING),
            "losses", new Fill(new Color(0xD9C9A3), Hatch.RISING),
            "unserved", new Fill(Color.WHITE, Hatch.CROSS),
            "curtailed", new Fill(Color.WHITE, Hatch.RISING));
    private static final List<Fill> MORE_FILLS = List.of(
            new Fill(new Color(0xB8C4CC), Hatch.NONE),
            new Fill(new Color(0x7FB8A4), Hatch.CROSS),
            new Fill(new Color(0x8A8F98), Hatch.FALLING),
            new Fill(new Color(0xD9C9A3), Hatch.RISING),
            new Fill(new Color(0x5B6B8C), Hatch.NONE));

    private final Typeface typeface;

    Style(Typeface typeface) {
        this.typeface = typeface;
    }

    /** Lines that a surface is ruled with. */
    enum Hatch {
        NONE,
        RISING,
        FALLING,
        CROSS
    }

    /** How a surface looks. */
    record Fill(Color color, Hatch hatch) {}

    /** All that pictures are written with. */
    List<Font> fonts() {
        return List.of(title(), heading(), label(), small());
    }

    Font title() {
        return typeface.bold(17);
    }

    Font heading() {
        return typeface.bold(13);
    }

    Font label() {
        return typeface.plain(12.5);
    }

    Font small() {
        return typeface.plain(11.5);
    }

    static Color line(int index) {
        return LINES.get(index % LINES.size());
    }

    /** The first line, the base design, is the heaviest. */
    static Stroke lineStroke(int index) {
        float[] dash = DASHES[index % DASHES.length];
        float width = index == 0 ? 2.4f : 1.8f;
        return dash.length == 0
                ? new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    static Stroke thin() {
        return new BasicStroke(1f);
    }

    static Stroke thinDashed() {
        return new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {5, 3}, 0);
    }

    static Stroke thinDotted() {
        return new BasicStroke(1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {1, 4}, 0);
    }

    /** By name for what every van has, else by its place in the list. */
    static Fill fill(String name, int index) {
        return FILLS.getOrDefault(name, MORE_FILLS.get(index % MORE_FILLS.size()));
    }
}
