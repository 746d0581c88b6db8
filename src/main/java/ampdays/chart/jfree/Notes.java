package ampdays.chart.jfree;

import java.util.ArrayList;
import java.util.List;

/** Sentences below a chart, each on lines of its own. */
final class Notes {
    private static final double PITCH = 17;

    /** Of small letters as many have room side by side on a chart of the usual width, in any face. */
    private static final int MOST_LETTERS = 160;

    private final List<String> lines;

    Notes(List<String> sentences) {
        lines = sentences.stream()
                .flatMap(sentence -> broken(sentence).stream())
                .toList();
    }

    /** A number and its unit stay together. */
    private static List<String> broken(String sentence) {
        List<String> broken = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : sentence.split("(?<!\\d) ", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > MOST_LETTERS) {
                broken.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        broken.add(line.toString());
        return broken;
    }

    /** What they take of a chart's height; nothing without any. */
    int height() {
        return lines.isEmpty() ? 0 : (int) (PITCH * lines.size() + 8);
    }

    /** Writes them below a line. */
    void write(Pen pen, double left, double top) {
        for (int i = 0; i < lines.size(); i++) {
            pen.write(lines.get(i), left, top + PITCH * (i + 1), pen.style().small(), Style.WORDS);
        }
    }
}
