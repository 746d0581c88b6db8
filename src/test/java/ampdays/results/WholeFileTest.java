package ampdays.results;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rule checked is ours: a file is whole or absent. */
class WholeFileTest {
    @TempDir
    Path folder;

    @Test
    void makesFoldersAndReplacesWhatWasThere() throws IOException {
        Path file = folder.resolve("a/b/text.txt");
        WholeFile.write(file, out -> out.write('1'));
        WholeFile.write(file, out -> out.write('2'));
        assertThat(file).hasContent("2");
        assertThat(namesIn(file.getParent())).containsExactly("text.txt");
    }

    @Test
    void aFailureHalfWayLeavesTheOldFileAndNoRest() throws IOException {
        Path file = folder.resolve("text.txt");
        WholeFile.write(file, out -> out.write('1'));
        assertThatThrownBy(() -> WholeFile.write(file, out -> {
                    out.write(new byte[200_000]);
                    throw new IOException("No space left on device");
                }))
                .isInstanceOf(IOException.class)
                .hasMessage("Cannot write " + file + ": No space left on device.");
        assertThat(file).hasContent("1");
        assertThat(namesIn(folder)).containsExactly("text.txt");
    }

    @Test
    void aBugHalfWayLeavesNoRestEither() throws IOException {
        assertThatThrownBy(() -> WholeFile.write(folder.resolve("text.txt"), out -> {
                    out.write(new byte[200_000]);
                    throw new IllegalStateException("bug");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(namesIn(folder)).isEmpty();
    }

    @Test
    void saysWhichPartOfThePathIsAFile() throws IOException {
        Path notAFolder = Files.writeString(folder.resolve("out"), "x");
        assertThatThrownBy(() -> WholeFile.write(notAFolder.resolve("text.txt"), out -> out.write('1')))
                .isInstanceOf(IOException.class)
                .hasMessage("Cannot write " + notAFolder.resolve("text.txt") + ": " + notAFolder
                        + " is a file, not a folder.");
        assertThat(namesIn(folder)).containsExactly("out");
    }

    private static Stream<String> namesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList().stream();
        }
    }
}
