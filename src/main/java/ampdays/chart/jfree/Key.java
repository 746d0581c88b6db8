package ampdays.chart.jfree;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/** Samples of surfaces and lines with their names, right of a panel. */
final class Key {
    private static final double LEAD = 18;
    private static final double WORDS_AT = 24;
    private static final double PITCH = 20;

    private final Pen pen;
    private final double left;
    private final double room;

    /**
     * @param right where the panel ends
     * @param room what {@link #room} said
     */
    Key(Pen pen, double right, double room) {
        this.pen = pen;
        this.left = right + LEAD;
        this.room = room - LEAD;
    }

    /** Width to keep free right of a panel for these names. */
    static double room(Pen pen, List<String> names) {
        return LEAD + WORDS_AT + pen.roomFor(names, pen.style().label(), 80, 200) + 14;
    }

    void surface(String name, double middle, Style.Fill fill) {
        pen.fill(List.of(new Rectangle2D.Double(left, middle - 7, 16, 14)), fill);
        words(name, middle);
    }

    void line(String name, double middle, int look) {
        pen.line(left, middle, left + 18, middle, Style.line(look), Style.lineStroke(look));
        words(name, middle);
    }

    void thinLine(String name, double middle) {
        pen.line(left, middle, left + 16, middle, Style.INK, Style.thinDashed());
        words(name, middle);
    }

    /**
     * Names in the order in which stacks stand above and below the zero line of a panel, as near to it as there is room.
     *
     * @param zero how far down the zero line is
     */
    void stacks(Rectangle2D area, double zero, List<String> up, List<String> down) {
        double middle = Math.max(area.getMinY() + PITCH * up.size() + 4, zero);
        middle = Math.min(area.getMaxY() - PITCH * down.size() - 4, middle);
        List<Integer> fromTop =
                new ArrayList<>(IntStream.range(0, up.size()).boxed().toList());
        Collections.reverse(fromTop);
        double y = middle - 14 - PITCH * (fromTop.size() - 1);
        for (int i : fromTop) {
            surface(up.get(i), y, Style.fill(up.get(i), i));
            y += PITCH;
        }
        pen.line(left, middle, left + room - 14, middle, Style.GRID, Style.thin());
        y = middle + 14;
        for (int i = 0; i < down.size(); i++) {
            surface(down.get(i), y, Style.fill(down.get(i), i));
            y += PITCH;
        }
    }

    private void words(String name, double middle) {
        pen.write(
                pen.fit(name, pen.style().label(), room - WORDS_AT),
                left + WORDS_AT,
                middle + 4.5,
                pen.style().label(),
                Style.INK);
    }
}
