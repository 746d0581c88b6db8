package ampdays.io;

import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** How a log is written: its encoding, what stands between its cells, its decimal sign; told by its beginning. */
record LogText(
        Path path, String file, Charset charset, char separator, boolean commaIsDecimal, List<String> beginning) {
    private static final int LOOKED_AT_BYTES = 1 << 18;
    private static final Pattern WITH_COMMA = Pattern.compile("[+-]?\\d+,\\d+");
    private static final Pattern WITH_POINT = Pattern.compile("[+-]?\\d+\\.\\d+");

    /**
     * Looks at the beginning of a log.
     *
     * @throws InputException when it is empty or no text
     */
    static LogText of(Path path) throws IOException, InputException {
        String file = String.valueOf(path.getFileName());
        if (Files.isDirectory(path)) {
            throw new FileSystemException(path.toString(), null, "this is a folder, not a log");
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(path)) {
            bytes = in.readNBytes(LOOKED_AT_BYTES);
        }
        boolean sixteen = bytes.length > 1 && (bytes[0] & 0xFF) >= 0xFE && (bytes[1] & 0xFF) >= 0xFE;
        for (byte b : bytes) {
            sixteen |= b == 0;
        }
        if (sixteen) {
            throw problem(file, 0, "the file is not plain text. Save it as CSV in UTF-8; unpack an archive.");
        }
        int end = bytes.length;
        if (end == LOOKED_AT_BYTES) {
            while (end > 0 && bytes[end - 1] != '\n') {
                end--;
            }
        }
        Charset charset = StandardCharsets.UTF_8;
        String text;
        try {
            text = charset.newDecoder().decode(ByteBuffer.wrap(bytes, 0, end)).toString();
        } catch (CharacterCodingException e) {
            charset = StandardCharsets.ISO_8859_1;
            text = new String(bytes, 0, end, charset);
        }
        List<String> lines =
                (text.startsWith("\uFEFF") ? text.substring(1) : text).lines().toList();
        if (lines.stream().allMatch(String::isBlank)) {
            throw problem(file, 0, "the file is empty.");
        }
        char separator = separator(lines);
        return new LogText(path, file, charset, separator, commaIsDecimal(lines, separator), lines);
    }

    static InputException problem(String file, int line, String message) {
        return new InputException(List.of(new InputProblem(file, line, 0, message)));
    }

    /** The sign that most lines have; a comma only where neither semicolon nor tab is. */
    private static char separator(List<String> lines) {
        long semicolons = lines.stream().filter(line -> line.indexOf(';') >= 0).count();
        long tabs = lines.stream().filter(line -> line.indexOf('\t') >= 0).count();
        if (2 * semicolons > lines.size()) {
            return ';';
        }
        return 2 * tabs > lines.size() ? '\t' : ',';
    }

    private static boolean commaIsDecimal(List<String> lines, char separator) {
        boolean commas = false;
        for (String line : lines) {
            for (String cell : cells(line, separator)) {
                if (WITH_POINT.matcher(cell).matches()) {
                    return false;
                }
                commas |= WITH_COMMA.matcher(cell).matches();
            }
        }
        return commas;
    }

    /** The log from its first line. */
    BufferedReader open() throws IOException {
        InputStream in = new BufferedInputStream(Files.newInputStream(path), 1 << 16);
        Reader reader = new InputStreamReader(in, charset);
        BufferedReader lines = new BufferedReader(reader, 1 << 16);
        lines.mark(1);
        if (lines.read() != '\uFEFF') {
            lines.reset();
        }
        return lines;
    }

    /** The cells of a line. */
    List<String> cells(String line) {
        return cells(line, separator);
    }

    private static List<String> cells(String line, char separator) {
        String[] cells = new String[16];
        int count = 0;
        int at = 0;
        while (at <= line.length()) {
            if (count == cells.length) {
                cells = Arrays.copyOf(cells, 2 * count);
            }
            at = cell(line, at, separator, cells, count++);
        }
        return Arrays.asList(cells).subList(0, count);
    }

    /** Puts the cell that begins at a place into its place in the row; returns where the next begins. */
    private static int cell(String line, int from, char separator, String[] cells, int place) {
        int at = from;
        while (at < line.length() && line.charAt(at) == ' ') {
            at++;
        }
        if (at < line.length() && line.charAt(at) == '"') {
            int close = line.indexOf('"', at + 1);
            while (close >= 0 && close + 1 < line.length() && line.charAt(close + 1) == '"') {
                close = line.indexOf('"', close + 2);
            }
            int end = close < 0 ? line.length() : close;
            cells[place] = line.substring(at + 1, end).replace("\"\"", "\"").strip();
            int next = line.indexOf(separator, Math.min(line.length(), end + 1));
            return next < 0 ? line.length() + 1 : next + 1;
        }
        int next = line.indexOf(separator, from);
        int end = next < 0 ? line.length() : next;
        cells[place] = line.substring(from, end).strip();
        return end + 1;
    }
}
