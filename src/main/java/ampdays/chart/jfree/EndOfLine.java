package ampdays.chart.jfree;

import ampdays.chart.EndLabels;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * The name of a line, written where it ends.
 *
 * @param note smaller words under the name; may be empty
 * @param look colour, dashes and mark of the line
 * @param x where it ends, points
 * @param y how far down, points
 */
record EndOfLine(String name, String note, int look, double x, double y) {
    private static final double REACH = 22;
    private static final double NAME_ALONE = 16;
    private static final double NAME_AND_NOTE = 30;

    /** Width to keep free right of a panel for these names. */
    static double room(Pen pen, List<String> names, List<String> notes) {
        double name = pen.roomFor(names, pen.style().heading(), 40, 320);
        double note = pen.roomFor(notes, pen.style().small(), 0, 250);
        return REACH + 12 + Math.max(name, note) + 12;
    }

    /** Writes all names right of the panel, none over another, each led to its line. */
    static void draw(Pen pen, Rectangle2D area, double room, List<EndOfLine> ends) {
        boolean notes = ends.stream().anyMatch(end -> !end.note.isEmpty());
        double pitch = notes ? NAME_AND_NOTE : NAME_ALONE;
        List<Double> places = EndLabels.spread(
                ends.stream().map(EndOfLine::y).toList(),
                pitch,
                area.getMinY() + pitch / 2 - 8,
                area.getMaxY() - pitch / 2 + 8);
        double textRoom = room - REACH - 12 - 4;
        for (int i = 0; i < ends.size(); i++) {
            EndOfLine end = ends.get(i);
            double y = places.get(i);
            double x = area.getMaxX() + REACH;
            boolean endsEarly = end.x < area.getMaxX() - REACH;
            pen.line(end.x, end.y, x - 5, y, Style.GREY, endsEarly ? Style.thinDotted() : Style.thin());
            Marks.draw(pen.graphics(), end.look, x, y);
            String name = pen.fit(end.name, pen.style().heading(), textRoom);
            pen.write(name, x + 10, notes ? y : y + 4.5, pen.style().heading(), Style.INK);
            if (!end.note.isEmpty()) {
                pen.write(end.note, x + 10, y + 13, pen.style().small(), Style.WORDS);
            }
        }
    }
}
