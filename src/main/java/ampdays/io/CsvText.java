package ampdays.io;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The lines of a file of weather or readings and their cells, with the problems found in them. */
final class CsvText {
    private static final int MOST_PROBLEMS = 20;
    private static final int LINES_LOOKED_AT = 20;
    /** What numbers are written with; keeps out the letters that Java would take after a number. */
    private static final String NUMBER_SIGNS = "0123456789.-+eE";

    private final String file;
    private final List<String> lines;
    private final char separator;
    private final List<InputProblem> problems = new ArrayList<>();
    private int problemsLeftOut;

    private CsvText(String file, List<String> lines, char separator) {
        this.file = file;
        this.lines = lines;
        this.separator = separator;
    }

    /** The same lines with another sign between cells. */
    CsvText separatedBy(char sign) {
        return new CsvText(file, lines, sign);
    }

    char separator() {
        return separator;
    }

    /**
     * Reads a file of text with commas between its cells.
     *
     * @throws IOException when it cannot be read
     * @throws InputException when it is empty, not text, or written with other separators
     */
    static CsvText read(Path path) throws IOException, InputException {
        if (Files.isDirectory(path)) {
            throw new FileSystemException(path.toString(), null, "this is a folder, not a weather file");
        }
        CsvText text = CsvText.of(String.valueOf(path.getFileName()), Files.readAllBytes(path));
        if (text.size() == 0) {
            throw text.problem(0, 0, "the file is empty.");
        }
        if (!text.isPlain()) {
            throw text.problem(
                    0,
                    0,
                    "the file is not plain text. Save it as CSV in UTF-8; unpack an archive, export a spreadsheet.");
        }
        refuseOtherSeparators(text);
        return text;
    }

    /** Reads UTF-8, with or without a byte order mark, or Latin-1 where that fails; any line ends. */
    static CsvText of(String file, byte[] bytes) {
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            text = new String(bytes, StandardCharsets.ISO_8859_1);
        }
        if (text.startsWith("\uFEFF")) {
            text = text.substring(1);
        }
        List<String> lines = new ArrayList<>(text.lines().toList());
        while (!lines.isEmpty() && lines.get(lines.size() - 1).isBlank()) {
            lines.remove(lines.size() - 1);
        }
        return new CsvText(file, lines, ',');
    }

    /** Spreadsheets of many countries write semicolons between cells, and then a comma in numbers. */
    private static void refuseOtherSeparators(CsvText text) throws InputException {
        int line = 1;
        while (text.line(line).startsWith("#")) {
            line++;
        }
        String first = text.line(line);
        for (String separator : List.of(";", "\t")) {
            int at = first.indexOf(separator);
            if (at >= 0 && first.indexOf(',') < 0) {
                throw text.problem(
                        line,
                        at + 1,
                        "the cells are separated by " + (separator.equals(";") ? "semicolons" : "tabs")
                                + ". Separate them by commas, and write numbers with a point.");
            }
        }
    }

    String file() {
        return file;
    }

    int size() {
        return lines.size();
    }

    /** Whether the first lines have no control characters, as those of archives, pictures and UTF-16 text have. */
    boolean isPlain() {
        return lines.stream()
                .limit(LINES_LOOKED_AT)
                .flatMapToInt(String::chars)
                .noneMatch(c -> Character.isISOControl(c) && c != '\t');
    }

    /** A line, counted from 1; empty beyond the end. */
    String line(int number) {
        return number <= lines.size() ? lines.get(number - 1) : "";
    }

    /** The beginning of the first line, for messages. */
    String beginning() {
        return line(1).length() > 40 ? line(1).substring(0, 40) + "…" : line(1);
    }

    /** The cells of a line, counted from 1. */
    List<String> cells(int number) throws InputException {
        List<CSVRecord> records = records(number, number, true);
        return records.isEmpty() ? List.of() : records.get(0).toList();
    }

    /** Number of cells up to the last that is not blank: spreadsheets leave separators of empty cells behind. */
    static int width(List<String> cells) {
        int width = cells.size();
        while (width > 0 && cells.get(width - 1).isBlank()) {
            width--;
        }
        return width;
    }

    /** The rows from one line to another, both counted from 1; the file may not break a cell over lines. */
    List<CSVRecord> records(int from, int to, boolean quotes) throws InputException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(true)
                .setQuote(quotes ? '"' : null)
                .get();
        String text = String.join("\n", lines.subList(from - 1, Math.min(to, lines.size())));
        try (var parser = format.parse(new StringReader(text))) {
            return parser.getRecords();
        } catch (UncheckedIOException | IOException e) {
            throw problem(from, 0, "the quotation marks in or after this line do not pair up.");
        }
    }

    /** Character column, from 1, at which a cell begins. */
    int column(int line, int cell) {
        String text = line(line);
        boolean quoted = false;
        int left = cell;
        for (int i = 0; i < text.length() && left > 0; i++) {
            char c = text.charAt(i);
            quoted ^= c == '"';
            if (c == separator && !quoted) {
                left--;
                if (left == 0) {
                    return i + 2;
                }
            }
        }
        return left == 0 ? 1 : 0;
    }

    void add(int line, int column, String message) {
        if (problems.size() < MOST_PROBLEMS) {
            problems.add(new InputProblem(file, line, column, message));
        } else {
            problemsLeftOut++;
        }
    }

    /** An exception with this problem and all before it. */
    InputException problem(int line, int column, String message) {
        add(line, column, message);
        return new InputException(problems());
    }

    /** Ends the reading if anything was wrong. */
    void throwIfWrong() throws InputException {
        if (!problems.isEmpty()) {
            throw new InputException(problems());
        }
    }

    private List<InputProblem> problems() {
        List<InputProblem> all = new ArrayList<>(problems);
        if (problemsLeftOut > 0) {
            all.add(new InputProblem(file, 0, 0, "and " + problemsLeftOut + " more problems of this kind."));
        }
        return all;
    }

    /** A number, or not a number after noting the problem. */
    double number(int line, int cell, String text, String name) {
        double value = hasNumberSignsOnly(text) ? parsed(text) : Double.NaN;
        if (!Double.isFinite(value)) {
            String repair = text.indexOf(',') < 0 ? "" : " The decimal sign is a point.";
            String read = text.isEmpty()
                    ? " is empty; expected is a number."
                    : " is \"" + text + "\", which is not a number.";
            add(line, column(line, cell), name + read + repair);
            return Double.NaN;
        }
        return value;
    }

    private static boolean hasNumberSignsOnly(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (NUMBER_SIGNS.indexOf(text.charAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    private static double parsed(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
