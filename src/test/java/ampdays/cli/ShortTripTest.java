package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Trips that end before they show a trend, as a user meets them. */
class ShortTripTest extends CommandRun {
    @TempDir
    private Path folder;

    /** Two days show no trend (docs/MODEL.md, section 15), and a bank that was not full shows none by that either. */
    @Test
    void aTripTooShortForATrendIsNotSaidToFall() throws IOException {
        Path van = StudiedVan.in(folder, "{}", "  more solar: {solar.power: 700 W}\n");
        Files.writeString(
                van,
                Files.readString(van)
                        .replace("days: 7", "days: 2")
                        .replace("1-5", "1-2")
                        .replace("start: 100 %", "start: 70 %"));
        String results = folder.resolve("results").toString();
        assertThat(run("sweep", van.toString(), "--vary", "battery.capacity=200, 500 Ah", "--out", results))
                .as(err.toString())
                .isZero();
        assertThat(out.toString())
                .contains("Of 2 designs 0 hold; 1 is not empty, on a trip too short to tell more; 1 is empty, after");
        out.getBuffer().setLength(0);
        assertThat(run("run", van.toString(), "--option", "as it is", "--out", results + "-of-one"))
                .isZero();
        assertThat(out.toString()).containsPattern("days to 20 % \\(empty\\) +over 2\\.0\\R");
    }
}
