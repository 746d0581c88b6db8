package ampdays.report;

import ampdays.chart.ChartModel;
import java.util.List;

/** A piece of a page, as it is read from top to bottom. */
public sealed interface Block {
    /** The answer, in a line that is read first. */
    record Answer(String text) implements Block {}

    /** A paragraph. */
    record Text(String text) implements Block {}

    /** A heading within a part. */
    record Heading(String text) implements Block {}

    /** Points that stand for themselves, each with a word or two that name it; the name may be empty. */
    record Points(List<Point> points) implements Block {
        public Points {
            points = List.copyOf(points);
        }

        static Points of(List<String> texts) {
            return new Points(texts.stream().map(t -> new Point("", t)).toList());
        }
    }

    /** Two lists beside each other where there is room. */
    record Beside(String leftHead, Points left, String rightHead, Points right) implements Block {}

    /** One of them. */
    record Point(String name, String text) {}

    /**
     * A picture.
     *
     * @param name unique in the document, of small letters and hyphens
     * @param caption what is to be seen in it, in words
     */
    record Picture(String name, ChartModel chart, String caption) implements Block {}

    /**
     * A table.
     *
     * @param caption what it lists
     * @param heads of the columns, that of the row's name first
     * @param form how it is laid out
     * @param notes below it
     */
    record Sheet(String caption, List<Column> heads, List<Row> rows, Form form, List<String> notes) implements Block {
        public Sheet {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
            notes = List.copyOf(notes);
            for (Row row : rows) {
                if (row.cells().size() != heads.size()) {
                    throw new IllegalArgumentException(
                            caption + ": a row has " + row.cells().size() + " cells");
                }
            }
        }
    }

    /** How a table is laid out. */
    enum Form {
        /** Columns as wide as they need. */
        PLAIN,
        /** The same; on a narrow screen each row is a card of its own. */
        CARDS,
        /** Many rows in small type, with columns for name, value, range, mark and note. */
        VALUES
    }

    /** A column; numbers stand at its right edge. */
    record Column(String head, boolean numbers) {
        static Column words(String head) {
            return new Column(head, false);
        }

        static Column numbers(String head) {
            return new Column(head, true);
        }
    }

    /**
     * A row.
     *
     * @param cells the first names the row
     * @param chosen whether it is the one recommended, or a sum
     */
    record Row(List<String> cells, boolean chosen) {
        public Row {
            cells = List.copyOf(cells);
        }

        static Row of(List<String> cells) {
            return new Row(cells, false);
        }
    }
}
