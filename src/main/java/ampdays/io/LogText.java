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
            while (end > 0 && bytes[end - 1] != '\n' && bytes[end - 1] != '\r') {
                end--;
            }
            if (end == 0) {
                throw problem(
                        file, 1, "no line ends within the first " + LOOKED_AT_BYTES / 1024 + " KiB. This is no table.");
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
            for (String cell : LogCells.of(line, separator)) {
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

    /** Cells of lines written like this. */
    LogCells cells() {
        return new LogCells(separator);
    }

    /** The cells of a line. */
    List<String> cells(String line) {
        return LogCells.of(line, separator);
    }
}
