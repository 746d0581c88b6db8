package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** README names every exit code, and every command that may say no. By reading the sources. */
class ReadmeTest {
    private static final Pattern ROW = Pattern.compile("(?m)^\\| (\\d) \\| (.+) \\|$");
    private static final Path COMMANDS = Path.of("src/main/java/ampdays/cli");

    private static Map<Integer, String> rows() throws IOException {
        Map<Integer, String> rows = new TreeMap<>();
        Matcher row = ROW.matcher(Files.readString(Path.of("README.md")));
        while (row.find()) {
            rows.put(Integer.valueOf(row.group(1)), row.group(2));
        }
        return rows;
    }

    @Test
    void everyExitCodeIsNamed() throws IOException {
        assertThat(rows())
                .containsOnlyKeys(
                        Exit.DONE, Exit.INTERNAL_ERROR, Exit.WRONG_INPUT, Exit.TARGET_NOT_MET, Exit.FILE_TROUBLE);
    }

    @Test
    void everyCommandWhoseAnswerMayBeNoIsNamed() throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(COMMANDS)) {
            files.filter(file -> file.getFileName().toString().endsWith("Command.java"))
                    .filter(ReadmeTest::maySayNo)
                    .map(file -> file.getFileName().toString().replace("Command.java", ""))
                    .map(name -> name.toLowerCase(Locale.ROOT))
                    .forEach(found::add);
        }
        assertThat(found).hasSizeGreaterThan(3);
        assertThat(rows().get(Exit.TARGET_NOT_MET)).contains(found);
    }

    private static boolean maySayNo(Path command) {
        try {
            return Files.readString(command).contains("TARGET_NOT_MET");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
