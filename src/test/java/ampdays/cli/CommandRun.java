package ampdays.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Runs commands as the launcher does, and keeps what they say. */
abstract class CommandRun {
    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    final int run(String... args) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    /** The rows of a table that a command wrote, by their headings. */
    static List<Map<String, String>> rows(Path table) throws IOException {
        try (Reader text = Files.newBufferedReader(table)) {
            return CSVFormat.DEFAULT.builder().setHeader().get().parse(text).stream()
                    .map(CSVRecord::toMap)
                    .toList();
        }
    }
}
